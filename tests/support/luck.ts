/** Futures for tests of what is drawn: many short ones, each with luck of its own. */
import { streamOf, uniformAt } from '../../src/engine/chance/counter.ts';
import type { Luck } from '../../src/engine/chance/failureTimes.ts';

export const SCRAMBLES = 16;

const [WAITS, BILLS] = [streamOf('waits'), streamOf('bills')];

const luckOf = (seed: number, draw: number): Luck => ({
  exponential: (i) => -Math.log(uniformAt(seed, draw, WAITS, i)),
  quantile: (i) => uniformAt(seed, draw, BILLS, i),
});

/** One figure from each of many futures, scramble-major. */
export const drawn = (seed: number, draws: number, figure: (luck: Luck) => number): Float64Array =>
  Float64Array.from({ length: draws }, (_, draw) => figure(luckOf(seed, draw)));

/** The integral of f from 0 to `to`: Simpson's rule. */
export const integral = (f: (x: number) => number, to: number, steps = 20_000): number => {
  const h = to / steps;
  let sum = f(0) + f(to);
  for (let k = 1; k < steps; k++) sum += (k % 2 === 1 ? 4 : 2) * f(k * h);
  return (sum * h) / 3;
};
