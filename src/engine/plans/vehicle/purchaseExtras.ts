import { oneOff } from '../../cashflow/contracts/recurring.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Replacement } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';

/**
 * The month in which a used one wants what nobody knew of: in the middle of its first year. Where the look ends before, on
 * the last day: it is owed all the same, and one bought late would look cheaper than it is.
 */
export const wantsIn = (month: number, ctx: Context): number => Math.min(month + 6, ctx.horizon);

/** What comes with buying: the inspection before, a used one's catch-up, one-offs; each at its month's prices. */
export const around = (
  offer: Replacement,
  name: string,
  path: string,
  month: number,
  ctx: Context,
): Contract[] => {
  const line = linesOf(name, path);
  const at = (
    what: string,
    key: string,
    reason: string,
    due: number,
    amount: number,
    nth?: number,
  ): Contract =>
    due > ctx.horizon
      ? () => undefined
      : oneOff(line('buying', what, key, reason, nth), due, amount * ctx.oneOffLevel(due));
  return [
    at('inspection before buying', 'inspection_before', 'before it is bought', month, offer.inspectionBefore),
    at(
      'catching up',
      'catch_up',
      'tyres, brakes, fluids of a used one in its first year',
      wantsIn(month, ctx),
      offer.catchUp,
    ),
    ...offer.oneOffs.map((one, i) => at(one.name, 'one_offs', 'once', month + one.month, one.amount, i)),
  ];
};
