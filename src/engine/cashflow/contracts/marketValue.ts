import type { ValueLaw } from '../../scenario/inputs/inputs.ts';

export interface ValueTerms {
  readonly now: number;
  readonly law: ValueLaw;
  /** The least it ever brings. */
  readonly floor: number;
  /** Multiplier of a branded title; 1 for a clean one. */
  readonly brandFactor: number;
}

const between = (
  points: readonly { readonly month: number; readonly value: number }[],
  month: number,
): number => {
  const after = points.findIndex((p) => p.month >= month);
  const last = points[points.length - 1];
  if (after < 0) return last?.value ?? 0;
  const right = points[after];
  const left = points[after - 1];
  if (!right) return 0;
  if (!left || right.month === left.month) return right.value;
  return left.value + ((right.value - left.value) * (month - left.month)) / (right.month - left.month);
};

/**
 * What the vehicle would bring privately, `month` months on and `distance` further; never below the floor.
 * Yearly decline is compound, decline by distance in money, both down to what a running one of any age brings; a table of
 * points is linear between and flat after.
 */
export const marketValue = (terms: ValueTerms, month: number, distance: number): number => {
  const { law } = terms;
  const value =
    law.kind === 'decline'
      ? Math.max(
          Math.min(terms.now, law.downTo),
          terms.now * (1 - law.perYear) ** (month / 12) - law.perDistance * distance,
        )
      : between([{ month: 0, value: terms.now }, ...law.points], month);
  return Math.max(terms.floor, value * terms.brandFactor);
};

/** What it would bring broken: the same fraction of its running value as today, but not less than scrap. */
export const brokenValue = (value: number, runningNow: number, brokenNow: number, scrap: number): number =>
  Math.max(scrap, runningNow > 0 ? (value * brokenNow) / runningNow : 0);

/**
 * What is left of a price after one way of selling: its cost and own hours, but not less than the floor, which is had at
 * once and for nothing.
 *
 * @param later what 1 of the price is worth on the day of the sale, where it is paid later
 */
export const netOfSelling = (
  value: number,
  cost: number,
  hours: number,
  ownHour: number,
  floor: number,
  later = 1,
): number => Math.max(Math.min(floor, value), value * later - cost - hours * ownHour);
