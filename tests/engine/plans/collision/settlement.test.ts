/** What a claim brings and costs besides the work, and what cover is worth: each figure by hand, to the cent. */
import { describe, expect, it } from 'vitest';
import { coverView } from '../../../../src/engine/analysis/coverView.ts';
import type { OptionResult } from '../../../../src/engine/answer/decision.ts';
import { TO_THE_CENT } from '../../../../src/engine/cashflow/contracts/settlement/arithmetic.ts';
import { settleIn } from '../../../../src/engine/plans/collision/settlement.ts';
import type { Claim, CoverPart } from '../../../../src/engine/scenario/inputs/claim.ts';
import { type Hit, named, results } from './asked.ts';
import { hit, place, strict } from './collision.ts';

const course = (one: Hit, id: string): OptionResult => named(results(one), id);
/** Month and cents of every row of that name. */
const rows = (option: OptionResult, what: string): [number, number][] =>
  option.ledger.filter((row) => row.what === what).map((row) => [row.month, row.amount.cash]);
const totalLoss = ({ inputs, facts }: Hit) =>
  settleIn(TO_THE_CENT, inputs, facts, { how: 'given up', replaced: true, days: 0, more: 0 }).split;
const lender = { name: 'the credit union', paidFirst: true, requiresRepair: false, cheque: null } as const;

describe('cover on a vehicle worth 6,000 whose wreck brings 400', () => {
  const collision: CoverPart = {
    aYear: 300,
    deductible: 500,
    chanceAYear: 0.05,
    meanLoss: 2000,
    totalShare: 0.25,
    other: { aYear: 220, deductible: 1000 },
  };
  const viewed = (more: Partial<Hit['inputs']['vehicle']> = {}, lenderRequiresCover = false) => {
    const { inputs, facts } = hit();
    return coverView(
      {
        ...inputs,
        household: { ...inputs.household, savings: 4000 },
        vehicle: { ...inputs.vehicle, ownDamage: { collision, comprehensive: null }, ...more },
      },
      { ...facts, lenderRequiresCover },
    );
  };
  const part = viewed()?.parts[0];

  it('is reckoned on what a total loss takes, 5,600', () => {
    // Without: 5 % of (a quarter of 5,600 and three of 2,000: 2,900) = 145. With: 300 and 5 % of 500 = 325.
    expect(part?.without).toBeCloseTo(145, 9);
    expect(part?.withIt).toBeCloseTo(325, 9);
    expect(part?.worst).toEqual({ withIt: 500, without: 5600 });
    // 4,000 of savings less either.
    expect(part?.savingsAfter).toEqual({ withIt: 3500, without: -1600 });
  });
  it('breaks even at one claim in eight years: 300 / (2,900 - 500)', () => {
    expect(part?.claimsTip).toEqual({ status: 'at', at: 0.125 });
  });
  it('breaks even at a value of 20,400: 5 % of (5,000 + 1,500 - 500) is 300, and the wreck brings 400', () => {
    expect(part?.valueTip.status === 'at' && part.valueTip.at).toBeCloseTo(20_400, 6);
  });
  it('with the other deductible gains 80 - 5 % of 500 = 55, up to 80 / 500 claims a year', () => {
    expect(part?.other).toMatchObject({ worst: 500, claimsTip: { status: 'at', at: 0.16 } });
    expect(part?.other?.gain).toBeCloseTo(55, 9);
  });
  it('counts branded papers: 60 % of 6,000 is 3,600, of which 3,200 can be lost', () => {
    const branded = viewed({ brandFactor: 0.6 });
    expect(branded?.value).toBe(3600);
    expect(branded?.parts[0]?.worst.without).toBe(3200);
  });
  it('must be kept where a lender asks for it, and only there', () => {
    expect(viewed({}, true)?.mustKeep).toMatch(/lender/);
    expect(viewed()?.mustKeep).toBeNull();
  });
  it('is not looked at where its premium was not told apart', () => {
    expect(viewed({ ownDamage: { collision: null, comprehensive: null } })).toBeNull();
  });
});

