import { goings, goingWays } from '../plans/collision/disposal.ts';
import { deedClosed, settlementClosed } from '../plans/collision/eligibility.ts';
import { COURSES, type Course, keepCourse, laterCourse } from '../plans/collision/retention.ts';
import { type Context, unrounded } from '../plans/vehicle/context.ts';
import { replacementClosed } from '../plans/vehicle/openOptions.ts';
import { type Way, type Ways, wayOf } from '../plans/vehicle/option.ts';
import type { ClosedWay } from '../plans/vehicle/optionIdentity.ts';
import { capital, months, replacementIds } from '../plans/vehicle/optionNames.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { leastOf } from '../quantity/least.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import { presentCostOf } from './project.ts';

/** Dates looked at first for replacing later: about this many, evenly over the horizon. */
const DATES = 12;

interface Later {
  readonly index: number;
  readonly month: number;
}

/**
 * The replacement and month at which the course costs least; null where none serves, or where the last month looked at
 * is the best and no better than keeping it: then keeping it is what is meant. First among about a dozen dates, then
 * among every month around the best of them: the cost over the months is smooth but for bills that fall yearly.
 */
const bestLater = (course: Course, ctx: Context): Later | null => {
  const smooth = unrounded(ctx);
  const step = Math.max(1, Math.round(ctx.horizon / DATES));
  // A wreck is not sold as rebuilt before it is.
  const off = course.deed === 'rebuild' ? (ctx.inputs.claim?.rebuild?.monthsOff ?? 0) : 0;
  const first = Math.max(1, Math.ceil(off) + 1);
  const looked: (Later & { readonly cost: number })[] = [];
  const look = (index: number, month: number): void => {
    if (month < first || month >= ctx.horizon || replacementClosed(index, month, ctx)) return;
    const { counted } = presentCostOf(laterCourse(course, index, month, '', '', smooth), smooth);
    looked.push({ index, month, cost: counted });
  };
  const cheapest = () => leastOf(looked, ({ cost }) => cost);
  for (let index = 0; index < ctx.inputs.replacement.length; index++)
    for (let month = step; month < ctx.horizon; month += step) look(index, month);
  const near = cheapest();
  if (!near) return null;
  for (let away = 1; away < step; away++) {
    look(near.index, near.month - away);
    look(near.index, near.month + away);
  }
  const best = cheapest();
  if (!best) return null;
  const kept = presentCostOf(keepCourse(course, '', '', smooth), smooth).counted;
  return best.month < ctx.horizon - 1 || best.cost < kept ? best : null;
};

/** Why a course that keeps it is closed; null where it is open. */
const courseClosed = (course: Course, ctx: Context): string | null =>
  (course.how === null ? null : settlementClosed(course.how, ctx)) ??
  deedClosed(course.deed, course.how !== null, ctx);

/** Where an insurer pays, a total loss is rebuilt on its money or not at all. */
const asked = ({ how, deed }: Course, ctx: Context): boolean =>
  how !== null || deed !== 'rebuild' || ctx.facts.claim?.pays === 'nobody';

const keptAfter = (ctx: Context, course: Course, id: string, label: string): Plan =>
  keepCourse(course, id, label, ctx);

const replacedAfter = (
  ctx: Context,
  course: Course,
  index: number,
  month: number,
  id: string,
  label: string,
): Plan => laterCourse(course, index, month, id, label, ctx);

const kept = (course: Course): Way => {
  const { id, label } = { id: `${course.id}/keep`, label: `${course.label}, and keep it` };
  return wayOf({ id, side: 'keep', label, treatments: null }, keptAfter, course, id, label);
};

/** The courses that keep it to the end, and those that replace it today. */
export const comparedCourses = (ctx: Context): readonly Way[] => [
  ...COURSES.filter((course) => asked(course, ctx) && courseClosed(course, ctx) === null).map(kept),
  ...goings(ctx).flatMap((going) => goingWays(going, ctx).open.filter(({ side }) => side === 'replace')),
];

/** By inputs, for those facts: what is open depends on both. */
const known = new WeakMap<Inputs, { readonly facts: Facts; readonly ways: Ways }>();

/** The courses of a claim, in the place of the ways of a vehicle that nobody has hit. */
export const claimWays = (ctx: Context): Ways => {
  const before = known.get(ctx.inputs);
  if (before?.facts === ctx.facts) return before.ways;
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  for (const course of COURSES) {
    const { id, label } = course;
    if (!asked(course, ctx)) continue;
    const why = courseClosed(course, ctx);
    if (why) {
      closed.push({ id, label, why });
      continue;
    }
    open.push(kept(course));
    const best = bestLater(course, ctx);
    if (best === null) continue;
    const { index, month } = best;
    const name = ctx.facts.replacementNames[index] as string;
    const later = {
      id: `${id}/later/${replacementIds(ctx.facts.replacementNames)[index]}/${month}`,
      label: `${label}, and get the ${name} after ${months(month)}`,
    };
    const about = { ...later, side: 'later', treatments: null } as const;
    open.push(wayOf(about, replacedAfter, course, index, month, later.id, later.label));
  }
  for (const going of goings(ctx)) {
    const ways = goingWays(going, ctx);
    open.push(...ways.open);
    if (ways.why) closed.push({ id: going.id, label: capital(going.label), why: ways.why });
  }
  const ways = { open, closed };
  known.set(ctx.inputs, { facts: ctx.facts, ways });
  return ways;
};
