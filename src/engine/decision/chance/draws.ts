import type { Scenario } from '../../scenario/scenario.ts';
import { type Context, contextOf } from '../context.ts';
import { presentCostOf } from '../project.ts';
import { walkPlan } from '../ways/walk.ts';
import type { Way } from '../ways/way.ts';
import { type Detail, detailFor } from './detail.ts';
import { failsWithinMonths, failuresOf } from './failureCounts.ts';
import { followRule } from './followRule.ts';
import { type Drawer, drawerOf, type Group } from './futures.ts';
import { type JointInputs, jointInputs } from './jointInputs.ts';
import { type Subject, subjectOf } from './subject.ts';

export { SCRAMBLES } from '../../scenario/scenario.ts';

/** Points of one scramble, from `from` up to and not including `to`. */
export interface DrawSetting {
  readonly seed: number;
  readonly scramble: number;
  readonly from: number;
  readonly to: number;
}

/** What is kept of one way's money in each future; arrays by draw. Cash in currency units. */
export interface DetailDraws {
  readonly worstMonth: Float64Array;
  readonly worstYear: Float64Array;
  /** The largest single repair bill within two years; 0 for none. */
  readonly worstBill: Float64Array;
  /** Cash paid out by the end of each fan month; fan months in a row for each draw. */
  readonly fan: Float32Array;
  /** The fund to start with so that it never runs dry. */
  readonly needed: Float64Array;
  /** Month in which the fund of savings first runs dry; 0: never, or savings are not known. */
  readonly dryIn: Int16Array;
  /** 1 where the fund does not last through months without income. */
  readonly incomeDry: Uint8Array;
  readonly stopsFirstYear: Float32Array;
  readonly stops: Float32Array;
  readonly days: Float32Array;
}

/** What one run of draws of one scramble gives: plain arrays, by draw. */
export interface ScrambleDraws extends DrawSetting {
  /** Present cost of each option, then of the best fixed date and of the rule where there are such. */
  readonly costs: readonly Float64Array[];
  /** Details of the best keep, the best replace and the rule; null where there is none. */
  readonly details: readonly (DetailDraws | null)[];
  /** Month in which the rule walked away; 0: never, -1: today, before the work is done. */
  readonly walkedIn: Int16Array;
  /** The place of each ranged number in its range. */
  readonly ranged: readonly Float64Array[];
  /** In (0, 1): how each chance turned out, lower for what comes true; by turn. */
  readonly turns: readonly Float64Array[];
  /** How long each part's luck lets it live at first: grows with the life of the part that is in. By part. */
  readonly firstFailure: readonly Float64Array[];
  /** Failures of each part up to the horizon, within the pair; by part. */
  readonly failures: readonly Float64Array[];
  /** 1 where the event of a look happens; by look. */
  readonly events: readonly Uint8Array[];
  /** D of the pair at a few draws, at their other draws, and with each group taken from the other. */
  readonly mixed: {
    readonly own: Float64Array;
    readonly other: Float64Array;
    readonly groups: readonly Float64Array[];
  };
}

/** Months at whose end the fan is looked at: about ten of them, the horizon the last. */
export const fanMonths = (horizon: number): number[] => {
  const step = Math.max(1, Math.round(horizon / 10));
  const months: number[] = [];
  for (let m = 0; m < horizon; m += step) months.push(m);
  return [...months, horizon];
};

/** One in so many draws is also mixed with another, for the shares of the variance. */
const MIXED = 32;

/** From when on months without income are looked at: the first year has gone well. */
const FIRST_YEAR = 12;

const detailDraws = (n: number, fan: number): DetailDraws => ({
  worstMonth: new Float64Array(n),
  worstYear: new Float64Array(n),
  worstBill: new Float64Array(n),
  fan: new Float32Array(n * fan),
  needed: new Float64Array(n),
  dryIn: new Int16Array(n),
  incomeDry: new Uint8Array(n),
  stopsFirstYear: new Float32Array(n),
  stops: new Float32Array(n),
  days: new Float32Array(n),
});

/** The household's side of a fund: what it starts with, what goes in, what a month costs above keeping. */
interface Fund {
  readonly savings: number | null;
  readonly setAside: number;
  readonly monthsWithoutIncome: number;
}

