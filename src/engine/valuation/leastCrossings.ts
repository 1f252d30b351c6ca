/** Where the least cost of one side meets the least cost of the other as one number moves: looked at only where it may. */
import type { Crossing } from './crossings.ts';
import { brent } from './roots.ts';

/** What each way of two sides costs at one value of a number. */
export interface Rivals {
  /** Names the ways that are open, in order: costs are compared only between values at which the same ones are. */
  readonly open: string;
  readonly first: readonly number[];
  readonly second: readonly number[];
  /** Least cost of the second side less that of the first, or what stands for it where a side is not open. */
  readonly lead: number;
}

interface Point {
  readonly x: number;
  readonly at: Rivals;
}

/** Where between two points a third is looked at: off the middle, so that no symmetry hides a bend. */
const ASIDE = 0.4375;
/** A line is straight when the point between lies on it to this part of its size. */
const STRAIGHT = 1e-9;
/** Bends that must fit between the lead and zero before a stretch is left alone, or into its rise before it is solved. */
const CALM = 4;
/** A stretch is halved so often at most: past that, what changes its sign there is a jump. */
const DEEPEST = 16;

const between = (a: Point, b: Point, x: number, ofA: number, ofB: number): number =>
  ofA + ((ofB - ofA) * (x - a.x)) / (b.x - a.x);

const onLine = (a: Point, m: Point, b: Point, side: (at: Rivals) => readonly number[]): boolean =>
  side(m.at).every((cost, i) => {
    const [ofA, ofB] = [side(a.at)[i] as number, side(b.at)[i] as number];
    return (
      Math.abs(cost - between(a, b, m.x, ofA, ofB)) <=
      STRAIGHT * Math.max(Math.abs(cost), Math.abs(ofA), Math.abs(ofB))
    );
  });

const first = (at: Rivals): readonly number[] => at.first;
const second = (at: Rivals): readonly number[] => at.second;

/** The same ways are open at all three points, each a straight line through them. */
const isStraight = (a: Point, m: Point, b: Point): boolean =>
  a.at.open === m.at.open &&
  m.at.open === b.at.open &&
  a.at.first.length > 0 &&
  a.at.second.length > 0 &&
  onLine(a, m, b, first) &&
  onLine(a, m, b, second);

/** Where straight lines say that the least of one side meets the least of the other, rising. */
const meetings = (a: Point, b: Point): number[] => {
  const least = (side: (at: Rivals) => readonly number[], x: number): number =>
    Math.min(...side(a.at).map((cost, i) => between(a, b, x, cost, side(b.at)[i] as number)));
  const found: number[] = [];
  a.at.first.forEach((firstA, i) => {
    a.at.second.forEach((secondA, j) => {
      const apartA = secondA - firstA;
      const apartB = (b.at.second[j] as number) - (b.at.first[i] as number);
      if (apartA === apartB || apartA * apartB > 0) return;
      const x = a.x + ((b.x - a.x) * apartA) / (apartA - apartB);
      const cost = between(a, b, x, firstA, b.at.first[i] as number);
      const within = 1e-9 * Math.abs(cost);
      if (least(first, x) >= cost - within && least(second, x) >= cost - within) found.push(x);
    });
  });
  return found.sort((p, q) => p - q).filter((x, k) => k === 0 || x > (found[k - 1] as number));
};

/**
 * Every place where the lead changes sign over the values looked at, the first and the last included: a root where it is
 * less than `unit` there, else a jump. Where every way is a straight line between two values the place is divided out; a
 * stretch that bends is halved until it keeps clear of zero by its own bend, or passes it by more, or is shorter than
 * `finest`.
 * Not seen: what bends and straightens again wholly between values looked at, what touches zero without crossing it, and
 * what is steeper between two values far from zero than between any two at the beginning.
 *
 * @param f what the ways cost; finite wherever it is asked
 * @param seeds values to begin with, rising, two at least; where all ways are straight through them, no other is asked
 * @param finest a shorter stretch that bends and changes its sign crosses zero once
 * @returns null where a value looked at lies on zero: then every value has to be looked at, by `crossings`
 */
