import { average, meanOf, quantilesOf, shareOf } from '../chance/estimates.ts';
import { perfectInformation } from '../chance/information.ts';
import { varianceShares } from '../chance/varianceShares.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import type { ScrambleDraws } from '../simulation/draws.ts';
import { expectedOf } from '../simulation/failureCounts.ts';
import { RULE } from '../simulation/policyOption.ts';
import { type Subject, subjectOf } from '../simulation/studyDesign.ts';
import type {
  Chances,
  CostSpread,
  FailuresCheck,
  RuleChances,
  VarianceShare,
  WayChances,
} from './chances.ts';
import { type Gather, gatherer, minus } from './columns.ts';
import { lumpyWays } from './cushion.ts';
import { pairMoved, pairOf } from './pairChances.ts';
import { looksOf, partName, worthKnowing } from './valueOfInformation.ts';

/** What is known of the decision at average inputs that the drawn futures are set beside. */
export interface AtAverage {
  /** The ledger's D in currency units. */
  readonly difference: number;
  /** What is no difference, in currency units. */
  readonly grain: number;
  /** A month's payment for the best replacement; null where it is bought without one. */
  readonly payment: number | null;
  /** Guesses and table values that matter and have no range. */
  readonly exactGuesses: number;
}

/** The least cost of each draw among the options. */
const leastOf = (costs: readonly Float64Array[]): Float64Array => {
  const [first = new Float64Array(0), ...others] = costs;
  const least = Float64Array.from(first);
  for (const cost of others)
    for (let i = 0; i < least.length; i++)
      if ((cost[i] as number) < (least[i] as number)) least[i] = cost[i] as number;
  return least;
};

const spreadOf = (cost: Float64Array, scrambles: number): CostSpread => {
  const [good, middle, bad] = quantilesOf(cost, [0.1, 0.5, 0.9], scrambles);
  const mean = meanOf(cost, scrambles);
  return { mean, good: good ?? mean, middle: middle ?? mean, bad: bad ?? mean };
};

const wayOf = (
  id: string,
  label: string,
  cost: Float64Array,
  least: Float64Array,
  scrambles: number,
): WayChances => {
  const above = minus(cost, least);
  return {
    id,
    label,
    cost: spreadOf(cost, scrambles),
    regret: meanOf(above, scrambles),
    cheapest: shareOf(above, (x) => x <= 0, scrambles),
  };
};

const sharesOf = (subject: Subject, gather: Gather, scrambles: number): VarianceShare[] => {
  if (subject.keep === null || subject.replace === null) return [];
  const own = gather(({ mixed }) => mixed.own);
  const other = gather(({ mixed }) => mixed.other);
  return subject.groups
    .map(({ what, kind }, g) => ({
      what,
      kind,
      ...varianceShares(
        own,
        other,
        gather(({ mixed }) => mixed.groups[g] ?? []),
        scrambles,
      ),
    }))
    .sort((a, b) => b.total.value - a.total.value);
};

/** Of sixteen scrambles' spread the error itself is known only roughly; so far off by chance is one in a thousand. */
const MOST_ERRORS = 4;

/** What the machine's own digits leave open. */
const TINY = 1e-9;

const failuresCheck = (subject: Subject, draws: readonly ScrambleDraws[], ctx: Context): FailuresCheck[] =>
  subject.counted.flatMap((counted, p): FailuresCheck[] => {
    if (counted === null) return [];
    const atAverage = expectedOf(counted, ctx);
    const drawn = Float64Array.from(draws, ({ failures }) => average(failures[p] ?? []));
    // What is expected at average inputs is not what is expected on average, for lives end by no straight line.
    const apart = drawn.map((count, s) => {
      const there = draws[s]?.expected[p] ?? [];
      return count - (there.length > 0 ? average(there) : atAverage);
    });
    const off = meanOf(apart, draws.length);
    return [
      {
        component: counted.part.component < 0 ? 'repairs nobody can name' : partName(subject, p),
        vehicle: counted.part.vehicleName,
        expected: atAverage,
        drawn: meanOf(drawn, draws.length),
        apart: off,
        agree: Math.abs(off.value) <= MOST_ERRORS * off.error + TINY,
      },
    ];
  });

