import { toCents } from '../../quantity/money.ts';
import type { ComparedVehicle } from '../claim.ts';
import type { SparseClaim } from '../schema/scenario.ts';
import { significant } from '../units.ts';

/** In currency units, rounded half up to the cent; what a binary fraction adds to an exact product is taken off first. */
const toTheCent = (amount: number): number => toCents(significant(amount, 13)) / 100;

/**
 * Each comparable carried to the vehicle's own distance, and their mean; null without any. Exact to the cent: each
 * line is rounded, then the mean. Distances in the household's unit, money in its currency.
 * Source: common practice of comparable-vehicle valuations, no source.
 */
export const completeComparables = (
  file: Pick<SparseClaim, 'comparables'>,
  perDistance: number,
  odometer: number,
): { readonly lines: readonly ComparedVehicle[]; readonly mean: number | null } => {
  const lines = (file.comparables ?? []).map((one): ComparedVehicle => {
    const price = toTheCent(one.price.value);
    const forDistance = toTheCent(perDistance * (one.odometer.value - odometer));
    const adjustment = toTheCent(one.adjust?.value ?? 0);
    const says = toTheCent(price + forDistance + adjustment);
    return { what: one.what, price, odometer: one.odometer.value, forDistance, adjustment, says };
  });
  if (lines.length === 0) return { lines, mean: null };
  return { lines, mean: toTheCent(lines.reduce((sum, { says }) => sum + says, 0) / lines.length) };
};
