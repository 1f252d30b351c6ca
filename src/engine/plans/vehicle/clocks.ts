import { dueMonths } from '../../cashflow/contracts/upkeep.ts';
import type { Component, RunningCosts } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';
import type { Span } from './span.ts';

/** The months, counted from the span's start, in which scheduled work restarts a component's clock. */
const scheduledRenewals = (
  vehicle: Pick<RunningCosts, 'upkeep'>,
  component: number,
  distanceAMonth: number,
  months: number,
): number[] => {
  const due: number[] = [];
  for (const item of vehicle.upkeep)
    if (item.renews.includes(component)) due.push(...dueMonths(item, distanceAMonth, months));
  return due;
};

/** A component's life used up in a month. */
export const paceOf = (part: Component, distanceAMonth: number): number =>
  part.clock === 'distance' ? distanceAMonth : 1;

/** The months in which work of any kind puts a new part in, rising. */
export const restartsOf = (
  vehicle: Pick<RunningCosts, 'upkeep'>,
  component: number,
  span: Pick<Span, 'start' | 'renewed'>,
  ctx: Context,
): readonly number[] => {
  const byWork = span.renewed.get(component);
  const scheduled = scheduledRenewals(vehicle, component, ctx.distanceAMonth, ctx.horizon - span.start);
  if (byWork !== undefined) scheduled.push(byWork);
  return scheduled.length < 2 ? scheduled : scheduled.sort((a, b) => a - b);
};
