import type { RunningCosts } from '../scenario/inputs.ts';

/** All that running a vehicle reads of it. What it is worth, and how it is sold, is not among it. */
export const RUNS_BY = [
  'age',
  'odometer',
  'priceWhenNew',
  'energy',
  'cover',
  'registration',
  'inspection',
  'tax',
  'parkingAMonth',
  'averageUpkeep',
  'upkeep',
  'averageRepairs',
  'components',
  'guarantee',
] as const satisfies readonly (keyof RunningCosts)[];

/** A vehicle to those who work out what running it costs: two that are the same in these run alike. */
export type Runs = Pick<RunningCosts, (typeof RUNS_BY)[number]>;
