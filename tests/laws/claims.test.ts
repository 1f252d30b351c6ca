/** What must hold for the courses of any claim: what comes in goes out, nothing is sold twice, a payment counts once. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OptionResult } from '../../src/engine/answer/decision.ts';
import type { ByReading } from '../../src/engine/cashflow/posting.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { EXPECTED, type Future, unrounded } from '../../src/engine/plans/vehicle/context.ts';
import type { Claim, ClaimFacts, ClaimLine } from '../../src/engine/scenario/inputs/claim.ts';
import { compare } from '../../src/engine/scenario/inputs/comparables.ts';
import { ctxOf, type Hit, named, results, sumOf, viewOf, waysFor } from '../engine/plans/collision/asked.ts';
import { claim, hit, place, strict } from '../engine/plans/collision/collision.ts';

/** Whole currency units, so that nothing below is a matter of rounding unless it says so. */
const units = (least: number, most: number): fc.Arbitrary<number> => fc.integer({ min: least, max: most });
const hundredth = (most: number): fc.Arbitrary<number> => fc.nat(most).map((n) => n / 100);

const line: fc.Arbitrary<ClaimLine> = fc
  .record({ amount: units(100_000, 140_000), labour: fc.boolean(), taxed: fc.boolean() })
  .map(({ amount, labour, taxed }) => ({
    what: labour ? 'labour' : 'part',
    kind: labour ? 'labour' : 'parts',
    amount: labour ? null : amount / 100,
    labour: labour ? { hours: amount / 7500, rate: 75 } : null,
    betterment: 0,
    taxed,
  }));

/** Changes of the claim. Its lines come to 2,000 at least and its value to 4,000: every deductible leaves a payment. */
const changes: fc.Arbitrary<Partial<Claim>> = fc
  .record({
    value: units(4000, 9000),
    damageBefore: units(0, 300),
    lines: fc.array(line, { minLength: 2, maxLength: 3 }),
    tax: hundredth(10),
    betterment: units(0, 150),
    found: fc.record({ chance: fc.constantFrom(0, 1), amount: units(0, 900), paid: hundredth(100) }),
    deductible: units(0, 600),
    salvage: units(0, 1500),
    salesTax: hundredth(10),
    rental: fc.option(fc.record({ aDay: units(10, 60), paidADay: units(10, 60), paidDays: fc.nat(9) })),
    tow: fc.option(fc.record({ costs: units(100, 200), paid: units(0, 300) })),
    // 50 a month: what comes back is a whole number.
    refunds: fc.array(
      fc.record({ left: units(6, 36), fee: units(0, 80) }).map(({ left, fee }) => ({
        what: 'service contract',
        insurance: false,
        paid: 1800,
        months: 36,
        left,
        fee,
      })),
      { maxLength: 2 },
    ),
    surcharge: fc.record({ aYear: units(1, 200), years: units(1, 2) }),
  })
  .map(({ lines, tax, betterment, found, ...rest }) => ({
    ...rest,
    estimate: {
      ...claim.estimate,
      lines: lines.map((each, i) => (i === 0 ? { ...each, betterment } : each)),
      tax,
      supplement: found,
      days: 6,
    },
  }));

const facts: fc.Arbitrary<Partial<ClaimFacts>> = fc
  .record({
    rule: fc.constantFrom(place, strict),
    settlement: fc.constantFrom(
      place.settlement,
      place.settlement && { ...place.settlement, tax: 'after salvage' as const },
      null,
    ),
    cheque: fc.constantFrom('released to the owner' as const, 'put to the loan' as const),
  })
  .map(({ rule, settlement, cheque }) => ({
    place: { ...rule, settlement },
    lender: { name: 'the credit union', paidFirst: true, requiresRepair: false, cheque },
  }));

interface Given {
  readonly changes: Partial<Claim>;
  readonly facts: Partial<ClaimFacts>;
  readonly owed: number;
  readonly gap: Claim['gap'];
}
const given: fc.Arbitrary<Given> = fc.record({
  changes,
  facts,
  owed: fc.oneof(fc.constant(0), units(500, 12_000)),
  gap: fc.option(fc.record({ limit: fc.option(units(100, 3000)), notCovered: units(0, 200) })),
});

