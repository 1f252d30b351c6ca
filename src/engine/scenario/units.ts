import { type DistanceUnit, distanceRatio } from '../quantity/distance.ts';
import type { Spec } from './specs.ts';

/** The units a household writes in, read from the file before anything else. */
export interface Units {
  /** ISO 4217. */
  readonly currency: string;
  /** Currency units per US dollar: carries the public tables, the defaults and the ranges. */
  readonly perDollar: number;
  readonly distance: DistanceUnit;
}

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
