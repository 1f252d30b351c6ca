/** How long to own, and where things tip, for callers whose arguments nobody has read yet. Throw as `wants.ts` says. */
import * as period from '../engine/valuation/breakEvenPeriod.ts';
import * as places from '../engine/valuation/crossings.ts';
import * as owning from '../engine/valuation/economicLife.ts';
import * as flips from '../engine/valuation/integerFlips.ts';
import * as programme from '../engine/valuation/replacementProgramme.ts';
import { answering, guarded } from './guarded.ts';
import { growth } from './money.ts';
import { all, calls, holds, list, number, optional, orNull, terms, type Want, whole } from './wants.ts';

export type { Crossings } from '../engine/valuation/crossings.ts';
export type { IntegerFlips } from '../engine/valuation/integerFlips.ts';

const owned: Want = all(
  terms({ values: list(number(), 2), costs: list(number(), 2), ratePerPeriod: growth }),
  holds<owning.Ownership>(
    'as many costs as values are wanted, from time 0',
    ({ values, costs }) => values.length === costs.length,
  ),
);

/**
 * The equivalent cost a period of owning for n periods, for every n from 1 (at index n - 1); the value at the start is
 * charged. `values` and `costs` begin at time 0 and are equally long, two at least, else RangeError.
 */
export const averageCostOfOwning = guarded('averageCostOfOwning', { owned }, owning.averageCostOfOwning);

/**
 * The cost of going on for one more period, the n-th from 1 (at index n - 1), as an amount at that period's end: the
 * loss of value, interest on the value at its start, and its costs. Errors as of `averageCostOfOwning`.
 */
export const marginalCost = guarded('marginalCost', { owned }, owning.marginalCost);

/** For how many periods, of those given, owning costs least a period. Errors as of `averageCostOfOwning`. */
export const economicLife = guarded('economicLife', { owned }, owning.economicLife);

/** Longer programmes are no use, and take too long. */
const LONGEST_PROGRAMME = 240;

/**
 * The cheapest times to replace something over a fixed number of periods. Trade-ins and the sale at the horizon are
 * receipts, so the cost may be negative; a start age above `maxAge` has to be replaced at once; at most 1,000 equally
 * cheap programmes are listed. RangeError unless horizon (to 240), maxAge (from 1) and startAge (from 0) are whole, the
 * rate is above -1, and both functions give numbers; TypeError for other fields.
 */
export const replacementProgramme = guarded(
  'replacementProgramme',
  {
    given: terms({
      horizon: whole(1, LONGEST_PROGRAMME),
      maxAge: whole(1),
      startAge: orNull(whole(0)),
      price: number(),
      costAtAge: calls,
      tradeIn: calls,
      ratePerPeriod: growth,
    }),
  },
  (given: programme.ReplacementProgramme): programme.ReplacementAnswer =>
    programme.replacementProgramme({
      ...given,
      costAtAge: answering(given.costAtAge, 'replacementProgramme, costAtAge'),
      tradeIn: answering(given.tradeIn, 'replacementProgramme, tradeIn'),
    }),
);

/**
 * Every zero of f on [low, high], from a scan of `points` (3 to 100,000, 200 unless told) evenly spaced values, each
 * change of sign refined: a root, a jump or a touch. `unit` is one money unit: f counts as nil below a hundredth of it.
 * RangeError unless low < high and f is a finite number wherever it is asked; TypeError for an option that does not exist.
 */
export const breakEven = (
  f: (x: number) => number,
  low: number,
  high: number,
  points = 200,
  options: { readonly unit?: number } = {},
): places.Crossings => guardedCrossings(f, low, high, points, options);

const guardedCrossings = guarded(
  'breakEven',
  {
    f: calls,
    low: number(),
    high: number(),
    points: whole(3, 100_000),
    options: terms({}, { unit: number({ above: 0 }) }),
  },
  (
    f: (x: number) => number,
    low: number,
    high: number,
    points: number,
    options: { readonly unit?: number },
  ): places.Crossings => {
    holds<number>('low below high is wanted', (at) => at < high)(low, 'breakEven, low');
    number()(high - low, 'breakEven, high less low');
    return places.crossings(answering(f, 'breakEven, f'), low, high, points, options);
  },
);

const rising: Want = holds<readonly number[]>('values in rising order are wanted, each once', (values) =>
  values.every((value, k) => k === 0 || value > (values[k - 1] as number)),
);

/**
 * Between which two of `values` (whole, in rising order, at least one) the sign of f flips: every value is tried.
 * `unit` is one money unit: f counts as nil below a hundredth of it. RangeError for values out of order or that are not
 * whole, and where f gives no finite number.
 */
export const breakEvenOfWhole = guarded(
  'breakEvenOfWhole',
  {
    f: calls,
    values: all(list(number({ whole: true }), 1), rising),
    unit: optional(number({ above: 0 })),
  },
  (f: (n: number) => number, values: readonly number[], unit?: number): flips.IntegerFlips =>
    flips.integerFlips(answering(f, 'breakEvenOfWhole, f'), values, unit),
);

const series: Want = list(number());

/**
 * The first period (the index) from which `series` is non-negative to its end; an earlier visit above zero that does not
 * last does not count. An empty series never is. RangeError where one of it is no number.
 */
export const breakEvenPeriod = guarded('breakEvenPeriod', { series }, period.breakEvenPeriod);

/** The time, linear within the period, at which the series rises to zero to stay. Errors as of `breakEvenPeriod`. */
export const paybackTime = guarded('paybackTime', { series }, period.paybackTime);
