/**
 * The annual percentage rate by the actuarial method: the rate per unit period that makes all payments worth all
 * advances, times the unit periods in a year. A nominal rate.
 * Source: 12 CFR part 1026 (Regulation Z), Appendix J, general equation (b)(8).
 */
import type { CivilDate } from '../quantity/civilDate.ts';
import { balancingRates, type Term } from './balancingRates.ts';
import type { Flow } from './present.ts';
import { unitPeriodOf, unitPeriodsBetween, unitPeriodsPerYear } from './unitPeriod.ts';

/**
 * An amount (positive, whether advanced or paid) after `t` full unit periods and a fraction `f` of one, counted from
 * the first advance; worth amount/((1 + f·i)(1 + i)^t). `count` equal amounts at successive unit periods; 1 if absent.
 */
export type UnitFlow = Term & { readonly count?: number };

/** The APR as a nominal annual fraction (0.0969 is 9.69 %), or why there is none. */
export type Apr =
  | { readonly status: 'one'; readonly apr: number }
  | { readonly status: 'several'; readonly aprs: readonly number[]; readonly nearestZero: number }
  | { readonly status: 'none'; readonly reason: string };

/**
 * The APR of any pattern of advances and payments. Several are possible only when an advance follows a payment.
 * Payments that add up to less than the advances give a rate below 0.
 */
export const annualPercentageRate = (loan: {
  readonly advances: readonly UnitFlow[];
  readonly payments: readonly UnitFlow[];
  readonly unitPeriodsPerYear: number;
}): Apr => {
  const w = loan.unitPeriodsPerYear;
  const found = balancingRates([...terms(loan.advances, -1), ...terms(loan.payments, 1)]);
  if (found.status === 'one') return { status: 'one', apr: w * found.rate };
  if (found.status === 'none') return found;
  return { status: 'several', aprs: found.rates.map((rate) => w * rate), nearestZero: w * found.nearestZero };
};

const terms = (flows: readonly UnitFlow[], sign: 1 | -1): Term[] =>
  flows.flatMap(({ amount, t, f, count = 1 }) =>
    Array.from({ length: count }, (_, k) => ({ amount: sign * amount, t: t + k, f })),
  );

/**
 * The APR of a loan advanced in month 0 and paid in whole months. `amountFinanced` is what the borrower has the use
 * of: the principal less any prepaid finance charge. Payments positive, in currency units. The unit period is the
 * month; for a single payment it is the term, or the year with a fraction of months when that is longer.
 */
export const aprOfLoan = (loan: {
  readonly amountFinanced: number;
  readonly payments: readonly Flow[];
}): Apr => {
  const advances = [{ amount: loan.amountFinanced, t: 0, f: 0 }];
  const [only, ...more] = loan.payments;
  const unitMonths = only && more.length === 0 ? Math.min(only.month, 12) : 1;
  const payments = loan.payments.map(({ month, amount }) => ({
    amount,
    t: Math.floor(month / unitMonths),
    f: (month % unitMonths) / unitMonths,
  }));
  return annualPercentageRate({ advances, payments, unitPeriodsPerYear: 12 / unitMonths });
};

/** An amount on a calendar date; positive, whether advanced or paid. */
export type DatedAmount = { readonly amount: number; readonly date: CivilDate };

/** The APR of a loan given by its dates, advances and payments each in order; the unit period follows from them. */
export const aprOfDates = (loan: {
  readonly advances: readonly DatedAmount[];
  readonly payments: readonly DatedAmount[];
}): Apr => {
  const start = loan.advances[0]?.date;
  if (!start) return { status: 'none', reason: 'nothing is advanced' };
  if (loan.payments.length === 0) return { status: 'none', reason: 'nothing is paid' };
  const dates = (amounts: readonly DatedAmount[]): CivilDate[] => amounts.map(({ date }) => date);
  const unit = unitPeriodOf(dates(loan.advances), dates(loan.payments));
  const placed = (amounts: readonly DatedAmount[]): UnitFlow[] =>
    amounts.map(({ amount, date }) => ({ amount, ...unitPeriodsBetween(start, date, unit) }));
  return annualPercentageRate({
    advances: placed(loan.advances),
    payments: placed(loan.payments),
    unitPeriodsPerYear: unitPeriodsPerYear(unit),
  });
};
