import { postWork, type WorkOnce } from '../cashflow/contracts/work.ts';
import type { Sink } from '../cashflow/posting.ts';
import { patchIncrements } from '../chance/renewal.ts';
import { paceOf, restartsOf } from '../plans/vehicle/clocks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { anotherLaw } from '../plans/vehicle/expectedFailures.ts';
import { presentSpan } from '../plans/vehicle/held.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { workOf } from '../plans/vehicle/repairs.ts';
import { guaranteedMonths } from '../plans/vehicle/runningCosts.ts';
import { type ClockLaw, chancesByMonth, chancesOfRemaining } from '../policy/clock.ts';
import { outlookOf } from '../policy/outlook.ts';
import type { Part } from '../policy/part.ts';
import { remember } from '../quantity/remember.ts';
import type { Component } from '../scenario/inputs/inputs.ts';

const NO_LINE = { category: 'repairs', what: '', path: '', reason: '' } as const;

/** What a piece of work costs in a month, own time counted: by the rule that posts it, read off a sink. */
export const costOfWork = (work: WorkOnce, month: number, ctx: Context): number => {
  let sum = 0;
  const sink: Sink = {
    post: (_line, _month, counted) => {
      sum += counted;
    },
    series: () => undefined,
    time: null,
    stands: null,
  };
  postWork(sink, NO_LINE, month, work, ctx.work);
  return sum;
};

/** The clock of a component of the present vehicle, in whole months. */
const clockOf = (part: Component, pace: number, months: number): ClockLaw => {
  const life = { scale: part.scale, shape: part.shape };
  const another = anotherLaw(part);
  if (part.repairIs === 'patch') {
    const fresh = patchIncrements(life, 0, pace, months);
    const running = patchIncrements(life, part.run, pace, months);
    return another
      ? {
          repairIs: 'patch',
          installed: chancesOfRemaining(another.chanceBelow, months),
          fresh,
          patched: running,
        }
      : { repairIs: 'patch', installed: running, fresh, patched: null };
  }
  return {
    repairIs: 'renewal',
    installed: another
      ? chancesOfRemaining(another.chanceBelow, months)
      : chancesByMonth(life, part.run, pace, months),
    fresh: chancesByMonth(life, 0, pace, months),
    patched: null,
  };
};

const outlookFor = remember(
  (part: Component, pace: number, months: number) => outlookOf(clockOf(part, pace, months), months),
  ([a, paceA, monthsA], [b, paceB, monthsB]) =>
    paceA === paceB &&
    monthsA === monthsB &&
    a.repairIs === b.repairIs &&
    a.scale === b.scale &&
    a.shape === b.shape &&
    a.run === b.run &&
    a.another === b.another,
);

/** The named components of the present vehicle as the rule sees them, kept with the needed work met as it is. */
export const partsOf = (treatments: Treatments, ctx: Context): Part[] => {
  const { vehicle } = ctx.inputs;
  const months = ctx.horizon;
  const free = guaranteedMonths(vehicle, ctx.distanceAMonth);
  const span = presentSpan(treatments, months, ctx);
  return vehicle.components.map((part, i) => ({
    repairIs: part.repairIs,
    outlook: outlookFor(part, paceOf(part, ctx.distanceAMonth), months),
    restarts: restartsOf(vehicle, i, span, ctx),
    costs: Float64Array.from({ length: months + 1 }, (_, m) =>
      m > free ? costOfWork(workOf(part), m, ctx) : 0,
    ),
  }));
};
