/**
 * How a loan is paid down. The rule stands once, in `amortise`; it is run twice: to the cent in decimal arithmetic,
 * as the contract would, and unrounded in floating point, for a solver that needs a smooth function.
 */
import { Decimal } from '../../quantity/decimal.ts';
import type { Cents } from '../../quantity/money.ts';

/** The longest loan worked out when only its payment is known, in months. */
const LONGEST_TERM = 600;

/** Terms of a loan advanced in month 0. `N`: Cents for the contract, plain currency units for the unrounded twin. */
export type LoanTerms<N extends number = Cents> = {
  /** What is borrowed, or still owed; 0 gives a schedule without rows. */
  readonly principal: N;
  /** The note rate: a nominal annual fraction, compounded monthly; 0 or more. */
  readonly notePerYear: number;
  /** How many monthly payments; a whole number from 1. */
  readonly payments: number;
  /** The month of the first payment: 1 as a rule, more for a delayed start. */
  readonly firstPaymentMonth: number;
  /**
   * Whether the months of delay bear interest. `charged`: simple interest of those months is added to the interest
   * of the first payment, and the level payment is such that all payments stay equal, that is, it repays the
   * principal and that interest, which falls due with the first payment. `free`: interest starts a month before it.
   */
  readonly delayInterest: 'charged' | 'free';
};

/** One payment, at the end of `month`: payment = interest + principal; `balance` is owed after it. */
export type LoanRow<N extends number = Cents> = {
  readonly month: number;
  readonly payment: N;
  readonly interest: N;
  readonly principal: N;
  readonly balance: N;
};

export type LoanSchedule<N extends number = Cents> = {
  /** The level payment; the last one may differ, for it is what is left. */
  readonly payment: N;
  readonly rows: readonly LoanRow<N>[];
  /** What is owed at the end of month 0, 1, 2 ..., after that month's payment, interest of a delay included. */
  readonly owed: readonly N[];
};

/** (1 - (1+i)^-n)/i, what n payments of 1 at period ends are worth today; n at 0 %. Accurate for tiny rates. */
export const annuityFactor = (ratePerPeriod: number, n: number): number =>
  ratePerPeriod === 0 ? n : -Math.expm1(-n * Math.log1p(ratePerPeriod)) / ratePerPeriod;

/** The equal payment at each period's end that repays `principal` in `n` periods, unrounded; P/n at 0 %. */
export const levelPayment = (principal: number, ratePerPeriod: number, n: number): number =>
  principal / annuityFactor(ratePerPeriod, n);

/** The two figures a contract rounds. `months` is how many months of simple interest the first payment carries. */
type Arithmetic = {
  readonly level: (principal: number, n: number, months: number) => number;
  readonly interest: (balance: number, months: number) => number;
};

/** Whole cents, rounded half up. */
const toTheCent = (notePerYear: number): Arithmetic => {
  const i = new Decimal(notePerYear).div(12);
  const round = (cents: Decimal): number => cents.toDecimalPlaces(0).toNumber();
  return {
    level: (principal, n, months) => {
      if (i.isZero()) return round(new Decimal(principal).div(n));
      const shrunk = i.plus(1).pow(-n);
      const dueAtFirst = i.times(months).plus(1).times(principal);
      return round(dueAtFirst.times(i).div(new Decimal(1).minus(shrunk)).div(i.plus(1)));
    },
    interest: (balance, months) => round(i.times(months).times(balance)),
  };
};

const unrounded = (notePerYear: number): Arithmetic => {
  const i = notePerYear / 12;
  return {
    level: (principal, n, months) => levelPayment((principal * (1 + months * i)) / (1 + i), i, n),
    interest: (balance, months) => balance * i * months,
  };
};

