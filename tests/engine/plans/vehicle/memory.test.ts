import { describe, expect, it } from 'vitest';
import { type Recalled, recalledIn } from '../../../../src/engine/plans/vehicle/memory.ts';

describe('what is kept', () => {
  it('is worked out once in the same particulars, and anew in others', () => {
    const kept: Recalled[] = [];
    let worked = 0;
    const ask = (...particulars: unknown[]) => recalledIn(kept, particulars, () => ++worked);
    expect([ask('a', 1), ask('a', 2), ask('a', 1), ask('a')]).toEqual([1, 2, 1, 3]);
  });

  it('is no more than is asked for, and what is not kept is told so', () => {
    const kept: Recalled[] = [];
    const ask = (month: number) => recalledIn(kept, [month], (isKept) => ({ month, isKept }), 2);
    expect([1, 2, 3].map((month) => ask(month).isKept)).toEqual([true, true, false]);
    expect(ask(1)).toBe(ask(1));
    expect(ask(3)).not.toBe(ask(3));
    expect(kept).toHaveLength(2);
  });
});
