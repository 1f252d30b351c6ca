import { type EnergyUnit, economyIn, energyPriceIn, LITRES_PER_GALLON } from '../../quantity/energyUnits.ts';
import type { RunningCosts } from '../inputs/inputs.ts';
import type { Powertrain } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { economyOf, economyRange, formText, pricedUnit, usualForm } from '../reading/economy.ts';
import { type Stated, times } from '../reading/stated.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

const D = VEHICLE.USUAL_ENERGY;

/** A price of energy given for one vehicle, or for the household: others buy at the same pump. */
export interface PumpPrice {
  readonly price: Stated;
  readonly unit: EnergyUnit;
  readonly whose: string;
  /** Where it stands in the file. */
  readonly path: string;
}

/** Where the household's own price of a kind of energy stands. */
export const pumpPath = (unit: EnergyUnit): string =>
  unit === 'kWh' ? 'household.power_price' : 'household.fuel_price';

interface Completed {
  readonly energy: RunningCosts['energy'];
  readonly unit: EnergyUnit;
}

/** A guess says so; it adds that it is the same for both where that is so. */
const guessed = (source: string, sameEnergy: boolean): string =>
  sameEnergy ? `${source}; taken alike for both until one is given` : source;

/** What stands in for a price that nobody gave. */
const usualPrice = (unit: EnergyUnit, pen: Pen, sameEnergy: boolean): Fallback => {
  const one = unit === 'kWh' ? D.pricePerKWh : D.pricePerGallon;
  const inDollars = unit === 'litre' ? significant(one.value / LITRES_PER_GALLON, 3) : one.value;
  return following(
    significant(inDollars * pen.units.perDollar, 6),
    guessed(one.source, sameEnergy),
    one.mark,
  );
};

/** Prices of energy as a vehicle meets them. */
export interface Pumps {
  /** The household's, which goes before every vehicle's own. */
  readonly household: PumpPrice | null;
  /** Any vehicle's of the same kind of energy. */
  readonly other: PumpPrice | null;
  /** All vehicles that buy this kind say the same: it is the household's pump. */
  readonly oneForAll: boolean;
}

/** The price of one unit of energy, from where it is given: the household, the vehicle itself, another vehicle. */
const priceOf = (
  fuel: SparseRunning['fuel'],
  unit: EnergyUnit,
  pen: Pen,
  { pumps, sameEnergy }: { readonly pumps: Pumps; readonly sameEnergy: boolean },
): number => {
  const max = significant(VEHICLE.FUEL.price.max * pen.units.perDollar, 3);
  const ownRatio = fuel?.price && energyPriceIn(1, pricedUnit(fuel.price, unit) ?? unit, unit);
  const own = fuel?.price && times(fuel.price, ownRatio ?? 1);
  const from = pumps.household ?? (own ? null : pumps.other);
  const ratio = from && energyPriceIn(1, from.unit, unit);
  const shared = from && ratio !== null ? times(from.price, ratio) : null;
  // What is given elsewhere is noted as standing there; whatever is given nowhere would best be given once for all.
  const typedAt =
    pumps.household || pumps.oneForAll || !(own || shared) ? pumpPath(unit) : own ? undefined : from?.path;
  return pen.take(
    'price',
    'fuel.price',
    VEHICLE.FUEL.price,
    shared && from ? { ...shared, source: shared.source || `as given for ${from.whose}` } : own,
    usualPrice(unit, pen, sameEnergy),
    {
      words: `price of a ${unit}`,
      within: { min: 0, max },
      suffix: ` per ${unit}`,
      ...(typedAt === undefined ? {} : { typedAt }),
    },
  );
};

/** Energy of one vehicle: its economy as stated, in the household's distance, and the price of one unit. */
export const completeEnergy = (
  fuel: SparseRunning['fuel'],
  powertrain: Powertrain,
  pen: Pen,
  shared: { readonly pumps: Pumps; readonly sameEnergy: boolean },
): Completed => {
  const battery = powertrain === 'battery';
  const usual = usualForm(pen.units.distance, battery);
  const one = battery ? D.milesPerKWh : D.milesPerGallon;
  const assumed = economyIn(
    { stated: 'perUnit', value: one.value, distance: 'miles', energy: battery ? 'kWh' : 'gallon' },
    usual.distance,
  );
  const given = fuel?.economy && economyOf(fuel.economy, usual);
  const stated = given && economyIn(given, pen.units.distance);
  const form = stated ?? usual;
  const perLitre = usual.energy === 'litre' ? assumed.value / LITRES_PER_GALLON : assumed.value;
  const assumedValue = usual.stated === 'per100' ? 100 / perLitre : perLitre;
  const economy = pen.take(
    'economy',
    'fuel.economy',
    VEHICLE.FUEL.economy,
    given && fuel?.economy
      ? times(fuel.economy, economyIn({ ...given, value: 1 }, pen.units.distance).value)
      : undefined,
    following(significant(assumedValue, 3), guessed(one.source, shared.sameEnergy), one.mark),
    { within: economyRange(form), suffix: ` ${formText(form)}` },
  );
  const unit = form.energy;
  return { energy: { stated: form.stated, economy, price: priceOf(fuel, unit, pen, shared) }, unit };
};
