import { type Range, rangeLaw } from '../../quantity/range.ts';
import type { Quantity } from '../inputs/scenario.ts';
import { significant } from '../inputs/units.ts';
import type { Tree } from '../text/document.ts';
import { rangeTimes } from './statedRange.ts';

/** The range with its points in proportion, so that its mean is `value`. */
export const rangeAround = (range: Range, value: number): Range => {
  const law = rangeLaw(range);
  return 'refused' in law ? range : rangeTimes(range, value / law.mean);
};

/** What is told in percent in the file. */
const isPercent = (unit: Quantity['unit']): boolean => unit === 'share' || unit === 'rate a year';

/**
 * What a person types for a value of the quantity at its path in the file: a figure, a figure with its unit, or where only
 * a range may stand, the range in proportion.
 */
export const figureOf = ({ unit, suffix, range, onlyRange }: Quantity, value: number): Tree => {
  const figure = (x: number): string | number => {
    const plain = isPercent(unit) ? significant(x * 100, 15) : x;
    return suffix === '' ? plain : `${plain}${suffix}`;
  };
  if (!onlyRange || range === null) return figure(value);
  const { low, likely, high } = rangeAround(range, value);
  return { low: figure(low), likely: figure(likely), high: figure(high) };
};
