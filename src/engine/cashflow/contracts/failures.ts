import { levelAt } from '../levels.ts';
import type { Contract, Line } from '../posting.ts';
import { type AtHome, splitBill } from './averageWork.ts';
import { postWork, type WorkOnce, type WorkPrices } from './work.ts';

/** A failure that happened: in which month after the start, and what meeting it once took. */
export interface Happened {
  readonly month: number;
  readonly work: WorkOnce;
}

/** A failure that needs a tow stops the vehicle where it is. */
const stops = (work: WorkOnce): number => (work.either > 0 ? 1 : 0);

/**
 * The failures of one component by their expected number: in every month so many bills, at that month's prices.
 *
 * @param counts failures in month i + 1 after `start` (renewal increments)
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
    for (let m = 1; m <= to - start; m++) {
      const count = counts[m - 1] ?? 0;
      if (m > free) postWork(sink, line, start + m, work, prices, count);
      sink.stands?.(start + m, count * stops(work), count * work.daysWithout);
    }
  };

/** The failures of one component that a drawn future says happened. */
export const failuresThatHappened =
  (
    line: Line,
    happened: readonly Happened[],
    prices: WorkPrices,
    start: number,
    to: number,
    free: number,
  ): Contract =>
  (sink) => {
    for (const { month, work } of happened) {
      if (start + month > to) continue;
      if (month > free) postWork(sink, line, start + month, work, prices);
      sink.stands?.(start + month, stops(work), work.daysWithout);
    }
  };

/** A repair nobody could name that happened: a shop's bill for it at the prices of the day of the decision. */
export interface Unnamed {
  readonly month: number;
  readonly bill: number;
  readonly stops: boolean;
}

/** What such a bill comes to in this household in a month: in cash, with its own hours counted, and at a shop. */
export const splitOfUnnamed = (bill: number, month: number, atHome: AtHome, prices: WorkPrices) => {
  const { cash, hours } = splitBill(bill, atHome, prices);
  const level = levelAt(prices.parts, month);
  const time = hours * prices.ownHour * levelAt(prices.ownTime, month);
  return { counted: cash * level + time, cash: cash * level, shop: bill * level, hours };
};

/** Repairs nobody could name, met as the household meets work it knows only on average. */
export const unnamedThatHappened =
  (
    line: Line,
    happened: readonly Unnamed[],
    atHome: AtHome,
    prices: WorkPrices,
    start: number,
    to: number,
    free: number,
  ): Contract =>
  (sink) => {
    for (const { month, bill, stops: stopped } of happened) {
      const m = start + month;
      if (m > to) continue;
      if (month > free) {
        const { counted, cash, shop, hours } = splitOfUnnamed(bill, m, atHome, prices);
        sink.post(line, m, counted, cash, shop);
        if (hours !== 0) sink.time?.(line, m, hours);
      }
      sink.stands?.(m, stopped ? 1 : 0, 0);
    }
  };
