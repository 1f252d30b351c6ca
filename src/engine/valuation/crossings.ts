/** Where a function of one number crosses zero over a range: every place, and what kind of place it is. */
import { brent, type Fn } from './roots.ts';

/** One place where f meets zero. */
export type Crossing = {
  readonly at: number;
  /** `root`: f passes through zero. `jump`: f leaps over it. `touch`: f reaches zero and turns back, or ends there. */
  readonly kind: 'root' | 'jump' | 'touch';
  /** Where f stays at zero for several points of the scan: the last of them. */
  readonly until?: number;
};

/** `always`: f is nil over the whole range. `never`: it has one sign throughout. Else how many places there are. */
export type Crossings = {
  readonly status: 'never' | 'always' | 'one' | 'several';
  readonly roots: readonly Crossing[];
  readonly signAtLow: number;
  readonly signAtHigh: number;
};

/** Where along the range a function is tried for being a straight line: unevenly, so that no pattern hides. */
const STRAIGHT_TRIES = [0, 0.0317, 0.1371, 0.2614, 0.3893, 0.5239, 0.7012, 0.8831, 1];
const GOLDEN = (Math.sqrt(5) - 1) / 2;

type Thresholds = { readonly unit: number; readonly nil: number; readonly zero: number };

/**
 * Every zero of f on [low, high], from a scan of `points` evenly spaced values, each change of sign refined by Brent.
 * A change of sign is a root only if |f| < `unit` (one money unit) on both sides of the refined place; else a jump.
 * Where |f| dips between scan points without changing sign, the dip is followed down: to a touch (|f| < unit/100),
 * to a pair of roots, or to nothing. f is taken as nil throughout when |f| < unit/100 at every point.
 * Shortcut: when f is a straight line, to 1e-9 of its size, at nine uneven points, its zero is solved for and
 * nothing is scanned; a bump that lies wholly between two of the nine would be missed.
 * Shortcut: every eighth point is looked at first; between two of them that show f further from zero than four of its
 * steps from one to the next, there and beside, it is taken not to reach zero, and nothing more is looked at.
 * Not seen: a pair of roots that leaves no dip at the scan's points.
 * Throws RangeError when low ≥ high or f is not finite: ask only where f is defined.
 */
export const crossings = (
  f: Fn,
  low: number,
  high: number,
  points = 200,
  { unit = 1 }: { readonly unit?: number } = {},
): Crossings => {
  if (!(low < high && points >= 3)) throw new RangeError('a scan needs low < high and at least three points');
  const finite: Fn = (x) => {
    const y = f(x);
    if (!Number.isFinite(y)) throw new RangeError(`the function has no finite value at ${x}`);
    return y;
  };
  const limits = { unit, nil: unit / 100, zero: unit / 1e6 };
  return straight(finite, low, high, limits) ?? scan(finite, low, high, points, limits);
};

const signOf = (y: number, zero: number): number => (Math.abs(y) <= zero ? 0 : Math.sign(y));

const conclude = (
  roots: readonly Crossing[],
  yLow: number,
  yHigh: number,
  { zero }: Thresholds,
): Crossings => ({
  status: roots.length === 0 ? 'never' : roots.length === 1 ? 'one' : 'several',
  roots,
  signAtLow: signOf(yLow, zero),
  signAtHigh: signOf(yHigh, zero),
});

const ALWAYS: Crossings = { status: 'always', roots: [], signAtLow: 0, signAtHigh: 0 };

/** The answer for a straight line, or null for anything else. */
const straight = (f: Fn, low: number, high: number, limits: Thresholds): Crossings | null => {
  const [yLow, yHigh] = [f(low), f(high)];
  let size = Math.max(Math.abs(yLow), Math.abs(yHigh));
  let bend = 0;
  for (const share of STRAIGHT_TRIES.slice(1, -1)) {
    const y = f(low + share * (high - low));
    size = Math.max(size, Math.abs(y));
    bend = Math.max(bend, Math.abs(y - (yLow + share * (yHigh - yLow))));
  }
  // What is nil everywhere is noise, and noise is never straight: it must be asked about first, at more points.
  if (size < limits.nil || bend > 1e-9 * size) return null;
  const [signLow, signHigh] = [signOf(yLow, limits.zero), signOf(yHigh, limits.zero)];
  if (signLow === signHigh) return conclude([], yLow, yHigh, limits);
  const at = signLow === 0 ? low : signHigh === 0 ? high : low + (yLow / (yLow - yHigh)) * (high - low);
  return conclude([{ at, kind: signLow * signHigh === 0 ? 'touch' : 'root' }], yLow, yHigh, limits);
};

/** Steps of f that must fit between it and zero before it is left alone. */
const CALM = 4;
/** So many points of a scan lie between two that are looked at first. */
const STRIDE = 8;

/**
 * f at the points of a scan. Where it nowhere comes near zero by its own measure, between points looked at first, a
 * straight line stands in for it.
 */
