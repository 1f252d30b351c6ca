import type { RunningCosts } from '../../scenario/inputs/inputs.ts';

/** All that running a vehicle reads of it. What it is worth, and how it is sold, is not among it. */
const RUNS_BY = [
  'age',
  'odometer',
  'priceWhenNew',
  'energy',
  'cover',
  'registration',
  'registrationRefunded',
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

/** As many fields as that list has, each of its type. */
type Fields<K extends readonly (keyof RunningCosts)[]> = { readonly [I in keyof K]: RunningCosts[K[I]] };

/** What it runs by, to be compared. Written out: it is asked in every future, and looking fields up by name is slow. */
export const runsBy = (vehicle: Runs): Fields<typeof RUNS_BY> => [
  vehicle.age,
  vehicle.odometer,
  vehicle.priceWhenNew,
  vehicle.energy,
  vehicle.cover,
  vehicle.registration,
  vehicle.registrationRefunded,
  vehicle.inspection,
  vehicle.tax,
  vehicle.parkingAMonth,
  vehicle.averageUpkeep,
  vehicle.upkeep,
  vehicle.averageRepairs,
  vehicle.components,
  vehicle.guarantee,
];
