import { oneOff } from '../../cashflow/contracts/recurring.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Replacement } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';

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
      month + 6,
      offer.catchUp,
    ),
    ...offer.oneOffs.map((one, i) => at(one.name, 'one_offs', 'once', month + one.month, one.amount, i)),
  ];
};
