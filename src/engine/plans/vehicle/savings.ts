import { KINDS, type Sink } from '../../cashflow/posting.ts';
import type { Context } from './context.ts';
import type { Plan } from './plan.ts';
import { contractsOf } from './recipe.ts';

/** For so many months after the first day savings are followed. */
const MONTHS = 3;

/**
 * Savings at their lowest in the first three months, in currency units: less all cash of the first day, and what is then
 * paid once, before anything is borrowed; a price not paid yet is not there. What recurs is lived on from income. Spare
 * money is added only where the way saves for a later change of vehicle, up to that month, as for the card.
 */
export const savingsLowest = (plan: Plan, ctx: Context): number => {
  const { savings, spareEachMonth } = ctx.inputs.household;
  const change = plan.changeOver;
  const out = new Float64Array(MONTHS + 1);
  const watching = (day: number): Sink => ({
    post({ category }, month, _counted, cash) {
      if (month <= MONTHS && (month === day || KINDS[category].once))
        out[month] = (out[month] as number) + cash;
    },
    // A series is what recurs.
    series: () => undefined,
    time: null,
    stands: null,
  });
  for (const contract of contractsOf(plan.pieces, ctx)) contract(watching(0));
  for (const contract of contractsOf(change?.pieces ?? [], ctx)) contract(watching(change?.month ?? 0));
  let left = savings ?? 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (let month = 0; month <= Math.min(MONTHS, ctx.horizon); month++) {
    left -= out[month] as number;
    if (change && month > 0 && month <= change.month) left += spareEachMonth;
    lowest = Math.min(lowest, left);
  }
  return lowest;
};
