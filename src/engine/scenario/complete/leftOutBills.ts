import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { moneyText } from '../text/amounts.ts';

const listed = (names: readonly string[]): string =>
  names.length <= 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

/** The most that a bill of a vehicle ever is: now, or from a date on. */
const mostOf = ({ changes = [], ...vehicle }: SparseRunning, key: VEHICLE.Bill['key']): number =>
  Math.max(...[vehicle, ...changes].map((one) => one[key]?.value ?? 0));

/** Left out for every vehicle there is. */
const everywhere = (vehicles: number): string => {
  if (vehicles === 1) return 'not given: left out';
  return vehicles === 2
    ? 'not given for either vehicle: left out on both sides'
    : 'not given for any vehicle: left out for all of them';
};

/** The source words of a bill that `one` of the vehicles does not give; the first vehicle is the present one. */
export const leftOutOf = (
  bill: VEHICLE.Bill,
  one: SparseRunning,
  vehicles: readonly SparseRunning[],
  { currency }: Units,
): string => {
  const { key } = bill;
  const [present, ...bought] = vehicles;
  const givers = vehicles.filter((other) => other !== one && other[key]);
  if (givers.length === 0) return everywhere(vehicles.length);
  const charged = givers.filter((other) => mostOf(other, key) > 0);
  const names = (of: readonly SparseRunning[]): string => listed(of.map(({ what }) => `the ${what}`));
  if (charged.length === 0)
    return `not given: counts as nothing, as the figure given for ${names(givers)} does`;
  const side = (other: SparseRunning): string => {
    if (other === present) return 'keeping';
    return bought.length === 1 ? 'replacing' : `the ${other.what}`;
  };
  const adds = charged.map(
    (other) => `about ${moneyText(mostOf(other, key), currency)} ${VEHICLE.periodOf(bill)} to ${side(other)}`,
  );
  return `not given: counted for ${names(charged)} only, which adds ${listed(adds)}`;
};
