import { presentCostOf } from '../evaluation/project.ts';
import { replaceLaterCurve } from '../evaluation/replacementTiming.ts';
import { likeOursWays } from '../plans/options/likeOursOption.ts';
import { replaceNowWays } from '../plans/options/replaceNowOptions.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import { LIKE_OURS } from '../plans/vehicle/likeOurs.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import type { WalksAs } from '../plans/vehicle/retirement.ts';
import { walkPlan } from '../plans/vehicle/walkPlan.ts';
import type { Course } from '../policy/course.ts';
import { NEVER, type Part } from '../policy/part.ts';
import { type Rule as LimitRule, repairLimitRule } from '../policy/repairLimit.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import { type Courses, coursesOf } from './keepCourse.ts';
import { partsOf } from './policyParts.ts';

/** The rule, and what is bought where it walks away at the end of a month. */
export interface Rule extends LimitRule {
  readonly next: (month: number, how: WalksAs) => number | null;
}

/**
 * Letting it go today, as it stands, for the cheapest of the vehicles there are, is no dearer than doing the needed work
 * and replacing it later or never. Only today is the needed work still a choice; at every later month it has been done.
 */
const walksToday = (
  courses: Courses,
  course: Course,
  parts: readonly Part[],
  treatments: Treatments,
  replacement: number,
  ctx: Context,
): boolean => {
  const costs = [...replaceNowWays(ctx).open, ...likeOursWays(ctx).open]
    .map((way) => way.build(ctx))
    .filter((plan) => plan.replacement === replacement || plan.replacement === LIKE_OURS)
    .map((plan) => presentCostOf(plan, ctx).counted);
  if (costs.length === 0) return false;
  // Work that can wait is skipped by a date before it is due: such a date may be cheaper than today.
  const now = Math.min(...costs);
  if (replaceLaterCurve(replacement, ctx)?.curve.some((at) => at.month > 0 && at.netPresentCost < now))
    return false;
  // The course begins after the first day; what that day takes is what a plan costs above it.
  const next = courses.nextAt(0, 'running', course.until) ?? replacement;
  const mended = presentCostOf(walkPlan(next, 0, 'running', treatments, ctx), ctx).counted;
  const firstDay = mended - (course.stopping[0] as number);
  const stopping = course.stopping.slice();
  stopping[0] = now - firstDay;
  const nothing = new Int16Array(parts.length).fill(NEVER);
  return repairLimitRule({ ...course, stopping }, parts).walksAt(0, nothing);
};

/** The rule of a course and its parts, with today's choice settled. */
export const ruleOf = (
  courses: Courses,
  course: Course,
  parts: readonly Part[],
  treatments: Treatments,
  replacement: number,
  ctx: Context,
): Rule => {
  const { limit, pays, walksAt } = repairLimitRule(course, parts);
  const today = walksToday(courses, course, parts, treatments, replacement, ctx);
  return {
    limit,
    pays,
    walksAt: (month, mended) => (month === 0 ? today : walksAt(month, mended)),
    next: (month, how) => courses.nextAt(month, how, course.until),
  };
};

/**
 * The rule of the repair limit for the present vehicle, to be followed through drawn futures: fixed before the first of
 * them from average inputs and expected failures, over the scenario's own horizon. `mended` goes by the components'
 * positions; the months in which the needed work or scheduled work renews one are known to the rule.
 *
 * Asked at month 0 it says whether to replace today, as it stands and by the cheapest way to that replacement, rather
 * than do the needed work; from month 1 on the needed work has been done the way `treatments` says. A limit of month 0 is
 * that of right after it.
 *
 * A bill to hold against a limit is what paying now adds: parts, labour, own hours and days without the vehicle by the
 * rule that posts them, without the tow, which is owed either way.
 */
export const ruleFor = (inputs: Inputs, facts: Facts, treatments: Treatments, replacement: number): Rule => {
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const courses = coursesOf(treatments, ctx);
  const course = courses.looking(0, ctx.horizon, 'always');
  return ruleOf(courses, course, partsOf(treatments, ctx), treatments, replacement, ctx);
};
