/** How long it has to last for mending it to pay: the question asked first, and answered without any chance. */

import type { OptionResult } from '../evaluation/optionResult.ts';
import { waysOf } from '../evaluation/options.ts';
import { presentCostOf } from '../evaluation/project.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { walkPlan } from '../plans/vehicle/walkPlan.ts';

export interface Lasting {
  /**
   * f(k): the needed work done, kept until it is lost at the end of month k, then the pair's replacement got in a hurry;
   * present cost in currency units, k = 1 .. H-1. Lost means broken down: a sale running would flatter it.
   */
  readonly curve: readonly { readonly month: number; readonly cost: number }[];
  /** What replacing it now costs. */
  readonly replaceNow: number;
  /**
   * It pays to keep it if it then lasts so many months: one more than the last month at whose end losing it costs no less
   * than replacing it now. 0: from the first month on; null: not even if it is lost at the end of all that is looked at.
   */
  readonly months: number | null;
}

/**
 * Both at average inputs, nothing else ending it before.
 *
 * @returns null where a side has no open way, or keeping it is not one course (after a collision)
 */
export const lastingOf = (
  keep: OptionResult | null,
  replace: OptionResult | null,
  ctx: Context,
): Lasting | null => {
  const { open } = waysOf(ctx);
  const treatments = open.find(({ id }) => id === keep?.id)?.treatments ?? null;
  const now = open.find(({ id }) => id === replace?.id);
  const replacement = replace?.replacement ?? null;
  if (treatments === null || replacement === null || !now) return null;
  const replaceNow = presentCostOf(now.build(ctx), ctx).counted;
  const curve = Array.from({ length: ctx.horizon - 1 }, (_, i) => {
    const plan = walkPlan(replacement, i + 1, 'broken', treatments, ctx);
    return { month: i + 1, cost: presentCostOf(plan, ctx).counted };
  });
  if (curve.length === 0) return null;
  const last = curve.findLast(({ cost }) => cost >= replaceNow)?.month ?? null;
  const months = last === null ? 0 : last === ctx.horizon - 1 ? null : last + 1;
  return { curve, replaceNow, months };
};
