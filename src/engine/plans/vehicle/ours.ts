/** Ours as something that a big bill may end: how often one comes, up to what it is paid, and what follows a bigger one. */

import { billAt } from '../../chance/bigBill.ts';
import { yearOf } from '../../quantity/month.ts';
import {
  type BigMonth,
  bigBillsAMonth,
  bigMonth,
  fixedBefore,
  NO_BIG_BILLS,
  oneBigBill,
  perReading,
  priced,
} from './bigBills.ts';
import { bigArrivals, boughtBigMonths, type Renewable, renewalOf } from './boughtBigBills.ts';
import { type Context, onceFor, recalled, stillFor, withVehicle } from './context.ts';
import { chanceOfEnd } from './endOfLife.ts';
import { type ByMonth, goingOn, heldByMonth, READING, rows } from './goingOn.ts';
import { askedLikeOurs, pricesLikeOurs } from './likeOurs.ts';
import type { Treatments } from './neededWork.ts';
import { valueWalking } from './retirement.ts';
import { guaranteedMonths } from './runningCosts.ts';
import { type WalkingAway, walkingAway } from './walkingAway.ts';

/** Ours, renewed in thought by its like whenever it is given up. */
export const OURS: Renewable = {
  // What renewing it takes is what renewing its like does.
  key: 'renewal of another like ours',
  vehicleAt: (ctx) => ctx.origin.inputs.vehicle,
  pricesFrom: (ctx) => (month) => pricesLikeOurs(month, ctx),
  priceAt: askedLikeOurs,
};

/** What is fixed beforehand, at mean inputs, of all ways that hold ours. */
interface Fixed {
  /** From where on a bill is big, and up to what one is paid: at a shop's prices, and as it comes to here; by month. */
  readonly scale: Float64Array;
  readonly limit: { readonly counted: Float64Array; readonly shop: Float64Array };
  /** What follows a bigger one, by month before the last; null for doing without. */
  readonly next: readonly (number | null)[];
  /** The part of the table's big bills that nothing which is named stands for. */
  readonly unnamed: number;
}

const dayOf = (treatments: Treatments, ctx: Context) => {
  const held = heldByMonth(treatments, ctx);
  return { cash: held.cash[0] as number, shop: held.shop[0] as number };
};

/** Walking away at the end of each month before the last; worked out once for these numbers. */
const walkingFrom = (treatments: Treatments, ctx: Context): WalkingAway =>
  onceFor(ctx, `walking away, ${treatments.join()}`, () =>
    walkingAway(treatments, dayOf(treatments, ctx), ctx),
  );

/** Our guess: a named risk takes at most this part of what the table has, and all of them no more than that. */
const EACH = 0.25;
const ALL = 0.75;

/**
 * The part of the table's big bills that what is named stands for: each thing that may end it, no more than it brings
 * itself, and a frame that was looked at and is sound.
 *
 * @param all what the table's big bills take in all, in today's money
 * @param limit up to which a bill is paid, by month: what an end takes
 */
const namedPart = (all: number, limit: Float64Array, ctx: Context): number => {
  if (all <= 0) return 0;
  const { vehicle } = ctx.inputs;
  const parts = vehicle.ends.map((end) => {
    const chances = chanceOfEnd({ ...vehicle, ends: [end] }, ctx.horizon);
    const brings = chances.reduce(
      (sum, chance, m) => sum + chance * (limit[m] as number) * ctx.worthLater(m),
      0,
    );
    return Math.min(EACH, Math.max(0, brings) / all);
  });
  if (ctx.facts.structuralRust === 'none') parts.push(EACH);
  return Math.min(
    ALL,
    parts.reduce((sum, part) => sum + part, 0),
  );
};

/** Ours renewed by its like whenever it is given up: what each renewing takes, and all that comes after a month. */
interface RenewedByLike {
  readonly takes: ByMonth;
  readonly ahead: { readonly counted: Float64Array; readonly shop: Float64Array };
}

const renewedByLike = (ctx: Context): RenewedByLike =>
  stillFor(ctx, 'ours renewed by its like', (at) => {
    const { horizon } = at;
    const takes = rows(horizon);
    const ahead = { counted: new Float64Array(horizon + 1), shop: new Float64Array(horizon + 1) };
    const v = at.worthLater(1);
    const bigMonthIn = boughtBigMonths(OURS, 0, at);
    for (let m = horizon; m > 0; m--) {
      const renewal = renewalOf(OURS, m, at);
      for (const reading of READING) takes[reading][m] = renewal[reading];
      const big = bigMonthIn(m) ?? NO_BIG_BILLS;
      ahead.counted[m - 1] =
        v * ((ahead.counted[m] as number) + big.paid.counted + big.ends.counted * renewal.counted);
      ahead.shop[m - 1] = v * ((ahead.shop[m] as number) + big.paid.shop + big.ends.shop * renewal.shop);
    }
    return { takes, ahead };
  });

/** Ours as if none of its parts were named: the limit for a bill that nobody could name is its like's. */
const nothingNamed = (ctx: Context): Context =>
  ctx.inputs.vehicle.components.length === 0
    ? ctx
    : withVehicle({ ...ctx.inputs.vehicle, components: [] }, ctx);

