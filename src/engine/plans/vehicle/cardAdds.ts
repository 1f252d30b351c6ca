/** What a change of vehicle costs besides, where savings do not cover it and a card does. */
import { cardCredit, cardGrowth, cardUntilPaid } from '../../cashflow/contracts/card.ts';
import { levelAt } from '../../cashflow/levels.ts';
import type { Contract, Sink } from '../../cashflow/posting.ts';
import { type Context, onceByMonth } from './context.ts';
import type { Awaited } from './selling.ts';

/** The part of what a change of vehicle lacks that a price to come covers, interest and all. */
export const bridgedBy = (
  awaited: Awaited | null,
  reading: 'cash' | 'shop',
  missing: number,
  cardRate: number,
): number => {
  if (awaited === null || missing <= 0) return 0;
  const brings = Math.max(0, awaited.price[reading] - awaited.payoff);
  return Math.min(missing, brings / cardGrowth(cardRate, awaited.comes - awaited.begun));
};

/** What a contract that begins today comes to in money of today. */
const worthOf = (contract: Contract, ctx: Context): number => {
  let sum = 0;
  const sink: Sink = {
    post: (_line, m, counted) => {
      sum += counted * ctx.worthLater(m);
    },
    series: (_line, from, to, levels, counted) => {
      for (let m = from; m <= to; m++) sum += counted * levelAt(levels, m) * ctx.worthLater(m);
    },
    time: null,
    stands: null,
  };
  contract(sink);
  return sum;
};

/** What 1 put on the card costs, seen so many months on. */
const cardCost = (months: number, ctx: Context): number =>
  onceByMonth(ctx, 'cost of the card', months, () =>
    worthOf(cardCredit(1, 1, ctx.inputs.household.cardRate, 0, months), ctx),
  );

/**
 * What it adds, own hours counted, that a change at the end of a month lacks cash: put on a card, and paid back from the
 * old one's price where that comes later.
 *
 * @param lacking cash that neither savings nor what is saved till then cover; nothing is added below nil
 * @param until the month at which the look ends
 * @returns in money of the month of the change
 */
export const cardAdds = (
  lacking: number,
  reading: 'cash' | 'shop',
  awaited: Awaited | null,
  month: number,
  until: number,
  ctx: Context,
): number => {
  if (lacking <= 0) return 0;
  const { cardRate } = ctx.inputs.household;
  const bridged = bridgedBy(awaited, reading, lacking, cardRate);
  const bridge =
    awaited && bridged > 0
      ? bridged * worthOf(cardUntilPaid(1, 1, cardRate, 0, awaited.comes - month, until - month), ctx)
      : 0;
  return (lacking - bridged) * cardCost(until - month, ctx) + bridge;
};
