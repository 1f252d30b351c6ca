import { type LeaseTerms, leasePayment, overDistanceCharge } from '../cashflow/contracts/lease.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { type Cents, toCents } from '../quantity/money.ts';

/** What one lease costs over its own term, whatever the horizon. */
export interface LeaseView {
  readonly replacement: number;
  readonly name: string;
  /** Monthly, tax included. */
  readonly payment: Cents;
  readonly months: number;
  readonly dueAtSigning: Cents;
  /** Acquisition and disposition fees. */
  readonly fees: Cents;
  /** For the distance driven beyond the allowance, over the whole term. */
  readonly overDistance: Cents;
  /** Everything above over the whole term. */
  readonly total: Cents;
  /** The money factor as a nominal rate a year: 2,400 times it, in percent (common practice, no source). */
  readonly rate: number;
  /** The horizon ends in the middle of a lease. */
  readonly cutShort: boolean;
}

/** The lease of one replacement; null where it is not leased. */
export const leaseView = (index: number, ctx: Context): LeaseView | null => {
  const deal = ctx.inputs.replacement[index];
  if (deal?.payment.kind !== 'lease') return null;
  const terms: LeaseTerms = deal.payment;
  const payment = leasePayment(terms);
  const fees = terms.acquisitionFee + terms.dispositionFee;
  const over = overDistanceCharge(terms, ctx.distanceAMonth, terms.months);
  return {
    replacement: index,
    name: ctx.facts.replacementNames[index] as string,
    payment: toCents(payment),
    months: terms.months,
    dueAtSigning: toCents(terms.dueAtSigning),
    fees: toCents(fees),
    overDistance: toCents(over),
    total: toCents(terms.dueAtSigning + fees + over + payment * terms.months),
    rate: terms.moneyFactor * 24,
    cutShort:
      deal.payment.afterwards === 'buy' ? terms.months > ctx.horizon : ctx.horizon % terms.months !== 0,
  };
};
