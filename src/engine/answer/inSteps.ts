import { SCRAMBLES, type Scenario } from '../scenario/inputs/scenario.ts';
import { type ScrambleDraws, simulateScramble } from '../simulation/draws.ts';
import { joinDraws } from '../simulation/join.ts';
import { withChances } from './decide.ts';
import type { Decision } from './decision.ts';

/** Futures after which there is something to say already; then all of them. */
const SOONER = [256, 1024] as const;

/**
 * The answer with more and more futures behind it: 256, 1,024, then all that the scenario asks for; nothing where it asks
 * for none. Each step keeps what was drawn for the one before, and the last is what `decide` says of all of them. A caller
 * whose numbers have moved stops asking, and what is stale is never drawn.
 *
 * @param decision of the same scenario, at averages
 */
export const answersInSteps = function* (scenario: Scenario, decision: Decision): Generator<Decision, void> {
  const { seed, futures } = scenario.facts.chance;
  let draws: readonly ScrambleDraws[] = [];
  for (const upTo of [...SOONER.filter((step) => step < futures), futures]) {
    const to = upTo / SCRAMBLES;
    const from = draws[0]?.to ?? 0;
    if (to <= from) return;
    const further = Array.from({ length: SCRAMBLES }, (_, scramble) =>
      simulateScramble(scenario, { seed, scramble, from, to }),
    );
    draws = further.map((more, i) => {
      const before = draws[i];
      return before ? joinDraws(before, more) : more;
    });
    yield withChances(scenario, decision, draws);
  }
};
