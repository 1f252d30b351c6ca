/** Loans and leases for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */
import * as amortisation from '../engine/cashflow/contracts/amortisation.ts';
import * as leases from '../engine/cashflow/contracts/lease.ts';
import type { Cents } from '../engine/quantity/money.ts';
import { guarded } from './guarded.ts';
import { growth } from './money.ts';
import { all, choice, holds, list, number, orNull, row, terms, type Want, whole } from './wants.ts';

export type { LoanRow, LoanSchedule, LoanTerms } from '../engine/cashflow/contracts/amortisation.ts';
export type { LeaseTerms } from '../engine/cashflow/contracts/lease.ts';

/** Nobody lends for longer: a hundred years of months. */
const LONGEST = 1200;

/** Whole cents that somebody owes. */
const owed: Want = number({ whole: true, from: 0, to: 9e15 });

/**
 * The equal payment at each period's end that repays `principal` in `n` periods, unrounded; P/n at 0 %. Principal from
 * 0, the rate per period a fraction above -1, n whole from 1; else TypeError or RangeError.
 */
export const loanPayment = guarded(
  'loanPayment',
  { principal: number({ from: 0 }), ratePerPeriod: growth, n: whole(1) },
  amortisation.levelPayment,
);

/**
 * The schedule a lender would print: level payment and each month's interest rounded half up to the cent, the last
 * payment what is left, the balance at exactly 0 after it. Amounts in cents, all positive. There are no other terms than
 * these: a balloon, say, is a TypeError. RangeError for a negative principal or note rate, a part of a cent, payments or
 * a first month that are not whole numbers from 1 to 1,200, and a misspelt `delayInterest`.
 */
export const loanSchedule = guarded(
  'loanSchedule',
  {
    terms: terms({
      principal: owed,
      notePerYear: number({ from: 0 }),
      payments: whole(1, LONGEST),
      firstPaymentMonth: whole(1, LONGEST),
      delayInterest: choice('charged', 'free'),
    }),
  },
  (terms: amortisation.LoanTerms): amortisation.LoanSchedule => amortisation.loanSchedule(terms),
);

const scheduled = row({ owed: list(number({ from: 0 }), 1) });

/**
 * What settles the loan at the end of `month`, after that month's payment, by the actuarial method: the balance of the
 * schedule, no charge for interest not yet earned. 0 once it is repaid. RangeError unless the month is whole and from 0.
 */
export const payoffAt = <N extends number = Cents>(
  schedule: amortisation.LoanSchedule<N>,
  month: number,
): N => {
  scheduled(schedule, 'payoffAt, schedule');
  whole(0)(month, 'payoffAt, month');
  return amortisation.payoffAt(schedule, month);
};

const nil: Want = number({ from: 0 });

/**
 * The monthly payment of a lease with its tax: depreciation (adjusted capitalised cost - residual)/n plus rental charge
 * (adjusted capitalised cost + residual)·money factor. What is due at signing lowers the capitalised cost, and may not
 * be more. RangeError for negative terms and a term that is not a whole number of months from 1; TypeError for what is
 * no term of a lease.
 */
export const leasePayment = guarded(
  'leasePayment',
  {
    terms: all(
      terms(
        {
          startsFrom: nil,
          residual: nil,
          moneyFactor: nil,
          months: whole(1, LONGEST),
          dueAtSigning: nil,
          taxOnPayment: nil,
        },
        {
          distanceAYear: nil,
          overDistance: nil,
          acquisitionFee: nil,
          dispositionFee: nil,
          purchaseFee: nil,
          earlyTermination: orNull(nil),
          // A lease of a scenario says more than its terms.
          afterwards: choice('again', 'buy'),
          kind: choice('lease'),
        },
      ),
      holds<leases.LeaseTerms>(
        'what is due at signing is at most what the lease starts from',
        ({ startsFrom, dueAtSigning }) => dueAtSigning <= startsFrom,
      ),
    ),
  },
  leases.leasePayment,
);