const ruleOf = (
  subject: Subject,
  costs: readonly Float64Array[],
  least: Float64Array,
  gather: Gather,
  scrambles: number,
): RuleChances | null => {
  const { rule, fixed, options, keep, replace, like, horizon } = subject;
  if (rule === null || keep === null || replace === null) return null;
  const own = costs[costs.length - 1] as Float64Array;
  const against = [keep, replace, ...(like === null ? [] : [like]), ...(fixed ? [options.length] : [])];
  const walkedIn = gather((one) => one.walkedIn);
  return {
    today: subject.walksTo !== null,
    way: wayOf(RULE.id, RULE.label, own, least, scrambles),
    against: against.map((w) => {
      const way = w === options.length ? fixed : options[w];
      return {
        id: way?.id ?? '',
        label: way?.label ?? '',
        saves: meanOf(minus(costs[w] as Float64Array, own), scrambles),
      };
    }),
    walkedBy: [...new Set([12, 24, horizon].filter((month) => month <= horizon))].map((month) => ({
      month,
      chance: shareOf(walkedIn, (m) => m !== 0 && m <= month, scrambles),
    })),
  };
};

/** Everything the drawn futures say, from whole scrambles in order. */
export const chancesOf = (
  scenario: Scenario,
  draws: readonly ScrambleDraws[],
  average: AtAverage,
  subject: Subject = subjectOf(scenario),
): Chances => {
  const scrambles = draws.length;
  const gather = gatherer(draws);
  const { options, fixed, unknowns } = subject;
  const ways = draws[0]?.costs.map((_, w) => gather((one) => one.costs[w] ?? [])) ?? [];
  // The rule is no way among others: it is set beside them.
  const costs = ways.slice(0, options.length + (fixed ? 1 : 0));
  const least = leastOf(costs);
  const ctx = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
  const seed = draws[0]?.seed ?? scenario.facts.chance.seed;
  return {
    seed,
    futures: least.length,
    scrambles,
    ranged: unknowns.ranged,
    exactGuesses: average.exactGuesses,
    pair: pairOf(subject, costs, average.difference, average.grain, scrambles),
    ways: costs.map((cost, w) => {
      const way = options[w] ?? fixed;
      return wayOf(way?.id ?? '', way?.label ?? '', cost, least, scrambles);
    }),
    shares: sharesOf(subject, gather, scrambles),
    failures: failuresCheck(subject, draws, ctx),
    lumpy: lumpyWays(subject, draws, average.payment),
    perfect: perfectInformation(costs, scrambles),
    worthKnowing: worthKnowing(subject, costs, gather, scrambles, seed),
    looks: looksOf(subject, costs, draws, gather, scrambles),
    rule: ruleOf(subject, ways, least, gather, scrambles),
  };
};

/**
 * The scenario to draw anew for, where another way of a side turned out cheaper on average than the one that is best at
 * average inputs; null where the draws stand.
 */
export const drawnForOthers = (scenario: Scenario, draws: readonly ScrambleDraws[]): Scenario | null => {
  const subject = subjectOf(scenario);
  const gather = gatherer(draws);
  return pairMoved(
    subject,
    subject.options.map((_, w) => gather((one) => one.costs[w] ?? [])),
  );
};

/** The chance that keeping is cheaper is printed in hundredths: an error below half of one settles it. */
const SETTLED = 0.005;

/** The printed digits are settled: more futures would not change them. */
export const settled = (scenario: Scenario, draws: readonly ScrambleDraws[]): boolean => {
  const subject = subjectOf(scenario);
  const { keep, replace } = subject;
  if (keep === null || replace === null) return true;
  const gather = gatherer(draws);
  const ahead = minus(
    gather((one) => one.costs[replace] ?? []),
    gather((one) => one.costs[keep] ?? []),
  ).map((d) => (d > 0 ? 1 : d < 0 ? 0 : 0.5));
  return meanOf(ahead, draws.length).error <= SETTLED;
};
