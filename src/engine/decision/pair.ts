import type { Inputs } from '../scenario/inputs.ts';
import type { Facts } from '../scenario/scenario.ts';
import { contextOf, EXPECTED } from './context.ts';
import { type Evaluated, evaluatePlan, presentCostOf } from './evaluate.ts';
import type { Way } from './ways/way.ts';
import { waysOf } from './ways/ways.ts';

/** The two ways that are compared, chosen once by their cost and held while anything moves. */
export interface Pair {
  readonly keep: string;
  readonly replace: string;
}

const waysOfPair = (inputs: Inputs, facts: Facts, pair: Pair) => {
  const ctx = contextOf(inputs, facts, EXPECTED);
  const { open } = waysOf('unrounded', ctx);
  const keep = open.find((way) => way.id === pair.keep);
  const replace = open.find((way) => way.id === pair.replace);
  return keep && replace ? { ctx, keep, replace } : null;
};

/** Both ways of the pair evaluated without rounding; null where one of them is no longer open. */
export const evaluatePair = (
  inputs: Inputs,
  facts: Facts,
  pair: Pair,
): { readonly keep: Evaluated; readonly replace: Evaluated } | null => {
  const ways = waysOfPair(inputs, facts, pair);
  return (
    ways && {
      keep: evaluatePlan(ways.keep.build(), ways.ctx),
      replace: evaluatePlan(ways.replace.build(), ways.ctx),
    }
  );
};

/**
 * D of the pair in the counted reading, unrounded: NPC(replace) - NPC(keep), currency units, positive when keeping is
 * cheaper. NaN where one of them is not open at these inputs.
 */
export const pairDifference = (inputs: Inputs, facts: Facts, pair: Pair): number => {
  const ways = waysOfPair(inputs, facts, pair);
  if (!ways) return Number.NaN;
  const cost = (way: Way): number => presentCostOf(way.build(), ways.ctx).counted;
  return cost(ways.replace) - cost(ways.keep);
};
