/**
 * Public tables: facts and figures, each with its source in facts/publicTables.json. Dollars are of the table's own
 * year; the ratio in householdInputs.ts carries them to the day of the decision.
 */
import type { AsRead, Fact } from '../facts/fact.ts';
import data from '../facts/publicTables.json' with { type: 'json' };

export type VehicleKind = 'car' | 'suv' | 'truck';
export type Powertrain = 'combustion' | 'hybrid' | 'plug_in' | 'battery';
type ByKind<T> = Readonly<Record<VehicleKind, T>>;
type ByPowertrain<T> = Readonly<Record<Powertrain, T>>;

export interface PublicTables {
  readonly upkeep: Fact<ByPowertrain<number>>;
  readonly repairs: Fact<{
    readonly byKind: ByKind<number>;
    readonly byPowertrain: ByPowertrain<number>;
    readonly a: readonly number[];
    /** Added to a for each year after the last that is listed. */
    readonly aRisesAYearAfter: number;
    readonly b: number;
    readonly highestPriceNew: number;
  }>;
  readonly decline: Fact<number>;
  readonly repairPrices2019: Fact<number>;
  readonly repairPrices2025July: Fact<number>;
  readonly milesAYear: Fact<ByKind<readonly number[]>>;
}

const TABLES: AsRead<PublicTables> = data;

/** The price year of the upkeep and repair tables. */
export const TABLE_PRICE_YEAR = 2019;

/** Average scheduled upkeep by powertrain, 2019 dollars a mile, a shop doing it. */
export const UPKEEP_PER_MILE_2019: ByPowertrain<number> = TABLES.upkeep.value;

export const UPKEEP_SOURCE = TABLES.upkeep.source;

/** Multipliers of the repair curve by type. */
export const REPAIR_BY_KIND: ByKind<number> = TABLES.repairs.value.byKind;

/** Multipliers of the repair curve by powertrain. */
export const REPAIR_BY_POWERTRAIN: ByPowertrain<number> = TABLES.repairs.value.byPowertrain;

export const REPAIR_SOURCE = TABLES.repairs.source;

/**
 * Repairs nobody named, a shop doing them: 2019 dollars a mile.
 *
 * @param age whole years since the model year, 0 and up; beyond ten the line is continued, not measured.
 * @param priceWhenNewInDollars2019 the price when new in 2019 dollars; above 100,000 it counts as 100,000.
 * @param typeFactor REPAIR_BY_KIND times REPAIR_BY_POWERTRAIN.
 * Example: a combustion car of 16 years, 19,000 dollars when new: (0.0167 + 12 x 0.00333) x exp(0.38) = 0.0829.
 */
export const repairRatePerMile2019 = (
  age: number,
  priceWhenNewInDollars2019: number,
  typeFactor: number,
): number => {
  const { a: byAge, aRisesAYearAfter, b, highestPriceNew } = TABLES.repairs.value;
  const last = byAge.length - 1;
  const year = Math.max(0, Math.floor(age));
  const a = byAge[year] ?? (byAge[last] ?? 0) + (year - last) * aRisesAYearAfter;
  return typeFactor * a * Math.exp(b * Math.min(priceWhenNewInDollars2019, highestPriceNew));
};

/** Compound decline of market value a year. */
export const DECLINE_A_YEAR = TABLES.decline.value;

/** Consumer price index of motor vehicle maintenance and repair (1982-84 = 100). */
export const REPAIR_PRICE_INDEX = {
  of2019: TABLES.repairPrices2019.value,
  of2025July: TABLES.repairPrices2025July.value,
} as const;

/** Miles driven in a year by age (index: whole years, the last one for all older) and type. */
export const MILES_A_YEAR: ByKind<readonly number[]> = TABLES.milesAYear.value;

export const MILES_SOURCE = TABLES.milesAYear.source;
