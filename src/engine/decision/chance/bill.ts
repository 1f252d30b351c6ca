import type { Scenario } from '../../scenario/scenario.ts';
import type { BillAnswer, ComponentLimit, WalkAway } from './walkAway.ts';

/** Names of the components a bill can be for, as the file has them. */
export const billableNames = (walkAway: WalkAway): string[] =>
  walkAway.components.filter(({ position }) => position !== null).map(({ component }) => component);

/** Nearer to the limit than this share of it, neither is said to be cheaper: the limit is no finer than that. */
const NEAR = 0.01;

const answerAt = (paying: number, limit: number): BillAnswer['answer'] => {
  if (Math.abs(paying - limit) <= Math.max(0.5, NEAR * limit)) return 'even';
  return paying < limit ? 'pay' : 'walk away';
};

/** Days without the vehicle while a component is mended, at their price today. */
const daysCost = ({ inputs }: Scenario, position: number | null): number =>
  (position === null ? 0 : (inputs.vehicle.components[position]?.daysWithout ?? 0)) *
  inputs.household.dayWithout;

/**
 * Pay or walk away, today, for a shop's bill: what paying adds (the amount, and days without the vehicle) against the
 * limit of month 0. The tow and the diagnosis are owed either way.
 *
 * @param component one of the walk-away's components
 * @param amount the shop's price, in currency units
 */
export const billAnswer = (scenario: Scenario, component: ComponentLimit, amount: number): BillAnswer => {
  const [now] = component.byMonth;
  const limit = now?.limit ?? 0;
  const paying = amount + daysCost(scenario, component.position);
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
  };
};
