import { waysOf } from '../evaluation/options.ts';
import { presentCostOf } from '../evaluation/project.ts';
import { replaceLaterCurve } from '../evaluation/replacementTiming.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import { type Way, wayOf } from '../plans/vehicle/option.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { laterPlan } from '../plans/vehicle/replaceLaterPlan.ts';
import { leastOf } from '../quantity/least.ts';
import { remember } from '../quantity/remember.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { detailFor } from './cashDetail.ts';
import { type Counted, countedParts } from './failureCounts.ts';
import { type Group, togetherIn } from './futureDrawer.ts';
import { ruleWayOf } from './policyOption.ts';
import { type Rule, ruleFor } from './repairLimitPolicy.ts';
import { type Unknowns, unknownsOf } from './unknowns.ts';

/** What is drawn for: the ways, chosen once at average inputs and held for every future. */
export interface Subject {
  readonly scenario: Scenario;
  readonly unknowns: Unknowns;
  readonly horizon: number;
  /** The open ways, by id. */
  readonly options: readonly Way[];
  /** Positions among the options; null where a side has no open way. */
  readonly keep: number | null;
  readonly replace: number | null;
  /** Which replacement the pair is about; null where none is bought. */
  readonly replacement: number | null;
  /** Replacing on the best date strictly between now and never; null where there is none. */
  readonly fixed: Way | null;
  readonly rule: Rule | null;
  /** How the rule keeps it while it does; null where there is no rule. */
  readonly ruleWay: Way | null;
  /** Position of another one like ours among the options; null where that is not open. */
  readonly like: number | null;
  /**
   * Which of the options the rule takes today; null where it keeps it: at average inputs replacing it now, or getting another
   * like ours, costs no more than keeping it to any later month.
   */
  readonly walksTo: number | null;
  /** What each of the pair takes a month besides lumps, on average and in cash. */
  readonly regular: { readonly keep: number; readonly replace: number };
  /** Put by each month for lumps: as told, or what keeping's come to on average. */
  readonly setAside: number;
  readonly groups: readonly Group[];
  /** By part: where its failures are counted; null for vehicles that are not compared. */
  readonly counted: readonly (Counted | null)[];
}

/** Groups whose shares of the variance are worked out one by one; the rest are one group. */
const MOST_GROUPS = 12;

/** What a way takes in cash every month, on average over months 1..H: besides lumps, and in lumps. */
const monthlyOf = (way: Way, ctx: Context): { readonly regular: number; readonly lumps: number } => {
  const detail = detailFor(ctx.horizon);
  presentCostOf(way.build(ctx), ctx, detail.sink);
  let [cash, lumps] = [0, 0];
  for (let m = 1; m <= ctx.horizon; m++) {
    cash += detail.cash[m] as number;
    lumps += detail.lumps[m] as number;
  }
  return { regular: (cash - lumps) / ctx.horizon, lumps: lumps / ctx.horizon };
};

const NOTHING = { regular: 0, lumps: 0 };

/** Numbers that go together are one group, and all the luck of a part is one. */
const groupsOf = (scenario: Scenario, unknowns: Unknowns): Group[] => {
  const { ranged, turns, parts } = unknowns;
  const leader = ranged.map((_, r) => r);
  const first = (r: number): number => (leader[r] === r ? r : first(leader[r] as number));
  for (const { a, b } of togetherIn(scenario, unknowns)) leader[first(b)] = first(a);
  const numbers = ranged.flatMap((_, r): Group[] => {
    if (first(r) !== r) return [];
    const members = ranged.map((_, i) => i).filter((i) => first(i) === r);
    return [
      {
        what: members.map((i) => ranged[i]?.label ?? '').join(', with '),
        kind: 'number',
        ranged: members,
        turns: [],
        parts: [],
      },
    ];
  });
  const luck = parts.map(({ what }, p): Group => ({ what, kind: 'luck', ranged: [], turns: [], parts: [p] }));
  const chances = turns.map(
    ({ what }, t): Group => ({ what, kind: 'luck', ranged: [], turns: [t], parts: [] }),
  );
  const all = [...numbers, ...chances, ...luck];
  if (all.length <= MOST_GROUPS) return all;
  const rest = all.slice(MOST_GROUPS - 1);
  return [
    ...all.slice(0, MOST_GROUPS - 1),
    {
      what: `everything else (${rest.length} unknowns)`,
      kind: 'luck',
      ranged: rest.flatMap((one) => one.ranged),
      turns: rest.flatMap((one) => one.turns),
      parts: rest.flatMap((one) => one.parts),
    },
  ];
};

