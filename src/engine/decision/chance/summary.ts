import { type Estimate, meanOf, quantileOf, shareOf } from '../../chance/estimates.ts';
import { partialInformation, perfectInformation, testInformation } from '../../chance/information.ts';
import { varianceShares } from '../../chance/varianceShares.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { type Context, contextOf, EXPECTED } from '../context.ts';
import type {
  Bar,
  Chances,
  FailuresCheck,
  LookWorth,
  PairChances,
  RuleChances,
  VarianceShare,
  WayChances,
  WorthKnowing,
} from './chances.ts';
import type { ScrambleDraws } from './draws.ts';
import { failuresOf } from './failureCounts.ts';
import { lumpyWays } from './lumpy.ts';
import { type Subject, subjectOf } from './subject.ts';

/** What is known of the decision at average inputs that the drawn futures are set beside. */
export interface AtAverage {
  /** The ledger's D in currency units. */
  readonly difference: number;
  /** A month's payment for the best replacement; null where it is bought without one. */
  readonly payment: number | null;
  /** Guesses and table values that matter and have no range. */
  readonly exactGuesses: number;
}

/** A column of all draws, scramble after scramble. */
type Gather = (of: (one: ScrambleDraws) => ArrayLike<number>) => Float64Array;

const gatherer =
  (draws: readonly ScrambleDraws[]): Gather =>
  (of) => {
    const columns = draws.map(of);
    const all = new Float64Array(columns.reduce((sum, column) => sum + column.length, 0));
    let at = 0;
    for (const column of columns) {
      all.set(column, at);
      at += column.length;
    }
    return all;
  };

/** The least cost of each draw among the options. */
const leastOf = (costs: readonly Float64Array[]): Float64Array => {
  const [first = new Float64Array(0), ...others] = costs;
  const least = Float64Array.from(first);
  for (const cost of others)
    for (let i = 0; i < least.length; i++)
      if ((cost[i] as number) < (least[i] as number)) least[i] = cost[i] as number;
  return least;
};

const minus = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((value, i) => value - (b[i] as number));

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
    cost: {
      mean: meanOf(cost, scrambles),
      good: quantileOf(cost, 0.1, scrambles),
      middle: quantileOf(cost, 0.5, scrambles),
      bad: quantileOf(cost, 0.9, scrambles),
    },
    regret: meanOf(above, scrambles),
    cheapest: shareOf(above, (x) => x <= 0, scrambles),
  };
};

/** About so many bars between the ends of the density. */
const BARS = 30;

/** Bars of equal width between the 0.5 and 99.5 % points, an edge at nil where it lies within. */
const barsOf = (values: Float64Array, low: number, high: number): Bar[] => {
  if (!(high > low)) return [];
  const width = (high - low) / BARS;
  const from = low < 0 && high > 0 ? Math.floor(low / width) * width : low;
  const counts = new Array<number>(Math.ceil((high - from) / width - 1e-9)).fill(0);
  for (const value of values) {
    const at = Math.floor((value - from) / width);
    if (at >= 0 && at < counts.length) counts[at] = (counts[at] as number) + 1;
  }
  return counts.map((count, i) => ({
    from: from + i * width,
    to: from + (i + 1) * width,
    share: count / values.length,
  }));
};

