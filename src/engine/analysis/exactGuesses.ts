import type { Swing } from './sensitivityView.ts';
import { widthOf } from './swings.ts';

/** A number that moves the answer less than this share of what the weightiest moves it by is not worth a range. */
const FELT = 0.1;

/**
 * How many guesses and table figures without a range of their own move the answer at least a tenth as far as the number
 * that moves it most; none where nothing moves it.
 */
export const exactGuesses = (swings: readonly Swing[]): number => {
  const widest = Math.max(0, ...swings.map(widthOf));
  if (widest === 0) return 0;
  return swings.filter(
    (swing) =>
      swing.quantity.range === null &&
      (swing.quantity.mark === 'guess' || swing.quantity.mark === 'table') &&
      widthOf(swing) >= FELT * widest,
  ).length;
};
