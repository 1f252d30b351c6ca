/** What must hold for any claim: money in is money out to the cent, and what raises a payment lowers a cost as much. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sum, TO_THE_CENT, UNROUNDED } from '../../src/engine/cashflow/contracts/settlement/arithmetic.ts';
import {
  type Estimate,
  type EstimateLine,
  estimateTotals,
  testedRepairCost,
} from '../../src/engine/cashflow/contracts/settlement/estimate.ts';
import {
  type LossTerms,
  type RuleReading,
  repairPayment,
  type Statement,
  totalLossPayment,
} from '../../src/engine/cashflow/contracts/settlement/insurerPayment.ts';
import {
  firstDay,
  type GapCover,
  splitRepair,
  splitTotalLoss,
} from '../../src/engine/cashflow/contracts/settlement/lossPayee.ts';
import { claimOnOther, shareCollected } from '../../src/engine/cashflow/contracts/settlement/otherInsurer.ts';
import { totalLossFrom, totalLossUnder } from '../../src/engine/cashflow/contracts/settlement/totalLoss.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import { PLACES } from '../../src/engine/scenario/places/places.ts';

const upTo = (most: number): fc.Arbitrary<Cents> => fc.integer({ min: 0, max: most }).map((c) => c as Cents);
const rate = fc.integer({ min: 0, max: 1500 }).map((n) => n / 10_000);

const terms: fc.Arbitrary<LossTerms> = fc.record({
  value: upTo(2_000_000),
  damageFromBefore: upTo(300_000),
  taxRate: rate,
  fees: upTo(50_000),
  taxOnlyWhenIncurred: fc.boolean(),
  deductible: upTo(200_000),
});
const reading: fc.Arbitrary<RuleReading> = fc.record({
  tax: fc.constantFrom('before salvage', 'after salvage', 'not paid'),
  fees: fc.constantFrom('paid', 'not paid'),
});
const line: fc.Arbitrary<EstimateLine> = fc
  .record({
    kind: fc.constantFrom('parts', 'labour', 'paint', 'towing', 'supplement', 'other'),
    amount: upTo(200_000),
    hours: fc.integer({ min: 0, max: 200 }).map((n) => n / 10),
    ratePerHour: upTo(20_000),
    taxed: fc.boolean(),
    worn: fc.boolean(),
  })
  .map(({ kind, amount, hours, ratePerHour, taxed, worn }) =>
    kind === 'labour'
      ? { what: kind, kind, betterment: 0 as Cents, taxed, hours, ratePerHour }
      : { what: kind, kind, betterment: (worn ? Math.floor(amount / 3) : 0) as Cents, taxed, amount },
  );
const estimate: fc.Arbitrary<Estimate> = fc.record({
  lines: fc.array(line, { maxLength: 6 }),
  taxRate: rate,
  taxOnlyWhenIncurred: fc.boolean(),
});
const loss = fc.record({
  salvage: fc.option(upTo(500_000)),
  replaced: fc.boolean(),
});
const gap: fc.Arbitrary<GapCover | null> = fc.option(
  fc.record({ limit: fc.option(upTo(500_000)), excluded: upTo(100_000) }),
);

/** Any statement there is: of a repair, a total loss, or the other driver's insurer. */
const statement: fc.Arbitrary<Statement> = fc
  .record({ terms, reading, estimate, loss, kind: fc.nat(2), share: rate, limit: fc.option(upTo(1_000_000)) })
  .map((given) => {
    const totals = estimateTotals(TO_THE_CENT, given.estimate, given.loss.replaced);
    const repair = repairPayment(TO_THE_CENT, given.terms, totals, given.reading);
    if (given.kind === 0) return repair;
    if (given.kind === 1) return totalLossPayment(TO_THE_CENT, given.terms, given.loss, given.reading);
    return claimOnOther(TO_THE_CENT, {
      damage: repair.payment,
      lostMarketValue: given.terms.fees,
      lossOfUse: given.terms.deductible,
      towAndStorage: given.terms.fees,
      share: 1 - given.share,
      limit: given.limit,
    });
  });

const owes = (lines: readonly { readonly amount: number }[]): number => sum(lines.map((l) => l.amount));
const receipts = (lines: ReturnType<typeof firstDay>): number =>
  owes(lines.filter(({ amount }) => amount < 0));

