import type { Estimate } from '../engine/analysis/chances.ts';
import { monthName } from '../engine/quantity/civilDate.ts';
import type { Cents } from '../engine/quantity/money.ts';
import type { Facts, Quantity, Unit } from '../engine/scenario/inputs/scenario.ts';

/**
 * Every number a person reads passes through here, so that money, months and minus signs look the same in a sentence,
 * a table and a chart. The language is fixed: the same decision prints the same bytes on every machine.
 */
const LOCALE = 'en';
const MINUS = '\u2212';

const WORDS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** A small count in words, as prose has it: "three", "14". */
export const inWords = (count: number): string => WORDS[count] ?? new Intl.NumberFormat(LOCALE).format(count);

/** "1 month", "14 months". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${new Intl.NumberFormat(LOCALE).format(count)} ${count === 1 ? one : many}`;

/** How far ahead, in words: "five years", "18 months", "30 years". */
export const span = (months: number): string =>
  months % 12 === 0 && months > 0
    ? `${inWords(months / 12)} ${months === 12 ? 'year' : 'years'}`
    : counted(months, 'month');

/**
 * The step to which an amount is known in prose: two significant digits, and never less than one unit.
 * 1,934 is "about 1,900", 17,843 "about 18,000", 70.4 "about 70", 7.6 "about 8".
 */
export const stepOf = (amount: number): number =>
  Math.max(1, 10 ** (Math.floor(Math.log10(Math.max(Math.abs(amount), 1))) - 1));

/**
 * The step for totals that stand beside their difference: fine enough that the difference can be seen in them, never
 * finer than three significant digits.
 */
export const stepBeside = (total: number, difference: number): number =>
  Math.min(stepOf(total), Math.max(stepOf(difference), stepOf(total) / 10));

/** `amount` rounded to a multiple of `step`, halves away from zero. */
export const roundTo = (amount: number, step: number): number =>
  Math.sign(amount) * Math.round(Math.abs(amount) / step) * step || 0;

const signed = (value: number, text: string): string => (value < 0 ? `${MINUS}${text}` : text);

/** The month that is `months` after an ISO date: "January 2028"; '' when the date cannot be read. */
export const calendar = (date: string, months: number): string => {
  const [, year, month] = /^(\d{4})-(\d{2})/.exec(date) ?? [];
  if (year === undefined || month === undefined) return '';
  const index = Number(year) * 12 + Number(month) - 1 + months;
  return `${monthName((index % 12) + 1)} ${Math.floor(index / 12)}`;
};

/** An ISO date as it is said: "25 November 2026"; what cannot be read is given back. */
export const day = (date: string): string => {
  const [, , , d] = /^(\d{4})-(\d{2})-(\d{2})/.exec(date) ?? [];
  return d === undefined ? date : `${Number(d)} ${calendar(date, 0)}`;
};

/** Dates inside a sentence, said as people say them. */
export const saidDates = (text: string): string => text.replace(/\b\d{4}-\d{2}-\d{2}\b/g, day);

/** A fraction as a percentage with at most `digits` decimals: 0.089 is "8.9%". */
export const percent = (fraction: number, digits = 2): string =>
  signed(
    roundTo(fraction, 10 ** (-digits - 2)),
    `${new Intl.NumberFormat(LOCALE, { maximumFractionDigits: digits }).format(Math.abs(fraction) * 100)}%`,
  );

/** A plain number with at most `digits` decimals. */
export const number = (value: number, digits = 0): string =>
  signed(
    roundTo(value, 10 ** -digits),
    new Intl.NumberFormat(LOCALE, { maximumFractionDigits: digits }).format(Math.abs(value)),
  );

