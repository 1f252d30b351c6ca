/**
 * Whose number it is. One that a household gives without saying how it knows has its field's usual mark. A `choice`
 * (how far ahead to look) is nobody's to quote: it can tip the answer, but nothing is found out about it.
 */
export type Mark = 'quoted' | 'measured' | 'guess' | 'table' | 'choice';

/** What a number counts: decides how it is printed and what its break-even is called. */
export type Unit =
  | 'money'
  | 'money a month'
  | 'money a year'
  | 'money a day'
  | 'money an hour'
  | 'money per distance'
  | 'money per energy'
  | 'share'
  | 'rate a year'
  | 'months'
  | 'weeks'
  | 'days'
  | 'years'
  | 'calendar year'
  | 'hours'
  | 'distance'
  | 'distance a year'
  | 'economy'
  | 'factor'
  | 'clock';

/**
 * What a number counts, its range (what the reader may write, and what the solver scans), whose number it usually is when
 * it stands there bare, and what it is called. Money ranges are in US dollars, distance ranges in miles; both are carried
 * to the household's own units.
 */
export interface Spec {
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  readonly integer?: true;
  readonly mark: Mark;
  /** Why it must be one number and no range, to go on from "one number is needed: "; without it a range is welcome. */
  readonly exact?: string;
  /** What a range of it keeps clear of: nature's bounds, not the reader's. Nil unless told; null where there is none. */
  readonly bounds?: Bounds;
  /** What counts as a fifth of it at nil or below, in the unit of `min`; by its unit unless told. */
  readonly step?: number;
  /** In a household's words, lower case: "yearly cost of insurance". */
  readonly words: string;
}

export interface Bounds {
  readonly min: number | null;
  readonly max: number | null;
}

/** A share of a whole, or a chance. */
export const WITHIN_ALL: Bounds = { min: 0, max: 1 };
/** What may as well fall as rise. */
const OPEN: Bounds = { min: null, max: null };

export const KNOWN = 'it can be looked up';

export const spec = (unit: Unit, min: number, max: number, mark: Mark, words: string): Spec => ({
  unit,
  min,
  max,
  mark,
  words,
});
export const whole = (unit: Unit, min: number, max: number, mark: Mark, words: string): Spec => ({
  ...spec(unit, min, max, mark, words),
  integer: true,
});
/** A number that cannot be a range, and why. */
export const exactly = (exact: string, one: Spec): Spec => ({ ...one, exact });
export const chosen = (one: Spec): Spec => exactly('it is yours to choose', one);
export const term = (one: Spec): Spec => exactly('it is a term of a contract', one);
export const known = (one: Spec): Spec => exactly(KNOWN, one);

export const bounded = (bounds: Bounds, one: Spec): Spec => ({ ...one, bounds });
/** What may be below nil. */
export const open = (one: Spec): Spec => bounded(OPEN, one);

/** An amount, none of it below nil. */
export const money = (max: number, mark: Mark, words: string): Spec => spec('money', 0, max, mark, words);
/** A share of a whole, or a chance. */
export const share = (min: number, max: number, mark: Mark, words: string): Spec =>
  bounded(WITHIN_ALL, spec('share', min, max, mark, words));
/** A share or chance that nobody knows: anything between nil and one. */
export const chance = (words: string): Spec => share(0, 1, 'guess', words);
