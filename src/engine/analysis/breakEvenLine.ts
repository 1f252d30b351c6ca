import type { Quantity } from '../scenario/inputs/scenario.ts';
import { crossings } from '../valuation/crossings.ts';
import type { BreakEvenLine } from './sensitivityView.ts';

const POINTS = 25;
/** Scan points along y for each x: the line is drawn, not solved for its last digit. */
const SCAN = 24;

/**
 * The line on which both courses cost the same, over two inputs: x runs from half to one and a half times today's
 * value, and for each x the y nearest to today's at which D is nil, up to three times today's.
 *
 * @param f D at (x, y)
 * @param unit the least difference that counts as one, in currency units
 */
export const breakEvenLine = (
  x: Quantity,
  y: Quantity,
  f: (xValue: number, yValue: number) => number,
  unit: number,
): BreakEvenLine => {
  const lowX = Math.max(x.min, x.value * 0.5);
  const highX = x.value > 0 ? Math.min(x.max, x.value * 1.5) : x.max;
  const highY = y.value > 0 ? Math.min(y.max, y.value * 3) : y.max;
  // A whole number moves in steps along its axis.
  const step = ({ integer, min }: Quantity, value: number): number =>
    integer ? Math.max(min, Math.round(value)) : value;
  const D = (xValue: number, yValue: number): number => f(step(x, xValue), step(y, yValue));
  const points = Array.from({ length: POINTS }, (_, i) => {
    const at = lowX + ((highX - lowX) * i) / (POINTS - 1);
    const { roots } = crossings((value) => D(at, value), y.min, highY, SCAN, { unit });
    const nearest = roots.reduce<number | null>(
      (best, root) =>
        best === null || Math.abs(root.at - y.value) < Math.abs(best - y.value) ? root.at : best,
      null,
    );
    return { x: at, y: nearest };
  });
  return {
    x,
    y,
    points,
    today: { x: x.value, y: y.value },
    keepIs: D(x.value, highY) >= D(x.value, y.min) ? 'above' : 'below',
  };
};