/** The cheapest way of a side by these costs; the first of equals. Null where none is open. */
export const cheapestOf = (
  options: readonly Way[],
  costs: readonly number[],
  side: Way['side'],
): number | null =>
  leastOf(
    options.flatMap((way, i) => (way.side === side ? [i] : [])),
    (i) => costs[i] as number,
  );

const replacedIn = (ctx: Context, index: number, month: number): Plan => laterPlan(index, month, ctx);

const prepare = (scenario: Scenario): Subject => {
  const { inputs, facts } = scenario;
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const options = waysOf(ctx).open;
  const plans = options.map((way) => way.build(ctx));
  const costs = plans.map((plan) => presentCostOf(plan, ctx).counted);
  const { pair } = facts.chance;
  const chosen = (side: 'keep' | 'replace'): number | null => {
    const found = options.findIndex(({ id }) => id === pair?.[side]);
    return found >= 0 ? found : cheapestOf(options, costs, side);
  };
  const [keep, replace] = [chosen('keep'), chosen('replace')];
  const replacement = replace === null ? null : (plans[replace]?.replacement ?? null);
  const curve =
    inputs.claim || replacement === null || keep === null ? null : replaceLaterCurve(replacement, ctx);
  const month = curve?.best.month ?? 0;
  const fixed: Way | null =
    replacement !== null && month > 0 && month < ctx.horizon
      ? wayOf(
          {
            id: 'fixed',
            side: 'later',
            label: `Replace it in month ${month}, whatever comes`,
            treatments: null,
          },
          replacedIn,
          replacement,
          month,
        )
      : null;
  const keepWay = keep === null ? null : (options[keep] as Way);
  const ruleWay =
    keepWay?.treatments && replacement !== null
      ? ruleWayOf(keepWay, replacement, fixed ? month : null, ctx)
      : null;
  const unknowns = unknownsOf(scenario);
  const kept = keepWay ? monthlyOf(keepWay, ctx) : NOTHING;
  const keptTo = [
    keep === null ? Number.POSITIVE_INFINITY : (costs[keep] as number),
    ...(curve?.curve.filter((at) => at.month > 0).map((at) => at.netPresentCost) ?? []),
  ];
  const like = cheapestOf(options, costs, 'like');
  const walksTo = leastOf(
    [replace, like].filter((w) => w !== null),
    (w) => costs[w] as number,
  );
  return {
    scenario,
    unknowns,
    horizon: ctx.horizon,
    options,
    keep,
    replace,
    replacement,
    fixed,
    rule:
      ruleWay?.treatments && replacement !== null
        ? ruleFor(inputs, facts, ruleWay.treatments, replacement)
        : null,
    ruleWay,
    like,
    walksTo: walksTo !== null && (costs[walksTo] as number) <= Math.min(...keptTo) ? walksTo : null,
    regular: {
      keep: kept.regular,
      replace: (replace === null ? NOTHING : monthlyOf(options[replace] as Way, ctx)).regular,
    },
    setAside: facts.chance.setAside ?? kept.lumps,
    groups: groupsOf(scenario, unknowns),
    counted: countedParts(
      unknowns.parts,
      keepWay?.treatments ?? null,
      replacement,
      inputs.replacement.length,
    ),
  };
};

/** Everything that is settled before the first future is drawn, from average inputs; of the latest scenario kept. */
export const subjectOf: (scenario: Scenario) => Subject = remember(prepare, ([a], [b]) => a === b, 1);
