/** Money at different times, restated as money today or as so much a month. Cost positive, receipt negative. */
import { levelPayment } from '../cashflow/contracts/amortisation.ts';
import { discountFactor, effectivePerYear, perPeriod, type Rate } from '../quantity/rate.ts';

/** An amount in currency units (cost positive, receipt negative) at the end of a month; month 0 is today. */
export type Flow = { readonly month: number; readonly amount: number };

const checked = (rate: Rate): Rate => {
  if (!(effectivePerYear(rate) > -1)) throw new RangeError('a discount rate must be above -100 % a year');
  return rate;
};

/**
 * Σ amount · (1+r)^(-month/12): what all flows cost in today's money; the plain sum at 0 %.
 * Month 0 is not discounted. (A spreadsheet's NPV discounts its first value by one period: shift the months by one.)
 * Throws RangeError at -100 % and below, where nothing later has a present value.
 */
export const presentCost = (flows: readonly Flow[], rate: Rate): number => {
  checked(rate);
  return flows.reduce((sum, { month, amount }) => sum + amount * discountFactor(rate, month), 0);
};

/** The present cost of amounts in months 0, 1, 2 ...: `amounts[m]` falls at the end of month m. */
export const presentCostOfSeries = (amounts: readonly number[], rate: Rate): number => {
  checked(rate);
  return amounts.reduce((sum, amount, month) => sum + amount * discountFactor(rate, month), 0);
};

/** The equal cost at each of `periods` period ends that is worth `presentCost` today; presentCost/periods at 0 %. */
export const equivalentCost = (presentCost: number, ratePerPeriod: number, periods: number): number =>
  levelPayment(presentCost, ratePerPeriod, periods);

/** The equal cost at each month's end, over `months` from 1, that is worth `presentCost` today; NPC/H at 0 %. */
export const equivalentMonthlyCost = (presentCost: number, rate: Rate, months: number): number =>
  equivalentCost(presentCost, perPeriod(checked(rate)), months);
