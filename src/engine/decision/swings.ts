import type { Quantity } from '../scenario/scenario.ts';
import type { DifferenceAt } from './breakEven.ts';
import type { Swing } from './decision.ts';

/** How far a number without a range of its own is moved either way: a fifth of its value. */
const SWING = 0.2;

/** D with one number a fifth lower and a fifth higher, within its range, all others held. */
export const swingOf = (quantity: Quantity, f: DifferenceAt): Swing => {
  const move = (share: number): number => {
    const moved = quantity.value * (1 + share);
    const whole = quantity.integer ? Math.round(moved) : moved;
    return Math.min(quantity.max, Math.max(quantity.min, whole));
  };
  const at = (value: number) => ({ value, difference: f(value) });
  return { quantity, low: at(move(-SWING)), high: at(move(SWING)) };
};

/** How much D moves between the two ends; what the swings are ranked by. */
export const widthOf = (swing: Swing): number => Math.abs(swing.high.difference - swing.low.difference);
