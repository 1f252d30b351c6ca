import type { Context } from '../vehicle/context.ts';
import { mayEnd } from '../vehicle/givenUp.ts';
import { allDone, keepPlan, treatmentsOf } from '../vehicle/keepPlan.ts';
import { mayWait, type Treatments } from '../vehicle/neededWork.ts';
import { presentClosed } from '../vehicle/openOptions.ts';
import { type Way, type Ways, wayOf } from '../vehicle/option.ts';
import type { ClosedWay } from '../vehicle/optionIdentity.ts';
import type { Plan } from '../vehicle/plan.ts';

/** Keeping it to the horizon, or to its end if that comes first. */
export const keptPlan = (
  ctx: Context,
  id: string,
  label: string,
  work: Plan['work'],
  treatments: Treatments,
): Plan => mayEnd(keepPlan(id, label, work, treatments, ctx), ctx.horizon, treatments, ctx);

/** The ways that keep it: mended, patched, or with left undone what can wait. */
export const keepWays = (ctx: Context): Ways => {
  const { workNeeded } = ctx.inputs;
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  const add = (id: string, label: string, work: Plan['work'], treatments: Treatments): void => {
    const why = presentClosed(ctx.horizon, ctx);
    if (why) closed.push({ id, label, why });
    else open.push(wayOf({ id, side: 'keep', label, treatments }, keptPlan, id, label, work, treatments));
  };
  add('keep', workNeeded.length > 0 ? 'Mend it and keep it' : 'Keep it', 'mended', allDone(ctx));
  const patched = treatmentsOf(ctx, (i) =>
    workNeeded[i]?.patch && !workNeeded[i]?.safety ? 'patch' : 'done',
  );
  const left = treatmentsOf(ctx, (i) =>
    workNeeded[i] && mayWait(workNeeded[i], 1, ctx.facts) ? 'wait' : 'done',
  );
  if (patched.includes('patch')) add('keep/patched', 'Patch it and keep it', 'patched', patched);
  else if (workNeeded.some((job) => job.patch))
    closed.push({
      id: 'keep/patched',
      label: 'Patch it and keep it',
      why: 'the only patch is on a job of safety, and patched is not done',
    });
  const waiting = workNeeded.filter((_, i) => left[i] === 'wait').map((job) => job.name);
  if (waiting.length > 0) add('keep/left', `Keep it, and leave for now: ${waiting.join(', ')}`, 'left', left);
  else if (workNeeded.length > 0)
    closed.push({
      id: 'keep/left',
      label: 'Keep it, and leave the work undone',
      why: 'none of the work can wait: undone, it is not to be driven',
    });
  return { open, closed };
};
