/** Leases that follow each other, each on the terms of its month. */
import { type LeaseTerms, lease } from '../../cashflow/contracts/lease.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract, Line } from '../../cashflow/posting.ts';
import type { Payment } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';
import { offerAt } from './likeOurs.ts';

export type LeasePayment = Extract<Payment, { kind: 'lease' }>;

/** One of the leases that follow each other, from the end of `start` to the end of `end`. */
interface LeaseSpan {
  readonly start: number;
  readonly end: number;
  readonly nth: number;
}

/** The month in which a lease is bought out; never where it is handed back. */
export const buyOutMonth = (payment: LeasePayment, month: number): number =>
  payment.afterwards === 'buy' ? month + payment.months : Number.POSITIVE_INFINITY;

export const leaseSpans = (payment: LeasePayment, month: number, until: number): LeaseSpan[] => {
  const spans: LeaseSpan[] = [];
  for (let start = month; start < until && start < buyOutMonth(payment, month); start += payment.months)
    spans.push({ start, end: Math.min(start + payment.months, until), nth: spans.length });
  return spans;
};

export const leaseOf = (
  payment: LeasePayment,
  { start, end, nth }: LeaseSpan,
  month: number,
  name: string,
  path: string,
  ctx: Context,
): Contract => {
  const at = linesOf(name, path);
  const line = (what: string, reason: string): Line => at('lease', what, 'lease', reason);
  // The first lease keeps its own charge for ending early; one that only follows it is prorated.
  const own = nth === 0 ? payment : { ...payment, earlyTermination: null };
  const terms = leaseTerms(own, ctx.vehiclePriceLevel(start));
  return lease(line, terms, start, end, ctx.distanceAMonth, end === buyOutMonth(payment, month));
};

/** The leases of a replacement got at the end of `month`, without what running it costs, if the look ends at `until`. */
export const leasesUntil = (index: number, month: number, until: number, ctx: Context): Contract[] => {
  const { payment, name } = offerAt(index, month, ctx);
  return payment.kind === 'lease'
    ? leaseSpans(payment, month, until).map((span) => leaseOf(payment, span, month, name, '', ctx))
    : [];
};

/** The terms of a lease that starts in a later month, at its prices. */
const leaseTerms = (payment: LeaseTerms, level: number): LeaseTerms => ({
  ...payment,
  startsFrom: payment.startsFrom * level,
  residual: payment.residual * level,
  dueAtSigning: payment.dueAtSigning * level,
  acquisitionFee: payment.acquisitionFee * level,
  dispositionFee: payment.dispositionFee * level,
  purchaseFee: payment.purchaseFee * level,
  overDistance: payment.overDistance * level,
  earlyTermination: payment.earlyTermination === null ? null : payment.earlyTermination * level,
});
