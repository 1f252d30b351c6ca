import type { Levels } from '../cashflow/levels.ts';
import type { Sink } from '../cashflow/posting.ts';
import { presentUpTo } from './project.ts';

/** What postings come to: in today's money by reading, and what of them falls by itself in one month, in cash. */
export class Sums implements Sink {
  counted = 0;
  cash = 0;
  shop = 0;
  dayCash = 0;
  dayShop = 0;
  readonly time = null;
  readonly stands = null;
  discounts: Float64Array;
  /** The month whose cash is asked for; -1: none. */
  readonly day: number;

  constructor(day: number, discounts: Float64Array) {
    this.day = day;
    this.discounts = discounts;
  }

  clear(discounts: Float64Array): void {
    this.counted = 0;
    this.cash = 0;
    this.shop = 0;
    this.dayCash = 0;
    this.dayShop = 0;
    this.discounts = discounts;
  }

  post(_line: unknown, month: number, counted: number, cash: number, shop: number): void {
    const factor = this.discounts[month] as number;
    this.counted += counted * factor;
    this.cash += cash * factor;
    this.shop += shop * factor;
    if (month !== this.day) return;
    this.dayCash += cash;
    this.dayShop += shop;
  }

  series(
    _line: unknown,
    from: number,
    to: number,
    levels: Levels,
    counted: number,
    cash: number,
    shop: number,
  ): void {
    const upTo = presentUpTo(levels, this.discounts);
    const factor = (upTo[to] as number) - (upTo[from - 1] as number);
    this.counted += counted * factor;
    this.cash += cash * factor;
    this.shop += shop * factor;
  }

  add(more: Sums): void {
    this.counted += more.counted;
    this.cash += more.cash;
    this.shop += more.shop;
    this.dayCash += more.dayCash;
    this.dayShop += more.dayShop;
  }
}

/** Hears everything, so that a contract reads all that it ever does. */
export const LISTENING: Sink = {
  post: () => undefined,
  series: () => undefined,
  time: () => undefined,
  stands: () => undefined,
};
