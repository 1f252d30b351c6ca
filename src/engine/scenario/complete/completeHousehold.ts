import { distanceRatio } from '../../quantity/distance.ts';
import * as HOME from '../inputs/householdInputs.ts';
import type { AnotherLikeOurs, DoingWithout, Household, PricesRise } from '../inputs/inputs.ts';
import * as LIKE from '../inputs/likeInputs.ts';
import { MILES_SOURCE, tableMiles } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import { kindOf } from '../reading/kind.ts';
import type { Stated } from '../reading/stated.ts';
import type { Sparse } from '../schema/scenarioSchema.ts';
import { ageOf } from './completeVehicle.ts';
import { type Fallback, following, type Pen, penFor } from './quantityBook.ts';

type SparseHousehold = NonNullable<Sparse['household']>;

const pricesRise = (pen: Pen, file: SparseHousehold['prices_rise']): PricesRise => {
  const { general } = pen.all(HOME.GENERAL_RISE, file);
  const asGeneral = following(general, 'as prices in general');
  return { general, ...pen.all(HOME.FAMILIES_RISE, file, () => ({ or: asGeneral })) };
};

/** What vehicles of its type and age are driven a year, in the household's unit. */
const usualDistance = ({ vehicle }: Sparse, { units }: Pen, date: string): Fallback => {
  const miles = tableMiles(kindOf(vehicle), ageOf(vehicle, date));
  return following(significant(miles * distanceRatio('miles', units.distance), 3), MILES_SOURCE, 'table');
};

/** The household's numbers, complete. The distance a year is in its own unit. */
export const completeHousehold = (file: Sparse, root: Pen, date: string): Household => {
  const home = file.household;
  const pen = root.at('household', 'household');
  const top = root.at('household', '');
  const fund = top.from(HOME.FUND, file);
  const { distance } = root.units;
  return {
    distanceAYear: top.from({ distanceAYear: HOME.DISTANCE_A_YEAR[distance] }, file)(
      'distanceAYear',
      usualDistance(file, root, date),
    ),
    milesAUnit: 1 / distanceRatio('miles', distance),
    ...pen.all(HOME.HOUSEHOLD, home),
    pricesRise: pricesRise(pen.at('pricesRise', 'prices_rise'), home?.prices_rise),
    atHome: pen.at('atHome', 'at_home').all(HOME.AT_HOME, home?.at_home),
    savings: fund('savings'),
    spareEachMonth: fund('spareEachMonth'),
    ...completeBigBills(file.big_bills, top),
    cardRate: pen.from(HOME.HOUSEHOLD_MORE, home)('cardRate'),
  };
};

const NONE: Stated = { value: 0, range: null, unit: '', how: null, source: '', note: '' };

/** Big bills as the table has them, so many times that, or none. */
const completeBigBills = (said: Sparse['big_bills'], top: Pen) => {
  const stated = said === 'no' ? NONE : said === 'yes' ? undefined : said;
  return top.all(HOME.BIG_BILLS, stated && { big_bills: stated });
};

/** Another one like any vehicle as usual, in the household's currency. */
export const usualLike = (root: Pen): AnotherLikeOurs =>
  penFor(null, root.units).all(LIKE.LIKE_OURS, undefined);

/** Another one like ours, by default; null where the file says that there is none. */
export const completeLikeOurs = (file: Sparse['another_like_ours'], root: Pen): AnotherLikeOurs | null =>
  file === false
    ? null
    : root
        .at('anotherLikeOurs', 'another_like_ours')
        .all(LIKE.LIKE_OURS, typeof file === 'object' ? file : undefined);

/** Doing without a vehicle, or null where the file does not ask. */
export const completeDoingWithout = (file: Sparse['doing_without'], root: Pen): DoingWithout | null =>
  file ? root.at('doingWithout', 'doing_without').all(HOME.WITHOUT, file) : null;
