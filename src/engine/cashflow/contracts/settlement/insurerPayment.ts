/**
 * What an insurer pays, line by line, as one would send it to an adjuster:
 * max(0, min(covered loss, value with tax as the rule has it) - betterment - deductible - salvage if kept).
 * Lines are signed from the payment's side: what adds to it is positive. Nothing that is given bears a sign.
 */
import type { Cents } from '../../../quantity/money.ts';
import { remember } from '../../../quantity/remember.ts';
import type { PlaceRule, TaxOrder } from '../../../scenario/places/placeRule.ts';
import { type Arithmetic, atLeastNil, less, lesser, noSign, plus, turned } from './arithmetic.ts';
import type { EstimateTotals } from './estimate.ts';

/** What a line of the offer is; the report has the words. */
export type StatementItem =
  | 'repair'
  | 'tax on the repair'
  | 'value'
  | 'damage from before'
  | 'tax on the value'
  | 'fees of the papers'
  | 'beyond the value'
  | 'betterment'
  | 'deductible'
  | 'salvage kept'
  | 'not below nil'
  | 'damage'
  | 'lost market value'
  | 'loss of use'
  | 'tow and storage'
  | 'own share of the fault'
  | 'beyond the limit';

export type StatementLine<N extends number = Cents> = { readonly item: StatementItem; readonly amount: N };

/** `payment` is the exact sum of the lines, and never below 0. Lines of nothing are left out. */
export interface Statement<N extends number = Cents> {
  readonly lines: readonly StatementLine<N>[];
  readonly payment: N;
}

/** Closes a list of lines into a statement: what would fall below nil is written off in a line of its own. */
export const statementOf = <N extends number>(
  lines: readonly (readonly [StatementItem, N])[],
): Statement<N> => {
  // One list and one pass: a statement is made in every drawn future.
  const kept: StatementLine<N>[] = [];
  let balance = 0 as N;
  for (const [item, amount] of lines) {
    balance = (balance + amount) as N;
    if (amount !== 0) kept.push({ item, amount });
  }
  const payment = atLeastNil(balance);
  if (payment !== balance) kept.push({ item: 'not below nil', amount: less(payment, balance) });
  return { lines: kept, payment };
};

/** The vehicle and the policy. */
export interface LossTerms<N extends number = Cents> {
  /** Actual cash value before the damage, without tax. */
  readonly value: N;
  /** Damage it had before, not repaired: comes off the value. */
  readonly damageFromBefore: N;
  /** Sales tax on a comparable vehicle, as a fraction. */
  readonly taxRate: number;
  /** Fees of the papers on this course: title of a comparable, or transfer to salvage. */
  readonly fees: N;
  /** Whether the tax and fees of a replacement are paid only once one is bought. */
  readonly taxOnlyWhenIncurred: boolean;
  /** 0 where the other driver's insurer pays. */
  readonly deductible: N;
}

/** One way to read a place's rule where it is not known: how tax is taken, and whether fees are paid. */
export interface RuleReading {
  readonly tax: TaxOrder;
  readonly fees: 'paid' | 'not paid';
}

const checked = <N extends number>({
  value,
  damageFromBefore,
  taxRate,
  fees,
  deductible,
}: LossTerms<N>): void =>
  noSign({
    'the value': value,
    'the damage from before': damageFromBefore,
    'the tax rate': taxRate,
    'the fees': fees,
    'the deductible': deductible,
  });

/** Tax on what the rule taxes: the whole value, the value less what is kept of it, or nothing. */
const taxOnValue = <N extends number>(
  money: Arithmetic<N>,
  value: N,
  taxRate: number,
  kept: N,
  order: TaxOrder,
): N => {
  if (order === 'not paid') return 0 as N;
  return money.times(order === 'before salvage' ? value : atLeastNil(less(value, kept)), taxRate);
};

/**
 * A total loss. `salvage`: what is taken off for a wreck the owner keeps; null where it is surrendered, so that nothing
 * comes off and tax falls on the whole value in either order. `replaced`: a replacement is bought, so that tax paid
 * only when incurred is paid. Tax is rounded half up once. Salvage may come to more than the rest: the payment is 0.
 * Sources: 11 NYCRR 216.6(b), General Counsel's opinion of 30 April 2002 (tax before salvage: 10,000 + 800 - 2,000 =
 * 8,800, and not 8,640); 10 CCR 2695.8(b)(1)(A) (tax after salvage, and fees of the salvage papers: 8,165 with a
 * deductible of 500 and fees of 25).
 */