describe('money in is money out, to the cent', () => {
  it('a statement is the sum of its lines, in whole cents, and never below nil', () => {
    fc.assert(
      fc.property(statement, ({ lines, payment }) => {
        expect(owes(lines)).toBe(payment);
        expect(payment).toBeGreaterThanOrEqual(0);
        expect(lines.every(({ amount }) => Number.isInteger(amount) && amount !== 0)).toBe(true);
      }),
    );
  });

  it('an estimate is its lines and its tax, and what a place leaves out never raises it', () => {
    fc.assert(
      fc.property(estimate, (given) => {
        const totals = estimateTotals(TO_THE_CENT, given, true);
        expect(totals.total).toBe(sum([...totals.amounts, totals.tax]));
        expect(sum(totals.amounts)).toBe(totals.beforeTax);
        expect(testedRepairCost(TO_THE_CENT, given, [])).toBe(totals.total);
        const part = testedRepairCost(TO_THE_CENT, given, ['paint', 'towing']);
        expect(part).toBeLessThanOrEqual(totals.total);
        expect(testedRepairCost(TO_THE_CENT, given, ['paint', 'towing', 'sales tax'])).toBeLessThanOrEqual(
          part,
        );
      }),
    );
  });

  it('lender, owner and shop have what the insurer paid; lender, gap and shortfall are what was owed', () => {
    const cheque = fc.constantFrom('released to the owner', 'only for the repair', 'put to the loan');
    fc.assert(
      fc.property(statement, upTo(2_000_000), gap, cheque, ({ payment }, owed, cover, how) => {
        for (const split of [splitTotalLoss(payment, owed, cover), splitRepair(payment, owed, how)]) {
          expect(split.lender + split.owner + split.shop).toBe(payment);
          expect(split.lender + split.gap + split.stillOwed).toBe(owed);
          const parts = [split.lender, split.owner, split.shop, split.gap, split.stillOwed];
          expect(Math.min(...parts)).toBeGreaterThanOrEqual(0);
          expect(owes(firstDay(split, true))).toBe(owed - payment - split.gap);
        }
      }),
    );
  });

  it('what is collected is shared out whole, up to what was lost', () => {
    const rules = fc.constantFrom('in proportion' as const, 'owner first' as const);
    fc.assert(
      fc.property(
        upTo(900_000),
        upTo(900_000),
        upTo(200_000),
        rules,
        (collected, insurerPaid, deductible, by) => {
          const { owner, insurer } = shareCollected(TO_THE_CENT, { collected, insurerPaid, deductible }, by);
          expect(owner + insurer).toBe(Math.min(collected, insurerPaid + deductible));
          expect(owner).toBeLessThanOrEqual(deductible);
          expect(insurer).toBeLessThanOrEqual(insurerPaid);
        },
      ),
    );
  });
});

