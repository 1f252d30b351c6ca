import type { DetailDraws } from './cashDraws.ts';
import type { ScrambleDraws } from './draws.ts';

type Column = Float64Array | Float32Array | Int16Array | Uint8Array;

const after = <T extends Column>(first: T, further: T): T => {
  const whole = new (first.constructor as new (length: number) => T)(first.length + further.length);
  whole.set(first);
  whole.set(further, first.length);
  return whole;
};

const eachAfter = <T extends Column>(first: readonly T[], further: readonly T[]): T[] =>
  first.map((column, i) => after(column, further[i] as T));

const detailAfter = (first: DetailDraws, further: DetailDraws): DetailDraws => ({
  worstMonth: after(first.worstMonth, further.worstMonth),
  worstYear: after(first.worstYear, further.worstYear),
  worstBill: after(first.worstBill, further.worstBill),
  fan: after(first.fan, further.fan),
  needed: after(first.needed, further.needed),
  dryIn: after(first.dryIn, further.dryIn),
  incomeDry: after(first.incomeDry, further.incomeDry),
  stopsFirstYear: after(first.stopsFirstYear, further.stopsFirstYear),
  stops: after(first.stops, further.stops),
  days: after(first.days, further.days),
});

/**
 * Two runs of one scramble as one: `further` is of the same scenario, seed and scramble and starts where `first` ends.
 * Drawing both apart and drawing them at once give the same.
 */
export const joinDraws = (first: ScrambleDraws, further: ScrambleDraws): ScrambleDraws => {
  if (first.seed !== further.seed || first.scramble !== further.scramble || first.to !== further.from)
    throw new RangeError('These draws do not follow each other');
  return {
    seed: first.seed,
    scramble: first.scramble,
    from: first.from,
    to: further.to,
    costs: eachAfter(first.costs, further.costs),
    details: first.details.map((detail, i) => {
      const next = further.details[i] ?? null;
      return detail && next ? detailAfter(detail, next) : null;
    }),
    walkedIn: after(first.walkedIn, further.walkedIn),
    ranged: eachAfter(first.ranged, further.ranged),
    turns: eachAfter(first.turns, further.turns),
    firstFailure: eachAfter(first.firstFailure, further.firstFailure),
    failures: eachAfter(first.failures, further.failures),
    expected: eachAfter(first.expected, further.expected),
    events: eachAfter(first.events, further.events),
    mixed: {
      own: after(first.mixed.own, further.mixed.own),
      other: after(first.mixed.other, further.mixed.other),
      groups: eachAfter(first.mixed.groups, further.mixed.groups),
    },
  };
};
