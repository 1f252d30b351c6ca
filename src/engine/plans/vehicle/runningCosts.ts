import { averageWork } from '../../cashflow/contracts/averageWork.ts';
import { energy, energyPerDistance } from '../../cashflow/contracts/energy.ts';
import { scheduledUpkeep } from '../../cashflow/contracts/upkeep.ts';
import type { WorkOnce } from '../../cashflow/contracts/work.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { RunningCosts, WorkCost } from '../../scenario/inputs/inputs.ts';
import { parkingOf, yearlyBillOf } from './billPostings.ts';
import type { Context } from './context.ts';
import { type Held, type Run, runOf } from './held.ts';
import { yearlyBills } from './paidAhead.ts';
import { type Piece, type Recipe, recipe } from './recipe.ts';
import { named, unnamed } from './repairs.ts';
import type { Span } from './span.ts';

/** Months from the start in which the guarantee pays for repairs: while both of its limits last, 0 meaning no such limit. */
export const guaranteedMonths = (
  vehicle: Pick<RunningCosts, 'guarantee'>,
  distanceAMonth: number,
): number => {
  const { months, distance } = vehicle.guarantee;
  if (months === 0 && distance === 0) return 0;
  const byDistance = distance > 0 && distanceAMonth > 0 ? Math.floor(distance / distanceAMonth) : Infinity;
  return Math.min(months > 0 ? months : Infinity, byDistance);
};

/** Off the road it is not driven, and whatever wears by distance or by running stands still. */
const drivenIn = (span: Span): Span =>
  span.idle === 0 ? span : { ...span, start: span.start + span.idle, idle: 0 };

/** Everything a vehicle costs to run while it is held: energy, bills, upkeep and repairs. Not its price, nor its value. */
export const runningCosts = (held: Held, components: number): Piece[] => {
  const run = recipe(runOf, held);
  // Neither energy nor bills nor upkeep hang on which components are renewed.
  const driven = held.whose === 'present' ? recipe(runOf, { ...held, renewing: [] }) : run;
  return [
    recipe(energyOf, driven),
    recipe(bills, driven),
    recipe(upkeep, driven),
    recipe(unnamedRepairs, run),
    ...Array.from({ length: components }, (_, i) => recipe(repairsOf, run, i)),
  ];
};

const unnamedRepairs = (ctx: Context, run: Recipe<Run>): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  return unnamed(vehicle, drivenIn(span), linesOf(span.name, span.path), free, ctx);
};

const repairsOf = (ctx: Context, run: Recipe<Run>, component: number): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  return [named(vehicle, component, drivenIn(span), linesOf(span.name, span.path), free, ctx)];
};

/** What is paid for having it, driven or not. */
const bills = (ctx: Context, run: Recipe<Run>): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  const lines = linesOf(span.name, span.path);
  return [
    ...yearlyBills(vehicle, ctx).flatMap((bill) => yearlyBillOf(bill, span, lines)),
    parkingOf(vehicle, span, ctx.levels.fees, lines),
  ];
};

const energyOf = (ctx: Context, run: Recipe<Run>): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  const { stated, economy, price } = vehicle.energy;
  return [
    energy(
      linesOf(span.name, span.path)('energy', 'energy', 'fuel', 'every month, by distance'),
      energyPerDistance(stated, economy, price),
      ctx.distanceAMonth,
      ctx.levels.energy,
      drivenIn(span).start,
      span.end,
    ),
  ];
};

/** Scheduled upkeep, by its list or as the average for its kind. */
const upkeep = (ctx: Context, run: Recipe<Run>): Contract[] => {
  const { vehicle, span } = run.from(ctx);
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

const RUNNING: ReadonlySet<object> = new Set<object>([energyOf, bills, upkeep, unnamedRepairs, repairsOf]);

/** A piece that asks nothing of what a vehicle is worth, nor of a debt on it. */
export const isRunning = ({ by }: Piece): boolean => RUNNING.has(by);
