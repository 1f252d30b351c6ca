import { type Context, contextOf, inFuture } from '../plans/vehicle/context.ts';
import type { Way } from '../plans/vehicle/option.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { type Detail, detailFor } from './cashDetail.ts';
import { type DetailDraws, detailDraws, type Fund, fanMonths, record, recordAlike } from './cashDraws.ts';
import { type Counted, drawnOf, expectedOf, failsWithinMonths } from './failureCounts.ts';
import { followRule } from './followRule.ts';
import type { Drawer, Group } from './futureDrawer.ts';
import { type Study, studyFor, studyOf } from './study.ts';
import { type Subject, subjectOf } from './studyDesign.ts';

export { SCRAMBLES } from '../scenario/inputs/scenario.ts';

/** Points of one scramble, from `from` up to and not including `to`. */
export interface DrawSetting {
  readonly seed: number;
  readonly scramble: number;
  readonly from: number;
  readonly to: number;
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
  /** How each chance turned out, 1 for what came true; in (0, 1), lower for sooner, where it is about when. By turn. */
  readonly turns: readonly Float64Array[];
  /** How long each part's luck lets it live at first: grows with the life of the part that is in. By part. */
  readonly firstFailure: readonly Float64Array[];
  /** Failures of each part up to the horizon, within the pair; by part. */
  readonly failures: readonly Float64Array[];
  /** How many are expected at the inputs of these draws, or of a few of them; nothing where no input moves. By part. */
  readonly expected: readonly Float64Array[];
  /** 1 where the event of a look happens; by look. */
  readonly events: readonly Uint8Array[];
  /** D of the pair at a few draws, at their other draws, and with each group taken from the other. */
  readonly mixed: {
    readonly own: Float64Array;
    readonly other: Float64Array;
    readonly groups: readonly Float64Array[];
  };
}

/** One in so many draws is also mixed with another, for the shares of the variance. */
const MIXED = 32;

/** At one in so many it is asked how often each part is expected to fail there: a renewal equation each. */
const CHECKED = 128;

/** Which of the details is which. */
const [KEEP, REPLACE, RULE] = [0, 1, 2] as const;

/** What one run of draws fills future by future. */
interface Run extends Study {
  readonly fan: readonly number[];
  /** Where the event of a look is seen; undefined where the component is not kept. By look. */
  readonly looked: readonly (Counted | null | undefined)[];
  /** Of the best keep, the best replace and the rule, filled anew for each future. */
  readonly scratch: readonly Detail[];
  readonly out: Omit<ScrambleDraws, keyof DrawSetting | 'mixed' | 'expected'>;
  readonly expected: readonly number[][];
  readonly mixed: {
    readonly own: number[];
    readonly other: number[];
    readonly groups: readonly number[][];
  };
}

const columns = <T>(of: readonly T[], n: number): Float64Array[] => of.map(() => new Float64Array(n));

const runOf = (study: Study, n: number): Run => {
  const { subject, ways } = study;
  const { scenario, unknowns, rule, horizon } = subject;
  const { looks } = scenario.facts.chance;
  const fan = fanMonths(horizon);
  const has = [subject.keep !== null, subject.replace !== null, rule !== null];
  return {
    ...study,
    fan,
    looked: looks.map(({ component }) =>
      subject.counted.find((one) => one?.part.vehicle === 'vehicle' && one.part.component === component),
    ),
    scratch: has.map(() => detailFor(horizon)),
    out: {
      costs: columns([...ways, ...(rule ? [rule] : [])], n),
      details: has.map((there) => (there ? detailDraws(n, fan.length) : null)),
      walkedIn: new Int16Array(n),
      ranged: columns(unknowns.ranged, n),
      turns: columns(unknowns.turns, n),
      firstFailure: columns(unknowns.parts, n),
      failures: columns(unknowns.parts, n),
      events: looks.map(() => new Uint8Array(n)),
    },
    expected: unknowns.parts.map(() => []),
    mixed: { own: [], other: [], groups: subject.groups.map(() => []) },
  };
};

