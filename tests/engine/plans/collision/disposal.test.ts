/** In which ways a damaged vehicle may go. */
import { describe, expect, it } from 'vitest';
import { isOwnInsurance } from '../../../../src/engine/scenario/inputs/claim.ts';
import type { Inputs } from '../../../../src/engine/scenario/inputs/inputs.ts';
import { named, results, waysFor } from './asked.ts';
import { hit, strict } from './collision.ts';

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

describe('insurance paid ahead', () => {
  it('is known by its words, unless the file says; gap cover is none', () => {
    const known = (what: string, told?: boolean): boolean => isOwnInsurance(what, told);
    expect(['premium', 'Insurance, paid till June', 'this year’s premiums'].every((w) => known(w))).toBe(
      true,
    );
    expect(['gap insurance', 'service contract', 'gap cover'].some((w) => known(w))).toBe(false);
    expect([known('paid ahead', true), known('premium', false)]).toEqual([true, false]);
  });

  // 620 a year, due in twelve months: all of it is unused.
  const back = (refunds: NonNullable<Inputs['claim']>['refunds']): readonly [string, number][] =>
    results(hit({ refunds }, { place: strict }))
      .filter(({ side }) => side === 'replace')
      .map(({ id, ledger }) => [
        id,
        ledger
          .filter(({ what, month }) => month === 0 && what.includes(', unused'))
          .reduce((sum, row) => sum + row.amount.cash, 0),
      ]);

  it('comes back when it goes, to the insurer or sold; once, where the file lists what comes back', () => {
    const premium = { what: 'premium', insurance: true, paid: 620, months: 12, left: 12, fee: 20 };
    const contract = { what: 'service contract', insurance: false, paid: 480, months: 24, left: 10, fee: 0 };
    for (const [id, cents] of back([])) expect([id, cents]).toEqual([id, -62_000]);
    for (const [id, cents] of back([premium])) expect([id, cents]).toEqual([id, -60_000]);
    // Another thing paid ahead comes back besides.
    for (const [id, cents] of back([contract])) expect([id, cents]).toEqual([id, -62_000 - 20_000]);
  });

  it('that a claim makes dearer is owned at the end for the months not used', () => {
    const kept = named(results(hit({ surcharge: { aYear: 120, years: 9 } })), 'claim/shop-repair/keep');
    const owned = kept.ledger.find(({ what }) => what === 'dearer after the claim, unused');
    // Of month 60, the day the look ends, at the fifth year's 1.04^4.
    expect(owned?.amount.cash).toBe(-Math.round(120 * 1.04 ** 4 * 100));
  });
});
