import type { Quantity } from '../scenario/inputs/scenario.ts';
import type { DifferenceAt } from './breakEven.ts';
import type { Swing } from './sensitivityView.ts';

/** How far a number without a range of its own is moved either way: by this factor, which is a fifth. */
const SWING = 1.2;

/**
 * D with one number low and high, all others held: at the 10 % and 90 % points of its range where it has one that is
 * drawn once, otherwise a fifth either way.
 */
export const swingOf = (quantity: Quantity, f: DifferenceAt): Swing => {
  const { range, value, varies } = quantity;
  const [low, high] =
    range !== null && varies === 'once' ? [range.low, range.high] : [value / SWING, value * SWING];
  const at = (moved: number) => {
    const whole = quantity.integer ? Math.round(moved) : moved;
    const held = Math.min(quantity.max, Math.max(quantity.min, whole));
    return { value: held, difference: f(held) };
  };
  return { quantity, low: at(low), high: at(high) };
};

/** How much D moves between the two ends. */
export const widthOf = (swing: Swing): number => Math.abs(swing.high.difference - swing.low.difference);

/**
 * The widest first, by key where they are as wide: the last digit of a sum decides nothing.
 *
 * @param grain what is no difference, in currency units
 */
export const widestFirst = (swings: readonly Swing[], grain: number): Swing[] => {
  const width = (swing: Swing): number => Math.round((100 * widthOf(swing)) / grain);
  return swings.toSorted((a, b) => width(b) - width(a) || (a.quantity.key < b.quantity.key ? -1 : 1));
};

/** Whether it moves the answer at all. */
export const isFelt = (swing: Swing, grain: number): boolean => widthOf(swing) >= grain;