describe('dearer insurance after a claim, 200 a year for 3 years', () => {
  const dearer = { surcharge: { aYear: 200, years: 3 } };
  const what = 'dearer after the claim';
  it('falls with the three next yearly bills, 4 % dearer each year after the first', () => {
    // Today's price for the first twelve months: 200.00; x 1.04 = 208.00; x 1.04 = 216.32.
    const bills = [
      [12, 20_000],
      [24, 20_800],
      [36, 21_632],
    ];
    expect(rows(course(hit(dearer), 'claim/shop-repair/keep'), what)).toEqual(bills);
    expect(rows(course(hit(dearer), 'claim/sold-damaged/replace'), what)).toEqual(bills);
  });
  it('falls with the bill of its own date, in month 5 and the two after it', () => {
    const one = hit(dearer);
    const { vehicle } = one.inputs;
    const due = { ...vehicle, cover: { ...vehicle.cover, nextDue: 5 } };
    const option = course({ ...one, inputs: { ...one.inputs, vehicle: due } }, 'claim/shop-repair/keep');
    expect(rows(option, what)).toEqual([
      [5, 20_000],
      [17, 20_800],
      [29, 21_632],
    ]);
  });
  it('does not fall without a claim, when doing without, or when the other side pays', () => {
    const one = hit(dearer);
    const without = {
      ...one,
      inputs: { ...one.inputs, doingWithout: { aDay: 12, daysAMonth: 20 } },
    };
    expect(rows(course(one, 'claim/no-claim-shop/keep'), what)).toEqual([]);
    expect(rows(course(without, 'claim/sold-damaged/without'), what)).toEqual([]);
    const theirs = hit({ ...dearer, deductible: 0 }, { pays: 'other' });
    expect(rows(course(theirs, 'claim/shop-repair/keep'), what)).toEqual([]);
  });
});

describe('what comes back of a deductible of 500 on a loss of 2,004, in month 6', () => {
  const back = (recoveredFor: 'owner first' | 'in proportion' | null, fault: number, recovered = 1) =>
    rows(
      course(hit({ fault, recovered }, { recoveredFor }), 'claim/shop-repair/keep'),
      'deductible paid back',
    );
  it('without own fault it is whole', () => {
    expect(back('owner first', 0)).toEqual([[6, -50_000]]);
    expect(back('in proportion', 0)).toEqual([[6, -50_000]]);
  });
  it('at a fifth of the fault 1,603.20 is collected: 500 of it first, or 500 / 2,004 of it = 400', () => {
    expect(back('owner first', 0.2)).toEqual([[6, -50_000]]);
    expect(back('in proportion', 0.2)).toEqual([[6, -40_000]]);
    expect(back(null, 0.2)).toEqual([[6, -40_000]]);
  });
  it('at nine tenths 200.40 is collected: all of it, or 50', () => {
    expect(back('owner first', 0.9)).toEqual([[6, -20_040]]);
    expect(back('in proportion', 0.9)).toEqual([[6, -5_000]]);
  });
  it('where the place’s rule of fault is not known, any fault may take all of it', () => {
    const unknown = (fault: number) =>
      rows(
        course(hit({ fault, recovered: 1 }, { place: { ...place, fault: null } }), 'claim/shop-repair/keep'),
        'deductible paid back',
      );
    expect(unknown(0)).toEqual([[6, -50_000]]);
    expect(unknown(0.2)).toEqual([]);
  });
  it('counts by its chance, and not at all where none is expected', () => {
    expect(back('in proportion', 0.2, 0.5)).toEqual([[6, -20_000]]);
    expect(back('in proportion', 0.2, 0)).toEqual([]);
  });
});

