import { distanceRatio } from '../../quantity/distance.ts';
import type { Component, UpkeepItem } from '../inputs/inputs.ts';
import { PART_LIFE_SOURCE, PART_PRICE_SOURCE, tablePart } from '../inputs/partTable.ts';
import type { Powertrain } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import * as WORK from '../inputs/workInputs.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { completeCost, doneBy } from './completeWork.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

type SparseItem = NonNullable<SparseRunning['upkeep']>[number];
type SparsePart = NonNullable<SparseRunning['components']>[number];

const UNKNOWN = {
  due: 'not known when it was last done: taken as due',
  new: 'not done yet: it is new',
  'caught up': 'not known when it was last done: part of the catching up',
} as const;

/** What a part's clocks count from: the vehicle's own reading, age in months, and pace. */
export interface Clocks {
  readonly odometer: number;
  readonly ageMonths: number;
  readonly distanceAYear: number;
  readonly powertrain: Powertrain;
  /** What one dollar of the tables comes to in the household's money, today. */
  readonly tableDollar: number;
  /** What is taken of an item whose history nobody knows. */
  readonly unknown: keyof typeof UNKNOWN;
}

/** Distance since an item was last done that nobody knows of. */
const unknownDistance = (every: number, { unknown, odometer }: Clocks): number =>
  unknown === 'due' ? every : unknown === 'new' ? odometer : 0;

/** Distance and months since it was last done; each is worked out from the other, unknown both ways means due. */
const since = (
  item: SparseItem,
  { everyDistance, everyMonths }: Pick<UpkeepItem, 'everyDistance' | 'everyMonths'>,
  clocks: Clocks,
  pen: Pen,
): { readonly sinceDistance: number; readonly sinceMonths: number } => {
  const { last_done: done, last_done_months_ago: ago } = item;
  const reading = typeof done === 'object' ? done : undefined;
  const take = pen.from(WORK.SINCE, { last_done: reading, last_done_months_ago: ago });
  const drivenSince = (reading: number): number => significant(clocks.odometer - reading, 12);
  const pace = clocks.distanceAYear / 12;
  const byPace = 'worked out from the distance a year';
  const [driven, why] = ago
    ? [Math.round(ago.value * pace), byPace]
    : [unknownDistance(everyDistance ?? 0, clocks), UNKNOWN[clocks.unknown]];
  const months = reading
    ? following(Math.min(WORK.SINCE.sinceMonths.max, Math.round(drivenSince(reading.value) / pace)), byPace)
    : following(clocks.unknown === 'due' ? (everyMonths ?? 0) : 0, UNKNOWN[clocks.unknown]);
  // A reading below nil can't be typed: it only says that the item is due.
  const typed = reading || clocks.odometer >= driven;
  return {
    sinceDistance:
      everyDistance === null
        ? 0
        : typed
          ? drivenSince(take('sinceDistance', following(drivenSince(driven), why)))
          : driven,
    sinceMonths: everyMonths === null ? 0 : take('sinceMonths', months),
  };
};

const upkeepItem = (
  item: SparseItem,
  pen: Pen,
  clocks: Clocks,
  components: readonly string[],
): UpkeepItem => {
  const every = pen.all(WORK.UPKEEP_ITEM, item);
  return {
    name: item.job,
    by: doneBy(item),
    ...completeCost(item, pen),
    ...every,
    ...since(item, every, clocks, pen),
    renews: (item.renews ?? []).map((name) => components.indexOf(name)).filter((at) => at >= 0),
  };
};

/** Scheduled upkeep, item by item. */
export const completeUpkeep = (
  file: SparseRunning['upkeep'],
  pen: Pen,
  whose: string,
  clocks: Clocks,
  components: readonly string[],
): UpkeepItem[] =>
  (file ?? []).map((item, i) =>
    upkeepItem(item, pen.at(`upkeep.${i}`, `upkeep.${i}`, `${item.job}, ${whose}`), clocks, components),
  );

type Known = NonNullable<ReturnType<typeof tablePart>>;

/** The table's life of a part, in the household's distance. */
const lifeOf = (known: Known, pen: Pen): Fallback =>
  following(
    significant(known.miles * distanceRatio('miles', pen.units.distance), 6),
    PART_LIFE_SOURCE,
    'table',
  );

/** The table's price of a part that is given none, at today's prices. */
const shopPriceOf = (part: SparsePart, known: Known | null, clocks: Clocks): Fallback | undefined =>
  known && !part.hours && !part.shop_price
    ? following(significant(known.dollars * clocks.tableDollar, 6), PART_PRICE_SOURCE, 'table')
    : undefined;

const component = (part: SparsePart, pen: Pen, clocks: Clocks): Component => {
  const typical = part.life?.typical;
  const known = tablePart(part.like ?? part.name, clocks.powertrain);
  const life = known ? lifeOf(known, pen) : undefined;
  const clock = typical?.clock ?? 'distance';
  const failure = pen.from(WORK.FAILURE, part);
  const suffix = clock === 'months' ? ' months' : '';
  const sinceNew =
    clock === 'distance'
      ? following(clocks.odometer, 'the odometer: taken as never replaced', 'measured')
      : following(clocks.ageMonths, "the vehicle's age: taken as never replaced", 'measured');
  return {
    name: part.name,
    clock,
    by: doneBy(part),
    ...completeCost(part, pen, undefined, '', {
      varies: 'each time',
      shopPrice: shopPriceOf(part, known, clocks),
    }),
    scale: pen.take('scale', 'life.typical', WORK.LIFE[clock], typical, life, { suffix }),
    shape: pen.at('', 'life').from(WORK.LIFE_LAW, part.life)('shape'),
    run: pen.take('run', 'run', WORK.RUN[clock], part.run, sinceNew, { suffix }),
    another: part.lasts_another
      ? {
          // Its spread is the failure's own, drawn with it, and not an unknown beside it.
          months: pen.take('another.months', 'lasts_another', WORK.ANOTHER, part.lasts_another, undefined, {
            varies: 'each time',
            suffix: ' months',
            onlyRange: true,
          }),
          range: part.lasts_another.range,
        }
      : null,
    bill: {
      parts: part.parts?.range ?? null,
      hours: part.hours?.range ?? null,
      shopPrice: part.shop_price?.range ?? null,
    },
    repairIs: part.repair === 'patch' ? 'patch' : 'renewal',
    tow: failure('tow'),
    daysWithout: failure('daysWithout'),
    unsafe: part.unsafe ?? false,
    shareOfAverage: failure('shareOfAverage'),
  };
};

/** The parts that were named, each with its life law. */
export const completeComponents = (
  file: SparseRunning['components'],
  pen: Pen,
  whose: string,
  clocks: Clocks,
): Component[] =>
  (file ?? []).map((part, i) =>
    component(part, pen.at(`components.${i}`, `components.${i}`, `${part.name}, ${whose}`), clocks),
  );
