import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OptionResult } from '../../src/engine/decision/decision.ts';
import type { Claim, ClaimFacts } from '../../src/engine/scenario/claim.ts';
import { named, results, sumOf, viewOf } from '../engine/decision/claim/asked.ts';
import { claim, hit, place, strict } from '../engine/decision/claim/collision.ts';

const cents = (least: number, most: number) =>
  fc.integer({ min: 100 * least, max: 100 * most }).map((n) => n / 100);
const share = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);

/** A claim with all sorts of money around it, on the own policy or the other's, over the line or below it. */
const anyClaim = fc.record({
  deductible: cents(0, 900),
  supplement: fc.record({ chance: share, amount: cents(0, 900), paid: share }),
  tax: fc.integer({ min: 0, max: 12 }).map((n) => n / 100),
  rental: fc.option(fc.record({ aDay: cents(10, 60), paidADay: cents(10, 60), paidDays: fc.nat(9) })),
  tow: fc.option(fc.record({ costs: cents(0, 300), paid: cents(0, 300) })),
  refunds: fc.array(
    fc.record({
      what: fc.constant('premium'),
      paid: cents(0, 900),
      months: fc.constant(24),
      left: fc.nat(24),
      fee: cents(0, 60),
    }),
    { maxLength: 2 },
  ),
  salvage: cents(0, 2500),
  betterment: cents(0, 400),
  fault: share,
  surcharge: fc.record({ aYear: cents(0, 300), years: fc.nat(5) }),
  pays: fc.constantFrom('own' as const, 'other' as const),
  over: fc.boolean(),
  owed: fc.constantFrom(0, 1800.55, 7400.2),
  gap: fc.boolean(),
});
type Any = Parameters<Parameters<typeof anyClaim.map>[0]>[0];

const hitBy = (one: Any, more: Partial<Claim> = {}) => {
  const { supplement, tax, betterment, pays, over, owed, gap, deductible, ...rest } = one;
  const lines = claim.estimate.lines.map((line, i) => (i === 0 ? { ...line, betterment } : line));
  const facts: Partial<ClaimFacts> = {
    pays,
    place: over ? strict : place,
    lender:
      owed === 0
        ? null
        : { name: 'a bank', paidFirst: true, requiresRepair: false, cheque: 'released to the owner' },
  };
  const own = pays === 'own';
  return hit(
    {
      ...rest,
      estimate: { ...claim.estimate, lines, tax, supplement, days: 6 },
      deductible: own ? deductible : 0,
      surcharge: own ? rest.surcharge : { aYear: 0, years: 0 },
      gap: gap && owed > 0 ? { limit: null, notCovered: 0 } : null,
      ...more,
    },
    facts,
    owed,
  );
};
const RUNS = { numRuns: 20 };
const ids = (all: readonly OptionResult[]): string[] => all.map(({ id }) => id).sort();

describe('laws of claims', () => {
  it('law 11: an insurer that pays x more lowers month 0 of each course that takes it by x, and moves no other', () => {
    fc.assert(
      fc.property(anyClaim, cents(1, 300), (any, x) => {
        // Where gap cover fills a shortfall, what the insurer pays more the gap cover pays less.
        const one: Any = { ...any, pays: 'own', gap: false, supplement: { chance: 0, amount: 0, paid: 1 } };
        const dear = hitBy({ ...one, deductible: one.deductible + x });
        const before = results(hitBy(one));
        const after = results(dear);
        fc.pre(ids(before).join() === ids(after).join());
        const views = viewOf(dear).courses;
        for (const option of before) {
          const paid = (named(views, option.id).statement?.payment ?? 0) > 0;
          const moved = named(after, option.id).cashOnTheDay - option.cashOnTheDay;
          expect([option.id, moved]).toEqual([option.id, paid ? Math.round(100 * x) : 0]);
        }
      }),
      RUNS,
    );
  });

  it('a higher deductible never helps a claim', () => {
    fc.assert(
      fc.property(anyClaim, cents(1, 400), (any, x) => {
        const one: Any = { ...any, pays: 'own' };
        const before = results(hitBy(one));
        for (const option of results(hitBy({ ...one, deductible: one.deductible + x }))) {
          const cheaper = before.find(({ id }) => id === option.id);
          if (cheaper)
            expect(option.netPresentCost.counted).toBeGreaterThanOrEqual(cheaper.netPresentCost.counted - 1);
        }
      }),
      RUNS,
    );
  });

  it('the order of the estimate’s lines decides nothing', () => {
    fc.assert(
      fc.property(anyClaim, (one) => {
        const made = hitBy(one);
        const { estimate } = made.inputs.claim as Claim;
        const turned = hitBy(one, { estimate: { ...estimate, lines: estimate.lines.toReversed() } });
        expect(results(turned).map(({ id, netPresentCost }) => [id, netPresentCost])).toEqual(
          results(made).map(({ id, netPresentCost }) => [id, netPresentCost]),
        );
      }),
      RUNS,
    );
  });

  it('money in is money out, to the cent; without a claim none comes', () => {
    fc.assert(
      fc.property(anyClaim, (one) => {
        const made = hitBy({
          ...one,
          refunds: [],
          rental: null,
          tow: null,
          supplement: { chance: 0, amount: 0, paid: 0 },
        });
        const all = results(made);
        for (const { id, split } of viewOf(made).courses) {
          const paid = 0 - sumOf(named(all, id), 'settlement', 0);
          expect([id, paid]).toEqual([id, split ? split.payment + split.gap : 0]);
          if (split) {
            expect(split.lender + split.owner + split.shop).toBe(split.payment);
            expect(split.lender + split.refund + split.gap + split.stillOwed).toBe(split.owed);
          }
          if (id.includes('no-claim'))
            expect(named(all, id).ledger.some(({ what }) => what.startsWith('dearer'))).toBe(false);
        }
      }),
      RUNS,
    );
  });

  it('nothing is sold twice, and every ledger sums to its total', () => {
    fc.assert(
      fc.property(anyClaim, (one) => {
        for (const option of results(hitBy(one))) {
          const sales = option.ledger.filter(({ category }) => category === 'selling the old one').length;
          const once = /sold-damaged|scrapped|\/later\//.test(option.id) ? 1 : 0;
          expect([option.id, sales]).toEqual([option.id, once]);
          const total = option.ledger.reduce((sum, row) => sum + row.present.counted, 0);
          expect([option.id, total]).toEqual([option.id, option.netPresentCost.counted]);
        }
      }),
      RUNS,
    );
  });
});
