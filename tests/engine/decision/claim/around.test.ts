import { describe, expect, it } from 'vitest';
import { coverView } from '../../../../src/engine/decision/claim/coverView.ts';
import type { LedgerRow } from '../../../../src/engine/decision/decision.ts';
import type { Claim } from '../../../../src/engine/scenario/claim.ts';
import { type Hit, named, results, sumOf, viewOf, waysFor, whyOf } from './asked.ts';
import { claim, hit, strict } from './collision.ts';

const rows = (one: Hit, id: string, what: RegExp): { month: number; cash: number }[] =>
  named(results(one), id)
    .ledger.filter((row: LedgerRow) => what.test(row.what))
    .map(({ month, amount }) => ({ month, cash: amount.cash }));
const lender = { name: 'the credit union', paidFirst: true, requiresRepair: false, cheque: null } as const;
const without = (one: Hit): Hit => ({
  ...one,
  inputs: { ...one.inputs, doingWithout: { aDay: 10, daysAMonth: 20 } },
});

describe('dearer insurance after a claim', () => {
  const dearer = hit({ surcharge: { aYear: 120, years: 3 } }, { place: strict });

  it('comes with the yearly bills of its years, at their prices, and only where one claims and stays insured', () => {
    const { cover } = dearer.inputs.household.pricesRise;
    const bill = (year: number): number => Math.round(12_000 * (1 + cover) ** year);
    expect(rows(dearer, 'claim/rebuild/keep', /dearer after/)).toEqual([
      { month: 12, cash: bill(0) },
      { month: 24, cash: bill(1) },
      { month: 36, cash: bill(2) },
    ]);
    expect(rows(without(dearer), 'claim/total-loss/without', /dearer after/)).toEqual([]);
    expect(rows(without(dearer), 'claim/total-loss/replace', /dearer after/)).toHaveLength(3);
    expect(rows(hit({ surcharge: { aYear: 120, years: 3 } }), 'claim/no-claim-own/keep', /dearer/)).toEqual(
      [],
    );
  });
});

describe('the deductible, once the other side pays', () => {
  // 2,004 at a shop: 1,504 paid, 500 borne. With 20 % of the fault 80 % can be had: 1,603.20.
  const back = (recoveredFor: 'owner first' | 'in proportion' | null, fault = 0.2, recovered = 1) =>
    rows(hit({ recovered, fault }, { recoveredFor }), 'claim/shop-repair/keep', /deductible paid back/);

  it('comes back first, or in proportion, half a year on, by its chance', () => {
    expect(back('owner first')).toEqual([{ month: 6, cash: -50_000 }]);
    // 1,603.20 x 500 / 2,004 = 400.
    expect(back('in proportion')).toEqual([{ month: 6, cash: -40_000 }]);
    expect(back(null)).toEqual([{ month: 6, cash: -40_000 }]);
    expect(back('owner first', 0.2, 0.3)).toEqual([{ month: 6, cash: -15_000 }]);
    expect(back('owner first', 1)).toEqual([]);
  });
});

describe('what was paid ahead', () => {
  // 900 for 36 months, 12 left: 300, less 40.
  const refunds: Claim['refunds'] = [{ what: 'service contract', paid: 900, months: 36, left: 12, fee: 40 }];

  it('comes back when the vehicle goes, not when the wreck is kept', () => {
    const total = hit({ refunds }, { place: strict });
    expect(rows(total, 'claim/total-loss', /unused/)).toEqual([{ month: 0, cash: -26_000 }]);
    expect(rows(total, 'claim/rebuild/keep', /unused/)).toEqual([]);
  });

  it('goes to a lender that is short, before gap cover pays', () => {
    const gap = { limit: 400, notCovered: 100 };
    const split = named(
      viewOf(hit({ refunds, gap }, { place: strict, lender }, 7000)).courses,
      'claim/total-loss',
    ).split;
    // 7,000 - 6,020 = 980; less 260 = 720; less 100 not covered = 620, at most 400: 320 left.
    expect(split).toMatchObject({ lender: 602_000, refund: 26_000, gap: 40_000, stillOwed: 32_000 });
    const option = named(results(hit({ refunds, gap }, { place: strict, lender }, 7000)), 'claim/total-loss');
    // In: 6,020 + 400 of the insurers, 260 of the contract. Out: the whole debt.
    expect(sumOf(option, 'settlement', 0)).toBe(-668_000);
    expect(sumOf(option, 'loan', 0)).toBe(700_000);
    const enough = named(
      viewOf(hit({ refunds }, { place: strict, lender }, 3000)).courses,
      'claim/total-loss',
    );
    expect(enough.split).toMatchObject({ lender: 300_000, refund: 0, owner: 302_000 });
  });
});

