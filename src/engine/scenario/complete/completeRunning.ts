import { distanceRatio } from '../../quantity/distance.ts';
import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import type { Input } from '../inputs/declared.ts';
import type { RunningCosts } from '../inputs/inputs.ts';
import {
  REPAIR_BY_KIND,
  REPAIR_BY_POWERTRAIN,
  UPKEEP_PER_MILE_2019,
  UPKEEP_SOURCE,
} from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { kindOf } from '../reading/kind.ts';
import type { Stated } from '../reading/stated.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { completeChanges } from './completeChanges.ts';
import { completeEnergy, type Pumps } from './completeEnergy.ts';
import { completeComponents, completeUpkeep } from './completeParts.ts';
import { completeValue } from './completeValue.ts';
import { following, type Pen, type Said } from './quantityBook.ts';

/** What the household's part of the file decides about every vehicle. */
export interface Shared {
  /** ISO day of the decision. */
  readonly date: string;
  readonly distanceAYear: number;
  /** The table's prices to today's, in dollars. */
  readonly priceRatio: number;
  readonly pumps: Pumps;
  /** What leaving out a bill that this vehicle does not give does. */
  readonly leftOut: (bill: VEHICLE.Bill) => string;
}

/** What is known of a vehicle before its running costs are filled in. */
export interface About {
  readonly name: string;
  readonly modelYear: number;
  readonly age: number;
  readonly odometer: number;
  readonly priceWhenNew: number;
  /** Market value on the day it starts. */
  readonly today: number;
  readonly floor: number;
  /** What is taken of upkeep whose history nobody knows. */
  readonly unknown: 'due' | 'new' | 'caught up';
  /** Where its yearly bills are due; null: bought, so they fall at its start. */
  readonly due: Said<typeof VEHICLE.DUE> | null;
}

type Bills = Pick<RunningCosts, keyof typeof VEHICLE.YEARLY_BILLS | keyof typeof VEHICLE.MONTHLY_BILLS>;

const bills = (file: SparseRunning, pen: Pen, { due }: About, leftOut: Shared['leftOut']): Bills => {
  const without = (one: Input) => (VEHICLE.isLeftOut(one) ? { or: { ...one.or, source: leftOut(one) } } : {});
  const yearly = Object.entries(VEHICLE.YEARLY_BILLS).map(([bill, { aYear, nextDue }]) => {
    const at = pen.at(bill, '');
    const next = due ? at.from({ nextDue }, due) : () => 0;
    return [bill, { ...at.all({ aYear }, file, without), nextDue: next('nextDue') }];
  });
  return { ...Object.fromEntries(yearly), ...pen.all(VEHICLE.MONTHLY_BILLS, file, without) };
};

/** The fleet averages, carried to the household's currency, distance and day. */
const averages = (file: SparseRunning, pen: Pen, shared: Shared) => {
  const powertrain = file.powertrain ?? 'combustion';
  const { perDollar, distance } = pen.units;
  const ratio = significant((shared.priceRatio * perDollar) / distanceRatio('miles', distance), 12);
  const upkeep = significant(UPKEEP_PER_MILE_2019[powertrain] * ratio, 12);
  const listed = file.upkeep !== undefined;
  const repairs = pen.at('averageRepairs', '');
  const take = repairs.from(VEHICLE.REPAIRS, file);
  const typeFactor = significant(REPAIR_BY_KIND[kindOf(file)] * REPAIR_BY_POWERTRAIN[powertrain], 12);
  const { key, or } = VEHICLE.REPAIRS.bill;
  const bill = repairs.takeRanged('bill.mean', key, VEHICLE.REPAIRS.bill, file[key], or, {
    varies: 'each time',
  });
  return {
    averageUpkeep: listed
      ? 0
      : pen.from({ averageUpkeep: VEHICLE.AVERAGE_UPKEEP[distance] }, file)(
          'averageUpkeep',
          following(upkeep, UPKEEP_SOURCE, 'table'),
        ),
    averageRepairs: {
      scale: take('scale'),
      priceRatio: ratio,
      perDollar,
      typeFactor,
      statedAYear: take('statedAYear'),
      bill: { mean: bill.value, range: bill.range },
      strands: take('strands'),
    },
  };
};

const guarantee = (file: SparseRunning['guarantee'], pen: Pen): RunningCosts['guarantee'] => {
  const one = VEHICLE.GUARANTEE_DISTANCE[file?.km ? 'km' : file?.miles ? 'miles' : pen.units.distance];
  return {
    ...pen.all(VEHICLE.GUARANTEE, file),
    distance: pen.take('distance', one.key, one, guaranteedDistance(file, pen), one.or),
  };
};

/** A guarantee's distance is written in the unit its key names, whatever the household drives in. */
const guaranteedDistance = (file: SparseRunning['guarantee'], pen: Pen): Stated | undefined => {
  const written = file?.km ?? file?.miles;
  if (!written) return undefined;
  const ratio = distanceRatio(file?.km ? 'km' : 'miles', pen.units.distance);
  return { ...written, value: ratio === 1 ? written.value : significant(written.value * ratio, 12) };
};

/** What a vehicle costs to run, complete. `pen` stands at the vehicle. */
export const completeRunning = (
  file: SparseRunning,
  pen: Pen,
  about: About,
  shared: Shared,
): { readonly costs: RunningCosts; readonly energyUnit: EnergyUnit } => {
  const { age, odometer, priceWhenNew, today, floor, name } = about;
  const powertrain = file.powertrain ?? 'combustion';
  const driven = { powertrain, kind: kindOf(file), modelYear: about.modelYear };
  const energy = completeEnergy(file.fuel, driven, pen.at('energy', ''), shared.pumps);
  const clocks = {
    odometer,
    ageMonths: age * 12,
    distanceAYear: shared.distanceAYear,
    powertrain,
    tableDollar: shared.priceRatio * pen.units.perDollar,
    unknown: about.unknown,
  };
  const costs: RunningCosts = {
    age,
    bodyStyle: kindOf(file),
    odometer,
    priceWhenNew,
    energy: energy.energy,
    ...bills(file, pen, about, shared.leftOut),
    registrationRefunded: file.registration_refunded ?? false,
    changes: completeChanges(file.changes, pen, shared.date),
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
      ? pen.from(VEHICLE.WORTH, file)('brandFactor')
      : VEHICLE.WORTH.brandFactor.or.value,
    selling: pen.at('selling', 'selling').all(VEHICLE.SELLING, file.selling),
  };
  return { costs, energyUnit: energy.unit };
};