/** The collision so changed, over two years, with the choice to do without. */
const collided = (one: Given, more: Partial<Claim> = {}, said: Partial<ClaimFacts> = {}): Hit => {
  const base = hit({ ...one.changes, gap: one.gap, ...more }, { ...one.facts, ...said }, one.owed);
  const { household, vehicle } = base.inputs;
  return {
    ...base,
    inputs: {
      ...base.inputs,
      household: { ...household, lookAhead: 24 },
      vehicle: { ...vehicle, sellsFor: { ...vehicle.sellsFor, tradeIn: 1500 } },
      doingWithout: { aDay: 12, daysAMonth: 15 },
    },
  };
};

/** A course without the month of its later date, which may move with what is owed. */
const courseOf = (id: string): string => id.replace(/\/\d+$/, '');
const claims = (id: string): boolean => !id.includes('/no-claim-');
const RUNS = { numRuns: 5 };
const ofAny = (check: (one: Given) => void): void => fc.assert(fc.property(given, check), RUNS);
const ofAnyWith = <T>(more: fc.Arbitrary<T>, check: (one: Given, more: T) => void): void =>
  fc.assert(fc.property(given, more, check), RUNS);

/** In cents: the rows of the day so called. */
const onTheDay = ({ ledger }: OptionResult, what: string): number =>
  ledger.filter((row) => row.month === 0 && row.what === what).reduce((sum, row) => sum + row.amount.cash, 0);

/**
 * What leaves on the day and what is then still owed, in cents: a total loss ends the loan, and so does a sale, but a
 * private one only once its buyer pays.
 */
const dayAndDebt = (option: OptionResult, owed: number): number => {
  const kept = ['keep', 'later'].includes(option.side) && !option.id.startsWith('claim/rebuild/');
  const goesOn = kept || option.letGo === 'as it stands';
  return option.cashOnTheDay + (goesOn ? Math.round(100 * owed) - onTheDay(option, 'lender is paid') : 0);
};

describe('law 11: what a higher payment does on the day', () => {
  it('x more lowers it by x in each course that takes it, owner, lender and gap cover together; no other moves', () => {
    ofAnyWith(units(1, 60_000), (one, x) => {
      const { deductible = 0 } = one.changes;
      const [low, high] = [collided(one, { deductible: deductible + x / 100 }), collided(one)];
      const [before, after] = [results(low), results(high)];
      expect(after.map(({ id }) => courseOf(id))).toEqual(before.map(({ id }) => courseOf(id)));
      before.forEach((option, i) => {
        const now = after[i] as OptionResult;
        if (!claims(option.id)) {
          expect([now.id, now.netPresentCost]).toEqual([option.id, option.netPresentCost]);
          return;
        }
        // A dollar that gap cover no longer pays is no dollar gained: there the law does not hold, but this does.
        const gap = 'gap cover pays the lender';
        const noMore = onTheDay(now, gap) - onTheDay(option, gap);
        const moved = dayAndDebt(now, one.owed) - dayAndDebt(option, one.owed);
        expect([option.id, moved]).toEqual([option.id, noMore - x]);
      });
    });
  });

  it('by hand: of 100 more, gap cover that fills a shortfall of 980 pays 100 less, and of 40 it pays 40 less', () => {
    const lender = { name: 'the credit union', paidFirst: true, requiresRepair: false, cheque: null };
    const day = (deductible: number, owed: number): number =>
      named(
        results(hit({ deductible, gap: { limit: null, notCovered: 0 } }, { place: strict, lender }, owed)),
        'claim/total-loss',
      ).cashOnTheDay;
    // 6,000 + 480 + 40 - 500 = 6,020 against 7,000 owed; 6,120 against it.
    expect(day(400, 7000) - day(500, 7000)).toBe(0);
    // 40 short of 6,060: then 60 over it.
    expect(day(400, 6060) - day(500, 6060)).toBe(-6000);
    // Nothing short.
    expect(day(400, 3000) - day(500, 3000)).toBe(-10_000);
  });

  it('a higher deductible never helps a claim, what is paid back of it counted', () => {
    const back = fc.oneof(fc.constant(0), hundredth(100));
    ofAnyWith(fc.tuple(units(1, 600), back, hundredth(100)), (any, [more, recovered, fault]) => {
      // Gap cover may fill what the deductible leaves short, and it is paid back all the same: one of the two here.
      const one: Given = recovered > 0 ? { ...any, gap: null } : any;
      const { deductible = 0 } = one.changes;
      const before = results(collided(one, { recovered, fault }));
      const after = results(collided(one, { recovered, fault, deductible: deductible + more }));
      after.forEach((option, i) => {
        const was = before[i] as OptionResult;
        expect(courseOf(was.id)).toBe(courseOf(option.id));
        expect(option.netPresentCost.counted).toBeGreaterThanOrEqual(was.netPresentCost.counted);
      });
    });
  });
});

