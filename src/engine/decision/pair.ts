import type { Inputs } from '../scenario/inputs.ts';
import type { Facts } from '../scenario/scenario.ts';
import { contextOf, EXPECTED } from './context.ts';
import { type Evaluated, evaluatePlan, presentCostOf } from './evaluate.ts';
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
 * cheaper.
 */
export const pairDifference = (inputs: Inputs, facts: Facts, pair: Pair): number => {
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const cost = (way: Way): number => presentCostOf(way.build(ctx), ctx).counted;
  return cost(pair.replace) - cost(pair.keep);
};
