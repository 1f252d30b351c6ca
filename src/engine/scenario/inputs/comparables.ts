import { inUnits } from '../../quantity/money.ts';
import { roundedCents } from './cents.ts';

/** What a comparable is, in currency units and the household's distance unit. */
export interface Comparable {
  readonly price: number;
  readonly odometer: number;
  readonly adjustment: number;
}

/** In currency units, rounded half up to the cent. */
const toTheCent = (amount: number): number => inUnits(roundedCents(amount));

/**
 * Each comparable carried to the vehicle's own distance: `perDistance` for every mile or kilometre that it has run more
 * (it is then worth more than its price says); and the mean of what they say, null without any. Exact to the cent:
 * each line is rounded, then the mean.
 * Source: common practice of comparable-vehicle valuations, no source.
 */
export const compare = <C extends Comparable>(
  comparables: readonly C[],
  own: { readonly odometer: number; readonly perDistance: number },
): {
  readonly lines: readonly (C & { readonly forDistance: number; readonly says: number })[];
  readonly mean: number | null;
} => {
  const lines = comparables.map((one) => {
    const forDistance = toTheCent(own.perDistance * (one.odometer - own.odometer));
    return { ...one, forDistance, says: toTheCent(one.price + forDistance + one.adjustment) };
  });
  const sum = lines.reduce((total, { says }) => total + says, 0);
  return { lines, mean: lines.length === 0 ? null : toTheCent(sum / lines.length) };
};
