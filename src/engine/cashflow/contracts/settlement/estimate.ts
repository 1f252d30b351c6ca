/** The insurer's estimate: its lines, what they come to, what they do not pay, and what a shop asks beyond. */
import type { Cents } from '../../../quantity/money.ts';
import type { LeftOut } from '../../../scenario/places/placeRule.ts';
import { type Arithmetic, atLeastNil, less, noSign, plus, sum, sumOf } from './arithmetic.ts';

/** What a line is for. `supplement`: damage found later that the insurer has agreed to. */
export type LineKind = 'parts' | 'labour' | 'supplement' | 'other' | Exclude<LeftOut, 'sales tax'>;

/** One line of an estimate: an amount, or hours at a rate. Before tax; nothing negative. */
export type EstimateLine<N extends number = Cents> = {
  readonly what: string;
  readonly kind: LineKind;
  /** Of the line, what is not paid because the new part is better than the worn one: 0 as a rule. */
  readonly betterment: N;
  /** Whether sales tax is due on it: on parts nearly everywhere, on labour in some places. */
  readonly taxed: boolean;
} & (
  | { readonly amount: N }
  /** Whole hours or parts of them, at the insurer's rate an hour. */
  | { readonly hours: number; readonly ratePerHour: N }
);

export interface Estimate<N extends number = Cents> {
  readonly lines: readonly EstimateLine<N>[];
  /** Sales tax as a fraction of the taxed lines. */
  readonly taxRate: number;
  /** Whether tax is paid only once the work is done and the bill shown: then not in money taken instead. */
  readonly taxOnlyWhenIncurred: boolean;
}

/** What an estimate comes to. All positive: `total` = the lines + `tax`; betterment is still within it. */
export interface EstimateTotals<N extends number = Cents> {
  /** Each line's amount, in the order of the estimate. */
  readonly amounts: readonly N[];
  readonly beforeTax: N;
  readonly tax: N;
  readonly total: N;
  readonly betterment: N;
}

const amountOf = <N extends number>(money: Arithmetic<N>, line: EstimateLine<N>): N =>
  'amount' in line ? line.amount : money.times(line.ratePerHour, line.hours);

const taxOn = <N extends number>(
  money: Arithmetic<N>,
  { lines, taxRate }: Estimate<N>,
  counts: (line: EstimateLine<N>) => boolean,
): N =>
  money.times(
    sumOf(lines, (line) => (line.taxed && counts(line) ? amountOf(money, line) : (0 as N))),
    taxRate,
  );

/**
 * Adds an estimate up as a body shop's printout does: each line rounded half up to the cent, tax once on the sum of the
 * taxed lines. Tax that is paid only when incurred is left at 0 unless `workDone`. No lines: all 0.
 * Throws RangeError for a negative amount, rate, or betterment, or betterment above its line.
 * Source: common practice, no source; tax only when incurred: many policies, no source.
 */
export const estimateTotals = <N extends number>(
  money: Arithmetic<N>,
  estimate: Estimate<N>,
  workDone: boolean,
): EstimateTotals<N> => {
  const { lines, taxRate, taxOnlyWhenIncurred } = estimate;
  const amounts: N[] = [];
  for (const line of lines) {
    const amount = amountOf(money, line);
    amounts.push(amount);
    // The names are only made where one is needed: an estimate is added up in every future.
    if (!(amount >= 0 && line.betterment >= 0 && line.betterment <= amount))
      noSign({
        [line.what]: amount,
        [`betterment of ${line.what}`]: line.betterment,
        [`${line.what} less its betterment`]: amount - line.betterment,
      });
  }
  noSign({ 'the tax rate': taxRate });
  const beforeTax = sum(amounts);
  const tax = taxOnlyWhenIncurred && !workDone ? (0 as N) : taxOn(money, estimate, () => true);
  const betterment = sumOf(lines, (line) => line.betterment);
  return { amounts, beforeTax, tax, total: plus(beforeTax, tax), betterment };
};

/**
 * The repair cost that a place holds against the value: the estimate with its tax as if incurred, less the kinds the
 * place leaves out (and their tax; all tax where sales tax itself is left out). Betterment is not taken off: it is
 * part of what the repair costs.
 * Source: as the place's rule; for instance NRS 487.790 (paint, electronics, towing), Tex. Transp. 501.091(15).
 */
export const testedRepairCost = <N extends number>(
  money: Arithmetic<N>,
  estimate: Estimate<N>,
  leftOut: readonly LeftOut[],
): N => {
  const out: ReadonlySet<string> = new Set(leftOut);
  const counts = (line: EstimateLine<N>): boolean => !out.has(line.kind);
  const cost = sumOf(estimate.lines, (line) => (counts(line) ? amountOf(money, line) : (0 as N)));
  return out.has('sales tax') ? cost : plus(cost, taxOn(money, estimate, counts));
};

/**
 * What the shop asks for its hours beyond the insurer's rate: the owner's to pay, or to argue about before the work
 * begins. 0 where the shop is no dearer. Each line rounded half up. Source: common practice, no source.
 */
export const labourRateGap = <N extends number>(
  money: Arithmetic<N>,
  { lines }: Estimate<N>,
  shopRatePerHour: N,
): N =>
  atLeastNil(
    sumOf(lines, (line) =>
      'amount' in line
        ? (0 as N)
        : less(money.times(shopRatePerHour, line.hours), money.times(line.ratePerHour, line.hours)),
    ),
  );
