import { levelAt } from '../../cashflow/levels.ts';
import { linesOf } from '../../cashflow/lines.ts';
import { type Contract, type Line, postMoney } from '../../cashflow/posting.ts';
import type { Context } from './context.ts';
import { nameOf, pathOf } from './held.ts';
import { LIKE_OURS } from './likeOurs.ts';
import { wantsIn } from './purchaseExtras.ts';

/** Ours may not be driven as it stands today, so looking for another is done without a vehicle. */
const stands = ({ inputs }: Context): boolean =>
  inputs.workNeeded.some(({ mayBeDriven }) => mayBeDriven !== 'yes');

/**
 * What finding another one like ours takes besides its price: own hours, days without a vehicle, and what its seller did
 * not say. Once ours has broken down later, the days are those of replacing it in a hurry, and are counted there.
 */
export const findingOne = (month: number, ctx: Context): Contract[] => {
  const said = ctx.inputs.anotherLikeOurs;
  if (said === null) return [];
  const line = linesOf(nameOf(LIKE_OURS, ctx), pathOf(LIKE_OURS, ctx));
  return [
    (sink) => {
      const worth = said.hours * ctx.ownHourAt(month);
      const looking = line(
        'buying',
        'finding one',
        'hours_to_find',
        'own hours: looking, driving out, papers',
      );
      // It takes the same hours whoever mends what.
      if (worth !== 0) sink.post(looking, month, worth, 0, worth);
      if (said.hours !== 0) sink.time?.(looking, month, said.hours);
    },
    (sink) => {
      if (month !== 0 || !stands(ctx) || said.days === 0) return;
      const without = line(
        'getting about without it',
        'days until one is found',
        'days_to_find',
        'ours cannot be driven meanwhile',
      );
      sink.stands?.(0, 0, said.days);
      postMoney(sink, without, 0, said.days * ctx.inputs.household.dayWithout);
    },
    (sink) => {
      const due = wantsIn(month, ctx);
      const fault: Line = {
        ...line('repairs', 'hidden fault', 'hidden_fault', 'what its seller did not say'),
        role: 'bought unseen',
      };
      postMoney(sink, fault, due, said.hiddenFault * levelAt(ctx.levels.repairs, due));
    },
  ];
};
