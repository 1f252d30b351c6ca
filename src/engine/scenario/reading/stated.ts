import type { Range } from '../../quantity/range.ts';
import type { Mark } from '../inputs/scenario.ts';
import type { Spec } from '../inputs/specs.ts';
import { limits, significant, type Units } from '../inputs/units.ts';
import { nearest } from '../text/nearest.ts';
import { showValue } from '../text/problems.ts';
import { type Fault, measure, unitWords } from './measure.ts';
import { isPoint, POINTS, rangeOf, rangeTimes } from './statedRange.ts';

/** One number as the file states it: in the household's unit, rates and shares as fractions. */
export interface Stated {
  /** The mean of the range where one is given. */
  readonly value: number;
  readonly range: Range | null;
  /** The unit as written, for energy only: "before|after". */
  readonly unit: string;
  /** Whose number it is, where the file says so. */
  readonly how: Mark | null;
  readonly source: string;
  readonly note: string;
}

/** The same number in another unit, its range with it; `factor` is above nil. */
export const times = (stated: Stated, factor: number): Stated =>
  factor === 1
    ? stated
    : {
        ...stated,
        value: significant(stated.value * factor, 12),
        range: stated.range && rangeTimes(stated.range, factor),
      };

const SAID = ['how', 'source', 'note'] as const;
const KEYS = ['value', ...SAID] as const;
const HOW = ['quoted', 'measured', 'guess'] as const;

const isFraction = (spec: Spec): boolean => spec.unit === 'share' || spec.unit === 'rate a year';

/** A percentage as a fraction, without the dust of binary division: 8.9 gives 0.089. */
const fraction = (percent: number): number => Number((percent / 100).toPrecision(15));

/** The range in words a reader can act on: "0 to 50 %". */
export const rangeWords = (spec: Spec, units: Units): string => {
  const { min, max } = limits(spec, units);
  if (isFraction(spec)) return `${min * 100} to ${max * 100} %`;
  const plain = ['months', 'weeks', 'days', 'years', 'hours'].includes(spec.unit) ? ` ${spec.unit}` : '';
  const unit = spec.unit.startsWith('distance') ? ` ${units.distance}` : plain;
  return `${min} to ${max}${unit}`;
};

const NOTHING_SAID = { range: null, how: null, source: '', note: '' } as const;

const number = (raw: number | string, spec: Spec, units: Units): Stated | Fault => {
  const read = measure(raw, spec, units);
  if ('message' in read) return read;
  const value = isFraction(spec) ? fraction(read.value) : read.value;
  if (!Number.isFinite(value))
    return {
      kind: 'not a number',
      value: raw,
      message: `${showValue(raw)} is not a number that can be counted with.`,
      remedy: `Allowed: ${rangeWords(spec, units)}.`,
    };
  const { min, max } = limits(spec, units);
  if (value < min || value > max)
    return {
      kind: 'out of range',
      value: raw,
      message: `${showValue(raw)} is out of range.`,
      remedy: `Allowed: ${rangeWords(spec, units)}.`,
    };
  if (spec.integer && !Number.isInteger(value))
    return {
      kind: 'not whole',
      value: raw,
      message: `${showValue(raw)} is not a whole number${spec.unit === 'factor' ? '' : ` of ${spec.unit}`}.`,
      remedy: `Allowed: whole numbers, ${rangeWords(spec, units)}.`,
    };
  return { ...NOTHING_SAID, value, unit: read.unit };
};

const wrongShape = (raw: unknown, spec: Spec, units: Units): Fault => ({
  kind: 'wrong shape',
  ...(raw === null ? {} : { value: raw }),
  message: raw === null ? 'Nothing is written here.' : `${showValue(raw)} is not a number.`,
  remedy:
    raw === null
      ? 'Give a value, or take the line out.'
      : `Give ${unitWords(spec, units)}, or {value, how, source}${spec.exact === undefined ? ', or {low, likely, high}' : ''}.`,
});