/** Whole cents as the ledger prints them, without a currency sign: "1,234.56". */
export const ledgerCents = (cents: Cents): string =>
  signed(
    cents,
    new Intl.NumberFormat(LOCALE, { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(
      Math.abs(cents) / 100,
    ),
  );

/**
 * The step to which a drawn figure is known: the smallest power of ten that is at least half its standard error, so
 * that one error moves the last digit said by two at most. 57 gives 100, 14 gives 10, 0.004 gives 0.01; nil gives 0,
 * for a figure without any error.
 */
export const stepKnown = (error: number): number =>
  error > 0 ? 10 ** Math.ceil(Math.log10(error / 2) - 1e-9) : 0;

/** A drawn number without unit, to the digit its error supports: 0.4136 give or take 0.002 is "0.41". */
export const knownNumber = ({ value, error }: Estimate): string => {
  const step = Math.max(stepKnown(error), 0.001);
  return number(roundTo(value, step), Math.max(0, Math.round(-Math.log10(step))));
};

/**
 * A chance as ways out of a hundred, no finer than its error and never finer than one: "82 of 100". All and none are
 * said only of what was so in every future drawn; what lies within its error of them is "nearly all" or "fewer than 1 of 100".
 */
export const ofHundred = ({ value, error }: Estimate): string => {
  // What held in every future drawn, or in none, is no more than that: neither the draws nor the model reach further.
  if (value >= 1 && error <= 0) return 'more than 99 of 100';
  if (value - error <= 0 || value + 2 * error < 0.01)
    return `fewer than ${Math.max(1, Math.ceil(100 * (value + 2 * error) - 1e-9))} of 100`;
  if (value + error >= 1 || value - 2 * error > 0.99) return 'nearly all';
  const step = Math.min(10, Math.max(1, Math.round(100 * stepKnown(error))));
  return `${Math.min(100 - step, Math.max(step, roundTo(100 * value, step)))} of 100`;
};

/** Two standard errors of a chance, in words: "give or take 1 in 100"; '' where there is no error. */
export const giveOrTake = ({ error }: Estimate): string => {
  if (error <= 0) return '';
  const hundredths = Math.ceil(200 * error - 1e-9);
  return 200 * error < 0.5 ? 'give or take less than 1 in 100' : `give or take ${hundredths} in 100`;
};

/** Twelve own hours make a weekend: "2 weekends", "half a weekend". */
export const weekends = (hours: number): string => {
  const halves = Math.round(hours / 6);
  if (hours <= 0) return 'none';
  if (halves === 0) return 'a few hours';
  if (halves === 1) return 'half a weekend';
  return halves % 2 === 0 ? counted(halves / 2, 'weekend') : `${Math.floor(halves / 2)}½ weekends`;
};

/** The mean of a range is reckoned, and known no better than its three points: three significant digits. */
const threeDigits = (value: number): number =>
  value === 0 ? 0 : roundTo(value, 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2));

/** The formats that need the household's own currency and units. */
export interface Formats {
  /** Exactly what was said: "$140", "$3.59"; cents only where there are some. */
  readonly money: (units: number) => string;
  /** As much as is known: "$1,900" (two significant digits, or to `step`). The words around it say "about". */
  readonly round: (units: number, step?: number) => string;
  /** A drawn amount in prose, as `round`, and no finer than its error: "$4,000"; "less than $10" where that is nil. */
  readonly about: (e: Estimate) => string;
  /** A drawn amount in a table: to three digits, and no finer than its error. */
  readonly known: (e: Estimate) => string;
  /** A tick of an axis: "$20,000", never with cents. */
  readonly tick: (units: number) => string;
  readonly distance: (n: number) => string;
  /** One unit of distance: "mile", "km". */
  readonly oneDistance: string;
  /** A value of the given quantity (its own unless told) with its unit: "$1,350 a year", "8.9%", "66 months". */
  readonly quantity: (q: Quantity, value?: number) => string;
}

export const formatsFor = (facts: Facts): Formats => {
  const currency = (digits: number): Intl.NumberFormat =>
    new Intl.NumberFormat(LOCALE, {
      style: 'currency',
      currency: facts.currency,
      currencyDisplay: 'narrowSymbol',
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    });
  const [whole, withCents, finer] = [currency(0), currency(2), currency(3)];
  const money = (units: number): string => {
    const size = Math.abs(units);
    const whichever = Math.abs(size - Math.round(size)) < 0.005 ? whole : withCents;
    return signed(roundTo(units, 0.01), whichever.format(size));
  };
  const small = (units: number): string =>
    Math.abs(units) < 1 ? signed(roundTo(units, 0.001), finer.format(Math.abs(units))) : money(units);
  const round = (units: number, step = stepOf(units)): string => {
    const r = roundTo(units, step);
    return signed(r, whole.format(Math.abs(r)));
  };
  const drawn = ({ value, error }: Estimate, finest: number): string => {
    const step = Math.max(stepKnown(error), finest, 1);
    return roundTo(value, step) === 0 && error > 0 ? `less than ${whole.format(step)}` : round(value, step);
  };
  const one = facts.distanceUnit === 'miles' ? 'mile' : 'km';
  const distance = (n: number): string => counted(Math.round(n), one, facts.distanceUnit);
  const energy = (q: Quantity): { readonly unit: string; readonly per100: boolean } => {
    const [where, index] = q.key.split('.');
    const [unit, stated] =
      where === 'replacement'
        ? [facts.energyUnit.replacement[Number(index)], facts.energyStated.replacement[Number(index)]]
        : [facts.energyUnit.vehicle, facts.energyStated.vehicle];
    return { unit: unit ?? '', per100: stated === 'per100' };
  };
  const economy = (v: number, q: Quantity): string => {
    const { unit, per100 } = energy(q);
    return per100
      ? `${number(v, 1)} ${unit === 'kWh' ? unit : `${unit}s`} per 100 ${facts.distanceUnit}`
      : `${number(v, 1)} ${facts.distanceUnit} a ${unit}`;
  };
  const byUnit: Readonly<Record<Unit, (v: number, q: Quantity) => string>> = {
    money,
    'money a month': (v) => `${money(v)} a month`,
    'money a year': (v) => `${money(v)} a year`,
    'money a day': (v) => `${money(v)} a day`,
    'money an hour': (v) => `${money(v)} an hour`,
    'money per distance': (v) => `${small(v)} a ${one}`,
    'money per energy': (v, q) => `${small(v)} a ${energy(q).unit}`,
    share: (v) => percent(v, 1),
    'rate a year': (v) => `${percent(v)} a year`,
    months: (v) => counted(roundTo(v, 0.1), 'month'),
    weeks: (v) => counted(roundTo(v, 0.1), 'week'),
    days: (v) => counted(roundTo(v, 0.1), 'day'),
    years: (v) => counted(roundTo(v, 0.1), 'year'),
    'calendar year': (v) => String(Math.round(v)),
    hours: (v) => counted(roundTo(v, 0.1), 'hour'),
    distance,
    'distance a year': (v) => `${distance(v)} a year`,
    economy,
    factor: (v) => `× ${number(v, 3)}`,
    clock: (v) => number(v, v < 10 ? 2 : 0),
  };
  return {
    money,
    round,
    about: (e) => drawn(e, stepOf(e.value)),
    known: (e) => drawn(e, stepOf(e.value) / 10),
    tick: (units) => signed(units, whole.format(Math.abs(units))),
    distance,
    oneDistance: one,
    quantity: (q, value = q.range === null ? q.value : threeDigits(q.value)) => byUnit[q.unit](value, q),
  };
};
