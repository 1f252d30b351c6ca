import { distanceRatio } from '../../quantity/distance.ts';
import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import type { BillKey } from '../inputs/bills.ts';
import { DEFAULTS, type Default } from '../inputs/defaults.ts';
import type { RunningCosts } from '../inputs/inputs.ts';
import { RUNNING } from '../inputs/specs.ts';
import {
  REPAIR_BY_KIND,
  REPAIR_BY_POWERTRAIN,
  UPKEEP_PER_MILE_2019,
  UPKEEP_SOURCE,
} from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import type { Stated } from '../reading/stated.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { completeEnergy, type Pumps } from './completeEnergy.ts';
import { completeComponents, completeUpkeep } from './completeParts.ts';
import { completeValue } from './completeValue.ts';
import { following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.running;
const LEFT_OUT: Readonly<Record<BillKey, Default>> = {
  registration_a_year: D.registration,
  inspection_a_year: D.inspection,
  tax_a_year: D.tax,
  parking_a_month: D.parking,
};

/** What the household's part of the file decides about every vehicle. */
export interface Shared {
  readonly distanceAYear: number;
  /** The table's prices to today's, in dollars. */
  readonly priceRatio: number;
  readonly pumps: Pumps;
  /** No vehicle's economy is given, and all are driven alike: the guess is the same for all. */
  readonly sameEnergy: boolean;
  /** What leaving out a bill that this vehicle does not give does, for each such bill. */
  readonly leftOut: Readonly<Record<BillKey, string>>;
}

/** The four yearly bills' next due months, where the vehicle is kept; a bought one has none. */
export type Due = Readonly<Record<'insurance' | 'registration' | 'inspection' | 'tax', Stated | undefined>>;

/** What is known of a vehicle before its running costs are filled in. */
export interface About {
  readonly name: string;
  readonly age: number;
  readonly odometer: number;
  readonly priceWhenNew: number;
  /** Market value on the day it starts. */
  readonly today: number;
  readonly floor: number;
  /** What is taken of upkeep whose history nobody knows. */
  readonly unknown: 'due' | 'new' | 'caught up';
  /** null: bought, so its bills fall at its start. */
  readonly due: Due | null;
}

const bills = (file: SparseRunning, pen: Pen, due: Due | null, leftOut: Shared['leftOut']) => {
  const without = (key: BillKey) => ({ ...LEFT_OUT[key], source: leftOut[key] });
  const nextDue = (key: string, name: keyof Due): number =>
    due
      ? pen.take(`${key}.nextDue`, `${name}_due`, RUNNING.due, due[name], D.due, {
          words: `months until the ${name} is due`,
        })
      : 0;
  const { insurance, registration, inspection, tax } = RUNNING;
  return {
    cover: {
      aYear: pen.take('cover.aYear', 'insurance_a_year', insurance, file.insurance_a_year),
      nextDue: nextDue('cover', 'insurance'),
    },
    registration: {
      aYear: pen.take(
        'registration.aYear',
        'registration_a_year',
        registration,
        file.registration_a_year,
        without('registration_a_year'),
      ),
      nextDue: nextDue('registration', 'registration'),
    },
    registrationRefunded: file.registration_refunded ?? false,
    inspection: {
      aYear: pen.take(
        'inspection.aYear',
        'inspection_a_year',
        inspection,
        file.inspection_a_year,
        without('inspection_a_year'),
      ),
      nextDue: nextDue('inspection', 'inspection'),
    },
    tax: {
      aYear: pen.take('tax.aYear', 'tax_a_year', tax, file.tax_a_year, without('tax_a_year')),
      nextDue: nextDue('tax', 'tax'),
    },
    parkingAMonth: pen.take(
      'parkingAMonth',
      'parking_a_month',
      RUNNING.parking,
      file.parking_a_month,
      without('parking_a_month'),
    ),
  };
};

/** The fleet averages, carried to the household's currency, distance and day. */
const averages = (file: SparseRunning, pen: Pen, shared: Shared) => {
  const powertrain = file.powertrain ?? 'combustion';
  const { perDollar, distance } = pen.units;
  const ratio = significant((shared.priceRatio * perDollar) / distanceRatio('miles', distance), 12);
  const upkeep = significant(UPKEEP_PER_MILE_2019[powertrain] * ratio, 12);
  const listed = file.upkeep !== undefined;
  const upkeepKey = distance === 'km' ? 'upkeep_a_km' : 'upkeep_a_mile';
  const repairs = pen.at('averageRepairs', '');
  const typeFactor = significant(REPAIR_BY_KIND[file.kind ?? 'car'] * REPAIR_BY_POWERTRAIN[powertrain], 12);
  const bill = repairs.takeRanged(
    'bill.mean',
    'usual_repair',
    RUNNING.usualRepair,
    file.usual_repair,
    D.usualRepair,
    { varies: 'each time' },
  );
  return {
    averageUpkeep: listed
      ? 0
      : pen.take(
          'averageUpkeep',
          upkeepKey,
          RUNNING.averageUpkeep,
          file[upkeepKey],
          following(upkeep, UPKEEP_SOURCE, 'table'),
        ),
    averageRepairs: {
      scale: repairs.take(
        'scale',
        'repairs_factor',
        RUNNING.repairsFactor,
        file.repairs_factor,
        D.repairsFactor,
      ),
      priceRatio: ratio,
      perDollar,
      typeFactor,
      statedAYear: file.repairs_a_year
        ? repairs.take('statedAYear', 'repairs_a_year', RUNNING.repairsAYear, file.repairs_a_year)
        : null,
      bill: { mean: bill.value, range: bill.range },
      strands: repairs.take('strands', 'strands', RUNNING.strands, file.strands, D.strands),
    },
  };
};

const guarantee = (file: SparseRunning['guarantee'], pen: Pen): RunningCosts['guarantee'] => ({
  months: pen.take('months', 'months', RUNNING.guaranteeMonths, file?.months, D.guaranteeMonths),
  distance: pen.take(
    'distance',
    file?.km ? 'km' : file?.miles ? 'miles' : pen.units.distance,
    RUNNING.guaranteeDistance,
    guaranteedDistance(file, pen),
    D.guaranteeDistance,
  ),
});

/** A guarantee's distance is written in the unit its key names, whatever the household drives in. */
const guaranteedDistance = (file: SparseRunning['guarantee'], pen: Pen): Stated | undefined => {
  const written = file?.km ?? file?.miles;
  if (!written) return undefined;
  const ratio = distanceRatio(file?.km ? 'km' : 'miles', pen.units.distance);
  return { ...written, value: ratio === 1 ? written.value : significant(written.value * ratio, 12) };
};

const selling = (file: SparseRunning['selling'], pen: Pen): RunningCosts['selling'] => ({
  cost: pen.take('cost', 'cost', RUNNING.sellingCost, file?.cost, D.sellingCost),
  hours: pen.take('hours', 'hours', RUNNING.sellingHours, file?.hours, D.sellingHours),
  weeks: pen.take('weeks', 'weeks', RUNNING.sellingWeeks, file?.weeks, D.sellingWeeks),
});

/** What a vehicle costs to run, complete. `pen` stands at the vehicle. */
export const completeRunning = (
  file: SparseRunning,
  pen: Pen,
  about: About,
  shared: Shared,
): { readonly costs: RunningCosts; readonly energyUnit: EnergyUnit } => {
  const { age, odometer, priceWhenNew, today, floor, due, name } = about;
  const energy = completeEnergy(file.fuel, file.powertrain ?? 'combustion', pen.at('energy', ''), shared);
  const clocks = {
    odometer,
    ageMonths: age * 12,
    distanceAYear: shared.distanceAYear,
    powertrain: file.powertrain ?? 'combustion',
    tableDollar: shared.priceRatio * pen.units.perDollar,
    unknown: about.unknown,
  };
  const costs: RunningCosts = {
    age,
    odometer,
    priceWhenNew,
    energy: energy.energy,
    ...bills(file, pen, due, shared.leftOut),
    ...averages(file, pen, shared),
    upkeep: completeUpkeep(
      file.upkeep,
      pen,
      name,
      clocks,
      (file.components ?? []).map((part) => part.name),
    ),
    components: completeComponents(file.components, pen, name, clocks),
    guarantee: guarantee(file.guarantee, pen.at('guarantee', 'guarantee')),
    value: completeValue(file.value_falls, pen.at('value', 'value_falls'), today),
    floor,
    brandFactor: file.title_factor
      ? pen.take('brandFactor', 'title_factor', RUNNING.brandFactor, file.title_factor)
      : DEFAULTS.running.brandFactor.value,
    selling: selling(file.selling, pen.at('selling', 'selling')),
  };
  return { costs, energyUnit: energy.unit };
};
