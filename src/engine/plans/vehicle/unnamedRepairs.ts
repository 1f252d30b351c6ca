import { shopPriceOf } from '../../cashflow/contracts/work.ts';
import { yearOf } from '../../quantity/month.ts';
import { remember } from '../../quantity/remember.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import { repairRatePerMile2019 } from '../../scenario/inputs/tables.ts';
import { paceOf, restartsOf } from './clocks.ts';
import { type Context, onceFor } from './context.ts';
import { expectedFailures } from './expectedFailures.ts';
import type { Span } from './span.ts';

/** What an average is read from, and what is named beside it. */
type Averaged = Pick<RunningCosts, 'age' | 'priceWhenNew' | 'averageRepairs' | 'components' | 'upkeep'>;

/** All repairs on average in a month of a year (0 the first), at a shop, at the prices of the day of the decision. */
export const averageAMonth = (vehicle: Averaged, ctx: Context): ((year: number) => number) => {
  const { averageRepairs: average } = vehicle;
  const { statedAYear } = average;
  if (statedAYear !== null) return () => (average.scale * statedAYear) / 12;
  const priceWhenNew = vehicle.priceWhenNew / average.perDollar;
  return (year) =>
    average.scale *
    repairRatePerMile2019(vehicle.age + year, priceWhenNew, average.typeFactor) *
    average.priceRatio *
    ctx.distanceAMonth;
};

type Renewed = Span['renewed'];

const sameRenewed = (a: Renewed, b: Renewed): boolean => {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const [component, month] of a) if (b.get(component) !== month) return false;
  return true;
};

/** By month: the share of the average that is left, and what that comes to. */
interface Left {
  readonly shares: Float64Array;
  readonly bills: Float64Array;
}

/** So many shares of the average, by month. */
const billsOf = (vehicle: Averaged, shares: Float64Array, ctx: Context): Float64Array => {
  const average = averageAMonth(vehicle, ctx);
  const bills = new Float64Array(shares.length);
  for (let m = 0; m < bills.length; ) {
    const all = average(yearOf(m + 1));
    for (const until = Math.min(bills.length, m + 12); m < until; m++) bills[m] = (shares[m] as number) * all;
  }
  return bills;
};

const leftAnew = (vehicle: Averaged, renewed: Renewed, ctx: Context): Left => {
  const shares = new Float64Array(ctx.horizon).fill(1);
  const average = billsOf(vehicle, shares, ctx);
  vehicle.components.forEach((part, i) => {
    const price = shopPriceOf(part, ctx.work.shopHour);
    const pace = { aMonth: paceOf(part, ctx.distanceAMonth), months: ctx.horizon };
    const counts = expectedFailures(part, pace, restartsOf(vehicle, i, { start: 0, renewed }, ctx));
    for (let m = 0; m < ctx.horizon; m++) {
      const all = average[m] as number;
      if (all <= 0) continue;
      const taken = Math.min(part.shareOfAverage, ((counts[m] ?? 0) * price) / all);
      shares[m] = Math.max(0, (shares[m] as number) - taken);
    }
  });
  return { shares, bills: billsOf(vehicle, shares, ctx) };
};

/** What is left of one vehicle's average. */
interface LeftOfOne {
  readonly vehicle: Averaged;
  readonly renewed: Renewed;
  readonly left: Left;
}

/**
 * Each named component takes out of the average of a month what it is expected to bring in that month at a shop's price,
 * tow and days left aside as the average leaves them, and never more than its share. Worked out once for each vehicle and
 * set of numbers.
 */
const leftBy = (vehicle: Averaged, renewed: Renewed, ctx: Context): Left => {
  const all = onceFor(ctx, 'left of averages', (): LeftOfOne[] => []);
  const known = all.find((one) => one.vehicle === vehicle && sameRenewed(one.renewed, renewed));
  if (known) return known.left;
  const left = leftAnew(vehicle, renewed, ctx);
  all.push({ vehicle, renewed, left });
  return left;
};

/** Where no part is named, all of the average is left, whatever the numbers. */
const allOfIt = remember(
  (months: number) => new Float64Array(months).fill(1),
  ([a], [b]) => a === b,
);

/**
 * The share of a vehicle's average repairs that its named components leave, at index m - 1 for month m from the day it
 * begins to run in the span. It goes by the clocks and restarts of the span. In a drawn future it is the one of the mean
 * inputs, fixed before the first future: what is drawn changes what is left in money, never the share.
 */
export const leftOf = (vehicle: Averaged, { renewed }: Pick<Span, 'renewed'>, ctx: Context): Float64Array => {
  const mean = ctx.future.kind === 'drawn' ? ctx.future.atMean : null;
  if (vehicle.components.length === 0) return allOfIt(ctx.horizon);
  if (mean === null) return leftBy(vehicle, renewed, ctx).shares;
  const { replacement, vehicle: present } = mean.inputs;
  const index = (ctx.inputs.replacement as readonly Averaged[]).indexOf(vehicle);
  return leftBy(replacement[index] ?? present, renewed, mean).shares;
};

/** Repairs nobody named, expected: a shop's bill of month m after its start, at index m - 1, at the prices of the day. */
export const unnamedByMonth = (
  vehicle: Averaged,
  { renewed }: Pick<Span, 'renewed'>,
  ctx: Context,
): Float64Array => leftBy(vehicle, renewed, ctx).bills;

/** What so many shares of the average come to over the months looked at; all of it where none are told. */
export const averageOverAll = (vehicle: Averaged, shares: Float64Array | null, ctx: Context): number => {
  const average = averageAMonth(vehicle, ctx);
  let sum = 0;
  let all = 0;
  for (let m = 0; m < ctx.horizon; m++) {
    if (m % 12 === 0) all = average(m / 12);
    sum += shares === null ? all : all * (shares[m] as number);
  }
  return sum;
};
