import { type Cents, inUnits, toCents } from '../../quantity/money.ts';
import { remember } from '../../quantity/remember.ts';
import { type Contract, type Line, postMoney } from '../posting.ts';
import { type LoanSchedule, type LoanTerms, loanSchedule, loanScheduleUnrounded } from './amortisation.ts';

/** Whether a contract's cents are kept, as in the ledger, or left unrounded, as a solver needs them. */
export type Rounding = 'to the cent' | 'unrounded';

/** A loan's schedule in currency units, `owed` and payments by month from the day of the advance. */
export interface LoanFlows {
  /** Paid at the end of month m after the advance; index is the month. */
  readonly paid: readonly number[];
  /** Owed after the payment of month m; index is the month. */
  readonly owed: readonly number[];
}

const flowsOf = <N extends number>(schedule: LoanSchedule<N>, units: (n: N) => number): LoanFlows => {
  const paid: number[] = schedule.owed.map(() => 0);
  for (const row of schedule.rows) paid[row.month] = units(row.payment);
  return { paid, owed: schedule.owed.map(units) };
};

/** The flows of a loan of `principal` currency units, rounded as the contract would or not at all. */
export const loanFlows = remember(
  (terms: LoanTerms<number>, rounding: Rounding): LoanFlows =>
    rounding === 'unrounded'
      ? flowsOf(loanScheduleUnrounded(terms), (n) => n)
      : flowsOf<Cents>(loanSchedule({ ...terms, principal: toCents(terms.principal) }), inUnits),
  ({ principal, notePerYear, payments, firstPaymentMonth, delayInterest }, rounding) =>
    `${rounding} ${principal} ${notePerYear} ${payments} ${firstPaymentMonth} ${delayInterest}`,
);

/** What is owed after the payment of month m; nothing once it is repaid. */
export const owedAt = (loan: LoanFlows, month: number): number => loan.owed[month] ?? 0;

/** The payments of a loan advanced in month `start`, up to and including month `to`. */
export const loanPayments =
  (line: Line, loan: LoanFlows, start: number, to: number): Contract =>
  (sink) => {
    for (let m = 1; m < loan.paid.length && start + m <= to; m++) {
      const paid = loan.paid[m] as number;
      if (paid !== 0) postMoney(sink, line, start + m, paid);
    }
  };
