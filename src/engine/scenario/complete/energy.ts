import { type EnergyUnit, economyIn, energyPriceIn, LITRES_PER_GALLON } from '../../quantity/energy.ts';
import { DEFAULTS } from '../defaults.ts';
import type { RunningCosts } from '../inputs.ts';
import { economyOf, economyRange, pricedUnit, usualForm } from '../reading/economy.ts';
import { type Stated, times } from '../reading/stated.ts';
import type { SparseRunning } from '../schema/scenario.ts';
import { RUNNING } from '../specs.ts';
import type { Powertrain } from '../tables.ts';
import { significant } from '../units.ts';
import { type Fallback, following, type Pen } from './book.ts';

const D = DEFAULTS.running;

/** A price of energy given for one vehicle: the other buys at the same pump. */
export interface PumpPrice {
  readonly price: Stated;
  readonly unit: EnergyUnit;
  readonly whose: string;
}

interface Completed {
  readonly energy: RunningCosts['energy'];
  readonly unit: EnergyUnit;
}

/** A guess says so; it adds that it is the same for both where that is so. */
const guessed = (source: string, sameEnergy: boolean): string =>
  sameEnergy ? `${source}; taken alike for both until one is given` : source;

const defaultPrice = (
  unit: EnergyUnit,
  pen: Pen,
  { pump, sameEnergy }: { readonly pump: PumpPrice | null; readonly sameEnergy: boolean },
): Fallback => {
  const ratio = pump && energyPriceIn(1, pump.unit, unit);
  if (pump && ratio !== null) {
    const { value, range } = times(pump.price, ratio);
    return { ...following(significant(value, 6), `as given for ${pump.whose}`), range };
  }
  const one = unit === 'kWh' ? D.pricePerKWh : D.pricePerGallon;
  const inDollars = unit === 'litre' ? significant(one.value / LITRES_PER_GALLON, 3) : one.value;
  return following(
    significant(inDollars * pen.units.perDollar, 6),
    guessed(one.source, sameEnergy),
    one.mark,
  );
};

/** Energy of one vehicle: its economy as stated, in the household's distance, and the price of one unit. */
export const completeEnergy = (
  fuel: SparseRunning['fuel'],
  powertrain: Powertrain,
  pen: Pen,
  shared: { readonly pump: PumpPrice | null; readonly sameEnergy: boolean },
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
    RUNNING.economy,
    given && fuel?.economy
      ? times(fuel.economy, economyIn({ ...given, value: 1 }, pen.units.distance).value)
      : undefined,
    following(significant(assumedValue, 3), guessed(one.source, shared.sameEnergy), one.mark),
    { within: economyRange(form) },
  );
  const unit = form.energy;
  const ratio = fuel?.price && energyPriceIn(1, pricedUnit(fuel.price, unit) ?? unit, unit);
  const max = significant(RUNNING.energyPrice.max * pen.units.perDollar, 3);
  const price = pen.take(
    'price',
    'fuel.price',
    RUNNING.energyPrice,
    fuel?.price && times(fuel.price, ratio ?? 1),
    defaultPrice(unit, pen, shared),
    { words: `price of a ${unit}`, within: { min: 0, max } },
  );
  return { energy: { stated: form.stated, economy, price }, unit };
};
