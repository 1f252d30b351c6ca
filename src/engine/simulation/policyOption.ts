import { presentCostOf } from '../evaluation/project.ts';
import { keptPlan } from '../plans/options/keepOptions.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { type Way, wayOf } from '../plans/vehicle/option.ts';
import { laterPlan, laterTreatments } from '../plans/vehicle/replaceLaterPlan.ts';

/** What following the rule of the repair limit is called, beside the options. */
export const RULE = { id: 'right-to-walk', label: 'Keep it, and walk away when a bill is too big' } as const;

const heldOn = (treatments: Treatments): Way => {
  const work = treatments.includes('wait') ? 'left' : 'mended';
  return wayOf({ ...RULE, side: 'keep', treatments }, keptPlan, RULE.id, RULE.label, work, treatments);
};

/**
 * How the rule keeps the vehicle while it does: as the best keep way does; but where, at average inputs, a date of
 * replacement costs less than keeping it, as that date's plan does. Work that can wait till then would otherwise be paid
 * for by the rule and not by the date it is set beside.
 *
 * @param month the best date strictly between today and never; null where there is none
 */
export const ruleWayOf = (keep: Way, replacement: number, month: number | null, ctx: Context): Way => {
  if (month === null) return keep;
  const cost = (plan: ReturnType<Way['build']>): number => presentCostOf(plan, ctx).counted;
  if (cost(keep.build(ctx)) <= cost(laterPlan(replacement, month, ctx))) return keep;
  const treatments = laterTreatments(month, ctx);
  return treatments.join() === keep.treatments?.join() ? keep : heldOn(treatments);
};