/** Writes what one way's detail of one draw says. `regularAt`: what the way takes a month besides lumps. */
const record = (
  into: DetailDraws,
  i: number,
  detail: Detail,
  regularAt: (month: number) => number,
  keepRegular: number,
  fund: Fund,
  fan: readonly number[],
): void => {
  const { cash, lumps } = detail;
  const H = cash.length - 1;
  let worstMonth = 0;
  let worstYear = 0;
  let running = 0;
  let paid = cash[0] as number;
  let next = 0;
  if (fan[next] === 0) into.fan[i * fan.length + next++] = paid;
  let level = 0;
  let lowest = 0;
  let dryIn = 0;
  const start = fund.savings === null ? null : fund.savings - (cash[0] as number);
  let stops = 0;
  let days = 0;
  for (let m = 1; m <= H; m++) {
    const out = cash[m] as number;
    if (out > worstMonth) worstMonth = out;
    running += out - (m > 12 ? (cash[m - 12] as number) : 0);
    if (running > worstYear) worstYear = running;
    paid += out;
    if (fan[next] === m) into.fan[i * fan.length + next++] = paid;
    level += fund.setAside - (regularAt(m) - keepRegular) - (lumps[m] as number);
    if (level < lowest) lowest = level;
    if (start !== null && dryIn === 0 && start + level < 0) dryIn = m;
    if (m === Math.min(FIRST_YEAR, H)) {
      const mustPay = fund.monthsWithoutIncome * regularAt(m);
      into.incomeDry[i] = start !== null && start + level < mustPay ? 1 : 0;
      into.stopsFirstYear[i] = stops + (detail.stops[m] as number);
    }
    stops += detail.stops[m] as number;
    days += detail.days[m] as number;
  }
  into.worstMonth[i] = worstMonth;
  into.worstYear[i] = worstYear;
  into.worstBill[i] = detail.worst.bill;
  into.needed[i] = -lowest;
  into.dryIn[i] = dryIn;
  into.stops[i] = stops;
  into.days[i] = days;
};

/** D of the pair at a draw, with a group from the other draw. */
const differenceAt = (
  subject: Subject,
  drawer: Drawer,
  joint: JointInputs,
  draw: number,
  group: Group | 'all',
): number => {
  if (subject.keep === null || subject.replace === null) return 0;
  drawer.moveTo(draw, group);
  joint.setTo(drawer.ranged);
  const ctx = contextOf(joint.inputs, subject.scenario.facts, drawer.future, 'unrounded');
  const cost = (way: Way): number => presentCostOf(way.build(ctx), ctx).counted;
  return cost(subject.options[subject.replace] as Way) - cost(subject.options[subject.keep] as Way);
};

