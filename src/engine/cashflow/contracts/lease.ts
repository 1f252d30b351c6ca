import { type Contract, type Line, postMoney } from '../posting.ts';

/** The terms of one lease, in currency units at the prices of the month it starts. */
export interface LeaseTerms {
  /** Capitalised cost. */
  readonly startsFrom: number;
  readonly residual: number;
  /** Monthly rental charge per unit of (capitalised cost + residual). */
  readonly moneyFactor: number;
  readonly months: number;
  readonly dueAtSigning: number;
  readonly distanceAYear: number;
  /** Charge for each unit of distance over the allowance. */
  readonly overDistance: number;
  readonly acquisitionFee: number;
  readonly dispositionFee: number;
  readonly taxOnPayment: number;
  readonly purchaseFee: number;
  /** Null: what is left of a lease broken off is prorated. */
  readonly earlyTermination: number | null;
}

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
    line: Line,
    terms: LeaseTerms,
    start: number,
    end: number,
    distanceAMonth: number,
    buys: boolean,
  ): Contract =>
  (sink) => {
    const used = end - start;
    const whole = used >= terms.months;
    const prorated = whole || terms.earlyTermination !== null ? 1 : used / terms.months;
    postMoney(sink, line, start, terms.dueAtSigning + terms.acquisitionFee);
    const payment = leasePayment(terms);
    for (let m = start + 1; m <= end; m++) postMoney(sink, line, m, payment);
    const unused = (1 - prorated) * (terms.dueAtSigning + terms.acquisitionFee);
    const leaving = buys
      ? terms.residual + terms.purchaseFee
      : overDistanceCharge(terms, distanceAMonth, used) + terms.dispositionFee * prorated;
    const broken = whole ? 0 : (terms.earlyTermination ?? 0);
    postMoney(sink, line, end, leaving + broken - unused);
  };
