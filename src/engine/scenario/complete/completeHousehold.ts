import { distanceRatio } from '../../quantity/distance.ts';
import { DEFAULTS } from '../inputs/defaults.ts';
import type { DoingWithout, Household, PricesRise } from '../inputs/inputs.ts';
import { HOUSEHOLD, WITHOUT } from '../inputs/specs.ts';
import { MILES_A_YEAR, MILES_SOURCE } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import type { Sparse } from '../schema/scenarioSchema.ts';
import { ageOf } from './completeVehicle.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.household;

type SparseHousehold = NonNullable<Sparse['household']>;

const pricesRise = (pen: Pen, file: SparseHousehold['prices_rise']): PricesRise => {
  const spec = HOUSEHOLD.pricesRise;
  const rise = (what: string) => ({ words: `how ${what} rise a year` });
  const general = pen.take('general', 'general', spec, file?.general, D.general, rise('prices in general'));
  const asGeneral = following(general, 'as prices in general');
  const family = (key: string, path: keyof NonNullable<typeof file>, what: string): number =>
    pen.take(key, path, spec, file?.[path], asGeneral, rise(what));
  return {
    general,
    energy: family('energy', 'energy', 'energy prices'),
    cover: family('cover', 'insurance', 'insurance prices'),
    repairs: family('repairs', 'repairs', 'repair prices'),
    ownTime: family('ownTime', 'own_hour', 'prices of own hours'),
    vehicles: family('vehicles', 'vehicles', 'vehicle prices'),
    fees: family('fees', 'fees', 'fees and taxes'),
  };
};

const atHome = (pen: Pen, file: SparseHousehold['at_home']): Household['atHome'] => ({
  share: pen.take('share', 'share', HOUSEHOLD.ownShare, file?.share, D.ownShare),
  partsShare: pen.take('partsShare', 'parts_share', HOUSEHOLD.partsShare, file?.parts_share, D.partsShare),
  shopHour: pen.take('shopHour', 'shop_hour', HOUSEHOLD.shopHour, file?.shop_hour, D.shopHour),
});

/** What vehicles of its type and age are driven a year, in the household's unit. */
const usualDistance = ({ vehicle }: Sparse, { units }: Pen, date: string): Fallback => {
  const byAge = MILES_A_YEAR[vehicle.kind ?? 'car'];
  const age = Math.min(ageOf(vehicle, date), byAge.length - 1);
  const miles = byAge[age] as number;
  return following(significant(miles * distanceRatio('miles', units.distance), 3), MILES_SOURCE, 'table');
};

/** The household's numbers, complete. The distance a year is in its own unit. */
export const completeHousehold = (file: Sparse, root: Pen, date: string): Household => {
  const home = file.household;
  const pen = root.at('household', 'household');
  const top = root.at('household', '');
  const S = HOUSEHOLD;
  const { savings_for_this: savings, spare_each_month: spare } = file;
  const unit = root.units.distance === 'km' ? 'km_a_year' : 'miles_a_year';
  return {
    distanceAYear: top.take(
      'distanceAYear',
      unit,
      S.distanceAYear,
      file[unit],
      usualDistance(file, root, date),
    ),
    lookAhead: pen.take('lookAhead', 'look_ahead', S.lookAhead, home?.look_ahead, D.lookAhead),
    moneyEarns: pen.take('moneyEarns', 'money_earns', S.moneyEarns, home?.money_earns, D.moneyEarns),
    priceOfOwnHour: pen.take(
      'priceOfOwnHour',
      'price_of_own_hour',
      S.priceOfOwnHour,
      home?.price_of_own_hour,
      D.priceOfOwnHour,
    ),
    dayWithout: pen.take('dayWithout', 'day_without', S.dayWithout, home?.day_without, D.dayWithout),
    pricesRise: pricesRise(pen.at('pricesRise', 'prices_rise'), home?.prices_rise),
    atHome: atHome(pen.at('atHome', 'at_home'), home?.at_home),
    savings: savings ? top.take('savings', 'savings_for_this', S.savings, savings) : null,
    spareEachMonth: top.take('spareEachMonth', 'spare_each_month', S.spareEachMonth, spare, D.spareEachMonth),
    cardRate: pen.take('cardRate', 'card_rate', S.cardRate, home?.card_rate, D.cardRate),
  };
};

/** Doing without a vehicle, or null where the file does not ask. */
export const completeDoingWithout = (file: Sparse['doing_without'], root: Pen): DoingWithout | null => {
  if (!file) return null;
  const pen = root.at('doingWithout', 'doing_without');
  return {
    aDay: pen.take('aDay', 'a_day', WITHOUT.aDay, file.a_day),
    daysAMonth: pen.take('daysAMonth', 'days_a_month', WITHOUT.daysAMonth, file.days_a_month),
  };
};
