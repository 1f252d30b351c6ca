import { distanceRatio } from '../../quantity/distance.ts';
import type { Spec, Unit } from './specs.ts';
import type { Units } from './written.ts';

export type { Units } from './written.ts';

const isMoney = (spec: Spec): boolean => spec.unit.startsWith('money');
const isDistance = (spec: Spec): boolean => spec.unit === 'distance' || spec.unit === 'distance a year';

/** Rounds to so many significant digits: a carried default should look like one. */
export const significant = (value: number, digits: number): number => Number(value.toPrecision(digits));

/** How many of the household's units make one of the table's (dollars, miles) for a number of this kind. */
export const carried = (spec: Spec, units: Units): number => {
  const distance = distanceRatio('miles', units.distance);
  if (spec.unit === 'money per distance') return units.perDollar / distance;
  if (isMoney(spec)) return units.perDollar;
  return isDistance(spec) ? distance : 1;
};

/** The range of a number in the household's units; inclusive. */
export const limits = (spec: Spec, units: Units): { min: number; max: number } => {
  const ratio = carried(spec, units);
  if (ratio === 1) return { min: spec.min, max: spec.max };
  return { min: significant(spec.min * ratio, 3), max: significant(spec.max * ratio, 3) };
};

/**
 * What counts as a fifth of a number that is nil, or below it: there is no ratio to count by there. In dollars and miles;
 * our guess throughout.
 */
const STEPS: Readonly<Record<Unit, number>> = {
  money: 100,
  'money a month': 10,
  'money a year': 100,
  'money a day': 5,
  'money an hour': 5,
  'money per distance': 0.02,
  'money per energy': 0.3,
  share: 0.05,
  'rate a year': 0.01,
  months: 3,
  weeks: 1,
  days: 2,
  years: 1,
  'calendar year': 1,
  hours: 4,
  distance: 5_000,
  'distance a year': 1_000,
  economy: 1,
  factor: 0.1,
  clock: 1,
};

/** The same in the household's units. */
export const stepOf = (spec: Spec, units: Units): number =>
  (spec.step ?? STEPS[spec.unit]) * carried(spec, units);
