/** What counted repairs say, for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */
import * as repairs from '../engine/chance/repairRate.ts';
import { guarded } from './guarded.ts';
import { number, row, type Want, whole } from './wants.ts';

export type { RateBelief } from '../engine/chance/repairRate.ts';

/** Nobody counts more repairs. */
const MOST = 1_000_000;

const belief: Want = row({ a: number({ above: 0, to: MOST }), b: number({ above: 0 }) });
const exposure = number({ from: 0 });

/**
 * What is thought after `counted` repairs (whole, from 0) were seen over `exposure` (from 0), in the unit of b.
 * RangeError for negative or broken counts, and where a or b is not above 0.
 */
export const learn = guarded('learn', { belief, counted: whole(0, MOST), exposure }, repairs.learn);

/** The rate that the true one is below with chance p, 0 ≤ p < 1. Errors as of `learn`. */
export const rateBelow = guarded(
  'rateBelow',
  { belief, p: number({ from: 0, below: 1 }) },
  repairs.rateBelow,
);

/** The chance that the true rate is below `rate`, from 0. Errors as of `learn`. */
export const chanceOfRateBelow = guarded(
  'chanceOfRateBelow',
  { belief, rate: number({ from: 0 }) },
  repairs.chanceOfRateBelow,
);

/** The chance of exactly n repairs (whole, from 0) over `exposure` to come (from 0). Errors as of `learn`. */
export const chanceOfCount = guarded(
  'chanceOfCount',
  { belief, exposure, n: whole(0, MOST) },
  repairs.chanceOfCount,
);
