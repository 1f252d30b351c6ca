import quickselect from 'quickselect';

/**
 * Figures from drawn futures, each with its standard error. Values are scramble-major: scramble s holds the s-th equal
 * stretch, so `values.length` is a multiple of `scrambles`. Points within a scramble are not independent; whole
 * scrambles are, so every error comes from their spread and from nothing else. With one scramble the error is infinite:
 * nothing is known about it.
 */

/** A figure from drawn futures and its standard error, in the figure's own unit. */
export interface Estimate {
  readonly value: number;
  readonly error: number;
}

/**
 * Arithmetic mean of at least one finite value. Twice over, the second pass on what the first left: values far from nil
 * with a small spread keep all their digits.
 */
export const average = (values: ArrayLike<number>): number => {
  const n = values.length;
  let sum = 0;
  for (let k = 0; k < n; k++) sum += values[k] as number;
  const rough = sum / n;
  let left = 0;
  for (let k = 0; k < n; k++) left += (values[k] as number) - rough;
  return rough + left / n;
};

/** Standard deviation, n - 1 in the denominator; infinite for fewer than two values. */
export const standardDeviation = (values: ArrayLike<number>): number => {
  const n = values.length;
  if (n < 2) return Number.POSITIVE_INFINITY;
  const mean = average(values);
  let squares = 0;
  let left = 0;
  for (let k = 0; k < n; k++) {
    const off = (values[k] as number) - mean;
    squares += off * off;
    left += off;
  }
  // What rounding of the mean adds is taken out again (corrected two-pass algorithm).
  return Math.sqrt(Math.max(0, squares - (left * left) / n) / (n - 1));
};

/** The stretch of each scramble, without copying. Throws a RangeError where they are not of equal length. */
const byScramble = (values: Float64Array, scrambles: number): Float64Array[] => {
  const points = values.length / scrambles;
  if (!Number.isInteger(points) || points < 1)
    throw new RangeError(`${values.length} values do not make ${scrambles} equal scrambles`);
  return Array.from({ length: scrambles }, (_, s) => values.subarray(s * points, (s + 1) * points));
};

const errorOf = (ofScrambles: readonly number[]): number =>
  standardDeviation(ofScrambles) / Math.sqrt(ofScrambles.length);

/** A mean from the means of scrambles of equal length; error = their standard deviation / sqrt(scrambles). */
const meanOver = (ofScrambles: readonly number[]): Estimate => ({
  value: average(ofScrambles),
  error: errorOf(ofScrambles),
});

/** Mean over all draws, with its error from the scrambles' means. */
export const meanOf = (values: Float64Array, scrambles: number): Estimate =>
  meanOver(byScramble(values, scrambles).map(average));

const rising = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * The points of values, in any order, below which the shares `ps` of them lie: linear between the order statistics
 * (Hyndman and Fan, "Sample Quantiles in Statistical Packages", 1996, definition 7). At least one value; `values` is
 * not changed.
 *
 * @param ps from 0 to 1, rising
 */
export const pointsOf = (values: Float64Array, ps: readonly number[]): number[] => {
  const partly = values.slice();
  const last = partly.length - 1;
  // Up to here the order statistics are in place: a few of them are found much sooner than all are sorted.
  let placed = -1;
  const statistic = (k: number): number => {
    if (k > placed) quickselect(partly as unknown as number[], k, placed + 1, last, rising);
    placed = Math.max(placed, k);
    return partly[k] as number;
  };
  return ps.map((p) => {
    const at = p * last;
    const k = Math.floor(at);
    const low = statistic(k);
    const high = statistic(Math.min(k + 1, last));
    return low === high ? low : low + (at - k) * (high - low);
  });
};

/** The points of `values` at each of `ps`, rising: over all draws, with errors from the scrambles' own points. */
export const quantilesOf = (values: Float64Array, ps: readonly number[], scrambles: number): Estimate[] => {
  const each = byScramble(values, scrambles).map((stretch) => pointsOf(stretch, ps));
  return pointsOf(values, ps).map((value, i) => ({
    value,
    error: errorOf(each.map((points) => points[i] as number)),
  }));
};

/** One point of `values`, as quantilesOf. */
export const quantileOf = (values: Float64Array, p: number, scrambles: number): Estimate =>
  quantilesOf(values, [p], scrambles)[0] as Estimate;

/** Share of draws whose value `holds`; its error is nil where every scramble has the same share, as at 0 and 1. */
export const shareOf = (
  values: Float64Array,
  holds: (value: number) => boolean,
  scrambles: number,
): Estimate => {
  const share = (stretch: Float64Array): number => {
    let count = 0;
    for (let i = 0; i < stretch.length; i++) if (holds(stretch[i] as number)) count++;
    return count / stretch.length;
  };
  return meanOver(byScramble(values, scrambles).map(share));
};

/**
 * A figure that is no plain mean (a least of means, a ratio), with its error by leaving out one scramble at a time
 * (jackknife: Efron, The Jackknife, the Bootstrap and Other Resampling Plans, 1982). For a mean it is meanOf's.
 *
 * @param figure the figure over all scrambles but the one named, or over all for null
 */
export const leaveOneOut = (figure: (without: number | null) => number, scrambles: number): Estimate => {
  if (scrambles < 2) return { value: figure(null), error: Number.POSITIVE_INFINITY };
  const each = Array.from({ length: scrambles }, (_, s) => figure(s));
  return { value: figure(null), error: (standardDeviation(each) * (scrambles - 1)) / Math.sqrt(scrambles) };
};
