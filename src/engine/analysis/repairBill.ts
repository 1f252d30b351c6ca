import type { AtHome, BillAnswer, ComponentLimit, WalkAway } from './repairLimitView.ts';

/** Names of the components a bill can be for, as the file has them. */
export const billableNames = (walkAway: WalkAway): string[] =>
  walkAway.components.filter(({ position }) => position !== null).map(({ component }) => component);

/** Nearer to the limit than this share of it, or than so much, neither is said to be cheaper: it is said no finer than that. */
const NEAR = { share: 0.025, money: 2.5 };

const isEven = (paying: number, limit: number): boolean =>
  Math.abs(paying - limit) <= Math.max(NEAR.money, NEAR.share * limit);

/** What mending it at home comes to, where a shop asks so much. */
const ownHandsFor = (atHome: AtHome | null, amount: number): BillAnswer['ownHands'] => {
  if (atHome === null) return null;
  const of = ({ fixed, ofBill }: AtHome['costs']): number => fixed + ofBill * amount;
  const { tow, days } = atHome;
  return { costs: of(atHome.costs) + tow, parts: of(atHome.parts), hours: of(atHome.hours), tow, days };
};

/**
 * Pay the shop, bring it home and mend it there, or let it go, today: what either way of mending it adds (the bill, or
 * parts, own hours and a tow home; days without the vehicle) against the limit of month 0. The tow to the shop and the
 * diagnosis are owed either way.
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
  const ownHands = ownHandsFor(component.atHome, amount);
  const own = ownHands !== null && ownHands.costs < paying;
  const least = own ? ownHands.costs : paying;
  const answerAt = (most: number): BillAnswer['answer'] => {
    if (isEven(least, most)) return 'even';
    if (least > most) return 'walk away';
    return own ? 'own hands' : 'pay';
  };
  const answer = answerAt(limit);
  const twice = now?.lookingTwice ?? null;
  const other = twice === null ? answer : answerAt(twice);
  return {
    component: component.component,
    amount,
    limit,
    paying,
    ownHands,
    answer,
    by: Math.abs(limit - least),
    otherwiseLookingTwice: answer !== 'even' && other !== 'even' && other !== answer,
    unsafe: component.unsafe,
    letGoToday,
  };
};
