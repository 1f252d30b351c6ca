import { type Levels, levelAt } from '../levels.ts';
import type { Contract, Line, Sink } from '../posting.ts';

/** What doing a piece of work once costs either way, at the prices of the day of the decision. */
export interface WorkOnce {
  /** Who does it in the plan that is compared. */
  readonly by: 'own' | 'shop';
  readonly parts: number;
  readonly hours: number;
  /** What the work takes on average, where this time it takes another; it decides whether hours or days are dearer. */
  readonly usualHours: number;
  /** Null: no shop price was given, so parts plus the hours at a shop's price. */
  readonly shopPrice: number | null;
  /** Days the vehicle cannot be used meanwhile. */
  readonly daysWithout: number;
  /** Owed whoever does it: the tow, the diagnosis. */
  readonly either: number;
}

/** The household's prices that work is counted with: at the day of the decision, and how each rises. */
export interface WorkPrices {
  readonly ownHour: number;
  readonly shopHour: number;
  readonly dayWithout: number;
  readonly parts: Levels;
  readonly ownTime: Levels;
  readonly general: Levels;
}

/** What a shop asks for the work at the prices of the day of the decision. */
export const shopPriceOf = (
  work: Pick<WorkOnce, 'parts' | 'hours' | 'shopPrice'>,
  shopHour: number,
): number => work.shopPrice ?? work.parts + work.hours * shopHour;

/**
 * Posts `count` times a piece of work in one month: the one rule by which work costs money and time.
 *
 * Own hands: parts in cash and hours at the household's price. A shop: its price. A day without the vehicle and the
 * hours of the same repair are never both priced, so with own hands the dearer of the two counts, and the days alone
 * in the cash reading.
 */
export const postWork = (
  sink: Sink,
  line: Line,
  month: number,
  work: WorkOnce,
  prices: WorkPrices,
  count = 1,
): void => {
  if (count === 0) return;
  const priceLevel = levelAt(prices.parts, month);
  const days = work.daysWithout * prices.dayWithout * levelAt(prices.general, month);
  const either = work.either * levelAt(prices.general, month);
  const shop = shopPriceOf(work, prices.shopHour) * priceLevel + days + either;
  if (work.by === 'shop') {
    if (shop !== 0) sink.post(line, month, count * shop, count * shop, count * shop);
    return;
  }
  const parts = work.parts * priceLevel + either;
  const anHour = prices.ownHour * levelAt(prices.ownTime, month);
  const dearer = work.usualHours * anHour >= days ? work.hours * anHour : days;
  sink.post(line, month, count * (parts + dearer), count * (parts + days), count * shop);
  if (work.hours !== 0) sink.time?.(line, month, count * work.hours);
};

/** One piece of work, done once in `month`, `count` times on average (a chance, or 1). */
export const workOnce =
  (line: Line, month: number, work: WorkOnce, prices: WorkPrices, count = 1): Contract =>
  (sink) =>
    postWork(sink, line, month, work, prices, count);