export const totalLossPayment = <N extends number>(
  money: Arithmetic<N>,
  terms: LossTerms<N>,
  { salvage, replaced }: { readonly salvage: N | null; readonly replaced: boolean },
  reading: RuleReading,
): Statement<N> => {
  checked(terms);
  const kept = salvage ?? (0 as N);
  noSign({ 'the salvage': kept });
  const incurred = replaced || !terms.taxOnlyWhenIncurred;
  const before = lesser(terms.damageFromBefore, terms.value);
  const value = less(terms.value, before);
  const tax = incurred ? taxOnValue(money, value, terms.taxRate, kept, reading.tax) : (0 as N);
  const fees = incurred && reading.fees === 'paid' ? terms.fees : (0 as N);
  return statementOf([
    ['value', terms.value],
    ['damage from before', turned(before)],
    ['tax on the value', tax],
    ['fees of the papers', fees],
    ['deductible', turned(terms.deductible)],
    ['salvage kept', turned(kept)],
  ]);
};

/**
 * A repair, or the money for one: at most the value with tax as the rule has it, less betterment and deductible. What
 * an estimate asks beyond the value comes off before betterment does. The tax of the value enters that limit unless it
 * is paid only when incurred: nothing is bought here.
 * Source: common form of collision cover (repair, replacement or actual cash value, whichever is least), no source.
 */
export const repairPayment = <N extends number>(
  money: Arithmetic<N>,
  terms: LossTerms<N>,
  estimate: EstimateTotals<N>,
  reading: RuleReading,
): Statement<N> => {
  checked(terms);
  const value = atLeastNil(less(terms.value, terms.damageFromBefore));
  const order = terms.taxOnlyWhenIncurred ? 'not paid' : reading.tax;
  const limit = plus(value, taxOnValue(money, value, terms.taxRate, 0 as N, order));
  return statementOf([
    ['repair', estimate.beforeTax],
    ['tax on the repair', estimate.tax],
    ['beyond the value', turned(atLeastNil(less(estimate.total, limit)))],
    ['betterment', turned(estimate.betterment)],
    ['deductible', turned(terms.deductible)],
  ]);
};

/** What a place's rule leaves open about its settlements, as every way to read it; one way where all is known. */
const readingsOf = remember(
  (settlement: PlaceRule['settlement']): readonly RuleReading[] => {
    const orders: readonly TaxOrder[] =
      settlement === null || settlement.tax === 'not known'
        ? ['not paid', 'after salvage', 'before salvage']
        : [settlement.tax];
    const fees: readonly RuleReading['fees'][] =
      settlement?.fees === 'paid' ? ['paid'] : ['not paid', 'paid'];
    return orders.flatMap((tax) => fees.map((f) => ({ tax, fees: f })));
  },
  ([a], [b]) => a === b,
  4,
);

/** One statement where every reading comes to the same, or each that differs, the least first. */
export type PaymentUnderRule<N extends number = Cents> =
  | { readonly status: 'known'; readonly statement: Statement<N> }
  | {
      readonly status: 'depends on the rule';
      readonly readings: readonly { readonly reading: RuleReading; readonly statement: Statement<N> }[];
    };

/** Puts a payment to every reading of a place's rule: an unknown rule that changes nothing is no obstacle. */
export const underRule = <N extends number>(
  settlement: PlaceRule['settlement'],
  pay: (reading: RuleReading) => Statement<N>,
): PaymentUnderRule<N> => {
  const readings: { reading: RuleReading; statement: Statement<N> }[] = [];
  for (const reading of readingsOf(settlement)) {
    const statement = pay(reading);
    if (readings.every((other) => other.statement.payment !== statement.payment))
      readings.push({ reading, statement });
  }
  const [first] = readings;
  if (first && readings.length === 1) return { status: 'known', statement: first.statement };
  return {
    status: 'depends on the rule',
    readings: readings.sort((a, b) => a.statement.payment - b.statement.payment),
  };
};
