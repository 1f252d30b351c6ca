/**
 * A number nobody knows exactly: its 10, 50 and 90 % points, as a three-term metalog in quantile form.
 * Source: Keelin, "The Metalog Distributions", Decision Analysis 13(4), 2016; the closed form is from memory.
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

/** Beyond this |a3|/a2 a three-term metalog is no distribution. */
const FEASIBLE = 1.66711;
/** A law with only a lower bound can have no mean: beyond this point its mass is put on the point. */
const CUT = 0.995;
const LN9 = Math.log(9);

const logistic = (t: number): number => 1 / (1 + Math.exp(-t));

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

/** Why three points are no range; null when they are one. */
const refusal = ({ low, likely, high, min, max }: Range): string | null => {
  if (!(low <= likely && likely <= high)) return 'low, likely and high must rise';
  if (low === high) return null;
  if (low === likely || likely === high) return 'two of the three points are the same, the third is not';
  if (min !== null && low <= min) return `low must lie above ${min}, the least it can be`;
  if (max !== null && high >= max) return `high must lie below ${max}, the most it can be`;
  return null;
};

/**
 * The law of a range, or why there is none. Three equal points are a constant. Bounded below alone it is cut at its
 * 99.5 % point; mean, quantile and chance are those of the cut law.
 */
export const rangeLaw = (range: Range): RangeLaw | { readonly refused: string } => {
  const refused = refusal(range);
  if (refused !== null) return { refused };
  if (range.low === range.high) return constant(range.likely);
  const scale = scaleOf(range.min, range.max);
  const [z10, z50, z90] = [scale.to(range.low), scale.to(range.likely), scale.to(range.high)];
  const a2 = (z90 - z10) / (2 * LN9);
  const a3 = (z90 + z10 - 2 * z50) / (0.8 * LN9);
  if (Math.abs(a3) / a2 >= FEASIBLE)
    return {
      refused: 'the likely value lies too close to one end for a range of one hump',
    };
  const cut = range.min !== null && range.max === null;
  /** The unbounded quantile at the log odds t of u. */
  const z = (t: number): number => z50 + a2 * t + a3 * (logistic(t) - 0.5) * t;
  const quantile = (u: number): number => {
    const at = cut ? Math.min(u, CUT) : u;
    if (at <= 0) return range.min ?? Number.NEGATIVE_INFINITY;
    if (at >= 1) return range.max ?? Number.POSITIVE_INFINITY;
    return scale.from(z(Math.log(at / (1 - at))));
  };
  const top = quantile(CUT);
  const chanceBelow = (x: number): number => {
    if (cut && x > top) return 1;
    if (range.min !== null && x <= range.min) return 0;
    if (range.max !== null && x >= range.max) return 1;
    const wanted = scale.to(x);
    let [below, above] = [-750, 750];
    for (let i = 0; i < 100; i++) {
      const middle = (below + above) / 2;
      if (z(middle) < wanted) below = middle;
      else above = middle;
    }
    return logistic((below + above) / 2);
  };
  // Without bounds the mean is known; with them it is the integral of the quantile over u, in log odds.
  const mean =
    range.min === null && range.max === null
      ? z50 + a3 / 2
      : cut
        ? integral((t) => scale.from(z(t)), -40, Math.log(CUT / (1 - CUT))) + (1 - CUT) * top
        : integral((t) => scale.from(z(t)), -40, 40);
  return { mean, quantile, chanceBelow };
};

/** The integral of f over u, u the logistic of t from `from` to `to`: Simpson's rule on a fine grid. */
const integral = (f: (t: number) => number, from: number, to: number): number => {
  const n = 4000;
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