describe('order decides nothing', () => {
  it('of the courses: worked out last to first, in the same future, each costs the same', () => {
    ofAnyWith(fc.tuple(hundredth(99), hundredth(99)), (any, [chance, turnsOut]) => {
      const { supplement, ...estimate } = any.changes.estimate as Claim['estimate'];
      const one = collided(any, { estimate: { ...estimate, supplement: { ...supplement, chance } } });
      const ways = waysFor(one).open;
      const costs = (future: Future, order: typeof ways): [string, ByReading<number>][] => {
        // What is worked out once in a future is shared by all courses that are asked in it.
        const ctx = unrounded(ctxOf(one, future));
        return order
          .map((way): [string, ByReading<number>] => [way.id, presentCostOf(way.build(ctx), ctx)])
          .sort(([a], [b]) => (a < b ? -1 : 1));
      };
      const drawn = (): Future => ({
        kind: 'drawn',
        luckOf: () => ({ exponential: () => 1e9, quantile: () => 0.5 }),
        recall: new Map(),
        turns: null,
        turnsOut: () => turnsOut,
        givenUpIn: null,
        atMean: null,
      });
      for (const future of [() => EXPECTED, drawn])
        expect(costs(future(), ways.toReversed())).toEqual(costs(future(), ways));
    });
  });

  it('of the lines of the estimate', () => {
    ofAny((one) => {
      const estimate = one.changes.estimate as Claim['estimate'];
      const turned = { ...estimate, lines: estimate.lines.toReversed() };
      const costs = (all: readonly OptionResult[]) =>
        all.map(({ id, netPresentCost, cashOnTheDay }) => ({ id, netPresentCost, cashOnTheDay }));
      expect(costs(results(collided(one, { estimate: turned })))).toEqual(costs(results(collided(one))));
    });
  });

  it('of the comparables, down to the cent', () => {
    const comparable = fc.record({
      price: units(100_000, 900_000).map((n) => n / 100),
      odometer: units(0, 250_000),
      adjustment: units(-50_000, 50_000).map((n) => n / 100),
    });
    const own = { odometer: 120_000, perDistance: 0.053 };
    fc.assert(
      fc.property(fc.array(comparable, { minLength: 1, maxLength: 7 }), (all) => {
        expect(compare(all.toReversed(), own).mean).toBe(compare(all, own).mean);
      }),
    );
  });
});

