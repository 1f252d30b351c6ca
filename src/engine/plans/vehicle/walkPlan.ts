import { replacedAt } from './changeOver.ts';
import type { Context } from './context.ts';
import { holdOurs } from './givenUp.ts';
import { keepPlan } from './keepPlan.ts';
import type { Treatments } from './neededWork.ts';
import type { Plan } from './plan.ts';
import { soldWalking, valueWalking, type WalksAs } from './retirement.ts';

/**
 * Walking away at the end of month t, 0..H: the needed work met as `treatments` says (on the first day at the latest
 * while t is 0), the vehicle held till then, and replaced. Broken down it is sold as that, and in a hurry; the tow is owed
 * whether it is mended or not, so it belongs to the failure. At H there is nothing to replace it for: it is sold.
 *
 * What the failures of month t cost is for the future to say: a bill that is not paid must not be among them.
 *
 * @param ctx for what there is, not for how much
 */
export const walkPlan = (
  replacement: number,
  month: number,
  how: WalksAs,
  treatments: Treatments,
  ctx: Context,
): Plan => {
  const id = `walk/${replacement}/${month}/${how}`;
  const label = `Keep it to month ${month}, then walk away`;
  const work = treatments.includes('patch') ? 'patched' : treatments.includes('wait') ? 'left' : 'mended';
  if (month >= ctx.horizon) {
    const kept = keepPlan(id, label, work, treatments, ctx);
    const sold: Plan['valueAt'] = (at, m) =>
      m < at.horizon ? kept.valueAt(at, m) : valueWalking(m, how, treatments, at);
    return { ...kept, side: 'later', valueAt: sold };
  }
  const sold = soldWalking(month, how, treatments);
  const held = holdOurs(treatments, month, ctx);
  return {
    ...replacedAt(replacement, month, treatments, held, sold, ctx),
    id,
    label,
    work,
    letGo: how === 'running' ? 'private' : 'as it stands',
  };
};
