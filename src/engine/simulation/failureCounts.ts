import { BIG, bigBillsAMonth } from '../plans/vehicle/bigBills.ts';
import { bigArrivals } from '../plans/vehicle/boughtBigBills.ts';
import { paceOf, restartsOf } from '../plans/vehicle/clocks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { expectedFailures } from '../plans/vehicle/expectedFailures.ts';
import { presentSpan } from '../plans/vehicle/held.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { fixedForOurs } from '../plans/vehicle/ours.ts';
import { failuresDrawn, unnamedDrawn } from '../plans/vehicle/repairs.ts';
import { boughtSpan, type Span } from '../plans/vehicle/span.ts';
import { averageOverAll, leftOf } from '../plans/vehicle/unnamedRepairs.ts';
import { yearOf } from '../quantity/month.ts';
import type { RunningCosts } from '../scenario/inputs/inputs.ts';
import { luckOfReplacement, type PartLuck } from './unknowns.ts';

/** Where a part's failures are counted: its vehicle held to the horizon, the present one or the one bought today. */
export interface Counted {
  readonly part: PartLuck;
  readonly vehicleOf: (ctx: Context) => RunningCosts;
  readonly spanOf: (ctx: Context) => Span;
}

/** The parts of the two vehicles compared. */
export const countedParts = (
  parts: readonly PartLuck[],
  treatments: Treatments | null,
  replacement: number | null,
  replacements: number,
): (Counted | null)[] =>
  parts.map((part): Counted | null => {
    if (part.vehicle === 'vehicle')
      return treatments === null
        ? null
        : {
            part,
            vehicleOf: (ctx) => ctx.inputs.vehicle,
            spanOf: (ctx) => presentSpan(treatments, ctx.horizon, ctx),
          };
    if (replacement === null || part.vehicle !== luckOfReplacement(replacement, replacements)) return null;
    return {
      part,
      vehicleOf: (ctx) => ctx.inputs.replacement[replacement] as RunningCosts,
      spanOf: (ctx) => boughtSpan(part.vehicle, part.vehicleName, 0, ctx.horizon),
    };
  });

/** The part of its big bills that nothing named stands for. */
const unnamedPart = (whose: string, ctx: Context): number =>
  whose === 'vehicle' ? fixedForOurs(ctx).unnamed : 1;

const bigBillsExpected = (vehicle: RunningCosts, whose: string, ctx: Context): number => {
  let sum = 0;
  for (let m = 1; m <= ctx.horizon; m++) sum += bigBillsAMonth(vehicle, yearOf(m), ctx);
  return unnamedPart(whose, ctx) * sum;
};

/** How often a part is expected to fail up to the horizon, at these inputs: by its law of life alone. */
export const expectedOf = (counted: Counted, ctx: Context): number => {
  const { component: position } = counted.part;
  const vehicle = counted.vehicleOf(ctx);
  const span = counted.spanOf(ctx);
  if (position === BIG) return bigBillsExpected(vehicle, counted.part.vehicle, ctx);
  if (position < 0)
    return averageOverAll(vehicle, leftOf(vehicle, span, ctx), ctx) / vehicle.averageRepairs.bill.mean;
  const component = vehicle.components[position];
  if (!component) return 0;
  const pace = { aMonth: paceOf(component, ctx.distanceAMonth), months: ctx.horizon };
  const restarts = restartsOf(vehicle, position, span, ctx);
  // A copy: what is drawn is moved in place, and expected failures are remembered by the part they were asked of.
  const part = { ...component, another: component.another && { ...component.another } };
  const counts = expectedFailures(part, pace, restarts);
  let sum = 0;
  for (let m = 0; m < ctx.horizon; m++) sum += counts[m] ?? 0;
  return sum;
};

/** How often it fails up to the horizon in a drawn future. */
export const drawnOf = ({ part, vehicleOf, spanOf }: Counted, ctx: Context): number => {
  const { future } = ctx;
  if (future.kind !== 'drawn') return 0;
  const vehicle = vehicleOf(ctx);
  const span = spanOf(ctx);
  if (part.component === BIG)
    return bigArrivals(vehicle, part.vehicle, unnamedPart(part.vehicle, ctx), ctx.horizon, future, ctx)
      .length;
  if (part.component < 0) return unnamedDrawn(vehicle, span, future, ctx).length;
  const component = vehicle.components[part.component];
  if (!component) return 0;
  const restarts = restartsOf(vehicle, part.component, span, ctx);
  return failuresDrawn(component, part.component, span, restarts, future, ctx).length;
};

/** Whether a component of the present vehicle, kept, fails within so many months in a drawn future. */
export const failsWithinMonths = (counted: Counted, months: number, ctx: Context): boolean => {
  const { part, vehicleOf, spanOf } = counted;
  const { future } = ctx;
  const vehicle = vehicleOf(ctx);
  const component = vehicle.components[part.component];
  if (future.kind !== 'drawn' || !component) return false;
  const span = spanOf(ctx);
  const restarts = restartsOf(vehicle, part.component, span, ctx);
  const [first] = failuresDrawn(component, part.component, span, restarts, future, ctx);
  return first !== undefined && first.month <= months;
};
