import { smoothLevel, yearlyLevel } from '../quantity/month.ts';
import { remember } from '../quantity/remember.ts';

/** Price levels of months 0..H, re-priced once a year; index is the month, 1 at the day of the decision. */
export type Levels = Float64Array;

/**
 * The price levels of one family of costs over the horizon.
 *
 * @param growth yearly growth, a fraction above -1
 * @param horizon last month, inclusive
 */
export const priceLevels = remember(
  (growth: number, horizon: number): Levels =>
    Float64Array.from({ length: horizon + 1 }, (_, month) => yearlyLevel(growth, month)),
  (a, b) => a[0] === b[0] && a[1] === b[1],
);

/** The level of a one-off price in a month of 0..H, which rises from one month to the next; as `priceLevels` otherwise. */
export const smoothLevels = remember(
  (growth: number, horizon: number): Levels =>
    Float64Array.from({ length: horizon + 1 }, (_, month) => smoothLevel(growth, month)),
  (a, b) => a[0] === b[0] && a[1] === b[1],
);

/** What a contract fixes (a payment, a deductible) grows with no prices: 1 in every month. */
export const FIXED: Levels = Float64Array.of(1);

/** The price level of a month; beyond the horizon, the last one. */
export const levelAt = (levels: Levels, month: number): number =>
  levels[Math.min(month, levels.length - 1)] ?? 1;
