import type { Quantity } from '../scenario/inputs/scenario.ts';
import { type Crossings, crossings } from '../valuation/crossings.ts';
import { integerFlips } from '../valuation/integerFlips.ts';
import { leastCrossings, type Rivals } from '../valuation/leastCrossings.ts';
import { howFar } from './relativeDistance.ts';
import type { BreakEven, BreakEvenStatus } from './sensitivityView.ts';

/** D as a function of one input, all others held. */
export type DifferenceAt = (value: number) => number;

/** What every way of both sides costs as a function of one input, all others held; its lead is D. */
export type RivalsAt = (value: number) => Rivals;

type Root = BreakEven['roots'][number];
interface Found {
  readonly at: number;
  readonly kind: Root['kind'];
}

interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly points: number;
}

/**
 * The schema's ranges are wide (a price may be half a million), and what a reader asks about lies near today's value:
 * of the 200 points of a scan, most go to the stretch up to four times today's value, and the rest beyond it.
 */
const stretches = ({ min, max, value }: Quantity): Stretch[] => {
  const near = value > 0 ? value * 4 : max;
  return near > min && near < max / 2
    ? [
        { low: min, high: near, points: 140 },
        { low: near, high: max, points: 60 },
      ]
    : [{ low: min, high: max, points: 200 }];
};

/** Where the search begins: most of the values where they matter, near today's, and a fifth either way among them. */
const seedsOf = ({ min, max, value }: Quantity): number[] => {
  const near = value > 0 ? [0.3, 1 / 1.2, 1.2, 2.2, 4].map((times) => times * value) : [];
  const far = [0.03, 0.35].map((part) => min + part * (max - min));
  return [min, value, ...near, ...far, max]
    .filter((x) => x >= min && x <= max)
    .sort((a, b) => a - b)
    .filter((x, i, all) => i === 0 || x - (all[i - 1] as number) > 1e-9 * (max - min));
};

/** The step of the full scan near today's value. */
const finestOf = (quantity: Quantity): number => {
  const [{ low, high, points }] = stretches(quantity) as [Stretch];
  return (high - low) / points;
};

const continuous = (
  quantity: Quantity,
  rivals: RivalsAt,
  unit: number,
): { status: BreakEvenStatus; found: Found[] } => {
  const found = leastCrossings(rivals, seedsOf(quantity), { unit, finest: finestOf(quantity) });
  return found
    ? { status: statusOf(found.length), found }
    : everywhere(quantity, (x) => rivals(x).lead, unit);
};

/** The same by looking at every point of a scan: for what lies on zero, and for tests. */
export const everywhere = (
  quantity: Quantity,
  f: DifferenceAt,
  unit: number,
): { status: BreakEvenStatus; found: Found[] } => {
  const scans: Crossings[] = stretches(quantity).map(({ low, high, points }) =>
    crossings(f, low, high, points, { unit }),
  );
  if (scans.every((scan) => scan.status === 'always')) return { status: 'always', found: [] };
  const found = atSeams(
    scans.flatMap((scan) => scan.roots),
    quantity,
    f,
  );
  return { status: statusOf(found.length), found };
};

/** A zero where two stretches meet ends both of them: it is one, and a root where the sign differs on its sides. */
const atSeams = (found: readonly Found[], { min, max }: Quantity, f: DifferenceAt): Found[] =>
  found.flatMap((here, i) => {
    if (found[i - 1]?.at === here.at) return [];
    if (found[i + 1]?.at !== here.at) return [here];
    const aside = (max - min) * 1e-9;
    const through = Math.sign(f(here.at - aside)) !== Math.sign(f(here.at + aside));
    return [{ at: here.at, kind: through ? ('root' as const) : here.kind }];
  });

/** Every so many whole numbers are looked at first. */
const STRIDE = 5;
/** Where D is so many times the most that it moves within a stride nearby, those in between are left out. */
const CLEAR = 3;
/** Strides to either side that are near. */
const NEARBY = 3;

/**
 * The whole numbers that are tried: every one near a change of sign, or near enough to one that it might hide there; else
 * every few.
 */
