import { type Rule, repairLimitRule } from '../../policy/repairLimit.ts';
import type { Inputs } from '../../scenario/inputs.ts';
import type { Facts } from '../../scenario/scenario.ts';
import { contextOf, EXPECTED } from '../context.ts';
import type { Treatments } from '../neededWork.ts';
import { coursesOf } from './keepCourse.ts';
import { partsOf } from './parts.ts';

export type { Rule } from '../../policy/repairLimit.ts';

/**
 * The rule of the repair limit for the present vehicle, to be followed through drawn futures: fixed before the first of
 * them from average inputs and expected failures, over the scenario's own horizon. Its months and `mended` are those of
 * policy/repairLimit.ts, with the components by their position; the needed work counts as done the way `treatments`
 * says, and the months in which it or scheduled work renews a component are known to the rule.
 *
 * A bill to hold against a limit is what paying now adds: parts, labour, own hours and days without the vehicle by the
 * rule that posts them, without the tow, which is owed either way.
 */
export const ruleFor = (inputs: Inputs, facts: Facts, treatments: Treatments, replacement: number): Rule => {
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const course = coursesOf(treatments, replacement, ctx).looking(0, ctx.horizon, 'always');
  return repairLimitRule(course, partsOf(treatments, ctx));
};
