import { type Happened, splitOfUnnamed } from '../cashflow/contracts/failures.ts';
import { priced } from '../plans/vehicle/bigBills.ts';
import { restartsOf } from '../plans/vehicle/clocks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { endsIn } from '../plans/vehicle/givenUp.ts';
import { presentSpan } from '../plans/vehicle/held.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { oursDrawn } from '../plans/vehicle/ours.ts';
import { failuresDrawn, unnamedDrawn } from '../plans/vehicle/repairs.ts';
import type { WalksAs } from '../plans/vehicle/retirement.ts';
import { guaranteedMonths } from '../plans/vehicle/runningCosts.ts';
import { NEVER } from '../policy/part.ts';
import { UNNAMED } from '../policy/repairLimit.ts';
import { costOfWork } from './policyParts.ts';
import type { Rule } from './repairLimitPolicy.ts';

/** When the rule walks away in one future, and in what state the vehicle is then. */
export interface Walk {
  readonly month: number;
  readonly how: WalksAs;
}

/** What paying would add: the bill without the tow, which is owed either way. */
const payingFor = ({ work }: Happened, month: number, ctx: Context): number => {
  const { by, parts, hours, usualHours, shopPrice, daysWithout } = work;
  return costOfWork({ by, parts, hours, usualHours, shopPrice, daysWithout, either: 0 }, month, ctx);
};

/** One component's failures and restarts in one future, and how far they have been followed. */
interface Followed {
  readonly restarts: readonly number[];
  readonly happened: readonly Happened[];
  next: number;
  restart: number;
}

/**
 * Follows the rule of the repair limit through one drawn future of the present vehicle: month by month, knowing only what
 * has happened. Bills of one month are one bill. Null: it never walks away before the horizon.
 */
export const followRule = (rule: Rule, treatments: Treatments, ctx: Context): Walk | null => {
  const { future, horizon } = ctx;
  if (future.kind !== 'drawn') return null;
  const { vehicle, household } = ctx.inputs;
  const span = presentSpan(treatments, horizon, ctx);
  const parts = vehicle.components.map((part, j): Followed => {
    const restarts = restartsOf(vehicle, j, span, ctx);
    return { restarts, happened: failuresDrawn(part, j, span, restarts, future, ctx), next: 0, restart: 0 };
  });
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  const unnamed = unnamedDrawn(vehicle, span, future, ctx);
  let nextUnnamed = 0;
  const big = oursDrawn(ctx).paid;
  let nextBig = 0;
  const renewed = new Int16Array(parts.length).fill(NEVER);
  // What ends it for good leaves nothing to decide.
  const last = endsIn(ctx, horizon) ?? horizon;
  for (let month = 0; month < last; month++) {
    let bill = 0;
    let failed: number | null = null;
    for (let j = 0; j < parts.length; j++) {
      const part = parts[j] as Followed;
      for (; part.happened[part.next]?.month === month; part.next++) {
        if (month > free) bill += payingFor(part.happened[part.next] as Happened, month, ctx);
        failed = j;
        renewed[j] = month;
      }
    }
    for (; unnamed[nextUnnamed]?.month === month; nextUnnamed++) {
      if (month > free)
        bill += splitOfUnnamed(unnamed[nextUnnamed]?.bill ?? 0, month, household.atHome, ctx.work).counted;
      failed ??= UNNAMED;
    }
    for (; big[nextBig]?.month === month; nextBig++) {
      bill += priced(big[nextBig]?.bill ?? 0, month, ctx).counted;
      failed ??= UNNAMED;
    }
    for (let j = 0; j < parts.length; j++) {
      const part = parts[j] as Followed;
      for (; (part.restarts[part.restart] ?? last) <= month; part.restart++)
        renewed[j] = part.restarts[part.restart] as number;
    }
    // The first day is settled before anything is followed.
    if (month === 0) continue;
    if (failed !== null && !rule.pays(bill, month, failed, renewed)) return { month, how: 'broken' };
    // A bill that is paid leaves it running: what is cheapest then may still be to let it go at once.
    if (rule.walksAt(month, renewed)) return { month, how: 'running' };
  }
  return null;
};