describe('money in is money out', () => {
  it('what comes in on the day is what insurers, gap cover and refunds pay, whoever gets it, to the cent', () => {
    ofAnyWith(fc.tuple(fc.boolean(), hundredth(90)), (one, [other, fault]) => {
      // Damage found later is paid in a row of its own.
      const { supplement, ...estimate } = one.changes.estimate as Claim['estimate'];
      const none = { estimate: { ...estimate, supplement: { ...supplement, chance: 0 } }, fault };
      const at = collided(one, none, { pays: other ? 'other' : 'own' });
      const all = results(at);
      const { tow, rental, refunds = [] } = one.changes;
      for (const { id, split, side } of viewOf(at).courses) {
        // The other driver's insurer pays tow and rental within its statement; only a shop has it for days: 6.
        const days = id.startsWith('claim/shop-repair/') ? 6 : 0;
        const hired = rental ? Math.min(rental.aDay, rental.paidADay) * Math.min(days, rental.paidDays) : 0;
        const around = split && !other ? hired + Math.min(tow?.paid ?? 0, tow?.costs ?? 0) : 0;
        const gone = side === 'replace' || side === 'without';
        const back = gone ? refunds.reduce((sum, { left, fee }) => sum + 50 * left - fee, 0) : 0;
        const paid = split ? split.payment + split.gap : 0;
        const cameIn = 0 - sumOf(named(all, id), 'settlement', 0);
        expect([id, cameIn]).toEqual([id, paid + Math.round(100 * (around + back))]);
        if (!split) continue;
        expect(split.lender + split.owner + split.shop).toBe(split.payment);
        expect(split.lender + split.refund + split.gap + split.stillOwed).toBe(Math.round(100 * one.owed));
      }
    });
  });

  it('rows sum to the totals of every reading, and those of the day to what leaves in cash', () => {
    ofAny((one) => {
      for (const option of results(collided(one))) {
        const { ledger, netPresentCost, cashOnTheDay } = option;
        for (const reading of ['counted', 'cash', 'shop'] as const)
          expect([option.id, ledger.reduce((sum, row) => sum + row.present[reading], 0)]).toEqual([
            option.id,
            netPresentCost[reading],
          ]);
        const day = ledger.filter(({ month }) => month === 0).reduce((sum, row) => sum + row.amount.cash, 0);
        expect([option.id, day]).toEqual([option.id, cashOnTheDay]);
      }
    });
  });

  it('no claim, no settlement and no dearer insurance; a claim has both', () => {
    ofAnyWith(fc.boolean(), (one, nobody) => {
      for (const { id, side, ledger } of results(collided(one, {}, { pays: nobody ? 'nobody' : 'own' }))) {
        const paid = ledger.filter(
          ({ category, what }) => category === 'settlement' && !/unused$/.test(what),
        );
        const dearer = ledger.filter(({ what }) => what === 'dearer after the claim');
        const claimed = claims(id);
        if (nobody) expect(claimed).toBe(false);
        expect([id, paid.length > 0]).toEqual([id, claimed]);
        expect([id, dearer.length > 0]).toEqual([id, claimed && side !== 'without']);
      }
    });
  });
});

describe('nothing is sold twice', () => {
  it('given up: not sold, nor owned; sold: once, and owned no more; kept: not sold; later: once, then', () => {
    ofAny((one) => {
      const at = collided(one);
      const all = results(at);
      // The replacement's worth at the end is all that there is: the same whichever way the old one went.
      const next = named(all, 'claim/no-claim-sold-damaged/replace').valueAtEnd;
      for (const option of all) {
        const sales = option.ledger.filter(({ category }) => category === 'selling the old one');
        // What selling takes falls as the sale is begun; its price comes once, with the buyer.
        const sold = sales.filter(({ what }) => what.startsWith('sold')).map(({ month }) => month);
        if (option.side === 'keep') {
          expect([option.id, sold]).toEqual([option.id, []]);
          expect(option.valueAtEnd).toBeGreaterThan(0);
        } else if (option.side === 'later')
          expect([option.id, sold]).toEqual([option.id, [(option.replaceMonth as number) + 1]]);
        else {
          const surrendered = option.id.startsWith('claim/total-loss/');
          const privately = option.letGo === 'as it stands';
          expect([option.id, sold]).toEqual([option.id, surrendered ? [] : [privately ? 1 : 0]]);
          expect([option.id, option.valueAtEnd]).toEqual([option.id, option.side === 'without' ? 0 : next]);
        }
      }
    });
  });

  it('damaged it brings 3,600 less three weeks of insurance; traded in 1,500; scrapped, where that is more, its scrap', () => {
    const one: Given = { changes: {}, facts: {}, owed: 0, gap: null };
    const all = results(collided(one));
    // 620 x 3 / 52 = 35.77.
    expect(sumOf(named(all, 'claim/sold-damaged/without'), 'selling the old one')).toBe(-356_423);
    expect(sumOf(named(all, 'claim/traded-in/replace'), 'selling the old one')).toBe(-150_000);
    expect(all.some(({ id }) => id.includes('scrapped'))).toBe(false);
    const { inputs, facts: said } = collided(one);
    const vehicle = { ...inputs.vehicle, sellsFor: { ...inputs.vehicle.sellsFor, asItStands: 200 } };
    const wreck = results({ inputs: { ...inputs, vehicle }, facts: said });
    expect(sumOf(named(wreck, 'claim/scrapped/without'), 'selling the old one')).toBe(-40_000);
  });
});
