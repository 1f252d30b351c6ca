/** When a running balance has paid for itself. */

/** The first period from which a series stays non-negative, or that there is none. */
export type BreakEvenPeriod =
  | { readonly status: 'from'; readonly period: number }
  | { readonly status: 'never' };

/** Sums so far: what amounts in periods 0, 1, 2 ... come to by the end of each. */
export const cumulative = (amounts: readonly number[]): number[] => {
  let sum = 0;
  return amounts.map((amount) => {
    sum += amount;
    return sum;
  });
};

/**
 * The first period (the index) from which `series` is non-negative to its end; an earlier visit above zero that does
 * not last does not count. Period 0: from the start. To ask when A has become the cheaper way, give it the running
 * cost of B less that of A. An empty series never does.
 */
export const breakEvenPeriod = (series: readonly number[]): BreakEvenPeriod => {
  const period = series.findLastIndex((balance) => !(balance >= 0)) + 1;
  return period < series.length ? { status: 'from', period } : { status: 'never' };
};

/** The time, linear within the period, at which the series rises to zero to stay; 0 when it never was below. */
export const paybackTime = (series: readonly number[]): BreakEvenPeriod => {
  const found = breakEvenPeriod(series);
  if (found.status === 'never' || found.period === 0) return found;
  const [before, after] = [series[found.period - 1] as number, series[found.period] as number];
  return { status: 'from', period: found.period - after / (after - before) };
};
