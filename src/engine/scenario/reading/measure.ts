import { distanceRatio } from '../../quantity/distance.ts';
import type { Spec } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import type { Finding } from '../text/problems.ts';
import { showValue } from '../text/problems.ts';

/** What went wrong with one value, before it is known where it stands. */
export type Fault = Omit<Finding, 'path'> & { readonly at?: string };

/** A number in the household's unit, and the unit it was written in where that still matters (energy). */
export interface Measure {
  readonly value: number;
  readonly unit: string;
}

/** "The price is 2,900 USD a year": what stands before the figure, the figure, what stands after it. */
const SHAPE = /^([^\d.+-]*)([+-]?[\d.][\d.,_'\u00a0\u202f ]*(?:e[+-]?\d+)?)(.*)$/i;
const PLAIN = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const GROUPED = /^[+-]?\d{1,3}(?:[,_'\u00a0\u202f ]\d{3})+(?:\.\d+)?$/;

/** The number of a figure as people write it, with or without separated thousands; null where it is none. */
const figure = (text: string): number | null => {
  const trimmed = text.trim();
  if (PLAIN.test(trimmed)) return Number(trimmed);
  return GROUPED.test(trimmed) ? Number(trimmed.replaceAll(/[^\d.+-]/g, '')) : null;
};

const tidy = (words: string): string =>
  words
    .trim()
    .toLowerCase()
    .replace(/^(?:a|an|per)\s+/, '/')
    .replaceAll(/\s+(?:a|an|per)\s+/g, '/')
    .replaceAll(/\s*\/\s*/g, '/')
    .replaceAll(/\s+/g, ' ');

const DISTANCE: Readonly<Record<string, 'miles' | 'km'>> = {
  mi: 'miles',
  mile: 'miles',
  miles: 'miles',
  km: 'km',
  kilometre: 'km',
  kilometres: 'km',
  kilometer: 'km',
  kilometers: 'km',
};
const TIME: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  months: { month: 1, months: 1, mo: 1, year: 12, years: 12, yr: 12, yrs: 12 },
  weeks: { week: 1, weeks: 1, day: 1 / 7, days: 1 / 7 },
  days: { day: 1, days: 1, week: 7, weeks: 7 },
  hours: { hour: 1, hours: 1, h: 1, hr: 1, hrs: 1, minute: 1 / 60, minutes: 1 / 60, min: 1 / 60 },
  years: { year: 1, years: 1 },
};
const SYMBOLS: Readonly<Record<string, readonly string[]>> = {
  $: ['USD', 'CAD', 'AUD', 'NZD'],
  '€': ['EUR'],
  '£': ['GBP'],
};

/** What may be written behind a number of this kind, for the message. */
export const unitWords = (spec: Spec, units: Units): string => {
  const { unit } = spec;
  if (unit.startsWith('money')) return `an amount in ${units.currency}${unit.slice('money'.length)}`;
  if (unit === 'share' || unit === 'rate a year') return 'a percentage';
  if (unit === 'distance' || unit === 'distance a year')
    return `a distance in miles or km${unit.slice('distance'.length)}`;
  if (unit === 'months') return 'a number of months or years';
  if (unit === 'economy') return '"25 mpg", "7.5 l/100km", "3.5 mi/kWh" or "18 kWh/100km"';
  if (unit === 'factor' || unit === 'clock') return 'a plain number';
  if (unit === 'calendar year') return 'a year, such as 2009';
  return `a number of ${unit}`;
};

const PERIODS: Readonly<Record<string, string>> = {
  'money a month': '/month',
  'money a year': '/year',
  'money a day': '/day',
  'money an hour': '/hour',
};

/** The factor that turns the written unit into the household's, null for a unit of another kind. */
const factorOf = (spec: Spec, units: Units, before: string, after: string): number | null => {
  const { unit } = spec;
  if (unit.startsWith('money')) {
    const period = PERIODS[unit];
    const named = [before, period && after.endsWith(period) ? after.slice(0, -period.length) : after];
    const known = named.every((name) => {
      const bare = name.trim().toUpperCase();
      return bare === '' || bare === units.currency || SYMBOLS[bare]?.includes(units.currency) === true;
    });
    if (known) return 1;
    const per = /^\/(mile|mi|km)$/.exec(after);
    if (unit === 'money per distance' && per && before.trim() === '')
      return 1 / distanceRatio(per[1] === 'km' ? 'km' : 'miles', units.distance);
    return null;
  }
  if (before.trim() !== '') return null;
  if (unit === 'share' || unit === 'rate a year')
    return ['', '%', 'percent', 'per cent', '/cent', '%/year'].includes(after) ? 1 : null;
  if (after === '') return 1;
  if (unit === 'distance' || unit === 'distance a year') {
    const name = unit === 'distance a year' ? after.replace(/\/year$/, '') : after;
    const from = Object.hasOwn(DISTANCE, name) ? DISTANCE[name] : undefined;
    return from ? distanceRatio(from, units.distance) : null;
  }
  const table = TIME[unit];
  return table && Object.hasOwn(table, after) ? (table[after] ?? null) : null;
};

const notANumber = (value: unknown, spec: Spec, units: Units): Fault => ({
  kind: 'not a number',
  value,
  message: `${JSON.stringify(showValue(value))} is not ${unitWords(spec, units)}.`,
  remedy: /\d,\d{1,2}(?!\d)/.test(String(value))
    ? 'Write the decimals with a point.'
    : 'Write a number, with or without its unit.',
});

/** Reads one bare number or a string with a unit; percentages stay percentages here. */
export const measure = (raw: number | string, spec: Spec, units: Units): Measure | Fault => {
  if (typeof raw === 'number') return { value: raw, unit: '' };
  const parts = SHAPE.exec(raw.slice(0, 100).trim());
  const value = parts ? figure(parts[2] ?? '') : null;
  if (!parts || value === null) return notANumber(raw, spec, units);
  const before = parts[1] ?? '';
  const after = tidy(parts[3] ?? '');
  if (spec.unit === 'economy' || spec.unit === 'money per energy')
    return { value, unit: `${before.trim()}|${after}` };
  const factor = factorOf(spec, units, before, after);
  if (factor === null)
    return {
      kind: 'wrong unit',
      value: raw,
      message: `${JSON.stringify(showValue(raw))} has a unit that does not belong here.`,
      remedy: `Give ${unitWords(spec, units)}.`,
    };
  return { value: factor === 1 ? value : value * factor, unit: '' };
};
