/** What flows are worth, for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */
import * as annuity from '../engine/valuation/annuity.ts';
import * as present from '../engine/valuation/present.ts';
import * as returns from '../engine/valuation/rateOfReturn.ts';
import { guarded } from './guarded.ts';
import { growth, rated } from './money.ts';
import { choice, list, number, row, terms, type Want, whole } from './wants.ts';

export type { Flow } from '../engine/valuation/present.ts';

/** Flows in whole months from 0, in any order. */
const flows: Want = list(row({ month: whole(0), amount: number() }));

/**
 * Σ amount · (1+r)^(-month/12): what all flows cost in today's money; the plain sum at 0 %; 0 for none. Month 0 is not
 * discounted. RangeError for fractions of a month, months before 0 and rates at -100 % a year and below.
 */
export const presentCost = guarded('presentCost', { flows, rate: rated }, present.presentCost);

/** The present cost of amounts in months 0, 1, 2 ...: `amounts[m]` falls at the end of month m. Throws as `presentCost`. */
export const presentCostOfSeries = guarded(
  'presentCostOfSeries',
  { amounts: list(number()), rate: rated },
  present.presentCostOfSeries,
);

/**
 * The equal cost at each of `periods` period ends (a whole number from 1, else RangeError) that is worth `presentCost`
 * today; presentCost/periods at 0 %. The rate is a fraction per period, above -1.
 */
export const equivalentCost = guarded(
  'equivalentCost',
  { presentCost: number(), ratePerPeriod: growth, periods: whole(1) },
  present.equivalentCost,
);

/** The equal cost at each month's end, over `months` from 1, that is worth `presentCost` today. Throws as `equivalentCost`. */
export const equivalentMonthlyCost = guarded(
  'equivalentMonthlyCost',
  { presentCost: number(), rate: rated, months: whole(1) },
  present.equivalentMonthlyCost,
);

const due = choice('start', 'end');
const KNOWN = {
  rate: growth,
  periods: number({ above: 0 }),
  payment: number(),
  present: number(),
  future: number(),
  due,
};
type Known = keyof typeof KNOWN;

/** An annuity without what is looked for; there it may hold what it will. */
const without = (sought: Known, more: Partial<Record<Known, Want>> = {}): Want => {
  const { [sought]: _, ...needed } = { ...KNOWN, ...more };
  return terms(needed, { [sought]: () => {} });
};

/**
 * The amount at the start that balances payment, future, rate and periods, all with our sign: cost positive, receipt
 * negative, together worth nothing. Payments fall at period ends, or at their starts with `due: 'start'`. Periods need
 * not be whole; RangeError at 0 and below, at a rate of -1 and below and for a misspelt `due`; TypeError for other fields.
 */
export const presentValue = guarded('presentValue', { annuity: without('present') }, annuity.presentValue);

/** The amount at the end that balances the rest. Sign, timing and errors as of `presentValue`. */
export const futureValue = guarded('futureValue', { annuity: without('future') }, annuity.futureValue);

/** The equal payment that balances the rest. Sign, timing and errors as of `presentValue`. */
export const paymentFor = guarded('paymentFor', { annuity: without('payment') }, annuity.paymentFor);

/**
 * How many periods balance the rest, not always whole; none where the payment never catches up. Sign, timing and errors
 * as of `presentValue`.
 */
export const periodsFor = guarded('periodsFor', { annuity: without('periods') }, annuity.periodsFor);

/**
 * The rate per period that balances the rest; several are all given, none has a reason. Sign, timing and errors as of
 * `presentValue`, but periods are a whole number from 1 to 12,000.
 */
export const rateFor = guarded(
  'rateFor',
  { annuity: without('rate', { periods: whole(1, 12_000) }) },
  annuity.rateFor,
);

/**
 * The internal rate of return per month, as a fraction: every rate at which the flows are worth nothing together, or
 * why there is none. For flows by the year read "year" for "month". A flow of nil changes nothing. RangeError for
 * fractions of a month and months before 0.
 */
export const rateOfReturn = guarded('rateOfReturn', { flows }, returns.rateOfReturn);

/**
 * The modified rate of return per period: costs are financed at one rate, receipts put away at another until the last
 * flow that is not nil. Rates per period, above -1. Cost positive, receipt negative. Throws as `rateOfReturn`.
 */
export const modifiedRateOfReturn = guarded(
  'modifiedRateOfReturn',
  { flows, financeRate: growth, reinvestmentRate: growth },
  returns.modifiedRateOfReturn,
);