describe('a rental, storage and the tow', () => {
  const around: Partial<Claim> = {
    rental: { aDay: 40, paidADay: 30, paidDays: 5 },
    storage: { aDay: 25, days: 6, paidDays: 4 },
    tow: { costs: 180, paid: 100 },
    estimate: { ...claim.estimate, days: 8 },
  };

  it('cost what they cost, and the own insurer pays its part', () => {
    const option = named(results(hit(around)), 'claim/shop-repair/keep');
    const of = (what: RegExp): number =>
      option.ledger.filter((row) => what.test(row.what)).reduce((sum, row) => sum + row.amount.cash, 0);
    // 8 days x 40, of which 5 x 30; 6 x 25, of which 4 x 25; 180, of which 100.
    expect(of(/^rental, the/)).toBe(-15_000);
    expect(sumOf(option, 'getting about without it', 0)).toBe(32_000);
    expect([of(/^storage$/), of(/^storage, the/)]).toEqual([15_000, -10_000]);
    expect([of(/^tow$/), of(/^tow, the/)]).toEqual([18_000, -10_000]);
  });

  it('are within the other side’s statement, less the share of the fault, up to its limit', () => {
    const paid = (fault: number, otherLimit: number | null = null): number =>
      named(
        viewOf(hit({ ...around, fault, otherLimit }, { pays: 'other' })).courses,
        'claim/shop-repair/keep',
      ).statement?.payment ?? 0;
    // 2,004 + 5 x 30 + 100 + 100 = 2,354; half of it 1,177.
    expect([paid(0), paid(0.5), paid(0, 2000)]).toEqual([235_400, 117_700, 200_000]);
    expect(whyOf(hit({ ...around, fault: 1 }, { pays: 'other' }), 'claim/shop-repair')).toMatch(/nil/);
  });

  it('are all the household’s where nobody pays, and no way makes a claim', () => {
    const nobody = hit(around, { pays: 'nobody' });
    expect(waysFor(nobody).open.every(({ id }) => id.includes('no-claim'))).toBe(true);
    expect(sumOf(named(results(nobody), 'claim/no-claim-shop/keep'), 'settlement')).toBe(0);
  });
});

describe('lost market value', () => {
  const lostValue = { lost: 200, claimed: 500, paid: 1 };
  const brings = (one: Hit, id: string): number =>
    rows(one, id, /lost market value/).reduce((sum, { cash }) => sum - cash, 0);

  it('is claimed for what was repaired, and for nothing else', () => {
    const one = hit({ lostValue }, { pays: 'other' });
    expect(brings(one, 'claim/shop-repair/keep')).toBe(50_000);
    expect(brings(one, 'claim/own-repair/keep')).toBe(50_000);
    expect(brings(one, 'claim/safe-only/keep')).toBe(0);
    expect(brings(one, 'claim/no-claim-own/keep')).toBe(0);
  });

  it('has of the other policy what the damage leaves of its limit', () => {
    // 2,004 paid at a shop of a limit of 2,300: 296 are left.
    expect(brings(hit({ lostValue, otherLimit: 2300 }, { pays: 'other' }), 'claim/shop-repair/keep')).toBe(
      29_600,
    );
    expect(brings(hit({ lostValue, otherLimit: 1900 }, { pays: 'other' }), 'claim/shop-repair/keep')).toBe(0);
  });
});

describe('cover for the vehicle itself', () => {
  const collision = {
    aYear: 200,
    deductible: 500,
    chanceAYear: 0.05,
    meanLoss: 2000,
    totalShare: 0.2,
    other: { aYear: 150, deductible: 1000 },
  };
  const { inputs, facts } = hit();
  const insured = {
    ...inputs,
    vehicle: { ...inputs.vehicle, ownDamage: { collision, comprehensive: null } },
  };
  const view = coverView({ ...insured, household: { ...inputs.household, savings: 3000 } }, facts);
  const [part] = view?.parts ?? [];

  it('with it and without, by hand: worth 6,000, of which a wreck brings 400', () => {
    // A loss costs 0.2 x 5,600 + 0.8 x 2,000 = 2,720; with it 500 at most.
    expect(part).toMatchObject({ withIt: 200 + 0.05 * 500, worst: { withIt: 500, without: 5600 } });
    expect(part?.without).toBeCloseTo(0.05 * 2720, 9);
  });

  it('the day after a total loss, with and without it', () => {
    expect(part?.savingsAfter).toEqual({ withIt: 2500, without: -2600 });
  });

  it('breaks even at a rate of claims, and at a value', () => {
    // 200 / (2,720 - 500) = 0.0901.
    expect(part?.claimsTip).toMatchObject({ status: 'at', at: expect.closeTo(200 / 2220, 9) });
    // 0.05 x (0.2 x (V - 400) + 1,600 - 500) = 200 at V - 400 = 14,500.
    expect(part?.valueTip).toMatchObject({ status: 'at', at: expect.closeTo(14_900, 6) });
  });

  it('a higher deductible saves its premium and costs its chance', () => {
    // 50 a year saved, 0.05 x (1,000 - 500) = 25 borne.
    expect(part?.other).toMatchObject({ gain: expect.closeTo(25, 9), worst: 500 });
  });

  it('cannot be dropped while a lender asks for it', () => {
    expect(view?.mustKeep).toBeNull();
    expect(coverView(insured, { ...facts, lenderRequiresCover: true })?.mustKeep).toMatch(/lender/);
  });

  it('what it leaves to pay is in every way that holds a vehicle, its premium beside it', () => {
    const one: Hit = { inputs: insured, facts };
    for (const option of results(without(one))) {
      const own = option.ledger.filter(({ what }) => what.startsWith('own part of a loss'));
      const held = !option.id.endsWith('/without');
      // 0.05 x 500 / 12 a month.
      expect([option.id, own.length > 0, own[0]?.amount.cash ?? 208]).toEqual([option.id, held, 208]);
    }
  });
});
