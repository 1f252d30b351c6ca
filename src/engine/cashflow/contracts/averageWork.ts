import { levelAt } from '../levels.ts';
import type { Contract, Line } from '../posting.ts';
import type { WorkPrices } from './work.ts';

/** How a household meets work that is known only as a shop's yearly bill. */
export interface AtHome {
  /** Share of it, by cost, done with own hands. */
  readonly share: number;
  /** Parts as a share of a shop's bill. */
  readonly partsShare: number;
}

/**
 * Work known only on average: `bill(m)` is what a shop would charge in month m after `start`, at the prices of the day
 * of the decision. What the household does itself costs the parts, and hours in place of the labour.
 */
export const averageWork =
  (
    line: Line,
    bill: (month: number) => number,
    atHome: AtHome,
    prices: WorkPrices,
    start: number,
    to: number,
  ): Contract =>
  (sink) => {
    const labour = atHome.share * (1 - atHome.partsShare);
    for (let m = 1; m <= to - start; m++) {
      const base = bill(m);
      if (base === 0) continue;
      const at = start + m;
      const shop = base * levelAt(prices.parts, at);
      const cash = shop * (1 - labour);
      const hours = prices.shopHour > 0 ? (base * labour) / prices.shopHour : 0;
      sink.post(line, at, cash + hours * prices.ownHour * levelAt(prices.ownTime, at), cash, shop);
      if (hours !== 0) sink.time(line, at, hours);
    }
  };