/** Moves to a draw, a group of it taken from the other draw of the same number. */
const contextAt = ({ subject, drawer, joint }: Run, draw: number, group: Group | 'all' | null): Context => {
  const future = drawer.moveTo(draw, group);
  joint.setTo(drawer.ranged);
  return contextOf(joint.inputs, subject.scenario.facts, future, 'unrounded');
};

/** What is kept of the unknowns themselves: where they lie, how they turned out, what failed. */
const drawUnknowns = (run: Run, i: number, ctx: Context): void => {
  const { drawer, subject, out, looked } = run;
  const { ranged, turns, parts } = subject.unknowns;
  const { future } = ctx;
  if (future.kind !== 'drawn') return;
  for (let r = 0; r < ranged.length; r++) (out.ranged[r] as Float64Array)[i] = drawer.ranged[r] as number;
  turns.forEach(({ key, chance }, t) => {
    const lies = future.turnsOut(key);
    (out.turns[t] as Float64Array)[i] = chance === null ? lies : lies < chance(ctx.inputs) ? 1 : 0;
  });
  parts.forEach(({ vehicle, component }, p) => {
    (out.firstFailure[p] as Float64Array)[i] = future.luckOf(vehicle, component).exponential(0);
  });
  subject.counted.forEach((counted, p) => {
    if (counted) (out.failures[p] as Float64Array)[i] = drawnOf(counted, ctx);
  });
  ctx.facts.chance.looks.forEach(({ within }, l) => {
    const counted = looked[l];
    if (counted && failsWithinMonths(counted, within, ctx)) (out.events[l] as Uint8Array)[i] = 1;
  });
};

/** What a way costs; its details go into one of the three. */
const costOf = ({ tape, scratch, same }: Run, way: Way, which: 0 | 1 | 2 | null, ctx: Context): number => {
  const compiled = tape.planOf(way, ctx);
  if (which === null) return tape.costOf(compiled, ctx).counted;
  const detail = scratch[which] as Detail;
  detail.startFrom(same(compiled));
  return tape.costOf(compiled, ctx, detail.sink).counted;
};

/** What one of the three costs by month goes into its own draws. */
const note = (run: Run, i: number, which: 0 | 1 | 2, kept: number, ctx: Context): void => {
  const draws = run.out.details[which];
  if (!draws) return;
  const { subject } = run;
  const fund: Fund = {
    // Savings may be a range too.
    savings: ctx.inputs.household.savings,
    setAside: subject.setAside,
    monthsWithoutIncome: ctx.facts.chance.monthsWithoutIncome,
    regular: subject.regular,
  };
  record(draws, i, run.scratch[which] as Detail, kept, fund, run.fan);
};

/** The rule comes to the same as keeping, or as replacing, in this draw. */
const noteRuleAs = (run: Run, i: number, which: 0 | 1): void => {
  const { details } = run.out;
  const [rule, same] = [details[RULE], details[which]];
  if (rule && same) recordAlike(rule, same, i, run.fan.length);
};

const drawWays = (run: Run, i: number, ctx: Context): void => {
  const { keep, replace, horizon } = run.subject;
  run.ways.forEach((way, w) => {
    const which = w === keep ? KEEP : w === replace ? REPLACE : null;
    (run.out.costs[w] as Float64Array)[i] = costOf(run, way, which, ctx);
  });
  note(run, i, KEEP, horizon, ctx);
  note(run, i, REPLACE, 0, ctx);
};

