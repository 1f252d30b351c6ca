import { splitBill } from '../cashflow/contracts/averageWork.ts';
import { splitOfUnnamed } from '../cashflow/contracts/failures.ts';
import { KINDS, type Sink } from '../cashflow/posting.ts';
import { waysOf } from '../evaluation/options.ts';
import { presentCostOf } from '../evaluation/project.ts';
import { likeOursWays } from '../plans/options/likeOursOption.ts';
import { replacedAt } from '../plans/vehicle/changeOver.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import { nameOf } from '../plans/vehicle/held.ts';
import { LIKE_OURS } from '../plans/vehicle/likeOurs.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import type { Way } from '../plans/vehicle/option.ts';
import { contractsOf } from '../plans/vehicle/recipe.ts';
import { billed, spread, workOf } from '../plans/vehicle/repairs.ts';
import { soldWalking } from '../plans/vehicle/retirement.ts';
import { keepingFrom } from '../policy/course.ts';
import { costAhead, NEVER, type Part, stateOf } from '../policy/part.ts';
import { limitOver } from '../policy/repairLimit.ts';
import { leastOf } from '../quantity/least.ts';
import { LONGEST_HORIZON } from '../quantity/month.ts';
import type { Component } from '../scenario/inputs/inputs.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { type Courses, coursesOf } from '../simulation/keepCourse.ts';
import type { Pair } from '../simulation/optionPair.ts';
import { costOfWork, partsOf } from '../simulation/policyParts.ts';
import { ruleOf } from '../simulation/repairLimitPolicy.ts';
import type { AtHome, ComponentLimit, LimitPoint, WalkAway } from './repairLimitView.ts';

/** The last month a limit is printed for: further ahead nobody keeps a card in the glovebox. */
const LAST_MONTH = 24;

/** Where the two looks differ by more than this share, the limit hangs on how far one looks. */
const MUCH = 0.2;

/** What a repair nobody named is called. */
const ANY_OTHER = 'any repair nobody named';

/** The largest bills worth paying at the end of a month, looking to `until`: each part's, then any other repair's. */
const limitsAt = (month: number, until: number, courses: Courses, parts: readonly Part[]): number[] => {
  const course = courses.looking(month, until, 'then');
  const costs = (part: Part, mended: number): Float64Array =>
    costAhead(part, month, stateOf(part, month, mended), course.weights, until);
  const untouched = parts.map((part) => costs(part, NEVER));
  const keeping = keepingFrom(course, month).map((cost, i) =>
    untouched.reduce((sum, row) => sum + (row[i] as number), cost),
  );
  const limit = (least: number): number => limitOver(course.stoppingBroken[month] as number, least);
  const mended = parts.map((part, j) => {
    const [before, after] = [untouched[j] as Float64Array, costs(part, month)];
    return limit(
      keeping.reduce(
        (least, cost, i) => Math.min(least, cost + (after[i] as number) - (before[i] as number)),
        Number.POSITIVE_INFINITY,
      ),
    );
  });
  return [...mended, limit(Math.min(...keeping))];
};

const differMuch = ({ limit, lookingTwice }: LimitPoint): boolean =>
  lookingTwice !== null && Math.abs(lookingTwice - limit) > MUCH * limit;

type Bills = Pick<ComponentLimit, 'usualBill' | 'badBill' | 'daysCost' | 'atHome'>;

/** Mending a named part at home: its own parts and hours. */
const partAtHome = (part: Component, ctx: Context): AtHome | null =>
  part.hours <= 0
    ? null
    : {
        parts: { fixed: part.parts, ofBill: 0 },
        hours: { fixed: part.hours, ofBill: 0 },
        costs: { fixed: costOfWork({ ...workOf(part), by: 'own', either: 0 }, 0, ctx), ofBill: 0 },
        tow: part.tow,
        days: part.daysWithout,
      };

/** The same of a repair nobody named: all the labour of its bill with own hands, where any is done at home. */
const unnamedAtHome = (ctx: Context): AtHome | null => {
  const { atHome } = ctx.inputs.household;
  if (atHome.share <= 0) return null;
  const { cash, hours } = splitBill(1, { ...atHome, share: 1 }, ctx.work);
  return {
    parts: { fixed: 0, ofBill: cash },
    hours: { fixed: 0, ofBill: hours },
    costs: { fixed: 0, ofBill: cash + hours * ctx.ownHourAt(0) },
    tow: 0,
    days: 0,
  };
};

/** What paying a usual and a bad bill would add today, without the tow. */
const billsOf = (part: Component, ctx: Context): Bills => {
  const costs = (work: ReturnType<typeof workOf>): number => costOfWork({ ...work, either: 0 }, 0, ctx);
  const { parts, hours, shopPrice } = part.bill;
  const varies = parts !== null || hours !== null || shopPrice !== null;
  return {
    usualBill: costs(workOf(part)),
    badBill: varies ? costs(billed(part, 0.9)) : null,
    daysCost: part.daysWithout * ctx.work.dayWithout,
    atHome: partAtHome(part, ctx),
  };
};

