/**
 * Public tables: facts and figures, each with its source. Dollars are of the table's own year; the ratio in
 * householdInputs.ts carries them to the day of the decision.
 */

export type VehicleKind = 'car' | 'suv' | 'truck';
export type Powertrain = 'combustion' | 'hybrid' | 'plug_in' | 'battery';

/** The price year of the upkeep and repair tables. */
export const TABLE_PRICE_YEAR = 2019;

/**
 * Average scheduled upkeep by powertrain, 2019 dollars a mile, a shop doing it.
 * Source: Argonne National Laboratory, ANL/ESD-21/4 (2021), as reported by the US Department of Energy.
 */
export const UPKEEP_PER_MILE_2019: Readonly<Record<Powertrain, number>> = {
  combustion: 0.101,
  hybrid: 0.094,
  plug_in: 0.09,
  battery: 0.061,
};

export const UPKEEP_SOURCE =
  'Argonne ANL/ESD-21/4 (2021) as reported by the US Department of Energy: average scheduled upkeep, 2019 dollars a mile';

/** Multipliers of the repair curve by type. Source: US EPA OMEGA model inputs, repair_cost.csv (from Argonne). */
export const REPAIR_BY_KIND: Readonly<Record<VehicleKind, number>> = { car: 1, suv: 0.91, truck: 0.7 };

/** Multipliers of the repair curve by powertrain. Source: as above. */
export const REPAIR_BY_POWERTRAIN: Readonly<Record<Powertrain, number>> = {
  combustion: 1,
  hybrid: 0.91,
  plug_in: 0.86,
  battery: 0.67,
};

/**
 * The repair curve: dollars a mile = type factor x a(age) x exp(b x price when new), the price capped.
 * Source: US EPA OMEGA model inputs, repair_cost.csv and repair_cost.py, labelled as from Argonne ANL/ESD-21/4.
 */
const REPAIR_CURVE = {
  /** a(0) to a(4); the zeros of the first two years are the maker's guarantee. */
  byAge: [0, 0, 0.00333, 0.01, 0.0167],
  /** Added to a for each year after the fourth. */
  perYearAfter: 0.00333,
  /** b, for each dollar of the price when new. */
  perDollarNew: 2e-5,
  /** The price when new, in 2019 dollars, beyond which the curve stands still. */
  highestPriceNew: 100_000,
  /** The data behind it reach so many years; older ages continue its last line. */
  dataYears: 10,
} as const;

export const REPAIR_SOURCE =
  'US EPA OMEGA model inputs, repair_cost.csv, from Argonne ANL/ESD-21/4: rests on ten years of data and on the price when new; continued in a straight line beyond';

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
  const { byAge, perYearAfter, perDollarNew, highestPriceNew } = REPAIR_CURVE;
  const last = byAge.length - 1;
  const year = Math.max(0, Math.floor(age));
  const a = byAge[year] ?? (byAge[last] ?? 0) + (year - last) * perYearAfter;
  return typeFactor * a * Math.exp(perDollarNew * Math.min(priceWhenNewInDollars2019, highestPriceNew));
};

/** Compound decline of market value a year. Source: US EPA OMEGA sample input, average_depreciation_rate. */
export const DECLINE_A_YEAR = 0.149;

/**
 * BLS consumer price index, motor vehicle maintenance and repair (1982-84 = 100): 2025-07 as shown by a data mirror of
 * series CWSR0000SETD; 2019 from memory.
 */
export const REPAIR_PRICE_INDEX = { of2019: 293, of2025July: 440.04 } as const;

/**
 * Miles driven in a year by age (index: whole years, the last one for all older) and type.
 * Source: US EPA OMEGA model inputs, annual_vmt_fixed_by_age (start year 2019), combustion.
 */
export const MILES_A_YEAR: Readonly<Record<VehicleKind, readonly number[]>> = {
  car: [
    15922, 15379, 14864, 14378, 13917, 13481, 13068, 12677, 12305, 11952, 11615, 11294, 10986, 10690, 10405,
    10129, 9860, 9597, 9338, 9081, 8826, 8570, 8313, 8051, 7785, 7511, 7229, 6938, 6635, 6319,
  ],
  suv: [
    16234, 15805, 15383, 14966, 14557, 14153, 13756, 13366, 12982, 12605, 12234, 11870, 11512, 11161, 10816,
    10477, 10146, 9820, 9501, 9189, 8883, 8583, 8290, 8004, 7724, 7450, 7183, 6923, 6669, 6421,
  ],
  truck: [
    18964, 17986, 17076, 16231, 15449, 14726, 14060, 13448, 12886, 12372, 11903, 11476, 11088, 10737, 10418,
    10131, 9871, 9635, 9421, 9226, 9047, 8882, 8726, 8577, 8433, 8290, 8146, 7998, 7842, 7676, 7497, 7302,
    7089, 6853, 6593, 6305, 5987,
  ],
};

export const MILES_SOURCE = 'US EPA OMEGA model inputs: miles a year by age and type, from 2019';