/** Follows the rule, which costs what keeping or replacing costs where it comes to the same. */
const drawRule = (run: Run, i: number, ctx: Context): void => {
  const { subject, drawer, out } = run;
  const { rule, ruleWay, keep, replace, replacement, horizon, options } = subject;
  if (!rule || !ruleWay || keep === null || replacement === null) return;
  const cost = out.costs[run.ways.length] as Float64Array;
  const { walksTo } = subject;
  if (walksTo !== null) {
    out.walkedIn[i] = -1;
    cost[i] = (out.costs[walksTo] as Float64Array)[i] as number;
    if (walksTo === replace) noteRuleAs(run, i, REPLACE);
    else {
      costOf(run, options[walksTo] as Way, RULE, ctx);
      note(run, i, RULE, 0, ctx);
    }
    return;
  }
  const treatments = ruleWay.treatments ?? [];
  const walk = followRule(rule, treatments, ctx);
  if (walk !== null) {
    const { month, how } = walk;
    out.walkedIn[i] = month;
    const at: Context = how === 'broken' ? inFuture(drawer.givenUp(month), ctx) : ctx;
    const walking = run.walking(month, how);
    if (walking) cost[i] = costOf(run, walking, RULE, at);
    note(run, i, RULE, month, ctx);
  } else if (ruleWay === options[keep]) {
    cost[i] = (out.costs[keep] as Float64Array)[i] as number;
    noteRuleAs(run, i, KEEP);
  } else {
    cost[i] = costOf(run, ruleWay, RULE, ctx);
    note(run, i, RULE, horizon, ctx);
  }
};

/** How many failures are expected at this draw's inputs; a renewal equation is solved at a few draws alone. */
const noteExpected = (run: Run, few: boolean, ctx: Context): void => {
  if (run.joint.moved.length === 0) return;
  run.subject.counted.forEach((counted, p) => {
    if (counted && (few || counted.part.component < 0)) run.expected[p]?.push(expectedOf(counted, ctx));
  });
};

/** D of the pair at a draw, at its other draw, and with each group from the other. Moves the drawer. */
const drawMixed = (run: Run, i: number, draw: number): void => {
  const { subject, out, mixed } = run;
  const { keep, replace, options, groups } = subject;
  if (keep === null || replace === null) return;
  const drawn = (w: number): number => (out.costs[w] as Float64Array)[i] as number;
  const differenceAt = (group: Group | 'all'): number => {
    const ctx = contextAt(run, draw, group);
    const cost = (w: number): number => costOf(run, options[w] as Way, null, ctx);
    return cost(replace) - cost(keep);
  };
  mixed.own.push(drawn(replace) - drawn(keep));
  mixed.other.push(differenceAt('all'));
  groups.forEach((group, g) => {
    mixed.groups[g]?.push(differenceAt(group));
  });
};

const drawOne = (run: Run, i: number, draw: number): void => {
  const ctx = contextAt(run, draw, null);
  drawWays(run, i, ctx);
  drawRule(run, i, ctx);
  drawUnknowns(run, i, ctx);
  noteExpected(run, draw % CHECKED === 0, ctx);
  if (draw % MIXED === 0) drawMixed(run, i, draw);
};

/** Draws futures for a subject that is prepared already, unless told otherwise from scrambled points. */
export const drawFutures = (subject: Subject, setting: DrawSetting, drawer?: Drawer): ScrambleDraws => {
  const { seed, scramble, from, to } = setting;
  const run = runOf(drawer ? studyOf(subject, drawer) : studyFor(subject), to - from);
  run.drawer.restart(seed, scramble);
  for (let i = 0; i < to - from; i++) drawOne(run, i, from + i);
  const { own, other, groups } = run.mixed;
  return {
    ...setting,
    ...run.out,
    expected: run.expected.map((all) => Float64Array.from(all)),
    mixed: {
      own: Float64Array.from(own),
      other: Float64Array.from(other),
      groups: groups.map((all) => Float64Array.from(all)),
    },
  };
};

/** Draws futures of one scramble of a scenario. What is settled beforehand is kept for the next scramble of it. */
export const simulateScramble = (scenario: Scenario, setting: DrawSetting): ScrambleDraws =>
  drawFutures(subjectOf(scenario), setting);
