import type { Powertrain } from './tables.ts';

/** A part that wears out, as the table of scheduled upkeep has it. */
export interface TablePart {
  /** What it is called; the first name is the one to show. */
  readonly names: readonly string[];
  /** Miles after which it is replaced on schedule, by powertrain; null: that powertrain has none. */
  readonly miles: Readonly<Record<Powertrain, number | null>>;
  /** A shop's price, 2019 dollars. */
  readonly dollars: number;
}

const part = (
  names: readonly string[],
  [combustion, hybrid, plug_in, battery]: readonly [number, number, number, number | null],
  dollars: number,
): TablePart => ({ names, miles: { combustion, hybrid, plug_in, battery }, dollars });

/**
 * What of the table of scheduled upkeep is a part that fails when it is worn (fluids, filters and looks left out).
 * Source: US EPA OMEGA model inputs, maintenance_cost.csv; its averages are those of Argonne ANL/ESD-21/4.
 */
export const TABLE_PARTS: readonly TablePart[] = [
  part(['tyres', 'tires', 'a set of tyres', 'a set of tires'], [50_000, 50_000, 50_000, 50_000], 525),
  part(['brake pads'], [50_000, 66_667, 75_000, 75_000], 350),
  part(['starter battery', '12 V battery'], [50_000, 50_000, 50_000, 50_000], 175),
  part(['spark plugs', 'plugs'], [60_000, 120_000, 120_000, null], 225),
  part(['oxygen sensor', 'lambda sensor'], [80_000, 80_000, 80_000, null], 350),
  part(['headlight bulbs'], [80_000, 80_000, 80_000, 80_000], 90),
  part(['timing belt'], [90_000, 110_000, 110_000, null], 750),
  part(['accessory drive belt', 'drive belt'], [90_000, 110_000, 110_000, null], 165),
  part(['brake discs', 'brake rotors'], [100_000, 125_000, 150_000, 150_000], 500),
  part(
    ['shocks and struts', 'shock absorbers', 'shocks', 'struts', 'dampers'],
    [100_000, 100_000, 100_000, 100_000],
    1000,
  ),
  part(['brake calipers', 'calipers'], [150_000, 187_500, 225_000, 225_000], 1000),
];

export const PART_LIFE_SOURCE =
  'US EPA OMEGA model inputs, maintenance_cost.csv: the distance after which it is replaced on schedule stands in for its typical life';
export const PART_PRICE_SOURCE =
  "US EPA OMEGA model inputs, maintenance_cost.csv: a shop's price in 2019 dollars, carried to today's";

const partCalled = (name: string): TablePart | undefined => {
  const wanted = name.trim().toLowerCase();
  return TABLE_PARTS.find(({ names }) => names.some((one) => one.toLowerCase() === wanted));
};

/** What the table calls a part; null where it does not know the name. */
export const tableName = (name: string): string | null => partCalled(name)?.names[0] ?? null;

/** A part's life in miles and its price, for a powertrain that has it; null where the table does not know the name. */
export const tablePart = (
  name: string,
  powertrain: Powertrain,
): { readonly miles: number; readonly dollars: number } | null => {
  const found = partCalled(name);
  const miles = found?.miles[powertrain] ?? null;
  return found && miles !== null ? { miles, dollars: found.dollars } : null;
};
