import type { Lease } from '../../scenario/inputs/inputs.ts';
import { FIXED } from '../levels.ts';
import { type Contract, type Line, postMoney, postMoneySeries } from '../posting.ts';

/** The terms of one lease, in currency units at the prices of the month it starts. */
export type LeaseTerms = Omit<Lease, 'afterwards'>;

/**
 * The monthly payment with its tax: depreciation (adjusted capitalised cost - residual)/n plus rental charge
 * (adjusted capitalised cost + residual)·money factor. What is due at signing lowers the capitalised cost.
 * Source: 12 CFR part 1013 (Regulation M) disclosures, arithmetic from memory.
 */
export const leasePayment = (terms: LeaseTerms): number => {
  const adjusted = terms.startsFrom - terms.dueAtSigning;
  const depreciation = (adjusted - terms.residual) / terms.months;
  return (depreciation + (adjusted + terms.residual) * terms.moneyFactor) * (1 + terms.taxOnPayment);
};

/** Charge for what was driven beyond the allowance of `months` months. */
export const overDistanceCharge = (terms: LeaseTerms, distanceAMonth: number, months: number): number =>
  Math.max(0, distanceAMonth - terms.distanceAYear / 12) * months * terms.overDistance;

/**
 * One lease from month `start`, held until `end` (its full term, or earlier where the horizon ends it).
 *
 * At its term: overage and either the disposition fee or, `buys`, residual and purchase fee. Broken off before: the
 * early termination charge where given; else what was paid at the start is prorated and the rest credited.
 */
export const lease =
  (
    line: (what: string, reason: string) => Line,
    terms: LeaseTerms,
    start: number,
    end: number,
    distanceAMonth: number,
    buys: boolean,
  ): Contract =>
  (sink) => {
    const used = end - start;
    const whole = used >= terms.months;
    const unused = whole || terms.earlyTermination !== null ? 0 : 1 - used / terms.months;
    const post = (what: string, reason: string, month: number, amount: number): void => {
      if (amount !== 0) postMoney(sink, line(what, reason), month, amount);
    };
    const signing = terms.dueAtSigning + terms.acquisitionFee;
    post('due at signing', 'what it takes to start, fee included', start, signing);
    const payment = line('lease payment', 'depreciation, rental charge and tax, every month');
    postMoneySeries(sink, payment, start + 1, end, FIXED, leasePayment(terms));
    post(
      'rest of the signing money',
      'our look ends before the lease: its unused part is credited',
      end,
      -unused * signing,
    );
    if (!whole) post('ended early', 'charge for ending before its term', end, terms.earlyTermination ?? 0);
    if (buys)
      return post('bought at the end', 'residual and purchase fee', end, terms.residual + terms.purchaseFee);
    const over = overDistanceCharge(terms, distanceAMonth, used);
    post('distance over the allowance', 'charged when it goes back', end, over);
    post('handing it back', 'disposition fee', end, terms.dispositionFee * (1 - unused));
  };
