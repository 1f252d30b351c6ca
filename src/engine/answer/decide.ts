import type { Chances, PairChances } from '../analysis/chances.ts';
import { exactGuesses } from '../analysis/exactGuesses.ts';
import { chancesOf, drawnForOthers } from '../analysis/futuresSummary.ts';
import { walkAwayOf } from '../analysis/repairLimitTable.ts';
import { prepareToAsk } from '../analysis/valueOfInformation.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import { cheapestOfAll } from '../evaluation/results.ts';
import { inUnits } from '../quantity/money.ts';
import { remember } from '../quantity/remember.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { type ScrambleDraws, simulateScramble } from '../simulation/draws.ts';
import type { Pair } from '../simulation/optionPair.ts';
import { type Subject, subjectOf } from '../simulation/studyDesign.ts';
import { decideAtAverage } from './atAverage.ts';
import type { Decision, Verdict } from './decision.ts';

export { decideAtAverage, firstAnswer, withTips } from './atAverage.ts';

/** A month's payment for the best replacement, by loan or lease; null where it is bought without one. */
const paymentOf = ({ bestReplace, payments, leases }: Decision): number | null => {
  const loan = payments.find(({ replacement }) => replacement === bestReplace?.replacement);
  const lease = leases.find(({ replacement }) => replacement === bestReplace?.replacement);
  if (loan) return inUnits(loan.payment);
  return lease ? inUnits(lease.payment) : null;
};

/** The pair that the futures were drawn for; null where a side has no open way. */
const pairIn = ({ options, keep, replace }: Subject): Pair | null => {
  const [kept, replaced] = [options[keep ?? -1], options[replace ?? -1]];
  return kept && replaced ? { keep: kept, replace: replaced } : null;
};

/** Once futures are drawn the verdict is the mean of D over them; where they cannot tell, nor can we. */
const verdictWith = (verdict: Verdict, pair: PairChances | null): Verdict => {
  if (!pair) return verdict;
  const cheaper = pair.mean.value > 0 ? 'keep' : pair.mean.value < 0 ? 'replace' : 'same';
  if (pair.likelier === 'cannot tell') return { ...verdict, cheaper, kind: 'close' };
  return { ...verdict, cheaper, kind: verdict.kind === 'close' ? 'close' : pair.likelier };
};

/**
 * What is said of chance before any future is known: what is drawn for, and when to walk away. Kept for the latest
 * scenario, so that whoever waits for draws can have it worked out meanwhile.
 */
export const beforeDraws: (scenario: Scenario) => {
  readonly subject: Subject;
  readonly walkAway: Decision['walkAway'];
} = remember(
  (scenario) => {
    const subject = subjectOf(scenario);
    prepareToAsk(subject);
    return { subject, walkAway: walkAwayOf(scenario, pairIn(subject)) };
  },
  ([a], [b]) => a === b,
  1,
);

/**
 * The decision with what drawn futures say of it. Where other ways turn out best on average than at average inputs, the
 * futures are drawn once more for these.
 *
 * @param draws whole scrambles, in order; none at all leaves the decision as it is
 */
export const withChances = (
  scenario: Scenario,
  decision: Decision,
  draws: readonly ScrambleDraws[],
): Decision => {
  if (draws.length === 0) return decision;
  const moved = drawnForOthers(scenario, draws);
  return moved === null
    ? withPair(scenario, decision, draws)
    : withPair(
        moved,
        decision,
        draws.map((setting) => simulateScramble(moved, setting)),
      );
};

const withPair = (scenario: Scenario, decision: Decision, draws: readonly ScrambleDraws[]): Decision => {
  const { subject, walkAway } = beforeDraws(scenario);
  const chances: Chances = chancesOf(
    scenario,
    draws,
    {
      difference: decision.difference ? inUnits(decision.difference.counted) : 0,
      grain: decision.grain,
      payment: paymentOf(decision),
      exactGuesses: exactGuesses(decision.swings),
    },
    subject,
  );
  const best = (id: string | undefined, otherwise: OptionResult | null): OptionResult | null =>
    decision.options.find((one) => one.id === id) ?? otherwise;
  const means = new Map(chances.ways.map(({ id, cost }) => [id, cost.mean.value]));
  return {
    ...decision,
    answer: cheapestOfAll(decision.options, ({ id }) => means.get(id) ?? Number.POSITIVE_INFINITY),
    bestKeep: best(chances.pair?.keep, decision.bestKeep),
    bestReplace: best(chances.pair?.replace, decision.bestReplace),
    tier: 'futures',
    chances,
    verdict: verdictWith(decision.verdict, chances.pair),
    walkAway,
  };
};

/** A complete scenario and its drawn futures in, the whole answer out; without draws, the answer at average inputs. */
export const decide = (scenario: Scenario, version: string, draws: readonly ScrambleDraws[] = []): Decision =>
  withChances(scenario, decideAtAverage(scenario, version), draws);