/** Pays `payment` each month, and in the last of `payments` months whatever is left; ends early at a nil balance. */
const amortise = <N extends number>(
  { principal, payments, firstPaymentMonth, delayInterest }: Omit<LoanTerms<N>, 'notePerYear'>,
  arithmetic: Arithmetic,
  givenPayment?: number,
): LoanSchedule<N> => {
  if (
    !(
      Number.isInteger(payments) &&
      payments >= 1 &&
      Number.isInteger(firstPaymentMonth) &&
      firstPaymentMonth >= 1
    )
  ) {
    throw new RangeError('a loan has a whole number of payments, the first in month 1 or later');
  }
  const monthsInFirst = delayInterest === 'charged' ? firstPaymentMonth : 1;
  const payment = givenPayment ?? arithmetic.level(principal, payments, monthsInFirst);
  const rows: LoanRow<N>[] = [];
  const owed: number[] = [principal];
  for (let month = 1; month < firstPaymentMonth; month++) {
    owed.push(principal + (delayInterest === 'charged' ? arithmetic.interest(principal, month) : 0));
  }
  let balance: number = principal;
  for (let k = 0; k < payments && balance > 0; k++) {
    const interest = arithmetic.interest(balance, k === 0 ? monthsInFirst : 1);
    const settled = k === payments - 1 || payment >= balance + interest;
    const repaid = settled ? balance : payment - interest;
    balance -= repaid;
    owed.push(balance);
    rows.push({
      month: firstPaymentMonth + k,
      payment: (repaid + interest) as N,
      interest: interest as N,
      principal: repaid as N,
      balance: balance as N,
    });
  }
  return { payment: payment as N, rows, owed: owed as N[] };
};

/**
 * The schedule a lender would print: level payment and each month's interest rounded half up to the cent, the last
 * payment what is left, the balance at exactly 0 after it. Amounts in cents, all positive. A present loan is the
 * same with `principal` what is owed now and `payments` the months left.
 * Throws RangeError when payments or first month are not whole numbers from 1.
 */
export const loanSchedule = (terms: LoanTerms): LoanSchedule => amortise(terms, toTheCent(terms.notePerYear));

/**
 * The same schedule without rounding, in currency units: smooth in every term. The level payment is within half a
 * cent of the exact one; what is owed differs by at most a cent a month, grown at the note rate.
 */
export const loanScheduleUnrounded = (terms: LoanTerms<number>): LoanSchedule<number> =>
  amortise(terms, unrounded(terms.notePerYear));

/** A loan already running, known by what is owed, its note rate and its monthly payment; the months left follow. */
export type RunningLoan<N extends number = Cents> = {
  readonly owed: N;
  readonly notePerYear: number;
  readonly payment: N;
};

/** The schedule, or why there is none: the payment does not cover the interest, or takes more than 600 months. */
export type PayDown<N extends number = Cents> =
  | { readonly status: 'repaid'; readonly schedule: LoanSchedule<N> }
  | { readonly status: 'never'; readonly reason: 'interest not covered' | 'longer than 600 months' };

const payDownWith = <N extends number>(loan: RunningLoan<N>, arithmetic: Arithmetic): PayDown<N> => {
  if (loan.owed > 0 && loan.payment <= arithmetic.interest(loan.owed, 1)) {
    return { status: 'never', reason: 'interest not covered' };
  }
  const terms = {
    principal: loan.owed,
    payments: LONGEST_TERM,
    firstPaymentMonth: 1,
    delayInterest: 'free',
  } as const;
  const schedule = amortise<N>(terms, arithmetic, loan.payment);
  const last = schedule.rows.at(-1);
  return last && last.payment > loan.payment
    ? { status: 'never', reason: 'longer than 600 months' }
    : { status: 'repaid', schedule };
};

/** Pays a running loan down at its given payment, to the cent; the first payment falls in month 1. */
export const payDown = (loan: RunningLoan): PayDown => payDownWith(loan, toTheCent(loan.notePerYear));

/** The same without rounding, in currency units. */
export const payDownUnrounded = (loan: RunningLoan<number>): PayDown<number> =>
  payDownWith(loan, unrounded(loan.notePerYear));

/**
 * What settles the loan at the end of `month`, after that month's payment, by the actuarial method: the balance of
 * the schedule, no charge for interest not yet earned. 0 once it is repaid.
 */
export const payoffAt = <N extends number>(schedule: LoanSchedule<N>, month: number): N =>
  schedule.owed[month] ?? (0 as N);