const valuesAt = (f: Fn, xs: readonly number[]): number[] => {
  const last = xs.length - 1;
  const first = [...Array(Math.ceil(last / STRIDE)).keys()].map((k) => k * STRIDE).concat(last);
  const ys = new Array<number>(xs.length).fill(0);
  for (const k of first) ys[k] = f(xs[k] as number);
  const at = (n: number): number => ys[first[n] as number] as number;
  const step = (n: number): number => (n < 1 || n >= first.length ? 0 : Math.abs(at(n) - at(n - 1)));
  for (let n = 1; n < first.length; n++) {
    const [from, to] = [first[n - 1] as number, first[n] as number];
    const [a, b] = [at(n - 1), at(n)];
    const steps = Math.max(step(n - 1), step(n), step(n + 1));
    const calm = a * b > 0 && Math.min(Math.abs(a), Math.abs(b)) > CALM * steps;
    for (let k = from + 1; k < to; k++)
      ys[k] = calm ? a + ((b - a) * (k - from)) / (to - from) : f(xs[k] as number);
  }
  return ys;
};

const scan = (f: Fn, low: number, high: number, points: number, limits: Thresholds): Crossings => {
  const xs = Array.from({ length: points }, (_, k) => low + (k / (points - 1)) * (high - low));
  const ys = valuesAt(f, xs);
  if (ys.every((y) => Math.abs(y) < limits.nil)) return ALWAYS;
  const signs = ys.map((y) => signOf(y, limits.zero));
  const x = (k: number): number => xs[k] as number;
  const found: Crossing[] = [];

  let last = -1; // the latest scan point where f is not zero
  signs.forEach((sign, k) => {
    if (sign === 0 && k < points - 1) return;
    const [from, to] = [last + 1, sign === 0 ? k : k - 1]; // the scan points since then, where it is
    const through = last >= 0 && sign !== 0 && sign !== signs[last];
    if (to >= from) {
      const place = { at: x(from), kind: through ? 'root' : 'touch' } as const;
      found.push(to > from ? { ...place, until: x(to) } : place);
    } else if (through) {
      found.push(refine(f, x(last), x(k), high - low, limits));
    }
    last = k;
  });

  const size = (k: number): number => Math.abs(ys[Math.min(Math.max(k, 0), points - 1)] as number);
  for (let k = 1; k < points - 1; k++) {
    const sameSign = signs[k] !== 0 && signs[k - 1] === signs[k] && signs[k + 1] === signs[k];
    const dips = size(k) <= size(k - 1) && size(k) < size(k + 1);
    if (sameSign && dips && mayReachZero(size, k)) {
      found.push(...followDip(f, x(k - 1), x(k + 1), high - low, limits));
    }
  }
  found.sort((a, b) => a.at - b.at);
  return conclude(found, ys[0] as number, ys.at(-1) as number, limits);
};

/** The place of a change of sign between a and b, and whether f passes or leaps there. */
const refine = (f: Fn, a: number, b: number, range: number, { unit }: Thresholds): Crossing => {
  const at = brent(f, a, b, 1e-13 * range);
  const aside = Math.max(1e-12 * range, 8 * Number.EPSILON * Math.abs(at));
  const sides = [f(Math.max(a, at - aside)), f(at), f(Math.min(b, at + aside))];
  return { at, kind: sides.every((y) => Math.abs(y) < unit) ? 'root' : 'jump' };
};

/**
 * Whether a dip at scan point k could go down to zero between the points: a curve bent upwards stays above the lines
 * through the points on either side of it, carried on towards k. (Ripples of rounding are not worth following.)
 */
const mayReachZero = (size: (k: number) => number, k: number): boolean => {
  const fromLeft = size(k - 1) - Math.max(0, size(k - 2) - size(k - 1));
  const fromRight = size(k + 1) - Math.max(0, size(k + 2) - size(k + 1));
  return (
    Math.min(fromLeft, fromRight) - Math.abs(size(k - 1) - size(k)) - Math.abs(size(k + 1) - size(k)) <= 0
  );
};

/** Golden section towards the least |f| between a and b, where f has one sign at both ends. */
const followDip = (f: Fn, a: number, b: number, range: number, limits: Thresholds): Crossing[] => {
  const sign = Math.sign(f(a));
  let [left, right] = [a, b];
  let [p, q] = [right - GOLDEN * (right - left), left + GOLDEN * (right - left)];
  let [yp, yq] = [sign * f(p), sign * f(q)];
  while (right - left > 1e-12 * range && Math.min(yp, yq) > 0) {
    if (yp < yq) {
      [right, q, yq] = [q, p, yp];
      p = right - GOLDEN * (right - left);
      yp = sign * f(p);
    } else {
      [left, p, yp] = [p, q, yq];
      q = left + GOLDEN * (right - left);
      yq = sign * f(q);
    }
  }
  const [bottom, least] = yp < yq ? [p, yp] : [q, yq];
  if (least < -limits.zero) return [refine(f, a, bottom, range, limits), refine(f, bottom, b, range, limits)];
  return least < limits.nil ? [{ at: bottom, kind: 'touch' }] : [];
};
