import type { Quantity } from '../scenario/inputs/scenario.ts';

/** A fifth either way: up to 1.2 times the value, or down to the value over 1.2. */
export const FIFTH = Math.log(1.2);

/** Half either way: one and a half times as much, or as much divided by it. */
export const HALF = Math.log(1.5);

/**
 * How far a value lies from a number's own, signed: the logarithm of their ratio, so that no unit decides (25 and 20 miles
 * to the gallon lie as far apart as the litres they take). Where there is no ratio, at nil or below, each of the number's
 * own steps counts as a fifth.
 */
export const howFar = ({ value, step }: Pick<Quantity, 'value' | 'step'>, at: number): number =>
  value > 0 && at > 0 ? Math.log(at / value) : ((at - value) / step) * FIFTH;
