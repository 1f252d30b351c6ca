import type { Contract, Line } from '../posting.ts';
import { postWork, type WorkOnce, type WorkPrices } from './work.ts';

/**
 * The failures of one component: in every month so many bills, at that month's prices.
 *
 * @param counts failures in month i + 1 after `start`: expected numbers (renewal increments), or what a drawn future
 *   says happened
 * @param free months after `start` in which a guarantee pays
 */
export const failures =
  (
    line: Line,
    counts: ArrayLike<number>,
    work: WorkOnce,
    prices: WorkPrices,
    start: number,
    to: number,
    free: number,
  ): Contract =>
  (sink) => {
    for (let m = free + 1; m <= to - start; m++)
      postWork(sink, line, start + m, work, prices, counts[m - 1] ?? 0);
  };