const unnamedBills = (ctx: Context): Bills => {
  const { bill } = ctx.inputs.vehicle.averageRepairs;
  const costs = (amount: number): number =>
    splitOfUnnamed(amount, 0, ctx.inputs.household.atHome, ctx.work).counted;
  return {
    usualBill: costs(bill.mean),
    badBill: bill.range === null ? null : costs(bill.mean * spread(bill.range, 0.9)),
    daysCost: 0,
    atHome: unnamedAtHome(ctx),
  };
};

/** Getting another one like ours once ours has broken down today, in the prices of the day. */
const changeToLikeOurs = (
  treatments: Treatments,
  ctx: Context,
): { readonly costs: number; readonly brings: number } => {
  const { changeOver } = replacedAt(LIKE_OURS, 0, treatments, [], soldWalking(0, 'broken', treatments), ctx);
  let [costs, brings] = [0, 0];
  const sink: Sink = {
    post({ category, role }, _month, counted) {
      if (category === 'selling the old one') brings -= counted;
      else if (KINDS[category].once || role === 'bought unseen') costs += counted;
    },
    series: () => undefined,
    time: null,
    stands: null,
  };
  for (const contract of contractsOf(changeOver?.pieces ?? [], ctx)) contract(sink);
  return { costs, brings };
};

/** The two ways the limit stands between: the cheapest of each side at average inputs; null where one is closed. */
const pairOf = (ctx: Context): Pair | null => {
  const { open } = waysOf(ctx);
  const cheapest = (side: Way['side']): Way | null =>
    leastOf(
      open.filter((way) => way.side === side),
      (way) => presentCostOf(way.build(ctx), ctx).counted,
    );
  const [keep, replace] = [cheapest('keep'), cheapest('replace')];
  return keep && replace ? { keep, replace } : null;
};

/**
 * The largest bill worth paying for each component of the present vehicle, for months 0 to 24. Each looks one horizon
 * ahead from its own month, for at a fixed end it would rise or fall only because the end comes nearer; and twice as far,
 * where that is still looked at. The work needed today counts as done the way the best keep way does it: month 0 is right
 * after. Fixed from average inputs and expected failures.
 *
 * @param pair the ways compared; worked out where it is not known yet
 * @returns null where the vehicle cannot be kept or no replacement is open
 */
export const walkAwayOf = (scenario: Scenario, pair?: Pair | null): WalkAway | null => {
  const { inputs, facts } = scenario;
  const today = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const ways = pair === undefined ? pairOf(today) : pair;
  const costs = (way: Way): number => presentCostOf(way.build(today), today).counted;
  const treatments = ways?.keep.treatments ?? null;
  const replacement = ways?.replace.build(today).replacement ?? null;
  if (treatments === null || replacement === null) return null;
  const { horizon } = today;
  const twice = 2 * horizon <= LONGEST_HORIZON;
  const farthest = LAST_MONTH + (twice ? 2 : 1) * horizon;
  const household = { ...inputs.household, lookAhead: farthest };
  const ctx = contextOf({ ...inputs, household }, facts, EXPECTED, 'unrounded');
  const courses = coursesOf(treatments, ctx);
  const parts = partsOf(treatments, ctx);

  const points: LimitPoint[][] = [...parts, null].map(() => []);
  for (let month = 0; month <= LAST_MONTH; month++) {
    const once = limitsAt(month, month + horizon, courses, parts);
    const doubled = twice ? limitsAt(month, month + 2 * horizon, courses, parts) : null;
    points.forEach((list, j) => {
      list.push({ month, limit: once[j] as number, lookingTwice: doubled?.[j] ?? null });
    });
  }
  const limitOf = (j: number, about: Omit<ComponentLimit, 'byMonth' | 'hangsOnHorizon'>): ComponentLimit => {
    const byMonth = points[j] as LimitPoint[];
    return { ...about, byMonth, hangsOnHorizon: byMonth.some(differMuch) };
  };

  const rule = ruleOf(courses, courses.looking(0, horizon, 'then'), parts, treatments, replacement, today);
  const nothing = new Int16Array(parts.length).fill(NEVER);
  const best = Array.from({ length: horizon }, (_, m) => m).findIndex((m) => rule.walksAt(m, nothing));
  const next = courses.nextAt(0, 'broken', horizon) ?? replacement;
  return {
    replacement: nameOf(next, today),
    likeOurs:
      next === LIKE_OURS ? { name: nameOf(next, today), ...changeToLikeOurs(treatments, today) } : null,
    components: [
      ...inputs.vehicle.components.map((part, j) =>
        limitOf(j, {
          component: part.name,
          position: j,
          ...billsOf(part, today),
          unsafe: part.unsafe,
        }),
      ),
      limitOf(parts.length, { component: ANY_OTHER, position: null, ...unnamedBills(today), unsafe: false }),
    ],
    bestMonth: best < 0 ? horizon : best,
    letGoToday:
      best === 0 ||
      (ways !== null &&
        [ways.replace, ...likeOursWays(today).open].some((way) => costs(way) < costs(ways.keep))),
    horizon,
  };
};
