import type { Levels } from '../levels.ts';
import { type Contract, type Line, postMoneySeries } from '../posting.ts';

/**
 * Energy for one unit of distance, at the prices of the day of the decision.
 *
 * @param economy distance on one unit of energy (`perUnit`: mpg, km/l), or units on 100 of distance (`per100`: l/100 km)
 */
export const energyPerDistance = (stated: 'per100' | 'perUnit', economy: number, price: number): number =>
  stated === 'perUnit' ? price / economy : (economy * price) / 100;

/** Fuel or electricity of months start+1..to. */
export const energy =
  (
    line: Line,
    perDistance: number,
    distanceAMonth: number,
    levels: Levels,
    start: number,
    to: number,
  ): Contract =>
  (sink) =>
    postMoneySeries(sink, line, start + 1, to, levels, perDistance * distanceAMonth);
