import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import type { EndOfLife, PresentVehicle } from '../inputs/inputs.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { SparseVehicle } from '../schema/scenarioSchema.ts';
import { yearOf } from '../text/year.ts';
import { completeCover } from './completeCover.ts';
import { completeRunning, type Shared } from './completeRunning.ts';
import { following, type Pen } from './quantityBook.ts';

/** Years back that a model year is tried at. */
const OLDEST = 60;

/** Whole years from a model year to the day of the decision, never below nil. */
const ageIn = (year: number, date: string): number => Math.max(0, Number(date.slice(0, 4)) - year);

const modelYear = (file: SparseVehicle, date: string): number =>
  file.year?.value ?? yearOf(file.what) ?? Number(date.slice(0, 4));

/** Its age, by its model year: as given, or as read out of its name. */
export const takeAge = (file: Pick<SparseVehicle, 'year'>, pen: Pen, date: string, read: number): number => {
  const now = Number(date.slice(0, 4));
  const named = following(read, 'read out of its name', 'measured');
  const within = { min: now - OLDEST, max: now + 1 };
  return ageIn(pen.from(VEHICLE.MODEL_YEAR, file)('age', named, { isDefault: false, within }), date);
};

/** Whole years since the present vehicle's model year. */
export const ageOf = (file: SparseVehicle, date: string): number => ageIn(modelYear(file, date), date);

/** What ends it for good, each found out at its yearly inspection. */
const endsOf = (file: SparseVehicle['ends'], pen: Pen): EndOfLife[] =>
  (file ?? []).map((end, i) => ({
    what: end.what,
    ...pen
      .at(`ends.${i}`, `ends.${i}`)
      .all(OWNED.END, end, ({ words }) => ({ words: `${words}: ${end.what}` })),
  }));

/** The present vehicle's numbers, complete. */
export const completeVehicle = (
  file: SparseVehicle,
  root: Pen,
  date: string,
  shared: Shared,
  needsWork: boolean,
): { readonly vehicle: PresentVehicle; readonly energyUnit: EnergyUnit } => {
  const pen = root.at('vehicle', 'vehicle', file.what);
  const prices = file.sells_for;
  const sale = pen.at('sellsFor', 'sells_for').from(OWNED.SALE, prices);
  const age = takeAge(file, pen, date, modelYear(file, date));
  const { odometer, priceWhenNew } = pen.all(VEHICLE.PRESENT, file);
  const running = sale('running');
  const asItStands = sale('asItStands');
  const part = OWNED.SALE.brokenDown.or.value * running;
  const broken =
    needsWork || part > asItStands
      ? following(asItStands, 'as it stands today')
      : following(part, 'our guess: three tenths of what it brings running');
  const brokenDown = sale('brokenDown', broken);
  const half = following(
    brokenDown * OWNED.SALE.scrap.or.value,
    'our guess: half of what it brings broken down',
  );
  const scrap = sale('scrap', half);
  const floor = pen.from(VEHICLE.WORTH, file)('floor', following(scrap, 'as scrap'));
  const about = {
    name: file.what,
    modelYear: Number(date.slice(0, 4)) - age,
    age,
    odometer,
    priceWhenNew,
    today: running,
    floor,
    due: file,
    unknown: 'due' as const,
  };
  const { costs, energyUnit } = completeRunning(file, pen, about, shared);
  const vehicle: PresentVehicle = {
    ...costs,
    sellsFor: {
      running,
      asItStands,
      tradeIn: sale('tradeIn'),
      tradeInMended: sale('tradeInMended'),
      brokenDown,
      scrap,
    },
    loan: file.loan ? pen.at('loan', 'loan').all(OWNED.LOAN_LEFT, file.loan) : null,
    damage: 0,
    offTheRoad: 0,
    ...pen.all(OWNED.STANDING, file),
    ends: endsOf(file.ends, pen),
    inAHurry: pen.at('inAHurry', 'in_a_hurry').all(OWNED.HURRY, file.in_a_hurry),
    ownDamage: completeCover(file.cover, pen, running),
  };
  return { vehicle, energyUnit };
};
