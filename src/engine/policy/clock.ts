import { failsWithin, type WeibullLife } from '../chance/weibull.ts';

/**
 * How likely a part is to fail in each month, told by whole months: what has happened is known at the end of a month, and
 * a part renewed in a month is new at its end. So much of a part's life is all that a decision at a month's end can use.
 */
export interface ClockLaw {
  readonly repairIs: 'renewal' | 'patch';
  /** Of the part that is in, by months from the start: chance of failing in the month after, having lasted till then. */
  readonly installed: ArrayLike<number>;
  /** Of a new part, by months since it was fitted: the same chance; with patches the expected failures of the month. */
  readonly fresh: ArrayLike<number>;
  /**
   * With patches, expected failures of the month after, by months from the start, of a clock that has not been restarted.
   * Null: `installed` says so already.
   */
  readonly patched: ArrayLike<number> | null;
}

/** Chance of failing in month a + 1, having lasted a months: 1 - S(run + (a+1)·pace)/S(run + a·pace), at index a. */
export const chancesByMonth = (life: WeibullLife, run: number, pace: number, months: number): Float64Array =>
  Float64Array.from({ length: months }, (_, a) => failsWithin(life, run + a * pace, pace));

/**
 * The same chance for a part of which only the remaining life is known; 1 once it must have failed.
 *
 * @param failsBy chance of having failed by the end of a month
 */
export const chancesOfRemaining = (failsBy: (month: number) => number, months: number): Float64Array => {
  const failed = Float64Array.from({ length: months + 1 }, (_, m) => failsBy(m));
  return Float64Array.from({ length: months }, (_, a) => {
    const [now, then] = [failed[a] as number, failed[a + 1] as number];
    return now < 1 ? Math.min(1, Math.max(0, (then - now) / (1 - now))) : 1;
  });
};
