/** Parts that wear out, from facts/wornParts.json: what each is called, its life and its price. */
import type { AsRead, Sourced } from '../facts/fact.ts';
import data from '../facts/wornParts.json' with { type: 'json' };
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

export interface WornParts extends Pick<Sourced, 'evidence'> {
  readonly about: string;
  readonly unit: string;
  readonly date: string;
  /** What stands in for a part's life. */
  readonly lifeSource: string;
  readonly priceSource: string;
  readonly note: string;
  readonly parts: readonly TablePart[];
}

const WORN: AsRead<WornParts> = data;

export const TABLE_PARTS: readonly TablePart[] = WORN.parts;

export const PART_LIFE_SOURCE = WORN.lifeSource;
export const PART_PRICE_SOURCE = WORN.priceSource;

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