const word = (raw: unknown, key: string): string | Fault =>
  raw === undefined
    ? ''
    : typeof raw === 'string' || typeof raw === 'number'
      ? String(raw)
      : {
          at: key,
          kind: 'wrong shape',
          value: raw,
          message: `${showValue(raw)} is not a text.`,
          remedy: 'Write it in words.',
        };

/** Reads `{value, how, source, note}`, or a range in the place of the value. */
const annotated = (raw: Readonly<Record<string, unknown>>, spec: Spec, units: Units): Stated | Fault[] => {
  const keys = Object.keys(raw);
  const ranged = keys.some(isPoint);
  if (ranged && spec.exact !== undefined) return [oneNumber(spec, units)];
  const allowed: readonly string[] = ranged ? [...POINTS, ...SAID] : KEYS;
  const faults: Fault[] = keys.filter((key) => !allowed.includes(key)).map((key) => unknownKey(key, allowed));
  const source = word(raw.source, 'source');
  const note = word(raw.note, 'note');
  const how = HOW.find((name) => name === raw.how);
  if (typeof source !== 'string') faults.push(source);
  if (typeof note !== 'string') faults.push(note);
  if (raw.how !== undefined && !how)
    faults.push({
      at: 'how',
      kind: 'not one of',
      value: raw.how,
      message: `"${showValue(raw.how)}" does not say whose number it is.`,
      remedy: `Allowed: ${HOW.join(', ')}.`,
    });
  const read = ranged
    ? rangeOf(raw, spec, units, (value) => plain(value, spec, units))
    : behindValue(raw.value, spec, units);
  if (Array.isArray(read)) return [...faults, ...read];
  if (faults.length > 0 || typeof source !== 'string' || typeof note !== 'string') return faults;
  return {
    ...NOTHING_SAID,
    ...(read as Pick<Stated, 'value' | 'unit' | 'range'>),
    how: how ?? null,
    source,
    note,
  };
};

const oneNumber = (spec: Spec, units: Units): Fault => ({
  kind: 'one number',
  message: `A range does not belong here: ${spec.exact}.`,
  remedy: `Give ${unitWords(spec, units)}.`,
});

const unknownKey = (key: string, allowed: readonly string[]): Fault => {
  if (key === 'value')
    return {
      at: key,
      kind: 'either or',
      message: 'A value and a range are both given.',
      remedy: 'Keep one: the average of a range is worked out from it.',
    };
  const near = nearest(key, allowed);
  return {
    at: key,
    kind: 'unknown key',
    message: `"${showValue(key)}" is not a key here.`,
    remedy: near ? `Did you mean "${near}"?` : `Keys here: ${allowed.join(', ')}.`,
  };
};

/** What stands behind "value:". */
const behindValue = (value: unknown, spec: Spec, units: Units): Stated | Fault[] => {
  if (value === undefined)
    return [{ kind: 'missing', at: 'value', message: 'The value is missing.', remedy: 'Write "value:".' }];
  const read = plain(value, spec, units);
  return 'message' in read ? [{ ...read, at: 'value' }] : read;
};

/** The figure that stands for a quantity as written: its value, or the likely point of its range. */
export const mainFigure = (raw: unknown): unknown => {
  if (raw === null || typeof raw !== 'object' || Array.isArray(raw)) return raw;
  return 'value' in raw ? raw.value : 'likely' in raw ? raw.likely : raw;
};

/** A number, or a text with its unit. */
const plain = (raw: unknown, spec: Spec, units: Units): Stated | Fault =>
  typeof raw === 'number' || typeof raw === 'string'
    ? number(raw, spec, units)
    : wrongShape(raw, spec, units);

/**
 * Reads one quantity from what the file holds there: a number, a text with a unit, `{value, how, source, note}`, or a
 * range `{low, likely, high}` with the same said about it. Every fault of it at once.
 */
export const stated = (raw: unknown, spec: Spec, units: Units): Stated | Fault[] => {
  if (raw !== null && typeof raw === 'object' && !Array.isArray(raw))
    return annotated(raw as Record<string, unknown>, spec, units);
  const read = plain(raw, spec, units);
  return 'message' in read ? [read] : read;
};
