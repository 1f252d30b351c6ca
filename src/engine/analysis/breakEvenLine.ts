import type { Quantity } from '../scenario/inputs/scenario.ts';
import { leastCrossings, type Rivals } from '../valuation/leastCrossings.ts';
import type { BreakEvenLine } from './sensitivityView.ts';

const POINTS = 13;
/** A stretch of y of so many that bends is not looked into: the line is drawn, not solved for its last digit. */
const SCAN = 24;
/** Where along y the search begins for each x, as parts of its stretch. */
const SEEDS = [0, 0.1, 0.27, 0.52, 0.78, 1];

/**
 * The line on which both courses cost the same, over two inputs: x runs from half to one and a half times today's
 * value, and for each x the y nearest to today's at which D is nil, up to three times today's; none (null) where the file
 * would not take the two together, as a price below what is paid down.
 *
 * @param f what the ways cost at (x, y); its lead is D
 * @param how.unit the least difference that counts as one, in currency units
 * @param how.allowed whether both may stand in the file
 */
export const breakEvenLine = (
  x: Quantity,
  y: Quantity,
  f: (xValue: number, yValue: number) => Rivals,
  { unit, allowed }: { unit: number; allowed: (xValue: number, yValue: number) => boolean },
): BreakEvenLine => {
  const lowX = Math.max(x.min, x.value * 0.5);
  const highX = x.value > 0 ? Math.min(x.max, x.value * 1.5) : x.max;
  const highY = y.value > 0 ? Math.min(y.max, y.value * 3) : y.max;
  // A whole number moves in steps along its axis.
  const step = ({ integer, min }: Quantity, value: number): number =>
    integer ? Math.max(min, Math.round(value)) : value;
  const rivals = (xValue: number, yValue: number): Rivals => f(step(x, xValue), step(y, yValue));
  const seeds = SEEDS.map((part) => y.min + part * (highY - y.min));
  const finest = (highY - y.min) / SCAN;
  const points = Array.from({ length: POINTS }, (_, i) => {
    const at = lowX + ((highX - lowX) * i) / (POINTS - 1);
    const found = leastCrossings((value) => rivals(at, value), seeds, { unit, finest }) ?? [];
    const nearest = found.reduce<number | null>(
      (best, root) =>
        best === null || Math.abs(root.at - y.value) < Math.abs(best - y.value) ? root.at : best,
      null,
    );
    return { x: at, y: nearest !== null && allowed(step(x, at), step(y, nearest)) ? nearest : null };
  });
  return {
    x,
    y,
    points,
    today: { x: x.value, y: y.value },
    keepIs: rivals(x.value, highY).lead >= rivals(x.value, y.min).lead ? 'above' : 'below',
  };
};
