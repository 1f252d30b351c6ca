import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import { DEFAULTS } from '../inputs/defaults.ts';
import type { EndOfLife, InAHurry, PresentVehicle } from '../inputs/inputs.ts';
import { END, PURCHASE, RUNNING, SALE } from '../inputs/specs.ts';
import type { SparseVehicle } from '../schema/scenarioSchema.ts';
import { yearOf } from '../text/year.ts';
import { completeCover } from './completeCover.ts';
import { completeRunning, type Shared } from './completeRunning.ts';
import { following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.vehicle;

/** Years back that a model year is tried at. */
const OLDEST = 60;

/** Whole years from a model year to the day of the decision, never below nil. */
const ageIn = (year: number, date: string): number => Math.max(0, Number(date.slice(0, 4)) - year);

const modelYear = (file: SparseVehicle, date: string): number =>
  file.year?.value ?? yearOf(file.what) ?? Number(date.slice(0, 4));

/** Its age, by its model year: as given, or as read out of its name. */
export const takeAge = (
  { year }: Pick<SparseVehicle, 'year'>,
  pen: Pen,
  date: string,
  read: number,
): number => {
  const now = Number(date.slice(0, 4));
  const named = following(read, 'read out of its name', 'measured');
  const within = { min: now - OLDEST, max: now + 1 };
  return ageIn(pen.take('age', 'year', RUNNING.year, year, named, { isDefault: false, within }), date);
};

/** Whole years since the present vehicle's model year. */
export const ageOf = (file: SparseVehicle, date: string): number => ageIn(modelYear(file, date), date);

/** What ends it for good, each found out at its yearly inspection. */
const endsOf = (file: SparseVehicle['ends'], pen: Pen): EndOfLife[] =>
  (file ?? []).map((end, i) => {
    const at = pen.at(`ends.${i}`, `ends.${i}`);
    const { chanceAYear, risesAYear } = END;
    const words = (spec: { readonly words: string }) => ({ words: `${spec.words}: ${end.what}` });
    return {
      what: end.what,
      chanceAYear: at.take(
        'chanceAYear',
        'chance_a_year',
        chanceAYear,
        end.chance_a_year,
        undefined,
        words(chanceAYear),
      ),
      risesAYear: at.take(
        'risesAYear',
        'rises_a_year',
        risesAYear,
        end.rises_a_year,
        D.risesAYear,
        words(risesAYear),
      ),
    };
  });

const inAHurry = (file: SparseVehicle['in_a_hurry'], pen: Pen): InAHurry => ({
  adds: pen.take('adds', 'adds', END.adds, file?.adds, D.hurryAdds),
  days: pen.take('days', 'days', END.days, file?.days, D.hurryDays),
  refused: pen.take('refused', 'loan_refused', END.refused, file?.loan_refused, D.refused),
  refusedCosts: pen.take(
    'refusedCosts',
    'refused_costs',
    END.refusedCosts,
    file?.refused_costs,
    D.refusedCosts,
  ),
});

/** The present vehicle's numbers, complete. */
export const completeVehicle = (
  file: SparseVehicle,
  root: Pen,
  date: string,
  shared: Shared,
): { readonly vehicle: PresentVehicle; readonly energyUnit: EnergyUnit } => {
  const pen = root.at('vehicle', 'vehicle', file.what);
  const sale = pen.at('sellsFor', 'sells_for');
  const prices = file.sells_for;
  const age = takeAge(file, pen, date, modelYear(file, date));
  const odometer = pen.take('odometer', 'odometer', RUNNING.odometer, file.odometer);
  const priceWhenNew = pen.take('priceWhenNew', 'price_when_new', RUNNING.priceWhenNew, file.price_when_new);
  const running = sale.take('running', 'running', SALE.running, prices.running);
  const asItStands = sale.take('asItStands', 'as_it_stands', SALE.asItStands, prices.as_it_stands);
  const half = following(
    asItStands * D.scrapOfAsItStands.value,
    'our guess: half of what it brings as it stands',
  );
  const scrap = sale.take('scrap', 'scrap', SALE.scrap, prices.scrap, half);
  const asScrap = following(scrap, 'as scrap');
  const floor = pen.take('floor', 'floor', RUNNING.floor, file.floor, asScrap);
  const due = {
    insurance: file.insurance_due,
    registration: file.registration_due,
    inspection: file.inspection_due,
    tax: file.tax_due,
  };
  const about = {
    name: file.what,
    age,
    odometer,
    priceWhenNew,
    today: running,
    floor,
    due,
    unknown: 'due' as const,
  };
  const { costs, energyUnit } = completeRunning(file, pen, about, shared);
  const loan = pen.at('loan', 'loan');
  const vehicle: PresentVehicle = {
    ...costs,
    sellsFor: {
      running,
      asItStands,
      tradeIn: prices.trade_in ? sale.take('tradeIn', 'trade_in', SALE.tradeIn, prices.trade_in) : null,
      tradeInMended: prices.trade_in_mended
        ? sale.take('tradeInMended', 'trade_in_mended', SALE.tradeInMended, prices.trade_in_mended)
        : null,
      scrap,
    },
    loan: file.loan
      ? {
          owed: loan.take('owed', 'owed', SALE.owed, file.loan.owed),
          note: loan.take('note', 'apr', PURCHASE.apr, file.loan.apr),
          monthsLeft: loan.take('monthsLeft', 'months_left', PURCHASE.monthsLeft, file.loan.months_left),
        }
      : null,
    damage: 0,
    offTheRoad: 0,
    storageADay: pen.take('storageADay', 'storage_a_day', SALE.storage, file.storage_a_day, D.storage),
    ends: endsOf(file.ends, pen),
    inAHurry: inAHurry(file.in_a_hurry, pen.at('inAHurry', 'in_a_hurry')),
    ownDamage: completeCover(file.cover, pen, running),
  };
  return { vehicle, energyUnit };
};
