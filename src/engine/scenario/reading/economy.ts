import type { DistanceUnit } from '../../quantity/distance.ts';
import { KM_PER_MILE } from '../../quantity/distance.ts';
import { type Economy, type EnergyUnit, LITRES_PER_GALLON } from '../../quantity/energyUnits.ts';
import { significant } from '../inputs/units.ts';
import type { Stated } from './stated.ts';

type Form = Omit<Economy, 'value'>;

const form = (stated: Form['stated'], distance: DistanceUnit, energy: EnergyUnit): Form => ({
  stated,
  distance,
  energy,
});

/** Every way an economy may be written; the first of those that say the same is how we write it. */
const FORMS: Readonly<Record<string, Form>> = {
  mpg: form('perUnit', 'miles', 'gallon'),
  'mi/gal': form('perUnit', 'miles', 'gallon'),
  'miles/gallon': form('perUnit', 'miles', 'gallon'),
  'l/100km': form('per100', 'km', 'litre'),
  'l/100mi': form('per100', 'miles', 'litre'),
  'l/100miles': form('per100', 'miles', 'litre'),
  'km/l': form('perUnit', 'km', 'litre'),
  'mi/l': form('perUnit', 'miles', 'litre'),
  'km/gal': form('perUnit', 'km', 'gallon'),
  'mi/kwh': form('perUnit', 'miles', 'kWh'),
  'miles/kwh': form('perUnit', 'miles', 'kWh'),
  'km/kwh': form('perUnit', 'km', 'kWh'),
  'kwh/100km': form('per100', 'km', 'kWh'),
  'kwh/100mi': form('per100', 'miles', 'kWh'),
  'kwh/100miles': form('per100', 'miles', 'kWh'),
};

const ENERGY: Readonly<Record<string, EnergyUnit>> = {
  gallon: 'gallon',
  gal: 'gallon',
  litre: 'litre',
  liter: 'litre',
  l: 'litre',
  kwh: 'kWh',
};

/** The way a bare number is meant: mpg or l/100km by the household's distance, by the kWh for a battery. */
export const usualForm = (distance: DistanceUnit, battery: boolean): Form => {
  if (battery) return distance === 'miles' ? form('perUnit', 'miles', 'kWh') : form('per100', 'km', 'kWh');
  return distance === 'miles' ? form('perUnit', 'miles', 'gallon') : form('per100', 'km', 'litre');
};

/** How a form is written behind its figure: "mpg", "l/100km". */
export const formText = (of: Form): string =>
  Object.keys(FORMS).find((name) => {
    const one = FORMS[name];
    return one?.stated === of.stated && one.distance === of.distance && one.energy === of.energy;
  }) ?? '';

/** The economy as written, in its own distance; null for a unit nobody knows. */
export const economyOf = (given: Stated, usual: Form): Economy | null => {
  const [before, after = ''] = given.unit.split('|');
  const name = after.replaceAll(' ', '');
  if (name === '') return { ...usual, value: given.value };
  if (before !== '' || !Object.hasOwn(FORMS, name)) return null;
  return { ...(FORMS[name] ?? usual), value: given.value };
};

/** The unit of energy a price is for: `usual` where it does not say; null for a unit nobody knows. */
export const pricedUnit = (given: Stated, usual: EnergyUnit): EnergyUnit | null => {
  const after = (given.unit.split('|')[1] ?? '').replace(/^[^/]*/, '');
  if (after === '') return usual;
  const name = after.slice(1).trim();
  return Object.hasOwn(ENERGY, name) ? (ENERGY[name] ?? null) : null;
};

/** What stands around the figure of a price besides its unit of energy: a currency sign or code. */
export const pricedIn = (given: Stated): string[] => {
  const [before = '', after = ''] = given.unit.split('|');
  return [before, after.replace(/\/.*$/, '')].map((name) => name.trim()).filter((name) => name !== '');
};

/** Least and most anyone's vehicle uses, for 100 km. */
const MOST: Readonly<Record<'fuel' | 'kWh', readonly [number, number]>> = { fuel: [1.5, 60], kWh: [6, 100] };

/** The range of an economy in the way and the units it is stated. */
export const economyRange = ({ stated, distance, energy }: Form): { min: number; max: number } => {
  const ratio = (distance === 'miles' ? KM_PER_MILE : 1) / (energy === 'gallon' ? LITRES_PER_GALLON : 1);
  const [least, most] = MOST[energy === 'kWh' ? 'kWh' : 'fuel'];
  const per100 = [least * ratio, most * ratio] as const;
  const [min, max] = stated === 'per100' ? per100 : [100 / per100[1], 100 / per100[0]];
  return { min: significant(min, 3), max: significant(max, 3) };
};
