import { distanceRatio } from '../../quantity/distance.ts';
import { MILES_A_YEAR, type VehicleKind } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { distanceText } from '../text/amounts.ts';
import type { Finding } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { modelYear, vehiclesOf } from './vehicleRules.ts';

/**
 * How far from the usual an odometer may lie before it is asked about: four times as much is a taxi's, a tenth is a
 * digit lost. Our guess, common practice: no source.
 */
const MOST = 4;
const LEAST = 0.1;
/** Older ones may be classics, kept and hardly driven. */
const CLASSIC = 30;

const KINDS = Object.keys(MILES_A_YEAR) as VehicleKind[];

/** What vehicles have run in so many years, in miles: the table's miles a year added up, its last for all later ones. */
const usualMiles = (kind: VehicleKind, years: number): number => {
  const byAge = MILES_A_YEAR[kind];
  const last = byAge[byAge.length - 1] ?? 0;
  return Array.from({ length: years }, (_, age) => byAge[age] ?? last).reduce((sum, miles) => sum + miles, 0);
};

/** An odometer that hardly any vehicle of that age shows. The model year is known to a year either way. */
export const odometerOfItsAge = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((at): Finding[] => {
    const path = [...at, 'odometer'];
    const odometer = raw.num(path, VEHICLE.PRESENT.odometer);
    const year = modelYear(raw, at);
    if (odometer === undefined || year === undefined) return [];
    const age = Math.max(0, Number(raw.date.slice(0, 4)) - year);
    const kind = KINDS.find((one) => one === raw.word([...at, 'kind'])) ?? 'car';
    const ratio = distanceRatio('miles', raw.units.distance);
    const much = odometer > MOST * ratio * usualMiles(kind, age + 1);
    const little = age < CLASSIC && odometer < LEAST * ratio * usualMiles(kind, age - 1);
    if (!much && !little) return [];
    const usual = significant(ratio * usualMiles(kind, Math.max(1, age)), 2);
    const { distance } = raw.units;
    return [
      {
        kind: 'caution',
        path,
        message: `${distanceText(odometer, distance)} is very ${much ? 'much' : 'little'} for the model year ${year}: by then about ${distanceText(usual, distance)} are usual.`,
        remedy: 'Look at the odometer and the model year again.',
      },
    ];
  });