export const leastCrossings = (
  f: (x: number) => Rivals,
  seeds: readonly number[],
  { unit, finest }: { readonly unit: number; readonly finest: number },
): Crossing[] | null => {
  const known = new Map<number, Rivals>();
  const look = (x: number): Point => {
    const at = known.get(x) ?? f(x);
    known.set(x, at);
    return { x, at };
  };
  const lead = (x: number): number => look(x).at.lead;
  const points = seeds.map(look);
  const [low, high] = [points[0] as Point, points.at(-1) as Point];
  const range = high.x - low.x;
  const zero = unit / 1e6;
  const found: Crossing[] = [];
  let touches = points.some(({ at }) => Math.abs(at.lead) <= zero);

  /** One place between two values of opposite sign, and whether the lead passes or leaps there. */
  const refine = (a: number, b: number): void => {
    const at = brent(lead, a, b, 1e-13 * range);
    const aside = Math.max(1e-12 * range, 8 * Number.EPSILON * Math.abs(at));
    const beside = [lead(Math.max(a, at - aside)), lead(at), lead(Math.min(b, at + aside))];
    found.push({ at, kind: beside.every((y) => Math.abs(y) < unit) ? 'root' : 'jump' });
  };

  const straight = (a: Point, b: Point): void => {
    const places = meetings(a, b);
    // Between two meetings the lead keeps its sign; what stands there says whether it changed.
    const stops = [a.x, ...places.slice(1).map((x, k) => (x + (places[k] as number)) / 2), b.x];
    places.forEach((x, k) => {
      const [from, to] = [stops[k] as number, stops[k + 1] as number];
      if (lead(from) * lead(to) >= 0) return;
      if (Math.abs(lead(x)) <= zero) found.push({ at: x, kind: 'root' });
      else refine(from, to);
    });
  };

  /** As steep as the lead is between any two values at the beginning. */
  const steepest = Math.max(
    ...points.slice(1).map((b, k) => {
      const a = points[k] as Point;
      return Math.abs(b.at.lead - a.at.lead) / (b.x - a.x);
    }),
  );
  /** Of one sign at both ends, and twice as far from zero as the steepest way down between them would lead. */
  const isFar = (a: Point, b: Point): boolean =>
    a.at.lead * b.at.lead > 0 && Math.min(Math.abs(a.at.lead), Math.abs(b.at.lead)) > steepest * (b.x - a.x);

  const walk = (a: Point, b: Point, depth: number): void => {
    if (isFar(a, b)) return;
    const m = look(a.x + ASIDE * (b.x - a.x));
    if (Math.abs(m.at.lead) <= zero) touches = true;
    if (touches) return;
    if (isStraight(a, m, b)) {
      straight(a, b);
      return;
    }
    const [ofA, ofM, ofB] = [a.at.lead, m.at.lead, b.at.lead];
    const bend = Math.abs(ofM - between(a, b, m.x, ofA, ofB));
    const turns = ofA * ofB < 0;
    const oneSign = !turns && ofA * ofM > 0;
    if (oneSign && Math.min(Math.abs(ofA), Math.abs(ofM), Math.abs(ofB)) > CALM * bend) return;
    // Where it bends little beside what it rises or falls, it crosses zero once.
    if (turns && (CALM * bend < Math.abs(ofB - ofA) || b.x - a.x < finest || depth === 0)) {
      refine(a.x, b.x);
      return;
    }
    if (depth === 0) return;
    walk(a, m, depth - 1);
    walk(m, b, depth - 1);
  };

  if (points.slice(1, -1).every((m) => isStraight(low, m, high))) straight(low, high);
  else
    points.slice(1).forEach((b, k) => {
      walk(points[k] as Point, b, DEEPEST);
    });
  return touches ? null : found;
};
