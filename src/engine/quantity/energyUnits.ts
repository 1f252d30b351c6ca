import { type DistanceUnit, distanceRatio } from './distance.ts';

/** What a unit of energy is sold by. A gallon is the US gallon. */
export type EnergyUnit = 'gallon' | 'litre' | 'kWh';

/** Litres in a US gallon, exactly (231 cubic inches). */
export const LITRES_PER_GALLON = 3.785411784;

/** Economy as it is stated: energy for 100 of distance, or distance on one unit of energy. */
export interface Economy {
  readonly stated: 'per100' | 'perUnit';
  readonly value: number;
  readonly distance: DistanceUnit;
  readonly energy: EnergyUnit;
}

/** The same economy with its distance in `to`; the energy unit and the way it is stated stay. */
export const economyIn = (economy: Economy, to: DistanceUnit): Economy => {
  const ratio = distanceRatio(economy.distance, to);
  const value = economy.stated === 'perUnit' ? economy.value * ratio : economy.value / ratio;
  return { ...economy, value, distance: to };
};

/** Energy used for one unit of the economy's own distance, in its energy unit; economy must be above 0. */
export const energyPerDistance = (economy: Economy): number =>
  economy.stated === 'per100' ? economy.value / 100 : 1 / economy.value;

/** A price for one `from` restated for one `to`; `null` where one is a volume and the other is not. */
export const energyPriceIn = (price: number, from: EnergyUnit, to: EnergyUnit): number | null => {
  if (from === to) return price;
  if (from === 'kWh' || to === 'kWh') return null;
  return from === 'gallon' ? price / LITRES_PER_GALLON : price * LITRES_PER_GALLON;
};
