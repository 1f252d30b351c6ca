import type { Cents } from '../../../quantity/money.ts';
import { type Arithmetic, atLeastNil, less, noSign } from './arithmetic.ts';

/** Something paid ahead, of which a part goes unused when the vehicle goes: a premium, a service contract, gap cover. */
export interface PaidAhead<N extends number = Cents> {
  readonly paid: N;
  /** Days, months or distance it was paid for, and what is left of them; the same unit. */
  readonly of: number;
  readonly unused: number;
  /** What cancelling costs. */
  readonly fee: N;
}

/**
 * What comes back, in proportion to what is unused, rounded half up, less the fee and never below nil; a positive
 * amount. While its loan runs a lender may take it first: pass it through the split with the payment.
 * Throws RangeError when more is unused than was paid for. Source: common practice, no source; contracts differ.
 */
export const unusedRefund = <N extends number>(
  money: Arithmetic<N>,
  { paid, of, unused, fee }: PaidAhead<N>,
): N => {
  noSign({ 'what was paid': paid, 'the fee': fee, 'what is unused': unused, 'the rest': of - unused });
  return atLeastNil(less(money.share(paid, unused, of), fee));
};
