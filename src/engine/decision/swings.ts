import type { Quantity } from '../scenario/scenario.ts';
import type { DifferenceAt } from './breakEven.ts';
import type { Swing } from './decision.ts';

/** How far a number without a range of its own is moved either way: a fifth of its value. */
const SWING = 0.2;

/**
 * D with one number low and high, all others held: at the 10 % and 90 % points of its range where it has one that is
 * drawn once, otherwise a fifth either way.
 */
export const swingOf = (quantity: Quantity, f: DifferenceAt): Swing => {
  const { range, value, varies } = quantity;
  const [low, high] =
    range !== null && varies === 'once'
      ? [range.low, range.high]
      : [value * (1 - SWING), value * (1 + SWING)];
  const at = (moved: number) => {
    const whole = quantity.integer ? Math.round(moved) : moved;
    const held = Math.min(quantity.max, Math.max(quantity.min, whole));
    return { value: held, difference: f(held) };
  };
  return { quantity, low: at(low), high: at(high) };
};

/** How much D moves between the two ends. */
export const widthOf = (swing: Swing): number => Math.abs(swing.high.difference - swing.low.difference);

/** The same in whole cents, which the swings are ranked by: the last digit of a sum decides nothing then. */
export const centsWide = (swing: Swing): number => Math.round(100 * widthOf(swing));
