/** Rates of return of a series of flows. Cost positive, receipt negative, as everywhere. */
import { type BalancingRates, balancingRates } from './balancingRates.ts';
import type { Flow } from './present.ts';

/**
 * The internal rate of return per month, as a fraction: every rate at which the flows are worth nothing together.
 * It is the same whichever sign costs have. To state it by the year: `effectivePerYear(nominal(12 * rate))`.
 * For flows by the year read "year" for "month" throughout.
 * None when all flows have one sign; several are all reported, with the one nearest zero.
 */
export const rateOfReturn = (flows: readonly Flow[]): BalancingRates =>
  balancingRates(flows.map(({ month, amount }) => ({ amount, t: month, f: 0 })));

/** A rate per period as a fraction, or why there is none. */
export type ModifiedRate =
  | { readonly status: 'one'; readonly rate: number }
  | { readonly status: 'none'; readonly reason: 'needs a cost and a receipt' };

/**
 * The modified rate of return per period: costs are financed at one rate, receipts put away at another until the
 * last flow that is not nil, and the rate is what turns the costs' present value into the receipts' final value. Rates
 * per period. It matters here which sign is which: cost positive, receipt negative.
 */
export const modifiedRateOfReturn = (
  flows: readonly Flow[],
  financeRate: number,
  reinvestmentRate: number,
): ModifiedRate => {
  const last = flows.reduce(
    (latest, { month, amount }) => (amount === 0 ? latest : Math.max(latest, month)),
    0,
  );
  let costs = 0;
  let receipts = 0;
  for (const { month, amount } of flows) {
    if (amount > 0) costs += amount * (1 + financeRate) ** -month;
    else receipts -= amount * (1 + reinvestmentRate) ** (last - month);
  }
  return costs > 0 && receipts > 0 && last > 0
    ? { status: 'one', rate: (receipts / costs) ** (1 / last) - 1 }
    : { status: 'none', reason: 'needs a cost and a receipt' };
};
