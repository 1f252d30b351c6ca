import { brokenValue, marketValue } from '../../cashflow/contracts/marketValue.ts';
import type { AnotherLikeOurs, Payment, Replacement, RunningCosts } from '../../scenario/inputs/inputs.ts';
import { type Context, onceByMonth } from './context.ts';

/** The place of another one like ours among what can be bought: behind none of the replacements that a file names. */
export const LIKE_OURS = -1;
/** Where it stands in a scenario file, and what its luck goes by. */
export const LIKE_PATH = 'another_like_ours';

const NONE: readonly never[] = [];
const NO_GUARANTEE: RunningCosts['guarantee'] = { months: 0, distance: 0 };
const CASH: Payment = { kind: 'cash' };

/**
 * Another running one of the present vehicle's kind, age and distance, as a purchase at the end of a month: whatever ours
 * costs to run it costs too, but nothing is known of its parts, so nothing of the average is taken out by name. It is of
 * the same model year, so what it costs falls as ours does. A plain object, as replacements are: code that meets another
 * kind of them is never as quick again.
 */
const madeLikeOurs = (month: number, said: AnotherLikeOurs, ctx: Context): Replacement => {
  const ours = ctx.origin.inputs.vehicle;
  const worth = worthLikeOurs(month, ctx);
  const today = ours.sellsFor.running;
  const since = month === 0 || today <= 0 ? 1 : worth / today;
  return {
    age: ours.age + Math.floor(month / 12),
    bodyStyle: ours.bodyStyle,
    odometer: ours.odometer + month * ctx.distanceAMonth,
    priceWhenNew: ours.priceWhenNew,
    energy: ours.energy,
    cover: ours.cover,
    registration: ours.registration,
    inspection: ours.inspection,
    tax: ours.tax,
    parkingAMonth: ours.parkingAMonth,
    registrationRefunded: ours.registrationRefunded,
    changes: ours.changes,
    averageUpkeep: ours.averageUpkeep,
    averageRepairs: ours.averageRepairs,
    upkeep: ours.upkeep.map((item) => ({ ...item, sinceDistance: 0, sinceMonths: 0, renews: NONE })),
    components: NONE,
    guarantee: NO_GUARANTEE,
    value: ours.value,
    floor: ours.floor,
    brandFactor: 1,
    selling: ours.selling,
    name: 'another like ours',
    condition: 'used',
    price: said.price === null ? worth * (1 + said.above) : said.price * since,
    worthDayAfter: worth,
    salesTax: said.taxAndFees,
    tradeInCredit: 0,
    rebate: 0,
    fees: NONE,
    addOns: NONE,
    oneOffs: NONE,
    payment: CASH,
    lowRateInstead: null,
    inspectionBefore: said.inspectionBefore,
    catchUp: said.catchUp,
  };
};

/** What ours would bring at the end of a month, running and with clean papers, by the market alone. */
export const worthLikeOurs = (month: number, ctx: Context): number => {
  const { sellsFor, value: law, floor } = ctx.origin.inputs.vehicle;
  if (month === 0) return sellsFor.running;
  return marketValue(
    { now: sellsFor.running, law, floor, brandFactor: 1 },
    month,
    month * ctx.distanceAMonth,
  );
};

/** What one like ours brings at the end of a month, running and broken down. */
export const pricesLikeOurs = (month: number, ctx: Context) => {
  const { sellsFor } = ctx.origin.inputs.vehicle;
  const running = worthLikeOurs(month, ctx);
  const broken = brokenValue(running, sellsFor.running, sellsFor.brokenDown, sellsFor.scrap);
  return { running, broken: Math.min(running, broken) };
};

/** What another one costs by what ours is worth, where its price is told; null where it goes by what is asked above that. */
export const askedLikeOurs = (ctx: Context): ((worth: number) => number) | null => {
  const price = ctx.inputs.anotherLikeOurs?.price ?? null;
  const today = ctx.origin.inputs.vehicle.sellsFor.running;
  return price === null ? null : (worth) => (today > 0 ? (price * worth) / today : price);
};

const likeOurs = (month: number, ctx: Context): Replacement => {
  const said = ctx.inputs.anotherLikeOurs;
  if (said === null) throw new Error('there is none like ours to be had');
  return onceByMonth(ctx, 'another like ours', month, () => madeLikeOurs(month, said, ctx));
};

/**
 * What can be bought, by its place: a replacement that the file names, at today's price, or another one like ours as it
 * is at the end of a month.
 */
export const offerAt = (index: number, month: number, ctx: Context): Replacement =>
  index === LIKE_OURS ? likeOurs(month, ctx) : (ctx.inputs.replacement[index] as Replacement);

/** What of it decides which contracts there are, whatever the numbers: nothing that moves is read for it. */
export const structureAt = (index: number, ctx: Context): Pick<Replacement, 'payment' | 'components'> =>
  index === LIKE_OURS ? { payment: CASH, components: NONE } : (ctx.inputs.replacement[index] as Replacement);

/** How much dearer or cheaper than today what can be bought is at the end of a month; for `offerAt` of that month. */
export const priceLevelAt = (index: number, month: number, ctx: Context): number =>
  index === LIKE_OURS ? 1 : ctx.vehiclePriceLevel(month);

/** Everything that can be bought in this scenario, by its place. */
export const offerings = ({ inputs }: Context): number[] => [
  ...inputs.replacement.keys(),
  ...(inputs.anotherLikeOurs === null ? [] : [LIKE_OURS]),
];
