import type { Inputs } from '../inputs/inputs.ts';
import type { Move, Quantity } from '../inputs/scenario.ts';

type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Keys of the numbers that differ between two trees of one shape, with both numbers. */
export const differing = (a: unknown, b: unknown, key = ''): { key: string; from: number; to: number }[] => {
  if (typeof a === 'number' && typeof b === 'number') return a === b ? [] : [{ key, from: a, to: b }];
  if (!isNode(a) || !isNode(b)) return [];
  return Object.keys(a).flatMap((step) => differing(a[step], b[step], key === '' ? step : `${key}.${step}`));
};

/** Between two values of a number what follows it is a straight line, to the digits that defaults are carried with. */
const movesBetween = (low: number, high: number, atLow: Inputs, atHigh: Inputs): Move[] =>
  differing(atLow, atHigh).map(({ key, from, to }) => {
    const times = (to - from) / (high - low);
    const plus = from - times * low;
    // What is left of binary division is no constant.
    return { key, times, plus: Math.abs(plus) < 1e-9 * Math.max(Math.abs(from), Math.abs(to)) ? 0 : plus };
  });

/**
 * The quantities, those that are ranges with the places that move with them: found by typing in both ends of the range
 * and completing anew, so that what follows a number in the file follows it in every future too.
 *
 * @param typed inputs of the file with that number at that value; null where it cannot be typed
 */
export const withMoves = (
  quantities: readonly Quantity[],
  typed: (quantity: Quantity, value: number) => Inputs | null,
): Quantity[] =>
  quantities.map((quantity) => {
    const { range, varies } = quantity;
    if (range === null || varies !== 'once' || range.low === range.high) return quantity;
    const [low, high] = quantity.integer
      ? [Math.floor(range.low), Math.ceil(range.high)]
      : [range.low, range.high];
    const [atLow, atHigh] = [typed(quantity, low), typed(quantity, high)];
    return atLow && atHigh ? { ...quantity, moves: movesBetween(low, high, atLow, atHigh) } : quantity;
  });
