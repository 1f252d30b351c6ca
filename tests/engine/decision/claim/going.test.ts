/** In which ways a damaged vehicle may go. */
import { describe, expect, it } from 'vitest';
import type { Inputs } from '../../../../src/engine/scenario/inputs.ts';
import { waysFor } from './asked.ts';
import { hit } from './collision.ts';

describe('letting it go damaged', () => {
  const ids = (sellsFor: Partial<Inputs['vehicle']['sellsFor']>, cost = 0): string[] => {
    const { inputs, facts } = hit();
    const { vehicle } = inputs;
    const changed = {
      ...inputs,
      doingWithout: { aDay: 12, daysAMonth: 20 },
      vehicle: {
        ...vehicle,
        sellsFor: { ...vehicle.sellsFor, ...sellsFor },
        selling: { ...vehicle.selling, cost },
      },
    };
    return waysFor({ inputs: changed, facts }).open.map(({ id }) => id);
  };
  it('as scrap is a way where a sale leaves less than 400: 500 does, 500 less 120 for selling it does not', () => {
    expect(ids({ asItStands: 500 }).some((id) => id.includes('scrapped'))).toBe(false);
    expect(ids({ asItStands: 500 }, 120)).toContain('claim/scrapped/without');
  });
  it('in a trade-in is no way of doing without', () => {
    const all = ids({ tradeIn: 1500 });
    expect(all).toContain('claim/traded-in/replace/2021-hatchback');
    expect(all).toContain('claim/sold-damaged/without');
    expect(all).not.toContain('claim/traded-in/without');
  });
});
