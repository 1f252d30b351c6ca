import { type Cents, toCents } from '../../quantity/money.ts';
import { significant } from './units.ts';

/**
 * A product or a mean in currency units as whole cents, half away from zero. What binary fractions take from an exact
 * half (8,702.595 is a shade below it) is given back first, so that it rounds as a printout does.
 */
export const roundedCents = (amount: number): Cents =>
  toCents((Math.round(significant(Math.abs(amount) * 100, 13)) * Math.sign(amount)) / 100);
