import { energyPriceIn } from '../../quantity/energyUnits.ts';
import * as HOME from '../inputs/householdInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { economyOf, pricedIn, pricedUnit, usualForm } from '../reading/economy.ts';
import type { Finding, Path } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf, wrongCurrency } from './vehicleRules.ts';

/** The household's own prices at the pump and at the socket. */
const PUMPS = [
  { key: 'fuel_price', spec: HOME.HOUSEHOLD_MORE.fuelPrice, battery: false, sold: 'gallon or litre' },
  { key: 'power_price', spec: HOME.HOUSEHOLD_MORE.powerPrice, battery: true, sold: 'kWh' },
] as const;

const pumps = (raw: Raw) =>
  PUMPS.map(({ key, spec, battery, sold }) => {
    const path: Path = ['household', key];
    const usual = usualForm(raw.units.distance, battery).energy;
    const price = raw.stated(path, spec);
    return { path, key, battery, sold, price, unit: price ? pricedUnit(price, usual) : null };
  });

/** A price at the pump is for what is sold there, in the household's money. */
export const pumpsFit = (raw: Raw): Finding[] =>
  pumps(raw).flatMap(({ path, battery, sold, price, unit }): Finding[] => {
    if (
      !price ||
      ((unit === 'kWh') === battery && unit !== null && !wrongCurrency(pricedIn(price), raw.units))
    )
      return [];
    return [
      {
        kind: 'wrong unit',
        path,
        value: raw.at(path),
        message: 'The price does not fit what is sold here.',
        remedy: `Give the price of one ${sold} in ${raw.units.currency}.`,
      },
    ];
  });

/** The household's price goes before a vehicle's own: said where the two differ. */
export const pumpGoesFirst = (raw: Raw): Finding[] =>
  pumps(raw).flatMap(({ key, price, unit }): Finding[] => {
    if (!price || unit === null) return [];
    return vehiclesOf(raw).flatMap((vehicle): Finding[] => {
      const path = [...vehicle, 'fuel', 'price'];
      const own = raw.stated(path, VEHICLE.FUEL.price);
      const economy = raw.stated([...vehicle, 'fuel', 'economy'], VEHICLE.FUEL.economy);
      const usual = usualForm(raw.units.distance, raw.at([...vehicle, 'powertrain']) === 'battery');
      const mine = own && pricedUnit(own, ((economy && economyOf(economy, usual)) || usual).energy);
      const theirs = own && mine ? energyPriceIn(own.value, mine, unit) : null;
      if (theirs === null || Math.abs(theirs - price.value) < 1e-6 * price.value) return [];
      return [
        {
          kind: 'caution',
          path,
          value: raw.at(path),
          message: `"household.${key}" says another price and goes before this one.`,
          remedy: 'Keep one of the two.',
        },
      ];
    });
  });
