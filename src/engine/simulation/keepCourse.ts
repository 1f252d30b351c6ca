import { owedAt } from '../cashflow/contracts/loan.ts';
import { levelAt } from '../cashflow/levels.ts';
import type { Sink } from '../cashflow/posting.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { chanceOfEnd } from '../plans/vehicle/endOfLife.ts';
import { holdOurs } from '../plans/vehicle/givenUp.ts';
import { offerings } from '../plans/vehicle/likeOurs.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { presentClosed, replacementClosed } from '../plans/vehicle/openOptions.ts';
import { ourMonth } from '../plans/vehicle/ours.ts';
import { presentUnearnedAt } from '../plans/vehicle/paidAhead.ts';
import { presentLoan } from '../plans/vehicle/presentVehicle.ts';
import { contractsOf } from '../plans/vehicle/recipe.ts';
import { valueWalking, type WalksAs } from '../plans/vehicle/retirement.ts';
import { type Course, weightsOf } from '../policy/course.ts';
import { leastOf } from '../quantity/least.ts';
import { discountFactor, effective } from '../quantity/rate.ts';
import { replacingFrom } from './replacementCost.ts';

/** What holding the present vehicle takes, own time counted, its named components' failures left out; by month. */
interface Holding {
  readonly running: Float64Array;
  /** Needed work that was put off, in the month in which it is done if the vehicle is kept on. */
  readonly ifKeptOn: Float64Array;
  readonly firstDayCash: number;
}

const holdingOf = (treatments: Treatments, ctx: Context): Holding => {
  const running = new Float64Array(ctx.horizon + 1);
  const ifKeptOn = new Float64Array(ctx.horizon + 1);
  let firstDayCash = 0;
  const add = (to: Float64Array, month: number, amount: number): void => {
    to[month] = (to[month] as number) + amount;
  };
  const sink: Sink = {
    post(line, month, counted, cash) {
      if (month === 0) firstDayCash += cash;
      else if (line.category === 'work needed now') add(ifKeptOn, month, counted);
      // The parts say what named failures cost, by their clocks.
      else if (line.role !== 'named failures') add(running, month, counted);
    },
    series(_line, from, to, levels, counted) {
      for (let m = from; m <= to; m++) add(running, m, counted * levelAt(levels, m));
    },
    time: null,
    stands: null,
  };
  for (const contract of contractsOf(holdOurs(treatments, ctx.horizon, ctx), ctx)) contract(sink);
  return { running, ifKeptOn, firstDayCash };
};

/** Courses of the present vehicle by how far one looks. */
export interface Courses {
  /** What is bought where it is let go at the end of a month, the look ending at `until`: the cheapest that serves. */
  readonly nextAt: (month: number, how: WalksAs, until: number) => number | null;
  /**
   * Keeping it from the day the needed work is done, replacing it at any month from `from` on, the look ending at
   * `until`. Broken down it is priced at `from` alone, or at every month.
   */
  readonly looking: (from: number, until: number, broken: 'then' | 'always') => Course;
}

/**
 * What the rule of the repair limit needs of the present vehicle at one set of inputs, besides its components. The
 * context's horizon is the farthest anybody looks.
 */
export const coursesOf = (treatments: Treatments, ctx: Context): Courses => {
  const rate = effective(ctx.inputs.household.moneyEarns);
  const discount = Float64Array.from({ length: ctx.horizon + 1 }, (_, m) => discountFactor(rate, m));
  const ends = chanceOfEnd(ctx.inputs.vehicle, ctx.horizon).map(
    (chance, m) => 1 - (1 - chance) * (1 - (m === 0 ? 0 : ourMonth(m, ctx).ends.counted)),
  );
  const weights = weightsOf(discount, ends);
  const mayEnd = ends.some((chance) => chance > 0);
  const loan = presentLoan(ctx);
  const holding = holdingOf(treatments, ctx);
  const by = offerings(ctx).map((index) => ({
    index,
    costs: replacingFrom(treatments, index, holding.firstDayCash, discount, ctx),
  }));
  const heldTill = (month: number): boolean => month === 0 || presentClosed(month, ctx) === null;
  /** The cheapest change at the end of a month before `until`; null where no vehicle serves from then on. */
  const cheapestAt = (month: number, how: WalksAs, until: number) =>
    leastOf(
      by
        .filter(({ index }) => replacementClosed(index, month, ctx) === null)
        .map(({ index, costs }) => ({ index, cost: costs(month, how, until) })),
      ({ cost }) => cost,
    );
  const stopping = (month: number, how: WalksAs, until: number): number => {
    if (!heldTill(month)) return Number.POSITIVE_INFINITY;
    if (month < until) return cheapestAt(month, how, until)?.cost ?? Number.POSITIVE_INFINITY;
    // On the last day it is only sold: what is owned and owed then.
    const owned = valueWalking(until, how, treatments, ctx)('counted') + presentUnearnedAt(until, ctx);
    return (loan ? owedAt(loan, until) : 0) - owned;
  };
  return {
    nextAt: (month, how, until) => cheapestAt(month, how, until)?.index ?? null,
    looking(from, until, broken) {
      const stoppingAt = new Float64Array(until + 1).fill(Number.POSITIVE_INFINITY);
      const stoppingBroken = new Float64Array(until + 1).fill(Number.POSITIVE_INFINITY);
      for (let m = from; m <= until; m++) {
        stoppingAt[m] = stopping(m, 'running', until);
        if (m === from || broken === 'always') stoppingBroken[m] = stopping(m, 'broken', until);
      }
      const ended = new Float64Array(until + 1);
      for (let m = from + 1; m < until; m++)
        if ((ends[m] as number) > 0)
          ended[m] = cheapestAt(m, 'broken', until)?.cost ?? Number.POSITIVE_INFINITY;
      const course = { until, ...holding, stopping: stoppingAt, stoppingBroken, ended };
      if (!mayEnd) return { ...course, weights, ends };
      // On the last day nobody asks any more whether it passes.
      const before = ends.map((chance, m) => (m < until ? chance : 0));
      return { ...course, weights: weightsOf(discount, before), ends: before };
    },
  };
};