const pairOf = (
  subject: Subject,
  costs: readonly Float64Array[],
  average: AtAverage,
  scrambles: number,
): PairChances | null => {
  const { keep, replace, options } = subject;
  if (keep === null || replace === null) return null;
  const D = minus(costs[replace] as Float64Array, costs[keep] as Float64Array);
  // Where the two cost the same to the last digit neither is ahead: half of such futures go to each.
  const half = D.map((d) => (d > 0 ? 1 : d < 0 ? 0 : 0.5));
  const mean = meanOf(D, scrambles);
  const keepCheaper = meanOf(half, scrambles);
  const sides = [
    [mean.value, mean.error],
    [keepCheaper.value - 0.5, keepCheaper.error],
  ] as const;
  const ahead = sides.map(([value, error]) => (Math.abs(value) <= 2 * error ? 0 : Math.sign(value)));
  return {
    keep: options[keep]?.id ?? '',
    replace: options[replace]?.id ?? '',
    keepCheaper,
    mean,
    low: quantileOf(D, 0.1, scrambles),
    middle: quantileOf(D, 0.5, scrambles),
    high: quantileOf(D, 0.9, scrambles),
    atAverageInputs: average.difference,
    gapMatters: Math.abs(mean.value - average.difference) > 2 * mean.error + 0.5,
    likelier:
      ahead[0] === 0 || ahead[0] !== ahead[1] ? 'cannot tell' : (ahead[0] as number) > 0 ? 'keep' : 'replace',
    bars: barsOf(D, quantileOf(D, 0.005, scrambles).value, quantileOf(D, 0.995, scrambles).value),
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

const failuresCheck = (subject: Subject, gather: Gather, ctx: Context, scrambles: number): FailuresCheck[] =>
  subject.counted.flatMap((counted, p): FailuresCheck[] =>
    counted === null
      ? []
      : [
          {
            component: counted.part.component < 0 ? 'repairs nobody can name' : partName(subject, p),
            vehicle: counted.part.vehicleName,
            expected: failuresOf(counted, ctx),
            drawn: meanOf(
              gather((one) => one.failures[p] ?? []),
              scrambles,
            ),
          },
        ],
  );

const partName = ({ unknowns, scenario }: Subject, p: number): string => {
  const part = unknowns.parts[p];
  if (!part) return '';
  const { vehicle, replacement } = scenario.inputs;
  const at = /\[(\d+)\]/.exec(part.vehicle)?.[1];
  const of = part.vehicle === 'vehicle' ? vehicle : replacement[Number(at ?? 0)];
  return of?.components[part.component]?.name ?? '';
};

const worthKnowing = (
  subject: Subject,
  costs: readonly Float64Array[],
  gather: Gather,
  scrambles: number,
  seed: number,
): WorthKnowing[] => {
  const { ranged, parts } = subject.unknowns;
  const about = (what: string, kind: WorthKnowing['kind'], column: Float64Array): WorthKnowing => ({
    what,
    kind,
    ...partialInformation(costs, column, scrambles, seed),
  });
  return [
    ...ranged.map(({ label }, r) =>
      about(
        label,
        'number',
        gather((one) => one.ranged[r] ?? []),
      ),
    ),
    ...parts.flatMap(({ component, vehicleName }, p) =>
      component < 0
        ? []
        : [
            about(
              `how long the ${partName(subject, p)} will last, ${vehicleName}`,
              'part',
              gather((one) => one.firstFailure[p] ?? []),
            ),
          ],
    ),
  ].sort((a, b) => b.worth.value - a.worth.value);
};

const looksOf = (
  { scenario }: Subject,
  costs: readonly Float64Array[],
  draws: readonly ScrambleDraws[],
  gather: Gather,
  scrambles: number,
): LookWorth[] =>
  draws.length === 0
    ? []
    : scenario.facts.chance.looks.map((look, l): LookWorth => {
        const event = Uint8Array.from(gather((one) => one.events[l] ?? []));
        const found = testInformation(costs, event, look.sees, look.clears, scrambles);
        const gain = found.worth.value - look.costs;
        return {
          what: look.what,
          component: scenario.inputs.vehicle.components[look.component]?.name ?? '',
          within: look.within,
          costs: look.costs,
          sees: look.sees,
          clears: look.clears,
          ...found,
          pays: Math.abs(gain) <= 2 * found.worth.error ? 'cannot tell' : gain > 0 ? 'yes' : 'no',
        };
      });

const ruleOf = (
  subject: Subject,
  costs: readonly Float64Array[],
  least: Float64Array,
  gather: Gather,
  scrambles: number,
): RuleChances | null => {
  const { rule, fixed, options, keep, replace, horizon } = subject;
  if (rule === null || keep === null || replace === null) return null;
  const own = costs[costs.length - 1] as Float64Array;
  const against = [keep, replace, ...(fixed ? [options.length] : [])];
  const walkedIn = gather((one) => one.walkedIn);
  return {
    way: wayOf('right-to-walk', 'Keep it, with the right to walk away', own, least, scrambles),
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
      chance: shareOf(walkedIn, (m) => m > 0 && m <= month, scrambles),
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
    pair: pairOf(subject, costs, average, scrambles),
    ways: costs.map((cost, w) => {
      const way = options[w] ?? fixed;
      return wayOf(way?.id ?? '', way?.label ?? '', cost, least, scrambles);
    }),
    shares: sharesOf(subject, gather, scrambles),
    failures: failuresCheck(subject, gather, ctx, scrambles),
    lumpy: lumpyWays(subject, draws, average.payment),
    perfect: perfectInformation(costs, scrambles),
    worthKnowing: worthKnowing(subject, costs, gather, scrambles, seed),
    looks: looksOf(subject, costs, draws, gather, scrambles),
    rule: ruleOf(subject, ways, least, gather, scrambles),
  };
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

export type { Estimate };
