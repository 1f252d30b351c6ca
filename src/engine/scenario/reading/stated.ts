import { nearest } from '../nearest.ts';
import { showValue } from '../problems.ts';
import type { Mark } from '../scenario.ts';
import type { Spec } from '../specs.ts';
import { limits, type Units } from '../units.ts';
import { type Fault, measure, unitWords } from './measure.ts';

/** One number as the file states it: in the household's unit, rates and shares as fractions. */
export interface Stated {
  readonly value: number;
  /** The unit as written, for energy only: "before|after". */
  readonly unit: string;
  /** Whose number it is, where the file says so. */
  readonly how: Mark | null;
  readonly source: string;
  readonly note: string;
}

const KEYS = ['value', 'how', 'source', 'note'] as const;
const HOW = ['quoted', 'measured', 'guess'] as const;
const RANGE = ['low', 'likely', 'high', 'min', 'max'];

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
      message: `${showValue(raw)} is not a whole number of ${spec.unit}.`,
      remedy: `Allowed: whole numbers, ${rangeWords(spec, units)}.`,
    };
  return { value, unit: read.unit, how: null, source: '', note: '' };
};

const wrongShape = (raw: unknown, spec: Spec, units: Units): Fault => ({
  kind: 'wrong shape',
  ...(raw === null ? {} : { value: raw }),
  message: raw === null ? 'Nothing is written here.' : `${showValue(raw)} is not a number.`,
  remedy:
    raw === null
      ? 'Give a value, or take the line out.'
      : `Give ${unitWords(spec, units)}, or {value, how, source}.`,
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

/** Reads `{value, how, source, note}`. */
const annotated = (raw: Readonly<Record<string, unknown>>, spec: Spec, units: Units): Stated | Fault[] => {
  const keys = Object.keys(raw);
  if (keys.some((key) => RANGE.includes(key)))
    return [
      {
        kind: 'range not read',
        message: 'Ranges are not read yet.',
        remedy: 'Give one number: the average you expect.',
      },
    ];
  const faults: Fault[] = keys
    .filter((key) => !(KEYS as readonly string[]).includes(key))
    .map((key) => {
      const near = nearest(key, KEYS);
      return {
        at: key,
        kind: 'unknown key',
        message: `"${showValue(key)}" is not a key here.`,
        remedy: near ? `Did you mean "${near}"?` : `Keys here: ${KEYS.join(', ')}.`,
      };
    });
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
  const { value } = raw;
  if (value === undefined)
    return [
      ...faults,
      { kind: 'missing', at: 'value', message: 'The value is missing.', remedy: 'Write "value:".' },
    ];
  const read =
    typeof value === 'number' || typeof value === 'string'
      ? number(value, spec, units)
      : wrongShape(value, spec, units);
  if ('message' in read) return [...faults, { ...read, at: 'value' }];
  if (faults.length > 0 || typeof source !== 'string' || typeof note !== 'string') return faults;
  return { ...read, how: how ?? null, source, note };
};

/**
 * Reads one quantity from what the file holds there: a number, a text with a unit, or `{value, how, source, note}`.
 * Every fault of it at once.
 */
export const stated = (raw: unknown, spec: Spec, units: Units): Stated | Fault[] => {
  if (raw !== null && typeof raw === 'object' && !Array.isArray(raw))
    return annotated(raw as Record<string, unknown>, spec, units);
  if (typeof raw !== 'number' && typeof raw !== 'string') return [wrongShape(raw, spec, units)];
  const read = number(raw, spec, units);
  return 'message' in read ? [read] : read;
};
