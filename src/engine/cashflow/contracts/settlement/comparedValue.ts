/** Actual cash value from comparable vehicles, each adjusted in the open, so that every line can be disputed. */
import type { Cents } from '../../../quantity/money.ts';
import { type Arithmetic, noSign, sum, sumOf } from './arithmetic.ts';

/** A vehicle like it, offered or sold: its price and distance, and whatever else sets it apart. */
export interface Comparable<N extends number = Cents> {
  readonly price: N;
  readonly distance: number;
  /** For condition and equipment: positive where the damaged vehicle was the better one. */
  readonly adjustment: N;
}

/** What a comparable says the vehicle was worth: price + forDistance + adjustment. */
export interface ComparedValue<N extends number = Cents> {
  readonly forDistance: N;
  readonly value: N;
}

/**
 * Each comparable's price carried to the vehicle's own distance: `perDistance` for every mile or kilometre the
 * comparable has run more (it is then worth more than its price says), taken off for every one less; rounded half up.
 * The value is their plain average, rounded half up. Null without comparables. Amounts positive; distances in one unit.
 * Source: common practice of comparable-vehicle valuations, no source.
 */
export const comparedValue = <N extends number>(
  money: Arithmetic<N>,
  comparables: readonly Comparable<N>[],
  own: { readonly distance: number; readonly perDistance: N },
): { readonly lines: readonly ComparedValue<N>[]; readonly value: N } | null => {
  if (comparables.length === 0) return null;
  const lines = comparables.map(({ price, distance, adjustment }): ComparedValue<N> => {
    noSign({ 'a price': price, 'a distance': distance });
    const forDistance = money.times(own.perDistance, distance - own.distance);
    return { forDistance, value: sum([price, forDistance, adjustment]) };
  });
  const all = sumOf(lines, ({ value }) => value);
  return { lines, value: money.share(all, 1, lines.length) };
};
