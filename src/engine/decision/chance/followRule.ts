import { type Happened, splitOfUnnamed } from '../../cashflow/contracts/failures.ts';
import { postWork } from '../../cashflow/contracts/work.ts';
import type { Line, Sink } from '../../cashflow/posting.ts';
import type { Context } from '../context.ts';
import { endsIn } from '../ends.ts';
import type { Treatments } from '../neededWork.ts';
import { presentSpan } from '../presentVehicle.ts';
import { failuresDrawn, restartsOf, unnamedDrawn } from '../repairs.ts';
import { guaranteedMonths } from '../runningCosts.ts';
import type { WalksAs } from '../ways/walk.ts';
import type { Rule } from './rule.ts';

/** When the rule walks away in one future, and in what state the vehicle is then. */
export interface Walk {
  readonly month: number;
  readonly how: WalksAs;
}

const LINE: Line = { category: 'repairs', what: '', path: '', reason: '' };

/** What is posted in the counted reading, added up. */
const adding = () => {
  const total = { counted: 0 };
  const sink: Sink = {
    post: (_line, _month, counted) => {
      total.counted += counted;
    },
    series: () => undefined,
    time: () => undefined,
    stands: null,
  };
  return { total, sink };
};

/** What paying would add: the bill without the tow, which is owed either way. */
const payingFor = (happened: Happened, month: number, ctx: Context): number => {
  const { total, sink } = adding();
  postWork(sink, LINE, month, { ...happened.work, either: 0 }, ctx.work);
  return total.counted;
};

/**
 * Follows the rule of the repair limit through one drawn future of the present vehicle: month by month, knowing only what
 * has happened. Bills of one month are one bill. Null: it never walks away before the horizon.
 */
export const followRule = (rule: Rule, treatments: Treatments, ctx: Context): Walk | null => {
  const { future, horizon } = ctx;
  if (future.kind !== 'drawn') return null;
  const { vehicle, household } = ctx.inputs;
  const span = presentSpan(treatments, horizon, ctx);
  const parts = vehicle.components.map((part, j) => {
    const restarts = restartsOf(vehicle, j, span, ctx);
    return {
      restarts,
      happened: failuresDrawn(part, j, span, restarts, future, ctx),
      next: 0,
      restart: 0,
    };
  });
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  const unnamed = unnamedDrawn(vehicle, span, future, ctx);
  let nextUnnamed = 0;
  const renewed = new Int16Array(parts.length).fill(-1);
  const restarted = (month: number): void => {
    parts.forEach((part, j) => {
      while (part.restart < part.restarts.length && (part.restarts[part.restart] as number) <= month)
        renewed[j] = part.restarts[part.restart++] as number;
    });
  };
  restarted(0);
  // What ends it for good leaves nothing to decide.
  const last = endsIn(ctx, horizon) ?? horizon;
  for (let month = 1; month < last; month++) {
    let bill = 0;
    let failed = -2;
    parts.forEach((part, j) => {
      for (; part.happened[part.next]?.month === month; part.next++) {
        if (month > free) bill += payingFor(part.happened[part.next] as Happened, month, ctx);
        failed = j;
        renewed[j] = month;
      }
    });
    for (; unnamed[nextUnnamed]?.month === month; nextUnnamed++) {
      if (month > free)
        bill += splitOfUnnamed(unnamed[nextUnnamed]?.bill ?? 0, month, household.atHome, ctx.work).counted;
      if (failed === -2) failed = -1;
    }
    restarted(month);
    if (failed !== -2 && bill > rule.limit(month, failed, renewed)) return { month, how: 'broken' };
    // A bill that is paid leaves it running: what is cheapest then may still be to let it go at once.
    if (rule.walksAt(month, renewed)) return { month, how: 'running' };
  }
  return null;
};
