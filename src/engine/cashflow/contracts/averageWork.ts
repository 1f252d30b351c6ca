import type { Contract, Line } from '../posting.ts';
import type { WorkPrices } from './work.ts';

/** How a household meets work that is known only as a shop's yearly bill. */
export interface AtHome {
  /** Share of it, by cost, done with own hands. */
  readonly share: number;
  /** Parts as a share of a shop's bill. */
  readonly partsShare: number;
}

/** What a shop's bill becomes in this household: cash, and own hours in place of the labour it does itself. */
export const splitBill = (
  shop: number,
  atHome: AtHome,
  prices: WorkPrices,
): { readonly cash: number; readonly hours: number } => {
  const labour = atHome.share * (1 - atHome.partsShare);
  return {
    cash: shop * (1 - labour),
    hours: prices.shopHour > 0 ? (shop * labour) / prices.shopHour : 0,
  };
};

const ownHours = new WeakMap<Line, Line>();

/** The line of a line's own hours: the same for the same line, for most are asked for in every future. */
const ownHoursOf = (line: Line): Line => {
  const known = ownHours.get(line);
  if (known) return known;
  const own = { ...line, what: `${line.what}: own hours` };
  ownHours.set(line, own);
  return own;
};

/**
 * Work known only on average, from the month after `start` to `to`: `billOfMonth(m)` is what a shop would charge in month
 * m after the start, at the prices of the day of the decision. What the household does itself costs the parts, and hours
 * in place of the labour; the hours are posted by themselves, for their price rises by itself.
 *
 * @param free months after `start` in which a guarantee pays
 */
export const averageWork =
  (
    line: Line,
    billOfMonth: (month: number) => number,
    atHome: AtHome,
    prices: WorkPrices,
    start: number,
    to: number,
    free: number,
  ): Contract =>
  (sink) => {
    const last = to - start;
    const own = ownHoursOf(line);
    for (let first = free + 1; first <= last; ) {
      const shop = billOfMonth(first);
      let until = first;
      // Months of one bill are one series.
      while (until < last && billOfMonth(until + 1) === shop) until += 1;
      const [from, end] = [start + first, start + until];
      first = until + 1;
      if (shop === 0) continue;
      const { cash, hours } = splitBill(shop, atHome, prices);
      sink.series(line, from, end, prices.parts, cash, cash, shop);
      if (hours === 0) continue;
      if (prices.ownHour !== 0) sink.series(own, from, end, prices.ownTime, hours * prices.ownHour, 0, 0);
      if (sink.time === null) continue;
      for (let m = from; m <= end; m++) sink.time(prices.ownHour !== 0 ? own : line, m, hours);
    }
  };