describe('a premium of 600 paid for 12 months with 5 left and a fee of 25: 250 - 25 = 225 comes back', () => {
  const refunds = [{ what: 'premium', insurance: true, paid: 600, months: 12, left: 5, fee: 25 }];
  const total = (owed: number, changes: Partial<Claim> = {}) =>
    hit({ refunds, ...changes }, { place: strict, lender: owed > 0 ? lender : null }, owed);
  it('to the lender first, before gap cover: 7,000 - 6,020 - 225 = 755, of which gap cover leaves out 100', () => {
    const gap = { limit: null, notCovered: 100 };
    expect(totalLoss(total(7000, { gap }))).toMatchObject({ refund: 22_500, gap: 65_500, stillOwed: 10_000 });
    const option = course(total(7000, { gap }), 'claim/total-loss');
    // 6,020 + 225 + 655 reach the lender.
    expect(rows(option, 'lender is paid')).toEqual([[0, 690_000]]);
    expect(rows(option, 'shortfall is paid')).toEqual([[0, 10_000]]);
    expect(rows(option, 'premium, unused')).toEqual([[0, -22_500]]);
  });
  it('gap cover up to its limit of 500 leaves 255 owing, and none leaves 755', () => {
    const gap = { limit: 500, notCovered: 100 };
    expect(totalLoss(total(7000, { gap }))).toMatchObject({ gap: 50_000, stillOwed: 25_500 });
    expect(totalLoss(total(7000))).toMatchObject({ gap: 0, stillOwed: 75_500 });
  });
  it('gap cover pays nothing where the payment covers the debt', () => {
    const gap = { limit: null, notCovered: 0 };
    expect(totalLoss(total(5000, { gap }))).toMatchObject({ gap: 0, refund: 0, owner: 102_000 });
  });
  it('the lender has only what is short: 6,100 - 6,020 = 80 of it, and 145 stays with the owner', () => {
    const option = course(total(6100), 'claim/total-loss');
    expect(totalLoss(total(6100))).toMatchObject({ refund: 8_000, stillOwed: 0 });
    expect(rows(option, 'lender is paid')).toEqual([[0, 610_000]]);
    expect(rows(option, 'premium, unused')).toEqual([[0, -22_500]]);
  });
  it('to the owner where nothing is owed, and nobody where the wreck is kept', () => {
    expect(totalLoss(total(0)).refund).toBe(0);
    expect(rows(course(total(0), 'claim/total-loss'), 'premium, unused')).toEqual([[0, -22_500]]);
    expect(rows(course(total(0), 'claim/rebuild/keep'), 'premium, unused')).toEqual([]);
    // Kept, 6,000 + 480 + 25 - 500 - 900 = 5,105 of 6,000 owed: the rest is paid, and no refund goes to the lender.
    const kept = course(total(6000), 'claim/rebuild/keep');
    expect(rows(kept, 'lender is paid')).toEqual([[0, 510_500]]);
    expect(rows(kept, 'shortfall is paid')).toEqual([[0, 89_500]]);
    // Nor does the loan go on.
    expect([
      ...new Set(kept.ledger.filter(({ category }) => category === 'loan').map((r) => r.month)),
    ]).toEqual([0]);
  });
  it('of something extended beyond its first term is counted on what is left of it: 600 - 25', () => {
    const long = [{ what: 'premium', insurance: true, paid: 600, months: 12, left: 15, fee: 25 }];
    const option = course(hit({ refunds: long }, { place: strict }), 'claim/total-loss');
    expect(rows(option, 'premium, unused')).toEqual([[0, -57_500]]);
  });
  it('a loan for the next one takes in only what is still short after all of them: 100', () => {
    const day = (rollInShortfall: boolean): number => {
      const { inputs, facts } = total(7000, { gap: { limit: null, notCovered: 100 } });
      const replacement = inputs.replacement.map((deal) =>
        deal.payment.kind === 'loan' ? { ...deal, payment: { ...deal.payment, rollInShortfall } } : deal,
      );
      return course({ inputs: { ...inputs, replacement }, facts }, 'claim/total-loss').cashOnTheDay;
    };
    expect(day(true) - day(false)).toBe(-10_000);
  });
});

/** 8 days in the shop: rental 360, paid 30 x 5 = 150; tow 140, paid 100; storage 120, paid 20 x 4 = 80. */
const around: Partial<Claim> = {
  estimate: { ...(hit().inputs.claim as Claim).estimate, days: 8 },
  rental: { aDay: 45, paidADay: 30, paidDays: 5 },
  tow: { costs: 140, paid: 100 },
  storage: { aDay: 20, days: 6, paidDays: 4 },
};
const WHAT = ['rental', 'tow', 'storage'] as const;
const costsOf = (option: OptionResult) => WHAT.map((what) => rows(option, what));
const partsOf = (option: OptionResult) => WHAT.map((what) => rows(option, `${what}, the insurer's part`));
const COSTS = [[[0, 36_000]], [[0, 14_000]], [[0, 12_000]]];