describe('what a change in the claim does', () => {
  it('a payment higher by x is received in full, owner and lender together, and the first day costs x less', () => {
    fc.assert(
      fc.property(upTo(2_000_000), upTo(300_000), upTo(2_000_000), (payment, more, owed) => {
        const day = (paid: number) => firstDay(splitTotalLoss(paid as Cents, owed, null), true);
        expect(receipts(day(payment)) - receipts(day(payment + more))).toBe(more);
        expect(owes(day(payment)) - owes(day(payment + more))).toBe(more);
      }),
    );
  });

  it('an offer above the deductible, higher by x in value and untaxed, pays x more', () => {
    fc.assert(
      fc.property(terms, loss, upTo(300_000), (given, { salvage, replaced }, more) => {
        const off = given.damageFromBefore + given.deductible + (salvage ?? 0);
        const of = (value: number) =>
          totalLossPayment(
            TO_THE_CENT,
            { ...given, value: value as Cents },
            { salvage, replaced },
            {
              tax: 'not paid',
              fees: 'not paid',
            },
          ).payment;
        expect(of(off + given.value + more) - of(off + given.value)).toBe(more);
      }),
    );
  });

  it('with gap cover that pays the whole shortfall a higher offer leaves the first day as it is', () => {
    const whole: GapCover = { limit: null, excluded: 0 as Cents };
    const at = (payment: number) =>
      owes(firstDay(splitTotalLoss(payment as Cents, 1_500_000 as Cents, whole), true));
    expect([at(1_000_000), at(1_200_000), at(1_600_000)]).toEqual([0, 0, -100_000]);
  });

  it('a higher deductible, or a dearer wreck kept, never helps a claim', () => {
    fc.assert(
      fc.property(terms, reading, estimate, loss, upTo(200_000), (given, as, costs, how, more) => {
        const higher = { ...given, deductible: (given.deductible + more) as Cents };
        const totals = estimateTotals(TO_THE_CENT, costs, how.replaced);
        const repair = (t: LossTerms) => repairPayment(TO_THE_CENT, t, totals, as).payment;
        const total = (t: LossTerms, s: Cents | null) =>
          totalLossPayment(TO_THE_CENT, t, { ...how, salvage: s }, as).payment;
        expect(repair(higher)).toBeLessThanOrEqual(repair(given));
        expect(total(higher, how.salvage)).toBeLessThanOrEqual(total(given, how.salvage));
        const dearer = ((how.salvage ?? 0) + more) as Cents;
        expect(total(given, dearer)).toBeLessThanOrEqual(total(given, how.salvage));
      }),
    );
  });

  it('tax before salvage never pays less than after, and the same when the wreck is surrendered', () => {
    fc.assert(
      fc.property(terms, loss, (given, how) => {
        const by = (tax: RuleReading['tax'], salvage: Cents | null) =>
          totalLossPayment(TO_THE_CENT, given, { ...how, salvage }, { tax, fees: 'paid' }).payment;
        expect(by('before salvage', how.salvage)).toBeGreaterThanOrEqual(by('after salvage', how.salvage));
        expect(by('before salvage', null)).toBe(by('after salvage', null));
      }),
    );
  });
});

describe('two routes', () => {
  it('unrounded, a payment is within a cent a rounded line of the statement', () => {
    fc.assert(
      fc.property(terms, reading, estimate, loss, (given, as, costs, how) => {
        const units = (c: Cents) => c / 100;
        const plain: LossTerms<number> = {
          ...given,
          value: units(given.value),
          damageFromBefore: units(given.damageFromBefore),
          fees: units(given.fees),
          deductible: units(given.deductible),
        };
        const lines = costs.lines.map((l): EstimateLine<number> => {
          const same = { what: l.what, kind: l.kind, taxed: l.taxed, betterment: units(l.betterment) };
          return 'amount' in l
            ? { ...same, amount: units(l.amount) }
            : { ...same, hours: l.hours, ratePerHour: units(l.ratePerHour) };
        });
        const salvage = how.salvage === null ? null : units(how.salvage);
        const exact = [
          repairPayment(TO_THE_CENT, given, estimateTotals(TO_THE_CENT, costs, how.replaced), as).payment,
          totalLossPayment(TO_THE_CENT, given, how, as).payment,
        ];
        const totals = estimateTotals(UNROUNDED, { ...costs, lines }, how.replaced);
        const smooth = [
          repairPayment(UNROUNDED, plain, totals, as).payment,
          totalLossPayment(UNROUNDED, plain, { ...how, salvage }, as).payment,
        ];
        exact.forEach((cents, k) => {
          expect(Math.abs(cents / 100 - (smooth[k] ?? Number.NaN))).toBeLessThanOrEqual(
            0.005 * (lines.length + 2) + 1e-6,
          );
        });
      }),
    );
  });

  it('the cent from which a repair is a total loss is the first that the test calls one', () => {
    const place = fc.constantFrom(...PLACES).map(({ totalLoss }) => ({
      ...totalLoss,
      reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
    }));
    fc.assert(
      fc.property(place, upTo(2_000_000), upTo(300_000), (rule, value, salvage) => {
        const from = totalLossFrom(rule.test, value, salvage);
        const at = (repair: number) =>
          totalLossUnder(rule, { repair: repair as Cents, value, salvage, modelYears: 3, insured: true })
            .status;
        if (from === null) {
          expect(at(0)).toBe('undecided');
          return;
        }
        if (salvage > value && rule.test.kind === 'formula') return;
        expect(at(from)).toBe('total loss');
        if (from > 0) expect(at(from - 1)).not.toBe('total loss');
      }),
    );
  });
});
