import type { Context } from '../vehicle/context.ts';
import { mayWait } from '../vehicle/neededWork.ts';
import { presentClosed, replacementClosed } from '../vehicle/openOptions.ts';
import { type Way, type Ways, wayOf } from '../vehicle/option.ts';
import type { ClosedWay } from '../vehicle/optionIdentity.ts';
import { months, replacementIds } from '../vehicle/optionNames.ts';
import { cashIn, type Plan } from '../vehicle/plan.ts';
import { laterPlan } from '../vehicle/replaceLaterPlan.ts';

/** Months the present vehicle may be driven with all of its needed work undone; 0 if it may not. */
const drivableUndone = (ctx: Context): number => {
  const { workNeeded } = ctx.inputs;
  if (!workNeeded.every((job) => mayWait(job, 1, ctx.facts))) return 0;
  return Math.min(ctx.horizon - 1, ...workNeeded.map((job) => job.canWait ?? Number.POSITIVE_INFINITY));
};

/** The longest that anybody saves for a change-over, in months. */
const LONGEST_SAVING = 120;

/** Months of saving until the cash of the day is there; null when it already is, or spare money never gets there. */
const monthsOfSaving = (index: number, ctx: Context): number | null => {
  const { savings, spareEachMonth } = ctx.inputs.household;
  if (savings === null || spareEachMonth <= 0) return null;
  const missing = (month: number): number => {
    const { changeOver } = laterPlan(index, month, ctx);
    return changeOver ? cashIn(changeOver.pieces, month, ctx).cash - savings - spareEachMonth * month : 0;
  };
  if (missing(0) <= 0) return null;
  const last = Math.min(LONGEST_SAVING, ctx.horizon - 1);
  for (let month = 1; month <= last; month++) if (missing(month) <= 1e-9) return month;
  return null;
};

const savedFor = (ctx: Context, id: string, label: string, index: number, month: number): Plan => ({
  ...laterPlan(index, month, ctx),
  id,
  label,
});

/** The ways that drive on with the work undone while saving for the replacement. */
export const drivingOnWays = (ctx: Context): Ways => {
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  const most = drivableUndone(ctx);
  ctx.inputs.replacement.forEach((_, index) => {
    const saving = monthsOfSaving(index, ctx);
    if (saving === null) return;
    const name = ctx.facts.replacementNames[index] as string;
    const label = `Drive on for ${months(saving)} while saving, then get the ${name}`;
    const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${saving}`;
    const why =
      ctx.inputs.workNeeded.length > 0 && saving > most
        ? most > 0
          ? `the work can wait only ${months(most)}`
          : 'with the work undone it is not to be driven'
        : (presentClosed(saving, ctx) ?? replacementClosed(index, saving, ctx));
    if (why) closed.push({ id, label, why });
    else open.push(wayOf({ id, side: 'later', label, treatments: null }, savedFor, id, label, index, saving));
  });
  return { open, closed };
};
