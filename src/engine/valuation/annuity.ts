/**
 * The time value of money: of rate, number of periods, payment, present and future amount, each from the others.
 *
 * Sign and timing. Every amount is a flow with our sign, cost positive and receipt negative, and together they are
 * worth nothing: present + payment · a(n) + future · v^n = 0, a(n) = (1 - v^n)/i, v = 1/(1+i). So a loan of 10,000
 * received is present -10,000 and its payment comes out positive. Spreadsheets write receipts positive; since the
 * equation holds with every sign turned, their PV, FV, PMT, NPER, RATE, IPMT and PPMT agree with these functions
 * argument for argument, only the meaning of the sign differs. Payments fall at period ends, or at their starts
 * with `due: 'start'`, which puts payment · a(n) · (1+i) in the equation.
 */
import { annuityFactor, levelPayment } from '../cashflow/contracts/amortisation.ts';
import type { BalancingRates } from './balancingRates.ts';
import { rateOfReturn } from './rateOfReturn.ts';

/** The whole problem; each function below takes it without what it finds. */
export type Annuity = {
  /** Per period, as a fraction above -1. */
  readonly rate: number;
  /** How many periods; from 1. */
  readonly periods: number;
  /** The equal amount of each period. */
  readonly payment: number;
  /** The amount at the start of the first period. */
  readonly present: number;
  /** The amount at the end of the last period. */
  readonly future: number;
  readonly due: 'start' | 'end';
};

const atStart = (a: Pick<Annuity, 'rate' | 'due'>): number => (a.due === 'start' ? 1 + a.rate : 1);

/** The amount at the start that balances the rest. At 0 %: -(payment · n + future). */
export const presentValue = (a: Omit<Annuity, 'present'>): number =>
  -(a.payment * atStart(a) * annuityFactor(a.rate, a.periods) + a.future * (1 + a.rate) ** -a.periods);

/** The amount at the end that balances the rest. At 0 %: -(payment · n + present). */
export const futureValue = (a: Omit<Annuity, 'future'>): number => {
  const growth = (1 + a.rate) ** a.periods;
  return -(a.present + a.payment * atStart(a) * annuityFactor(a.rate, a.periods)) * growth;
};

/** The equal payment that balances the rest. At 0 %: -(present + future)/n. */
export const paymentFor = (a: Omit<Annuity, 'payment'>): number =>
  -levelPayment(a.present + a.future * (1 + a.rate) ** -a.periods, a.rate, a.periods) / atStart(a);

/** How many periods, not always whole; or none, because the payment never catches up with the rest. */
export type Periods =
  | { readonly status: 'one'; readonly periods: number }
  | { readonly status: 'none'; readonly reason: 'the payment never balances the rest' };

/** How many periods balance the rest. At 0 %: -(present + future)/payment. */
export const periodsFor = (a: Omit<Annuity, 'periods'>): Periods => {
  const perpetuity = (a.payment * atStart(a)) / a.rate;
  const periods =
    a.rate === 0
      ? -(a.present + a.future) / a.payment
      : Math.log((perpetuity - a.future) / (perpetuity + a.present)) / Math.log1p(a.rate);
  return Number.isFinite(periods) && periods >= 0
    ? { status: 'one', periods }
    : { status: 'none', reason: 'the payment never balances the rest' };
};

/** The rate per period that balances the rest: the rate of return of the flows, over a whole number of periods. */
export const rateFor = (a: Omit<Annuity, 'rate'>): BalancingRates => {
  const firstPayment = a.due === 'start' ? 0 : 1;
  return rateOfReturn([
    { month: 0, amount: a.present },
    ...Array.from({ length: a.periods }, (_, k) => ({ month: firstPayment + k, amount: a.payment })),
    { month: a.periods, amount: a.future },
  ]);
};

type Loan = Omit<Annuity, 'payment'>;

/** The interest in payment k (from 1): on what is outstanding since the payment before; nil for one at the start. */
export const interestPart = (loan: Loan, k: number): number => {
  if (loan.due === 'start' && k === 1) return 0;
  // Outstanding is what the payments to come are worth: looking back instead loses all digits at high rates.
  const toCome = presentValue({ ...loan, payment: paymentFor(loan), periods: loan.periods - k + 1 });
  return (-toCome * loan.rate) / atStart(loan);
};

/** The principal in payment k (from 1): the payment less its interest. */
export const principalPart = (loan: Loan, k: number): number => paymentFor(loan) - interestPart(loan, k);

const sumOver = (from: number, to: number, part: (k: number) => number): number =>
  Array.from({ length: to - from + 1 }, (_, k) => part(from + k)).reduce((sum, x) => sum + x, 0);

/** The interest in payments `from` to `to`, both included. */
export const interestBetween = (loan: Loan, from: number, to: number): number =>
  sumOver(from, to, (k) => interestPart(loan, k));

/** The principal in payments `from` to `to`, both included. */
export const principalBetween = (loan: Loan, from: number, to: number): number =>
  sumOver(from, to, (k) => principalPart(loan, k));
