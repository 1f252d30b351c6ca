import type { BillAnswer, ComponentLimit, WalkAway } from './repairLimitView.ts';

/** Names of the components a bill can be for, as the file has them. */
export const billableNames = (walkAway: WalkAway): string[] =>
  walkAway.components.filter(({ position }) => position !== null).map(({ component }) => component);

/** Nearer to the limit than this share of it, or than so much, neither is said to be cheaper: it is said no finer than that. */
const NEAR = { share: 0.025, money: 2.5 };

const answerAt = (paying: number, limit: number): BillAnswer['answer'] => {
  if (Math.abs(paying - limit) <= Math.max(NEAR.money, NEAR.share * limit)) return 'even';
  return paying < limit ? 'pay' : 'walk away';
};

/**
 * Pay or walk away, today, for a shop's bill: what paying adds (the amount, and days without the vehicle) against the
 * limit of month 0. The tow and the diagnosis are owed either way.
 *
 * @param component one of the walk-away's components
 * @param amount parts and labour, in currency units
 */
export const billAnswer = (
  { letGoToday }: Pick<WalkAway, 'letGoToday'>,
  component: ComponentLimit,
  amount: number,
): BillAnswer => {
  const [now] = component.byMonth;
  const limit = now?.limit ?? 0;
  const paying = amount + component.daysCost;
  const answer = answerAt(paying, limit);
  const twice = now?.lookingTwice ?? null;
  const other = twice === null ? answer : answerAt(paying, twice);
  return {
    component: component.component,
    amount,
    limit,
    paying,
    answer,
    by: Math.abs(limit - paying),
    otherwiseLookingTwice: answer !== 'even' && other !== 'even' && other !== answer,
    unsafe: component.unsafe,
    letGoToday,
  };
};
