/** What owning one thing costs a period, by how long it is kept, and for how long that is least. */
import { equivalentCost } from './present.ts';

/** Something owned, period by period (months or years, so long as all agree). Both series start at time 0. */
export type Ownership = {
  /** What it would bring at the end of period 0, 1, 2 ...; values[0] is what it is worth, or costs, at the start. */
  readonly values: readonly number[];
  /** What it costs at the end of period 0, 1, 2 ...; costs[0] is a one-off at the start, 0 as a rule. */
  readonly costs: readonly number[];
  /** Interest per period, as a fraction. */
  readonly ratePerPeriod: number;
};

/**
 * The equivalent cost a period of owning for n periods, for every n from 1 (at index n - 1):
 * (V(0) + present value of costs - v^n V(n)) · i/(1 - (1+i)^-n). The value at the start is charged.
 */
export const averageCostOfOwning = ({ values, costs, ratePerPeriod }: Ownership): number[] => {
  let spent = (values[0] ?? 0) + (costs[0] ?? 0);
  return values.slice(1).map((value, k) => {
    const n = k + 1;
    const v = (1 + ratePerPeriod) ** -n;
    spent += (costs[n] ?? 0) * v;
    return equivalentCost(spent - value * v, ratePerPeriod, n);
  });
};

/**
 * The cost of going on for one more period, the n-th from 1 (at index n - 1), as an amount at that period's end:
 * the loss of value, interest on the value at its start, and its costs. costs[0] is no part of it.
 */
export const marginalCost = ({ values, costs, ratePerPeriod }: Ownership): number[] =>
  values
    .slice(1)
    .map((value, k) => (values[k] as number) * (1 + ratePerPeriod) - value + (costs[k + 1] ?? 0));

export type EconomicLife = {
  /** The number of periods with the least average cost; the first of equal ones. */
  readonly periods: number;
  readonly averageCost: number;
  /** The average cost of owning for n periods, at index n - 1: it may fall again after rising. */
  readonly byPeriods: readonly number[];
};

/** For how many periods, of those given, owning costs least a period. Needs at least one period. */
export const economicLife = (owned: Ownership): EconomicLife => {
  const byPeriods = averageCostOfOwning(owned);
  const averageCost = Math.min(...byPeriods);
  return { periods: byPeriods.indexOf(averageCost) + 1, averageCost, byPeriods };
};
