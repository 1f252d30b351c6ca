import { type Range, rangeLaw } from '../../quantity/range.ts';
import type { Bounds, Spec } from '../inputs/specs.ts';
import { limits, significant, type Units } from '../inputs/units.ts';
import { showValue } from '../text/problems.ts';
import type { Fault } from './measure.ts';

const THREE = ['low', 'likely', 'high'] as const;
const ENDS = ['min', 'max'] as const;
/** The keys of a range: its 10, 50 and 90 % points, and the least and most it can be. */
export const POINTS = [...THREE, ...ENDS] as const;

type Point = (typeof POINTS)[number];

/** Whether a key belongs to a range. */
export const isPoint = (key: string): boolean => (POINTS as readonly string[]).includes(key);

/** A range in another unit; `factor` is above nil. */
export const rangeTimes = ({ low, likely, high, min, max }: Range, factor: number): Range => {
  const by = (x: number): number => significant(x * factor, 12);
  return {
    low: by(low),
    likely: by(likely),
    high: by(high),
    min: min === null ? null : by(min),
    max: max === null ? null : by(max),
  };
};

/** One point as it was read: in the household's unit, and the unit it was written in. */
interface Measured {
  readonly value: number;
  readonly unit: string;
}

/** The number and its range: the mean of its law, to six digits, whole where the number must be. */
interface Read extends Measured {
  readonly range: Range;
}

const NATURE: Bounds = { min: 0, max: null };

const fault = (at: Point, value: unknown, message: string, remedy: string): Fault => ({
  at,
  kind: 'not a range',
  value,
  message,
  remedy,
});

/** Points that are missing, or cannot be read. */
const unread = (
  raw: Readonly<Record<string, unknown>>,
  read: (value: unknown) => Measured | Fault,
): { readonly found: Partial<Record<Point, Measured>>; readonly faults: Fault[] } => {
  const found: Partial<Record<Point, Measured>> = {};
  const faults: Fault[] = [];
  for (const point of POINTS) {
    const value = raw[point];
    if (value === undefined) {
      if (point === 'low' || point === 'likely' || point === 'high')
        faults.push({
          at: point,
          kind: 'missing',
          message: `"${point}" of the range is missing.`,
          remedy: 'A range has three points: low (one in ten is lower), likely (the middle) and high.',
        });
      continue;
    }
    const one = read(value);
    if ('message' in one) faults.push({ ...one, at: point });
    else found[point] = one;
  }
  return { found, faults };
};

const RISE =
  'Write the lowest first: low (one in ten is lower), likely (the middle), high (one in ten is higher).';

/** Points in the wrong order, or against an end of the range. */
const misplaced = (raw: Readonly<Record<string, unknown>>, range: Range, natural: Bounds): Fault[] => {
  const { low, likely, high, min, max } = range;
  const shown = (point: Point): string => showValue(raw[point]);
  if (likely < low) return [fault('likely', raw.likely, 'The likely value lies below the low one.', RISE)];
  if (high < likely) return [fault('high', raw.high, 'The high value lies below the likely one.', RISE)];
  if (low === high) return [];
  if (low === likely || likely === high)
    return [
      fault(
        low === likely ? 'likely' : 'high',
        low === likely ? raw.likely : raw.high,
        'Two of the three points are the same and the third is not.',
        'Set them apart, or give one number.',
      ),
    ];
  const least = raw.min === undefined ? 'the least this can be' : `"min: ${shown('min')}"`;
  const most = raw.max === undefined ? 'the most this can be' : `"max: ${shown('max')}"`;
  const apart = 'One in ten must lie beyond it: move it in, or move the end out.';
  if (min !== null && low <= min)
    return [
      fault(
        'low',
        raw.low,
        `The low value lies at or below ${least}.`,
        raw.min === undefined && natural.min === 0
          ? 'One in ten lies below it: write a little above 0.'
          : apart,
      ),
    ];
  if (max !== null && high >= max)
    return [
      fault(
        'high',
        raw.high,
        `The high value lies at or above ${most}.`,
        raw.max === undefined ? 'One in ten lies above it: write a little less.' : apart,
      ),
    ];
  return [];
};

/** The law of a range that is in order, or why it has none. */
const lawOf = (range: Range, spec: Spec, units: Units, unit: string): Read | Fault[] => {
  const law = rangeLaw(range);
  if ('refused' in law)
    return [
      {
        kind: 'not a range',
        message: 'The likely value lies too close to one end for three points to make one hump.',
        remedy: 'Move it towards the middle, or move the far point in; "max:" or "min:" may cut a long tail.',
      },
    ];
  const mean = spec.integer ? Math.round(law.mean) : significant(law.mean, 6);
  const { min, max } = limits(spec, units);
  if (mean < min || mean > max) {
    const [shown, least, most] =
      spec.unit === 'share' || spec.unit === 'rate a year'
        ? [mean * 100, min * 100, max * 100]
        : [mean, min, max];
    return [
      {
        kind: 'out of range',
        message: `The average of this range is ${significant(shown, 4)}.`,
        remedy: `Allowed: ${least} to ${most}; "max:" may cut a long tail.`,
      },
    ];
  }
  return { value: mean, unit, range };
};

/**
 * Reads the points of a range, each as `read` reads a number. Bounds are nature's unless `min` or `max` say more.
 * All faults of the points at once; of their order, the first.
 */
export const rangeOf = (
  raw: Readonly<Record<string, unknown>>,
  spec: Spec,
  units: Units,
  read: (value: unknown) => Measured | Fault,
): Read | Fault[] => {
  const { found, faults } = unread(raw, read);
  const { low, likely, high, min, max } = found;
  if (faults.length > 0 || !low || !likely || !high) return faults;
  const strange = POINTS.find((point) => found[point] && found[point].unit !== likely.unit);
  if (strange)
    return [
      {
        at: strange,
        kind: 'wrong unit',
        value: raw[strange],
        message: 'The points of this range are in different units.',
        remedy: 'Write all of them in one.',
      },
    ];
  const natural = spec.bounds ?? NATURE;
  const range: Range = {
    low: low.value,
    likely: likely.value,
    high: high.value,
    min: min?.value ?? natural.min,
    max: max?.value ?? natural.max,
  };
  const wrong = misplaced(raw, range, natural);
  return wrong.length > 0 ? wrong : lawOf(range, spec, units, likely.unit);
};
