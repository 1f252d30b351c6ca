import { bundled } from '../../cashflow/bundle.ts';
import { averageWork } from '../../cashflow/contracts/averageWork.ts';
import { energy, energyPerDistance } from '../../cashflow/contracts/energy.ts';
import { monthly, yearly } from '../../cashflow/contracts/recurring.ts';
import { scheduledUpkeep } from '../../cashflow/contracts/upkeep.ts';
import type { WorkOnce } from '../../cashflow/contracts/work.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { WorkCost } from '../../scenario/inputs/inputs.ts';
import { type Context, lasting, onceIn, recalled, together } from './context.ts';
import type { Reads } from './memory.ts';
import { yearlyBills } from './paidAhead.ts';
import { repairs } from './repairs.ts';
import { type Runs, runsBy } from './runningInputs.ts';
import type { Span } from './span.ts';

/** Months from the start in which the guarantee pays for repairs: while both of its limits last, 0 meaning no such limit. */
export const guaranteedMonths = (vehicle: Pick<Runs, 'guarantee'>, distanceAMonth: number): number => {
  const { months, distance } = vehicle.guarantee;
  if (months === 0 && distance === 0) return 0;
  const byDistance = distance > 0 && distanceAMonth > 0 ? Math.floor(distance / distanceAMonth) : Infinity;
  return Math.min(months > 0 ? months : Infinity, byDistance);
};

/** Off the road it is not driven, and whatever wears by distance or by running stands still. */
const drivenIn = (span: Span): Span =>
  span.idle === 0 ? span : { ...span, start: span.start + span.idle, idle: 0 };

/**
 * Everything a vehicle costs to run over a span: energy, bills, upkeep and repairs. Not its price, nor its value. Within
 * one drawn future a vehicle bought runs the same in every way that buys it then, however it is paid for; and the
 * present one after a collision in every course that leaves it to run alike, whatever it is worth by then.
 */
export const runningCosts = (vehicle: Runs, span: Span, ctx: Context): readonly Contract[] => {
  const { future } = ctx;
  const anew = (): readonly Contract[] => allCosts(vehicle, span, ctx);
  const inOne = (): readonly Contract[] => [bundled(anew(), span.start, false)];
  if (future.recall === null) return anew();
  if (span.bought) return onceIn(future, vehicle, ['runs', span.start, span.end], inOne);
  return future.kind === 'drawn' && ctx.inputs.claim
    ? recalled(future, span, ['runs', future.givenUpIn, ...runsBy(vehicle)], inOne)
    : anew();
};

const BILL_READS: Reads<Runs> = {
  own: ['cover', 'registration', 'inspection', 'tax', 'parkingAMonth'],
  household: ['lookAhead', 'pricesRise'],
};

/** The bills, and what driving it costs whatever breaks. */
const CERTAIN_READS: Reads<Runs> = {
  own: [...BILL_READS.own, 'energy', 'averageUpkeep', 'upkeep'],
  household: [...BILL_READS.household, 'distanceAYear', 'priceOfOwnHour', 'atHome', 'dayWithout'],
};

const allCosts = (vehicle: Runs, span: Span, ctx: Context): readonly Contract[] => {
  const { start, end, idle, lastYearlyBill } = span;
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  return [
    ...lasting(ctx.future, vehicle, CERTAIN_READS, [start, end, idle, lastYearlyBill], (lasts) => {
      const paid = lasting(ctx.future, vehicle, BILL_READS, [start, end, lastYearlyBill], (theyLast) =>
        together(bills(vehicle, span, ctx), start, theyLast),
      );
      return together([energyOf(vehicle, span, ctx), ...paid, ...upkeep(vehicle, span, ctx)], start, lasts);
    }),
    ...repairs(vehicle, drivenIn(span), linesOf(span.name, span.path), free, ctx),
  ];
};

/** What is paid for having it, driven or not. */
const bills = (vehicle: Runs, span: Span, ctx: Context): Contract[] => {
  const { start, end } = span;
  const line = linesOf(span.name, span.path);
  const when = span.bought ? 'yearly, from the day it is bought' : 'yearly, when it falls due';
  return [
    ...yearlyBills(vehicle, ctx).map(({ category, what, at, aYear, nextDue, levels }) =>
      yearly(
        line(category, what, at, when),
        aYear,
        levels,
        span.bought ? start : start + nextDue,
        span.bought ? span.lastYearlyBill : end,
      ),
    ),
    monthly(
      line('parking', 'parking', 'parking_a_month', 'every month'),
      vehicle.parkingAMonth,
      ctx.levels.fees,
      start + 1,
      end,
    ),
  ];
};

const energyOf = (vehicle: Runs, span: Span, ctx: Context): Contract => {
  const { stated, economy, price } = vehicle.energy;
  return energy(
    linesOf(span.name, span.path)('energy', 'energy', 'fuel', 'every month, by distance'),
    energyPerDistance(stated, economy, price),
    ctx.distanceAMonth,
    ctx.levels.energy,
    drivenIn(span).start,
    span.end,
  );
};

/** Scheduled upkeep, by its list or as the average for its kind. */
const upkeep = (vehicle: Runs, span: Span, ctx: Context): Contract[] => {
  const { end, idle } = span;
  const { start } = drivenIn(span);
  const line = linesOf(span.name, span.path);
  const { distanceAMonth, work } = ctx;
  const contracts: Contract[] = [];
  if (vehicle.averageUpkeep > 0) {
    const aMonth = vehicle.averageUpkeep * distanceAMonth;
    const at = line('scheduled upkeep', 'upkeep', 'upkeep', 'average for its kind, by distance');
    contracts.push(averageWork(at, () => aMonth, ctx.inputs.household.atHome, work, start, end, 0));
  }
  const due = 'due by distance or months, whichever is first';
  vehicle.upkeep.forEach((item, i) => {
    const at = line('scheduled upkeep', item.name, 'upkeep', due, i);
    const schedule = idle === 0 ? item : { ...item, sinceMonths: item.sinceMonths + idle };
    contracts.push(scheduledUpkeep(at, schedule, onTime(item), work, distanceAMonth, start, end));
  });
  return contracts;
};

/** Scheduled work is planned: no tow, and no day without. Written out: copying by spread takes several times as long. */
const onTime = ({ by, parts, hours, shopPrice }: WorkCost): WorkOnce => ({
  by,
  parts,
  hours,
  usualHours: hours,
  shopPrice,
  daysWithout: 0,
  either: 0,
});
