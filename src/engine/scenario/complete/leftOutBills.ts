import { BILLS, type Bill, type BillKey } from '../inputs/bills.ts';
import type { Units } from '../inputs/units.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { moneyText } from '../text/amounts.ts';

const listed = (names: readonly string[]): string =>
  names.length <= 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

/** Left out for every vehicle there is. */
const everywhere = (vehicles: number): string => {
  if (vehicles === 1) return 'not given: left out';
  return vehicles === 2
    ? 'not given for either vehicle: left out on both sides'
    : 'not given for any vehicle: left out for all of them';
};

/** What leaving one bill out of `one` does, beside what the others say of theirs. */
const leftOut = (
  { key, period }: Bill,
  one: SparseRunning,
  vehicles: readonly SparseRunning[],
  { currency }: Units,
): string => {
  const [present, ...bought] = vehicles;
  const givers = vehicles.filter((other) => other !== one && other[key]);
  if (givers.length === 0) return everywhere(vehicles.length);
  const charged = givers.filter((other) => (other[key]?.value ?? 0) > 0);
  const names = (of: readonly SparseRunning[]): string => listed(of.map(({ what }) => `the ${what}`));
  if (charged.length === 0)
    return `not given: counts as nothing, as the figure given for ${names(givers)} does`;
  const side = (other: SparseRunning): string => {
    if (other === present) return 'keeping';
    return bought.length === 1 ? 'replacing' : `the ${other.what}`;
  };
  const adds = charged.map(
    (other) => `about ${moneyText(other[key]?.value ?? 0, currency)} ${period} to ${side(other)}`,
  );
  return `not given: counted for ${names(charged)} only, which adds ${listed(adds)}`;
};

/** The source words of each bill that `one` of the vehicles does not give; the first vehicle is the present one. */
export const leftOutOf = (
  one: SparseRunning,
  vehicles: readonly SparseRunning[],
  units: Units,
): Readonly<Record<BillKey, string>> =>
  Object.fromEntries(BILLS.map((bill) => [bill.key, leftOut(bill, one, vehicles, units)])) as Record<
    BillKey,
    string
  >;
