import type { Inputs } from '../scenario/inputs.ts';
import type { Facts } from '../scenario/scenario.ts';
import { contextOf, EXPECTED } from './context.ts';
import { type Evaluated, evaluatePlan, presentCostOf } from './project.ts';
import type { Way } from './ways/way.ts';

/** The two ways that are compared, chosen once by their cost and held while anything moves. */
export interface Pair {
  readonly keep: Way;
  readonly replace: Way;
}

/** Both ways of the pair evaluated without rounding. */
export const evaluatePair = (
  inputs: Inputs,
  facts: Facts,
  pair: Pair,
): { readonly keep: Evaluated; readonly replace: Evaluated } => {
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  return {
    keep: evaluatePlan(pair.keep.build(ctx), ctx),
    replace: evaluatePlan(pair.replace.build(ctx), ctx),
  };
};

/**
 * D of the pair in the counted reading, unrounded: NPC(replace) - NPC(keep), currency units, positive when keeping is
 * cheaper; as a function of the inputs.
 *
 * Keeping knows nothing of replacements: while only their numbers move, its cost is not worked out again.
 */
export const differenceOfPair = (facts: Facts, pair: Pair): ((inputs: Inputs) => number) => {
  let kept: { readonly of: Inputs; readonly cost: number } | null = null;
  return (inputs) => {
    const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
    const cost = (way: Way): number => presentCostOf(way.build(ctx), ctx).counted;
    const same =
      kept?.of.household === inputs.household &&
      inputs.claim === null &&
      kept.of.vehicle === inputs.vehicle &&
      kept.of.workNeeded === inputs.workNeeded;
    kept = same && kept ? kept : { of: inputs, cost: cost(pair.keep) };
    return cost(pair.replace) - kept.cost;
  };
};

/** D of the pair at one set of inputs. */
export const pairDifference = (inputs: Inputs, facts: Facts, pair: Pair): number =>
  differenceOfPair(facts, pair)(inputs);
