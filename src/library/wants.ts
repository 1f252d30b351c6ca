/**
 * What arguments have to be. A want throws for whatever is something else and says what is wanted: a `TypeError` for
 * what is of another kind (a string for a number, an option that does not exist), a `RangeError` for what is of the
 * right kind and impossible (not a number, a fraction of a month, a misspelt choice, dates out of order).
 */
import { showValue } from '../engine/scenario/text/problems.ts';

/** Throws unless `value` is what is wanted; `at` is where it stands, for the message. */
export type Want = (value: unknown, at: string) => void;

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `"${showValue(value)}"`;
  if (typeof value === 'function') return 'a function';
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'a list' : 'an object';
  return String(value);
};

const otherKind = (at: string, wanted: string, value: unknown): TypeError =>
  new TypeError(`${at}: ${wanted} is wanted, not ${shown(value)}`);
const outOfRange = (at: string, wanted: string, value: unknown): RangeError =>
  new RangeError(`${at}: ${wanted} is wanted, not ${shown(value)}`);

/** `from` and `to` are included, `above` and `below` are not. */
export interface Bounds {
  readonly whole?: boolean;
  readonly from?: number;
  readonly above?: number;
  readonly to?: number;
  readonly below?: number;
}

const words = ({ whole, from, above, to, below }: Bounds): string =>
  [
    whole ? 'a whole number' : 'a number',
    ...(from === undefined ? [] : [`from ${from}`]),
    ...(above === undefined ? [] : [`above ${above}`]),
    ...(to === undefined ? [] : [`to ${to}`]),
    ...(below === undefined ? [] : [`below ${below}`]),
  ].join(' ');

/** A number that is one, neither NaN nor infinite, within bounds. */
export const number = (bounds: Bounds = {}): Want => {
  const { whole = false, from = -Infinity, above = -Infinity, to = Infinity, below = Infinity } = bounds;
  return (value, at) => {
    if (typeof value !== 'number') throw otherKind(at, words(bounds), value);
    const within = Number.isFinite(value) && value >= from && value > above && value <= to && value < below;
    if (!within || (whole && !Number.isSafeInteger(value))) throw outOfRange(at, words(bounds), value);
  };
};

/** A whole number, from `from` to `to`, both included. */
export const whole = (from: number, to?: number): Want =>
  number({ whole: true, from, ...(to === undefined ? {} : { to }) });

export const text: Want = (value, at) => {
  if (typeof value !== 'string') throw otherKind(at, 'text', value);
};

/** One of a few words, spelt as here. */
export const choice = (...known: readonly string[]): Want => {
  const wanted = known.map((word) => `"${word}"`).join(' or ');
  return (value, at) => {
    if (typeof value !== 'string') throw otherKind(at, wanted, value);
    if (!known.includes(value)) throw outOfRange(at, wanted, value);
  };
};

/** Yes or no. */
export const flag: Want = (value, at) => {
  if (typeof value !== 'boolean') throw otherKind(at, 'true or false', value);
};

export const calls: Want = (value, at) => {
  if (typeof value !== 'function') throw otherKind(at, 'a function', value);
};

/** What may be left out, or may be null. */
export const optional =
  (want: Want): Want =>
  (value, at) => {
    if (value !== undefined) want(value, at);
  };
export const orNull =
  (want: Want): Want =>
  (value, at) => {
    if (value !== null) want(value, at);
  };

/** A list of things that are each wanted so; `least` of them or more. */
export const list =
  (want: Want, least = 0): Want =>
  (value, at) => {
    if (!Array.isArray(value)) throw otherKind(at, 'a list', value);
    if (value.length < least)
      throw new RangeError(`${at}: a list of at least ${least} is wanted, not of ${value.length}`);
    for (let i = 0; i < value.length; i++) want(value[i], `${at}[${i}]`);
  };

type Fields = Readonly<Record<string, Want>>;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** An object with these fields; what else it has is its own affair, as in a list of rows. */
export const row =
  (fields: Fields): Want =>
  (value, at) => {
    if (!isObject(value)) throw otherKind(at, `an object with ${Object.keys(fields).join(', ')}`, value);
    for (const name in fields) fields[name]?.(value[name], `${at}.${name}`);
  };

/** An object of terms or options: these fields, and none that nobody would read. */
export const terms = (needed: Fields, more: Fields = {}): Want => {
  const known = { ...needed, ...Object.fromEntries(Object.entries(more).map(([k, w]) => [k, optional(w)])) };
  const fields = row(known);
  return (value, at) => {
    fields(value, at);
    const strange = Object.keys(value as object).find((name) => !Object.hasOwn(known, name));
    if (strange !== undefined)
      throw new TypeError(
        `${at}: there is no "${showValue(strange)}" here; it takes ${Object.keys(known).join(', ')}`,
      );
  };
};

/** One want after another. */
export const all =
  (...wants: readonly Want[]): Want =>
  (value, at) => {
    for (const want of wants) want(value, at);
  };

/** What has been found to be of the right kind must also hold to this. */
export const holds =
  <T>(wanted: string, test: (value: T) => boolean): Want =>
  (value, at) => {
    if (!test(value as T)) throw new RangeError(`${at}: ${wanted}`);
  };
