/** What is worked out in a few months of a look, in between: in straight lines, or in a curve. */
import { remember } from '../../quantity/remember.ts';

export type Weights = readonly (readonly [node: number, weight: number])[];

/** Months at which something is worked out, and what each of them counts for in every month. */
export interface Between {
  readonly nodes: readonly number[];
  readonly at: readonly Weights[];
}

/** The months before the last one's, every so many from a first one on, between the first and the last in which ours goes. */
const nodesOf = (
  horizon: number,
  first: number,
  step: (month: number) => number,
  clear: number,
): number[] => {
  const nodes = horizon > 2 ? [1] : [];
  for (let m = first; m < horizon - clear; m += step(m)) nodes.push(m);
  return horizon > 1 ? [...nodes, horizon - 1] : [];
};

/** The polynomial through some of the nodes: what each of them counts for at a month (Lagrange). */
const through = (nodes: readonly number[], from: number, count: number, month: number): Weights =>
  Array.from({ length: count }, (_, i) => {
    const a = nodes[from + i] as number;
    let weight = 1;
    for (let j = 0; j < count; j++) {
      const b = nodes[from + j] as number;
      if (j !== i) weight *= (month - b) / (a - b);
    }
    return [from + i, weight] as const;
  });

/** In each month the polynomial through so many nodes around it. */
const between = (nodes: readonly number[], points: number, horizon: number): Between => ({
  nodes,
  at: Array.from({ length: horizon }, (_, month) => {
    const count = Math.min(points, nodes.length);
    const after = nodes.findIndex((node) => month <= node);
    const from = (after < 0 ? nodes.length : after) - Math.ceil(count / 2);
    return through(nodes, Math.max(0, Math.min(from, nodes.length - count)), count, month);
  }),
});

const byHorizon = (of: (horizon: number) => Between) => remember(of, ([a], [b]) => a === b, 8);

/**
 * For what has corners, as a loan that is paid off: a straight line from the middle of a year to that of the next, beyond
 * five years of the one after; where yearly bills go by steps, the middle of a year has their mean.
 */
export const inLines = byHorizon((horizon) =>
  between(
    nodesOf(horizon, 6, (m) => (m < 54 ? 12 : 24), 1),
    2,
    horizon,
  ),
);

/** A shorter look has too few years for a curve. */
const CURVES_FROM = 42;

/** For what bends, as a price that falls and the years that are left: a curve through the middle of every other year. */
export const inCurves = byHorizon((horizon) =>
  horizon < CURVES_FROM
    ? inLines(horizon)
    : between(
        nodesOf(horizon, 18, () => 24, 6),
        4,
        horizon,
      ),
);
