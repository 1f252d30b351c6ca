/** What going on with ours takes, as long as it lasts: by month, and from a month on. */
import { owedAt } from '../../cashflow/contracts/loan.ts';
import { levelAt } from '../../cashflow/levels.ts';
import type { Sink } from '../../cashflow/posting.ts';
import { type Context, stillFor } from './context.ts';
import type { Treatments } from './neededWork.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import { holdPresent, presentLoan, presentWorth } from './presentVehicle.ts';
import { contractsOf } from './recipe.ts';

/** Amounts by month, in each reading. */
export type ByMonth = {
  readonly counted: Float64Array;
  readonly cash: Float64Array;
  readonly shop: Float64Array;
};

/** What holding ours takes by month, as long as it lasts; big bills left out. */
interface Held extends ByMonth {
  /** Of it, needed work that is put off. */
  readonly putOff: ByMonth;
}

export const rows = (horizon: number) => ({
  counted: new Float64Array(horizon + 1),
  cash: new Float64Array(horizon + 1),
  shop: new Float64Array(horizon + 1),
});

export const heldByMonth = (treatments: Treatments, ctx: Context): Held =>
  stillFor(ctx, `ours held, ${treatments.join()}`, (at) => {
    const all = rows(at.horizon);
    const putOff = rows(at.horizon);
    const add = (to: typeof all, m: number, counted: number, cash: number, shop: number): void => {
      to.counted[m] = (to.counted[m] as number) + counted;
      to.cash[m] = (to.cash[m] as number) + cash;
      to.shop[m] = (to.shop[m] as number) + shop;
    };
    const sink: Sink = {
      post({ category }, m, counted, cash, shop) {
        if (category === 'big bills') return;
        add(all, m, counted, cash, shop);
        if (category === 'work needed now') add(putOff, m, counted, cash, shop);
      },
      series(_line, from, to, levels, counted, cash, shop) {
        for (let m = from; m <= to; m++) {
          const level = levelAt(levels, m);
          add(all, m, counted * level, cash * level, shop * level);
        }
      },
      time: null,
      stands: null,
    };
    for (const contract of contractsOf(holdPresent(treatments, at.horizon, at), at)) contract(sink);
    return { ...all, putOff };
  });

export const READING = ['counted', 'cash', 'shop'] as const;

/**
 * What going on with ours costs from the end of each month, in money of that month, nothing ending it: to the end of
 * `until`, where its books are closed, with what it is then worth if that is the last day of all.
 */
export const goingOn = (treatments: Treatments, until: number, ctx: Context): ByMonth =>
  stillFor(ctx, `ours goes on to ${until}, ${treatments.join()}`, (at) => {
    const held = heldByMonth(treatments, at);
    const from = rows(at.horizon);
    const v = at.worthLater(1);
    for (const reading of READING) {
      let ahead = 0;
      if (until === at.horizon) {
        const loan = presentLoan(at);
        // Selling takes the same own hours whoever mends it.
        const value = presentWorth(treatments, until).from(at)(until)(
          reading === 'cash' ? 'cash' : 'counted',
        );
        ahead = (loan ? owedAt(loan, until) : 0) - value - presentUnearnedAt(until, at);
      }
      const list = from[reading];
      list[until] = ahead;
      for (let m = until; m > 0; m--) {
        const flow = held[reading][m] as number;
        // What would fall on the day it is replaced is not done for it.
        const spared = m === until && until < at.horizon ? (held.putOff[reading][m] as number) : 0;
        ahead = v * (ahead + flow - spared);
        list[m - 1] = ahead;
      }
    }
    return from;
  });
