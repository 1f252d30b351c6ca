import { isFelt } from '../../engine/analysis/swings.ts';
import type { BreakEven, Decision } from '../../engine/answer/decision.ts';
import type { Quantity, Unit } from '../../engine/scenario/inputs/scenario.ts';
import { type Formats, number, roundTo } from '../format.ts';

/** Where it tips, to three significant digits: a root is never known better than the numbers around it. */
export const tipAt = (q: Quantity, at: number, format: Formats): string => {
  const step = at === 0 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(at))) - 2);
  const about = roundTo(at, q.integer ? Math.max(1, step) : step);
  return format.quantity(q, about);
};

const SHORTENED: readonly Unit[] = ['economy', 'distance', 'distance a year'];

/** A value for a picture that has no room: "$4.10" for "$4.10 a gallon", "9,000" for "9,000 miles a year". */
export const bare = (q: Quantity, value: number, format: Formats): string => {
  const whole = tipAt(q, value, format);
  return q.unit.startsWith('money') || SHORTENED.includes(q.unit) ? (whole.split(' ')[0] ?? whole) : whole;
};

/** What `bare` leaves out, for a caption: " (miles a year)"; '' where it leaves out nothing. */
export const bareUnit = (q: Quantity, format: Formats): string => {
  const left = tipAt(q, q.value, format)
    .slice(bare(q, q.value, format).length)
    .trim();
  return left === '' ? '' : ` (${left})`;
};

/** "× 1.42", "÷ 1.42": as many times today's value, in whatever unit it is told; "from nothing today" where that is nil. */
export const timesToday = (q: Quantity, root: BreakEven['roots'][number]): string => {
  if (q.value <= 0) return q.value === 0 ? 'from nothing today' : 'from below nothing today';
  if (root.at <= 0) return root.at === 0 ? 'nothing at all' : 'below nothing';
  const times = Math.exp(Math.abs(root.distance));
  return `${root.distance < 0 ? '÷' : '×'} ${number(times, times < 10 ? 2 : 0)}`;
};

/**
 * Break-evens that tip somewhere, in the decision's own order: nearest to today's value first. The first of them is what
 * tips it first, wherever that is said; how far ahead we look is a number among the others here.
 */
export const tipsNearestFirst = (d: Decision): readonly BreakEven[] =>
  d.breakEvens.filter((b) => b.roots.length > 0);

/** The numbers that move the answer most when each is moved as far as its swing goes, the most first. */
export const weightiest = (d: Decision, most: number): readonly Quantity[] =>
  d.swings
    .filter((s) => isFelt(s, d.grain))
    .slice(0, most)
    .map((s) => s.quantity);

/** "repairs nobody named, 2009 wagon: $2,690 a year instead of $1,900 a year (× 1.41)". */
export const tipWords = (b: BreakEven, format: Formats): string => {
  const [root] = b.roots;
  if (!root) return `${b.quantity.label}: nowhere in its range`;
  return `${b.quantity.label}: ${tipAt(b.quantity, root.at, format)} instead of ${format.quantity(b.quantity)} (${timesToday(b.quantity, root)})`;
};
