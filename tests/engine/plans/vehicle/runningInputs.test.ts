import { describe, expect, it } from 'vitest';
import { type Runs, runsBy } from '../../../../src/engine/plans/vehicle/runningInputs.ts';

describe('what a vehicle runs by', () => {
  it('names every field once: one named twice would stand for another that is left out', () => {
    const byName = new Proxy({} as Runs, { get: (_, field) => field });
    const named: readonly unknown[] = runsBy(byName);
    expect(new Set(named).size).toBe(named.length);
  });
});