const fixedAnew = (ctx: Context): Fixed => {
  const { horizon } = ctx;
  const done: Treatments = ctx.inputs.workNeeded.map(() => 'done');
  const { takes, ahead } = renewedByLike(ctx);
  const limit = { counted: takes.counted.slice(), shop: takes.shop.slice() };
  const on = stillFor(ctx, 'ours goes on, nothing named', (at) => goingOn(done, horizon, nothingNamed(at)));
  const away = walkingFrom(done, ctx);
  for (let m = 1; m < horizon; m++) {
    limit.counted[m] = (away.counted[m] as number) - (on.counted[m] as number) - (ahead.counted[m] as number);
    limit.shop[m] = (away.shop[m] as number) - (on.shop[m] as number) - (ahead.shop[m] as number);
  }
  const unnamed = 1 - namedPart(ahead.counted[0] as number, limit.counted, ctx);
  return { scale: takes.shop, limit, next: away.next, unnamed };
};

/** Fixed once for what the file says, whatever is drawn, and for the vehicle as it was before a collision. */
export const fixedForOurs = (ctx: Context): Fixed => {
  const mean = fixedBefore(ctx);
  return onceFor(mean, 'ours, fixed beforehand', () => fixedAnew(mean));
};

const freeMonths = (ctx: Context): number => guaranteedMonths(ctx.inputs.vehicle, ctx.distanceAMonth);

/** The months of ours, expected, each given that it is there when it begins. */
const ourMonths = (ctx: Context): readonly BigMonth[] =>
  onceFor(ctx, 'big bills of ours', () => {
    const months: BigMonth[] = new Array(ctx.horizon + 1).fill(NO_BIG_BILLS);
    if (ctx.inputs.household.bigBills === 0) return months;
    const { scale, limit, unnamed } = fixedForOurs(ctx);
    const vehicle = ctx.origin.inputs.vehicle;
    for (let m = Math.floor(freeMonths(ctx)) + 1; m <= ctx.horizon; m++) {
      const rate = unnamed * bigBillsAMonth(vehicle, yearOf(m), ctx);
      const limits = { counted: limit.counted[m] as number, shop: limit.shop[m] as number };
      months[m] = bigMonth(rate, oneBigBill(scale[m] as number, limits, m, ctx));
    }
    return months;
  });

export const ourMonth = (month: number, ctx: Context): BigMonth => ourMonths(ctx)[month] as BigMonth;

/** How likely ours is to be there at the end of each month, and to be given up in it, expected. */
interface Lasting {
  readonly there: ByMonth;
  readonly ends: ByMonth;
}

/** No inspection is looked at on the last day of all; a big bill is. */
export const ourLasting = (ctx: Context): Lasting =>
  onceFor(ctx, 'how likely ours lasts', () => {
    const { horizon } = ctx;
    const there = rows(horizon);
    const ends = rows(horizon);
    const inspected = chanceOfEnd(ctx.inputs.vehicle, horizon);
    for (const reading of READING) there[reading][0] = 1;
    for (let m = 1; m <= horizon; m++) {
      const big = ourMonth(m, ctx).ends;
      const fails = m < horizon ? (inspected[m] as number) : 0;
      for (const reading of READING) {
        const before = there[reading][m - 1] as number;
        const chance = 1 - (1 - big[reading]) * (1 - fails);
        ends[reading][m] = before * chance;
        there[reading][m] = before * (1 - chance);
      }
    }
    return { there, ends };
  });

/** What giving ours up at the end of a month takes above going on with it to the end of `until`. */
export const lossAt = (treatments: Treatments, month: number, until: number, ctx: Context) => {
  if (month === ctx.horizon) {
    const running = valueWalking(month, 'running', treatments, ctx);
    const broken = valueWalking(month, 'broken', treatments, ctx);
    return perReading((reading) => {
      const as = reading === 'cash' ? 'cash' : 'counted';
      return running(as) - broken(as);
    });
  }
  const on = goingOn(treatments, until, ctx);
  const away = walkingFrom(treatments, ctx);
  // Work that would fall on the day it goes is not done for it.
  const spared = heldByMonth(treatments, ctx).putOff;
  return perReading(
    (reading) =>
      (away[reading][month] as number) - (on[reading][month] as number) - (spared[reading][month] as number),
  );
};

/** What big bills do to ours in a drawn future. */
interface Drawn {
  /** Bills that are paid, at a shop's prices of their month. */
  readonly paid: readonly { readonly month: number; readonly bill: number }[];
  /** The month of the first that is not, whatever an inspection says before; null for none. */
  readonly over: number | null;
}

const NOTHING_DRAWN: Drawn = { paid: [], over: null };

/** The same for every way that holds ours, whatever has been made of it since. */
export const oursDrawn = (ctx: Context): Drawn => {
  const { future, horizon } = ctx;
  if (future.kind !== 'drawn' || ctx.inputs.household.bigBills === 0) return NOTHING_DRAWN;
  const origin = ctx.origin;
  return recalled(future, 'ours', ['big bills'], () => {
    const { scale, limit, unnamed } = fixedForOurs(origin);
    const { vehicle } = origin.inputs;
    const free = freeMonths(origin);
    const paid: { month: number; bill: number }[] = [];
    for (const { month, u } of bigArrivals(vehicle, 'vehicle', unnamed, horizon, future, origin)) {
      if (month <= free) continue;
      const bill = billAt(scale[month] as number, u);
      // What nobody mends is no number to price.
      const pays = priced(bill, month, origin).counted <= (limit.counted[month] as number);
      if (!pays) return { paid, over: month };
      paid.push({ month, bill });
    }
    return { paid, over: null };
  });
};
