import { type EnergyUnit, economyIn, energyPriceIn, LITRES_PER_GALLON } from '../../quantity/energyUnits.ts';
import type { RunningCosts } from '../inputs/inputs.ts';
import { ECONOMY_SOURCE, milesAGallon, type Powertrain, type VehicleKind } from '../inputs/tables.ts';
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

/** What stands in for a price that nobody gave. */
const usualPrice = (unit: EnergyUnit, pen: Pen): Fallback => {
  const one = unit === 'kWh' ? D.pricePerKWh : D.pricePerGallon;
  const inDollars = unit === 'litre' ? significant(one.value / LITRES_PER_GALLON, 3) : one.value;
  return following(significant(inDollars * pen.units.perDollar, 6), one.source, one.mark);
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
const priceOf = (fuel: SparseRunning['fuel'], unit: EnergyUnit, pen: Pen, pumps: Pumps): number => {
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
    usualPrice(unit, pen),
    {
      words: `price of a ${unit}`,
      within: { min: 0, max },
      suffix: ` per ${unit}`,
      ...(typedAt === undefined ? {} : { typedAt }),
    },
  );
};

/** What a vehicle is, as far as its economy goes by it. */
interface Driven {
  readonly powertrain: Powertrain;
  readonly kind: VehicleKind;
  readonly modelYear: number;
}

/** What stands in for an economy that nobody gave, in miles a gallon or a kWh, and from where. */
const usualEconomy = ({ powertrain, kind, modelYear }: Driven) => {
  if (powertrain === 'battery') return { ...D.milesPerKWh, energy: 'kWh' as const };
  const value = milesAGallon(kind, modelYear);
  const table = { energy: 'gallon' as const, mark: 'table' as const, source: ECONOMY_SOURCE };
  return powertrain === 'combustion'
    ? { ...table, value }
    : {
        ...table,
        value: value * D.hybrid.value,
        source: `${ECONOMY_SOURCE}, times ${D.hybrid.value}, our guess`,
      };
};

/** Energy of one vehicle: its economy as stated, in the household's distance, and the price of one unit. */
export const completeEnergy = (
  fuel: SparseRunning['fuel'],
  driven: Driven,
  pen: Pen,
  pumps: Pumps,
): Completed => {
  const usual = usualForm(pen.units.distance, driven.powertrain === 'battery');
  const one = usualEconomy(driven);
  const assumed = economyIn(
    { stated: 'perUnit', value: one.value, distance: 'miles', energy: one.energy },
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
    following(significant(assumedValue, 3), one.source, one.mark),
    { within: economyRange(form), suffix: ` ${formText(form)}` },
  );
  const unit = form.energy;
  return { energy: { stated: form.stated, economy, price: priceOf(fuel, unit, pen, pumps) }, unit };
};
