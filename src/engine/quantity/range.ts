/**
 * A number nobody knows exactly: its 10, 50 and 90 % points, as a three-term metalog in quantile form.
 * Source: Keelin, "The Metalog Distributions", Decision Analysis 13(4), 2016: section 3 for the quantile, 4.1 and 4.3
 * for the forms with bounds, 6 for three symmetric points.
 */
export interface Range {
  /** One in ten is lower. */
  readonly low: number;
  /** As likely above as below. */
  readonly likely: number;
  /** One in ten is higher. */
  readonly high: number;
  /** Bounds of the quantity itself, which the three points keep clear of; null where there is none. */
  readonly min: number | null;
  readonly max: number | null;
}

/** What can be asked of a range. */
export interface RangeLaw {
  /** What stands in the base case; of the cut law where it is cut. */
  readonly mean: number;
  /** The value below which the share u of 0..1 lies. */
  readonly quantile: (u: number) => number;
  /** The chance of less than x. */
  readonly chanceBelow: (x: number) => number;
}

/** From this |a3|/a2 on the quantile falls somewhere: a three-term metalog is then no distribution. */
const FEASIBLE = 1.66711;
/** A law with one bound can have no mean: the mass beyond this share, on the open side, is put on the point there. */
const CUT = 0.995;
const LN9 = Math.log(9);

/** Log odds beyond which no share of weight is left: 1 in 10^17. */
const FAR = 40;

const logistic = (t: number): number => 1 / (1 + Math.exp(-t));
const logOdds = (u: number): number => Math.log(u / (1 - u));

/** How a bounded quantity becomes an unbounded one and back. */
interface Scale {
  readonly to: (x: number) => number;
  readonly from: (z: number) => number;
}

const scaleOf = (min: number | null, max: number | null): Scale => {
  if (min !== null && max !== null)
    return {
      to: (x) => Math.log((x - min) / (max - x)),
      from: (z) => min + (max - min) * logistic(z),
    };
  if (min !== null) return { to: (x) => Math.log(x - min), from: (z) => min + Math.exp(z) };
  if (max !== null) return { to: (x) => -Math.log(max - x), from: (z) => max - Math.exp(-z) };
  return { to: (x) => x, from: (z) => z };
};

/** A law that is one number. */
const constant = (value: number): RangeLaw => ({
  mean: value,
  quantile: () => value,
  chanceBelow: (x) => (x > value ? 1 : 0),
});

/** Why three points are no range, seen before any law; null when nothing speaks against them. */
const refusal = ({ low, likely, high, min, max }: Range): string | null => {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low <= likely && likely <= high))
    return 'low, likely and high must be numbers that rise';
  if (low === high) {
    if (min !== null && low < min) return `it must not lie below ${min}, the least it can be`;
    if (max !== null && high > max) return `it must not lie above ${max}, the most it can be`;
    return null;
  }
  if (low === likely || likely === high) return 'two of the three points are the same, the third is not';
  if (min !== null && low <= min) return `low must lie above ${min}, the least it can be`;
  if (max !== null && high >= max) return `high must lie below ${max}, the most it can be`;
  return null;
};

/** Which likely values the two outer points allow, in the words of a refusal, rounded inwards where there is room. */
const allowed = ({ low, high }: Range, scale: Scale): string => {
  // From a2 and a3 as they stand in rangeLaw: |a3|/a2 = FEASIBLE at this share of the way from low to high.
  const margin = (1 - 0.4 * FEASIBLE) / 2;
  const [z10, z90] = [scale.to(low), scale.to(high)];
  const [least, most] = [scale.from(z10 + margin * (z90 - z10)), scale.from(z90 - margin * (z90 - z10))];
  const step = 10 ** (Math.floor(Math.log10(most - least)) - 2);
  const places = Math.min(Math.max(0, -Math.round(Math.log10(step))), 20);
  const tidy = (x: number): number => Number((x * step).toFixed(places));
  return `between ${tidy(Math.ceil(least / step))} and ${tidy(Math.floor(most / step))}`;
};

/**
 * The law of a range, or why there is none. Three equal points are a constant. Bounded on one side alone it is cut on
 * the other, above at its 99.5 % point or below at its 0.5 % point; mean, quantile and chance are those of the cut law.
 */
export const rangeLaw = (range: Range): RangeLaw | { readonly refused: string } => {
  const refused = refusal(range);
  if (refused !== null) return { refused };
  if (range.low === range.high) return constant(range.likely);
  const { min, max } = range;
  const scale = scaleOf(min, max);
  const [z10, z50, z90] = [scale.to(range.low), scale.to(range.likely), scale.to(range.high)];
  const a2 = (z90 - z10) / (2 * LN9);
  const a3 = (z90 + z10 - 2 * z50) / (0.8 * LN9);
  if (!(Math.abs(a3) / a2 < FEASIBLE))
    return {
      refused: `likely lies too close to one end: with this low and high it can be anything ${allowed(range, scale)}`,
    };
  const from = max !== null && min === null ? 1 - CUT : 0;
  const to = min !== null && max === null ? CUT : 1;
  /** The quantity at the log odds t of its share u. */
  const at = (t: number): number => scale.from(z50 + a2 * t + a3 * (logistic(t) - 0.5) * t);
  const quantile = (u: number): number => {
    const share = Math.min(Math.max(u, from), to);
    if (share <= 0) return min ?? Number.NEGATIVE_INFINITY;
    if (share >= 1) return max ?? Number.POSITIVE_INFINITY;
    return at(logOdds(share));
  };
  const [least, most] = [quantile(0), quantile(1)];
  const chanceBelow = (x: number): number => {
    if (x <= least) return 0;
    if (to < 1 ? x > most : x >= most) return 1;
    let [below, above] = [-FAR, FAR];
    for (let i = 0; i < 64; i++) {
      const middle = (below + above) / 2;
      if (at(middle) < x) below = middle;
      else above = middle;
    }
    return logistic((below + above) / 2);
  };
  // Without bounds the mean is known; with them it is the integral of the quantile over its share.
  const mean =
    min === null && max === null
      ? z50 + a3 / 2
      : (from > 0 ? from * least : 0) +
        integral(at, from > 0 ? logOdds(from) : -FAR, to < 1 ? logOdds(to) : FAR) +
        (to < 1 ? (1 - to) * most : 0);
  return { mean, quantile, chanceBelow };
};

/** The integral of f over u, u the logistic of t from `from` to `to`: Simpson's rule on a fine grid. */
const integral = (f: (t: number) => number, from: number, to: number): number => {
  const n = 2000;
  const h = (to - from) / n;
  let sum = 0;
  for (let i = 0; i <= n; i++) {
    const t = from + i * h;
    const u = logistic(t);
    const density = u * logistic(-t);
    sum += (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2) * f(t) * density;
  }
  return (sum * h) / 3;
};
