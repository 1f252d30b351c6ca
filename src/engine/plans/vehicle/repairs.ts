import { averageWork } from '../../cashflow/contracts/averageWork.ts';
import {
  failures,
  failuresThatHappened,
  type Happened,
  type Unnamed,
  unnamedThatHappened,
} from '../../cashflow/contracts/failures.ts';
import type { WorkOnce } from '../../cashflow/contracts/work.ts';
import type { LineOf } from '../../cashflow/lines.ts';
import type { Contract, Role } from '../../cashflow/posting.ts';
import { arrivalTimes, failureTimes } from '../../chance/failureTimes.ts';
import type { Range } from '../../quantity/range.ts';
import type { Component, RunningCosts } from '../../scenario/inputs/inputs.ts';
import { paceOf, restartsOf } from './clocks.ts';
import { type Context, type DrawnFuture, recalled } from './context.ts';
import { anotherLaw, expectedFailures, type Pace } from './expectedFailures.ts';
import { lawOf } from './rangeLaws.ts';
import type { Span } from './span.ts';
import { averageAMonth, leftOf, unnamedByMonth } from './unnamedRepairs.ts';

/** What meeting a failure of a component takes once, on average. */
export const workOf = (part: Component): WorkOnce => ({
  by: part.by,
  parts: part.parts,
  hours: part.hours,
  usualHours: part.hours,
  shopPrice: part.shopPrice,
  daysWithout: part.daysWithout,
  either: part.tow,
});

/** What a mean is multiplied with where the share u of bills is smaller. */
export const spread = (range: Range | null, u: number): number => {
  if (range === null) return 1;
  const law = lawOf(range);
  return law.quantile(u) / law.mean;
};

/** What meeting one failure takes, its bill being the one that the share u of bills is smaller than. */
export const billed = (part: Component, u: number): WorkOnce => {
  const { bill } = part;
  if (bill.parts === null && bill.hours === null && bill.shopPrice === null) return workOf(part);
  return {
    by: part.by,
    parts: part.parts * spread(bill.parts, u),
    hours: part.hours * spread(bill.hours, u),
    usualHours: part.hours,
    shopPrice: part.shopPrice === null ? null : part.shopPrice * spread(bill.shopPrice, u),
    daysWithout: part.daysWithout,
    either: part.tow,
  };
};

/** The month at whose end something falls that happens at a point of time after the start. */
const monthOf = (time: number): number => Math.max(1, Math.ceil(time));

/** The failures of one component in a drawn future, in months after the span's start, as far as the horizon reaches. */
export const failuresDrawn = (
  part: Component,
  component: number,
  span: Span,
  restarts: readonly number[],
  future: DrawnFuture,
  ctx: Context,
): readonly Happened[] =>
  recalled(future, part, [span.luck, ...restarts], () => {
    const luck = future.luckOf(span.luck, component);
    const life = {
      life: { scale: part.scale, shape: part.shape },
      run: part.run,
      pace: paceOf(part, ctx.distanceAMonth),
      patch: part.repairIs === 'patch',
      another: anotherLaw(part),
    };
    return failureTimes(life, restarts, ctx.horizon, luck).map((time, i) => ({
      month: monthOf(time),
      work: billed(part, luck.quantile(i)),
    }));
  });

const GIVEN_UP = { parts: 0, hours: 0, shopPrice: 0, daysWithout: 0 };

/** The bills of the month in which the vehicle is given up are not paid; its tow is owed either way. */
const unpaid = (happened: readonly Happened[], month: number | null): readonly Happened[] =>
  month === null
    ? happened
    : happened.map((one) => (one.month === month ? { ...one, work: { ...one.work, ...GIVEN_UP } } : one));

const ROLE: Role = 'named failures';

/** The failures of a vehicle's named component over a span. */
export const named = (
  vehicle: RunningCosts,
  component: number,
  span: Span,
  line: LineOf,
  free: number,
  ctx: Context,
): Contract => {
  const { start, end } = span;
  const { future } = ctx;
  const part = vehicle.components[component] as Component;
  const restarts = restartsOf(vehicle, component, span, ctx);
  if (future.kind === 'drawn') {
    const at = line('repairs', part.name, 'components', 'what a drawn future says', component, ROLE);
    const happened = failuresDrawn(part, component, span, restarts, future, ctx);
    const givenUp = span.bought ? null : future.givenUpIn;
    return failuresThatHappened(at, unpaid(happened, givenUp), ctx.work, start, end, free);
  }
  const reason = 'expected failures, from its life law and what it has run';
  const at = line('repairs', part.name, 'components', reason, component, ROLE);
  const pace: Pace = { aMonth: paceOf(part, ctx.distanceAMonth), months: end - start };
  const counts = expectedFailures(
    part,
    pace,
    restarts.filter((month) => month <= end - start),
  );
  return failures(at, counts, workOf(part), ctx.work, start, end, free);
};

/** Repairs nobody named in a drawn future: when, and how dear. The dearest of them leave it at the roadside. */
export const unnamedDrawn = (
  vehicle: RunningCosts,
  span: Span,
  future: DrawnFuture,
  ctx: Context,
): readonly Unnamed[] => {
  const left = leftOf(vehicle, span, ctx);
  // One bought later is older, and repairs come by age.
  return recalled(future, vehicle.averageRepairs, [span.luck, left, vehicle.age], () => {
    const { bill, strands } = vehicle.averageRepairs;
    if (bill.mean <= 0) return [];
    const average = averageAMonth(vehicle, ctx);
    const luck = future.luckOf(span.luck, -1);
    return arrivalTimes((year) => average(year) / bill.mean, left, luck).map((time, i) => {
      const u = luck.quantile(i);
      return { month: monthOf(time), bill: bill.mean * spread(bill.range, u), stops: u > 1 - strands };
    });
  });
};

/** Repairs nobody named: the average for its age, less what the components that were named bring of it. */
export const unnamed = (
  vehicle: RunningCosts,
  span: Span,
  line: LineOf,
  free: number,
  ctx: Context,
): Contract[] => {
  const { start, end } = span;
  const { atHome } = ctx.inputs.household;
  const { bill, strands, statedAYear } = vehicle.averageRepairs;
  const why =
    statedAYear !== null
      ? 'a stated amount a year'
      : 'average for its age and price when new, less what the named components bring';
  const at = line('repairs', 'repairs nobody can name yet', 'repairs', why);
  if (ctx.future.kind === 'drawn' && bill.mean > 0) {
    const givenUp = span.bought ? null : ctx.future.givenUpIn;
    const all = unnamedDrawn(vehicle, span, ctx.future, ctx);
    const happened =
      givenUp === null ? all : all.map((one) => (one.month === givenUp ? { ...one, bill: 0 } : one));
    return [unnamedThatHappened(at, happened, atHome, ctx.work, start, end, free)];
  }
  const bills = unnamedByMonth(vehicle, span, ctx);
  return [
    averageWork(at, (m) => bills[m - 1] ?? 0, atHome, ctx.work, start, end, free),
    (sink) => {
      if (bill.mean <= 0 || sink.stands === null) return;
      for (let m = 1; m <= end - start; m++)
        sink.stands(start + m, (strands * (bills[m - 1] ?? 0)) / bill.mean, 0);
    },
  ];
};
