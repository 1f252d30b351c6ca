import { type Cents, inUnits, toCents } from '../../quantity/money.ts';
import { remember } from '../../quantity/remember.ts';
import { FIXED } from '../levels.ts';
import { type Contract, type Line, postMoneySeries } from '../posting.ts';
import { type LoanSchedule, type LoanTerms, loanSchedule, loanScheduleUnrounded } from './amortisation.ts';

/** Whether a contract's cents are kept, as in the ledger, or left unrounded, as a solver needs them. */
export type Rounding = 'to the cent' | 'unrounded';

/** A loan's schedule in currency units, `owed` and payments by month from the day of the advance. */
export interface LoanFlows {
  /** Payments by month after the advance, equal ones in a row as one: the level payment, then what is left. */
  readonly payments: readonly { readonly from: number; readonly to: number; readonly amount: number }[];
  /** Owed after the payment of month m; index is the month. */
  readonly owed: readonly number[];
}

/** Equal to a hair's breadth: unrounded payments differ in their last digit. */
const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

const flowsOf = <N extends number>(schedule: LoanSchedule<N>, units: (n: N) => number): LoanFlows => {
  const payments: { from: number; to: number; amount: number }[] = [];
  for (const row of schedule.rows) {
    const latest = payments[payments.length - 1];
    if (latest && same(latest.amount, units(row.payment))) latest.to = row.month;
    else payments.push({ from: row.month, to: row.month, amount: units(row.payment) });
  }
  return { payments, owed: schedule.owed.map(units) };
};

/** The flows of a loan of `principal` currency units, rounded as the contract would or not at all. */
export const loanFlows = remember(
  (terms: LoanTerms<number>, rounding: Rounding): LoanFlows =>
    rounding === 'unrounded'
      ? flowsOf(loanScheduleUnrounded(terms), (n) => n)
      : flowsOf<Cents>(loanSchedule({ ...terms, principal: toCents(terms.principal) }), inUnits),
  ([a, roundingA], [b, roundingB]) =>
    roundingA === roundingB &&
    a.principal === b.principal &&
    a.notePerYear === b.notePerYear &&
    a.payments === b.payments &&
    a.firstPaymentMonth === b.firstPaymentMonth &&
    a.delayInterest === b.delayInterest,
);

/** What is owed after the payment of month m; nothing once it is repaid. */
export const owedAt = (loan: LoanFlows, month: number): number => loan.owed[month] ?? 0;

/** The payments of a loan advanced in month `start`, from month `first` up to and including month `to`. */
export const loanPayments =
  (line: Line, loan: LoanFlows, start: number, to: number, first = start): Contract =>
  (sink) => {
    for (const { from, to: until, amount } of loan.payments)
      postMoneySeries(sink, line, Math.max(first, start + from), Math.min(start + until, to), FIXED, amount);
  };