/** Draws futures for a subject that is prepared already, unless told otherwise from scrambled points. */
export const drawFutures = (
  subject: Subject,
  setting: DrawSetting,
  drawer = drawerOf(subject.scenario, subject.unknowns, setting.seed, setting.scramble),
): ScrambleDraws => {
  const { scenario, unknowns, options, fixed, rule, ruleWay, horizon } = subject;
  const { from, to } = setting;
  const n = to - from;
  const joint = jointInputs(scenario.inputs, unknowns.ranged);
  const { facts } = scenario;
  const fan = fanMonths(horizon);
  const ways = [...options, ...(fixed ? [fixed] : [])];
  const costs = Array.from({ length: ways.length + (rule ? 1 : 0) }, () => new Float64Array(n));
  const has = [subject.keep !== null, subject.replace !== null, rule !== null];
  const details = has.map((there) => (there ? detailDraws(n, fan.length) : null));
  const [keepDetail, replaceDetail, ruleDetail] = [0, 1, 2].map(() => detailFor(horizon)) as [
    Detail,
    Detail,
    Detail,
  ];
  const walkedIn = new Int16Array(n);
  const ranged = unknowns.ranged.map(() => new Float64Array(n));
  const turns = unknowns.turns.map(() => new Float64Array(n));
  const firstFailure = unknowns.parts.map(() => new Float64Array(n));
  const failures = unknowns.parts.map(() => new Float64Array(n));
  const putBy = {
    setAside: subject.setAside,
    monthsWithoutIncome: facts.chance.monthsWithoutIncome,
  };
  const { regular } = subject;
  const events = facts.chance.looks.map(() => new Uint8Array(n));
  const looked = facts.chance.looks.map(({ component }) =>
    subject.counted.find((one) => one?.part.vehicle === 'vehicle' && one.part.component === component),
  );
  const keepRegular = regular.keep;
  const mixedOwn: number[] = [];
  const mixedOther: number[] = [];
  const mixedGroups = subject.groups.map((): number[] => []);
  for (let i = 0; i < n; i++) {
    drawer.moveTo(from + i, null);
    joint.setTo(drawer.ranged);
    const ctx: Context = contextOf(joint.inputs, facts, drawer.future, 'unrounded');
    // Savings may be a range too.
    const fund: Fund = { ...putBy, savings: joint.inputs.household.savings };
    for (let r = 0; r < ranged.length; r++) (ranged[r] as Float64Array)[i] = drawer.ranged[r] as number;
    ways.forEach((way, w) => {
      const detail = w === subject.keep ? keepDetail : w === subject.replace ? replaceDetail : null;
      detail?.clear();
      (costs[w] as Float64Array)[i] = presentCostOf(way.build(ctx), ctx, detail?.sink).counted;
    });
    if (details[0]) record(details[0], i, keepDetail, () => regular.keep, keepRegular, fund, fan);
    if (details[1]) record(details[1], i, replaceDetail, () => regular.replace, keepRegular, fund, fan);
    unknowns.turns.forEach(({ key }, t) => {
      (turns[t] as Float64Array)[i] = drawer.future.turnsOut(key);
    });
    unknowns.parts.forEach(({ vehicle, component }, p) => {
      const luck = drawer.future.luckOf(vehicle, component);
      (firstFailure[p] as Float64Array)[i] = luck.exponential(0);
    });
    if (rule && ruleWay && details[2] && subject.keep !== null && subject.replacement !== null) {
      const treatments = ruleWay.treatments ?? [];
      const walk = subject.walksToday ? null : followRule(rule, treatments, ctx);
      const w = costs.length - 1;
      walkedIn[i] = subject.walksToday ? -1 : (walk?.month ?? 0);
      if (subject.walksToday && subject.replace !== null) {
        (costs[w] as Float64Array)[i] = (costs[subject.replace] as Float64Array)[i] as number;
        record(details[2], i, replaceDetail, () => regular.replace, keepRegular, fund, fan);
      } else if (walk === null && ruleWay === options[subject.keep]) {
        (costs[w] as Float64Array)[i] = (costs[subject.keep] as Float64Array)[i] as number;
        record(details[2], i, keepDetail, () => regular.keep, keepRegular, fund, fan);
      } else if (walk === null) {
        ruleDetail.clear();
        (costs[w] as Float64Array)[i] = presentCostOf(ruleWay.build(ctx), ctx, ruleDetail.sink).counted;
        record(details[2], i, ruleDetail, () => regular.keep, keepRegular, fund, fan);
      } else {
        const at: Context =
          walk.how === 'broken' ? { ...ctx, future: { ...drawer.future, givenUpIn: walk.month } } : ctx;
        const plan = walkPlan(subject.replacement, walk.month, walk.how, treatments, at);
        ruleDetail.clear();
        (costs[w] as Float64Array)[i] = presentCostOf(plan, at, ruleDetail.sink).counted;
        const regularAt = (m: number): number => (m <= walk.month ? regular.keep : regular.replace);
        record(details[2], i, ruleDetail, regularAt, keepRegular, fund, fan);
      }
    }
    subject.counted.forEach((counted, p) => {
      if (counted) (failures[p] as Float64Array)[i] = failuresOf(counted, ctx);
    });
    facts.chance.looks.forEach(({ within }, l) => {
      const counted = looked[l];
      if (counted && failsWithinMonths(counted, within, ctx)) (events[l] as Uint8Array)[i] = 1;
    });
    if ((from + i) % MIXED === 0 && subject.keep !== null && subject.replace !== null) {
      const cost = (w: number): number => (costs[w] as Float64Array)[i] as number;
      mixedOwn.push(cost(subject.replace) - cost(subject.keep));
      mixedOther.push(differenceAt(subject, drawer, joint, from + i, 'all'));
      subject.groups.forEach((group, g) => {
        mixedGroups[g]?.push(differenceAt(subject, drawer, joint, from + i, group));
      });
    }
  }
  return {
    ...setting,
    costs,
    details,
    walkedIn,
    ranged,
    turns,
    firstFailure,
    failures,
    events,
    mixed: {
      own: Float64Array.from(mixedOwn),
      other: Float64Array.from(mixedOther),
      groups: mixedGroups.map((all) => Float64Array.from(all)),
    },
  };
};

let latest: Subject | null = null;

/** Draws futures of one scramble of a scenario. What is settled beforehand is kept for the next scramble of it. */
export const simulateScramble = (scenario: Scenario, setting: DrawSetting): ScrambleDraws => {
  latest = latest?.scenario === scenario ? latest : subjectOf(scenario);
  return drawFutures(latest, setting);
};
