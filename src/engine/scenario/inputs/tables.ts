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
  readonly economy: Fact<ByKind<readonly number[]> & { readonly years: readonly number[] }>;
  readonly repairPrices2019: Fact<number>;
  readonly repairPrices2025July: Fact<number>;
  readonly milesAYear: Fact<ByKind<readonly number[]>>;
  readonly onTheRoad: Fact<ByKind<readonly number[]>>;
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

/**
 * Miles a US gallon of a combustion vehicle in daily use, by kind and model year: between the years of the table in a
 * straight line, before and after them as in the nearest.
 */
export const milesAGallon = (kind: VehicleKind, modelYear: number): number => {
  const { years, [kind]: economy } = TABLES.economy.value;
  const after = years.findIndex((year) => year >= modelYear);
  const last = economy[economy.length - 1] as number;
  if (after <= 0) return after < 0 ? last : (economy[0] as number);
  const [from, to] = [years[after - 1] as number, years[after] as number];
  const [a, b] = [economy[after - 1] as number, economy[after] as number];
  return a + ((b - a) * (modelYear - from)) / (to - from);
};

export const ECONOMY_SOURCE = TABLES.economy.source;

/** Consumer price index of motor vehicle maintenance and repair (1982-84 = 100). */
export const REPAIR_PRICE_INDEX = {
  of2019: TABLES.repairPrices2019.value,
  of2025July: TABLES.repairPrices2025July.value,
} as const;

/** Miles driven in a year by age (index: whole years, the last one for all older) and type. */
export const MILES_A_YEAR: ByKind<readonly number[]> = TABLES.milesAYear.value;

export const MILES_SOURCE = TABLES.milesAYear.source;

/** Share of a model year still on the road by age, and where that is from. */
const ON_THE_ROAD: ByKind<readonly number[]> = TABLES.onTheRoad.value;
export const ON_THE_ROAD_SOURCE = TABLES.onTheRoad.source;

/** Share that leaves the road each year while young: by collision and theft, for none is given up so soon. */
const lostYoung = (kind: VehicleKind): number => {
  const on = ON_THE_ROAD[kind];
  const years = [1, 2, 3, 4];
  const lost = years.map((a) => 1 - (on[a] as number) / (on[a - 1] as number));
  return lost.reduce((sum, s) => sum + s, 0) / years.length;
};

const bigBillsByAge = (kind: VehicleKind): number[] => {
  const on = ON_THE_ROAD[kind];
  const young = lostYoung(kind);
  return on.slice(0, -1).map((now, a) => {
    const left = 1 - (on[a + 1] as number) / now;
    return Math.max(0, Math.log((1 - young) / (1 - left)));
  });
};

const BIG_BILLS: ByKind<readonly number[]> = {
  car: bigBillsByAge('car'),
  suv: bigBillsByAge('suv'),
  truck: bigBillsByAge('truck'),
};

/**
 * Bills a year at which the ordinary household of a vehicle's kind and age gives it up, driven as far as the table has
 * it: ln((1 - s of young ones) / (1 - s)), s the share that leaves the road in the year. Collision and theft are left
 * out, for a young one leaves by nothing else. Beyond the table as at its last age.
 *
 * @param age whole years from the model year, 0 and up
 */
export const bigBillsAYear = (kind: VehicleKind, age: number): number => {
  const byAge = BIG_BILLS[kind];
  return byAge[Math.min(Math.max(0, Math.floor(age)), byAge.length - 1)] as number;
};

/** Miles the table has a vehicle of a kind driven in a year at an age. */
export const tableMiles = (kind: VehicleKind, age: number): number => {
  const byAge = MILES_A_YEAR[kind];
  return byAge[Math.min(Math.max(0, Math.floor(age)), byAge.length - 1)] as number;
};