describe('rental, tow and storage', () => {
  it('cost what they cost, and the own insurer pays its part of each', () => {
    const option = course(hit(around), 'claim/shop-repair/keep');
    expect(costsOf(option)).toEqual(COSTS);
    expect(partsOf(option)).toEqual([[[0, -15_000]], [[0, -10_000]], [[0, -8_000]]]);
  });
  it('is never paid beyond what it costs: 45 x 5, 140, and 20 x 6', () => {
    const rich = {
      ...around,
      rental: { aDay: 45, paidADay: 60, paidDays: 5 },
      tow: { costs: 140, paid: 200 },
      storage: { aDay: 20, days: 6, paidDays: 9 },
    };
    const option = course(hit(rich), 'claim/shop-repair/keep');
    expect(partsOf(option)).toEqual([[[0, -22_500]], [[0, -14_000]], [[0, -12_000]]]);
  });
  it('nobody pays any of it where no claim is made, or there is nobody to claim of', () => {
    for (const one of [hit(around), hit({ ...around, deductible: 0 }, { pays: 'nobody' })]) {
      const option = course(one, 'claim/no-claim-shop/keep');
      expect(costsOf(option)).toEqual(COSTS);
      expect(option.ledger.filter(({ category }) => category === 'settlement')).toEqual([]);
    }
  });
});

describe('the other driver’s insurer pays all in its statement: 2,004 + 150 + 180 = 2,334', () => {
  const theirs = (fault: number, otherLimit: number | null, more: Partial<Claim> = {}) =>
    hit({ ...around, deductible: 0, fault, otherLimit, ...more }, { pays: 'other' });
  const paid = (one: Hit) => rows(course(one, 'claim/shop-repair/keep'), 'insurer pays the owner');

  it('at no fault in full, at half the fault 1,167, and at all of it nothing: the claim is closed', () => {
    expect(paid(theirs(0, null))).toEqual([[0, -233_400]]);
    expect(paid(theirs(0.5, null))).toEqual([[0, -116_700]]);
    expect(() => paid(theirs(1, null))).toThrow(/No claim\/shop-repair/);
  });
  it('takes no deductible, whatever the own policy has', () => {
    expect(paid(theirs(0, null, { deductible: 500 }))).toEqual([[0, -233_400]]);
  });
  it('at most its limit, after the fault', () => {
    expect(paid(theirs(0, 2100))).toEqual([[0, -210_000]]);
    expect(paid(theirs(0.5, 1000))).toEqual([[0, -100_000]]);
    expect(paid(theirs(0.5, 2100))).toEqual([[0, -116_700]]);
  });
  it('with no second payment for what its statement holds', () => {
    const option = course(theirs(0, null), 'claim/shop-repair/keep');
    expect(costsOf(option)).toEqual(COSTS);
    expect(partsOf(option)).toEqual([[], [], []]);
  });
  it('lost market value of 600 by its chance and the fault, within what the limit has left', () => {
    const lost = (fault: number, limit: number | null, chance = 1) =>
      rows(
        course(
          theirs(fault, limit, { lostValue: { lost: 800, claimed: 600, paid: chance } }),
          'claim/shop-repair/keep',
        ),
        'lost market value',
      );
    expect(lost(0, null)).toEqual([[0, -60_000]]);
    expect(lost(0.5, null)).toEqual([[0, -30_000]]);
    // 2,500 - 2,334 = 166.
    expect(lost(0, 2500)).toEqual([[0, -16_600]]);
    expect(lost(0, 2500, 0.5)).toEqual([[0, -8_300]]);
    expect(lost(0, 2000)).toEqual([]);
  });
  it('its limit is used up by more damage only where that is paid, and by its chance: 1,900 + 180, and 500 more', () => {
    const lost = (otherLimit: number, chance: number, signingCloses: boolean | null) => {
      const estimate = {
        ...(around.estimate as Claim['estimate']),
        supplement: { chance, amount: 500, paid: 1 },
      };
      const lostValue = { lost: 800, claimed: 600, paid: 1 };
      const one = hit(
        { ...around, deductible: 0, otherLimit, estimate, lostValue },
        { pays: 'other', signingCloses },
      );
      return rows(course(one, 'claim/own-repair/keep'), 'lost market value');
    };
    // 2,600 - 2,080 - 500 = 20. Once signing has closed the claim the 500 is the owner's: 2,600 - 2,080 = 520.
    expect(lost(2600, 1, false)).toEqual([[0, -2_000]]);
    expect(lost(2600, 1, true)).toEqual([[0, -52_000]]);
    expect(lost(2600, 1, null)).toEqual([[0, -52_000]]);
    // Of 3,000 there is room for all 600, or for 420 where the 500 comes first: half of each is 510.
    expect(lost(3000, 0, false)).toEqual([[0, -60_000]]);
    expect(lost(3000, 1, false)).toEqual([[0, -42_000]]);
    expect(lost(3000, 0.5, false)).toEqual([[0, -51_000]]);
  });
});