const wholeValues = ({ min, max, value }: Quantity, f: DifferenceAt): number[] => {
  const count = Math.floor((max - min) / STRIDE);
  const ends = [...Array.from({ length: count + 1 }, (_, i) => min + i * STRIDE), max];
  const looked = [...new Set([...ends, value])].sort((a, b) => a - b);
  const steps = looked.slice(1).map((to, i) => Math.abs(f(to) - f(looked[i] as number)));
  return looked.flatMap((from, i) => {
    const to = looked[i + 1];
    if (to === undefined) return [from];
    const [a, b] = [f(from), f(to)];
    const most = Math.max(...steps.slice(Math.max(0, i - NEARBY), i + NEARBY + 1));
    const clear = a * b > 0 && Math.min(Math.abs(a), Math.abs(b)) > CLEAR * most;
    return clear ? [from] : Array.from({ length: to - from }, (_, k) => from + k);
  });
};

const whole = (
  quantity: Quantity,
  f: DifferenceAt,
  unit: number,
): { status: BreakEvenStatus; found: Found[] } => {
  const { status, flips } = integerFlips(f, wholeValues(quantity, f), unit);
  if (status === 'always') return { status, found: [] };
  // It flips between two whole numbers: the one on the far side from today's value is where the answer is another.
  const found = flips.map(({ from, to }) => ({
    at: quantity.value >= to ? from : to,
    kind: 'jump' as const,
  }));
  return { status: statusOf(found.length), found };
};

/** In how many places it tips, in a word. */
export const statusOf = (count: number): BreakEvenStatus =>
  count === 0 ? 'never' : count === 1 ? 'one' : 'several';

/** Who is cheaper just above a root: looked up halfway to the next one, or to the end of the range. */
const sideAbove = (at: number, next: number, integer: boolean, f: DifferenceAt): Root['above'] => {
  const between = integer ? Math.min(next, at + 1) : at + (next - at) / 2;
  return f(between) >= 0 ? 'keep' : 'replace';
};

/**
 * Where the answer tips when one number moves and all others stay: every root in the schema's range, the nearest to
 * today's value first. Integer inputs are tried at every value where the answer may turn.
 *
 * @param unit the least difference that counts as one, in currency units
 */
export const breakEvenOf = (quantity: Quantity, rivals: RivalsAt, unit: number): BreakEven => {
  const f: DifferenceAt = (value) => rivals(value).lead;
  const { status, found } = quantity.integer ? whole(quantity, f, unit) : continuous(quantity, rivals, unit);
  const sorted = [...found].sort((a, b) => a.at - b.at);
  const roots = sorted
    .map(({ at, kind }, i) => ({
      at,
      kind,
      distance: howFar(quantity, at),
      above: sideAbove(at, sorted[i + 1]?.at ?? quantity.max, quantity.integer, f),
    }))
    .sort((a, b) => Math.abs(a.distance) - Math.abs(b.distance) || a.at - b.at);
  return { quantity, status, roots, slope: slopeAt(quantity, f) };
};

/** D's change per unit of the quantity at today's value, from a small step either way within the range. */
const slopeAt = ({ value, min, max, integer }: Quantity, f: DifferenceAt): number => {
  const step = integer ? 1 : Math.max(Math.abs(value) * 0.005, (max - min) * 1e-7);
  const low = Math.max(min, value - step);
  const high = Math.min(max, value + step);
  return high > low ? (f(high) - f(low)) / (high - low) : 0;
};

/** Tips that lie as far apart as this are equally far: the last digit of a root decides no order. */
const EQUALLY_FAR = 1e-9;

/** The number that tips nearest to today's value first; of equally near ones by key. */
export const byNearness = (a: BreakEven, b: BreakEven): number => {
  const [near, far] = [nearestTip(a), nearestTip(b)];
  return near === far || Math.abs(near - far) < EQUALLY_FAR
    ? a.quantity.key < b.quantity.key
      ? -1
      : 1
    : near - far;
};

/**
 * How far today's value is from the nearest place where the answer tips (see `howFar`); Infinity if it never does. Where
 * the two ways only touch, nothing tips.
 */
export const nearestTip = ({ roots }: BreakEven): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...roots.flatMap(({ kind, distance }) => (kind === 'touch' ? [] : [Math.abs(distance)])),
  );
