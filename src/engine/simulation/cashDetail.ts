import { isBridge } from '../cashflow/contracts/card.ts';
import { levelAt } from '../cashflow/levels.ts';
import type { Bundle, Category, Line, Sink } from '../cashflow/posting.ts';

/**
 * What is asked of a way besides its cost, gathered from the same postings: cash by month, lumps by month, the largest
 * repair bill, roadside stops and days without. Months 0..H; cash, so own hours are free.
 */
export interface Detail {
  readonly sink: Sink;
  readonly cash: Float64Array;
  /** Of the cash: what does not come every month. */
  readonly lumps: Float64Array;
  /** The largest single repair bill in the first two years. */
  readonly worst: { bill: number };
  readonly stops: Float64Array;
  readonly days: Float64Array;
  readonly clear: () => void;
}

/** What comes in lumps after the first day; energy, payments, insurance and the like are lived on. */
const isLumpy = (category: Category): boolean =>
  category === 'repairs' ||
  category === 'scheduled upkeep' ||
  category === 'work needed now' ||
  category === 'buying' ||
  category === 'selling the old one';

/**
 * What a lease takes besides its payments (to start, to hand it back, to buy it), and what pays the present loan off when
 * the vehicle goes, come at once; the payments themselves come as a series. What a card lends until the sale pays goes
 * back at once too.
 */
const atOnce = (line: Line): boolean =>
  isLumpy(line.category) ||
  line.category === 'lease' ||
  (line.category === 'loan' && line.path === 'vehicle.loan') ||
  isBridge(line);

const TWO_YEARS = 24;

/** A sink for one way's details, to be cleared and used for the next future. */
export const detailFor = (horizon: number): Detail => {
  const cash = new Float64Array(horizon + 1);
  const lumps = new Float64Array(horizon + 1);
  const stops = new Float64Array(horizon + 1);
  const days = new Float64Array(horizon + 1);
  const worst = { bill: 0 };
  return {
    cash,
    lumps,
    stops,
    days,
    worst,
    clear: () => {
      for (const all of [cash, lumps, stops, days]) all.fill(0);
      worst.bill = 0;
    },
    sink: {
      post(line, month, _counted, inCash) {
        if (line.category === "what we'd own at the end") return;
        cash[month] = (cash[month] as number) + inCash;
        if (month === 0 || !atOnce(line)) return;
        lumps[month] = (lumps[month] as number) + inCash;
        if (line.category === 'repairs' && month <= TWO_YEARS && inCash > worst.bill) worst.bill = inCash;
      },
      series(line, from, to, levels, _counted, inCash) {
        const lumpy = isLumpy(line.category);
        for (let m = from; m <= to; m++) {
          const amount = inCash * levelAt(levels, m);
          cash[m] = (cash[m] as number) + amount;
          if (lumpy) lumps[m] = (lumps[m] as number) + amount;
        }
      },
      time: null,
      stands(month, stopped, without) {
        stops[month] = (stops[month] as number) + stopped;
        days[month] = (days[month] as number) + without;
      },
      whole(bundle) {
        if (!bundle.lasts) return false;
        const its = detailOf(bundle, horizon);
        addUpTo(its.last.cash, cash, its.cash);
        addUpTo(its.last.lumps, lumps, its.lumps);
        addUpTo(its.last.stops, stops, its.stops);
        addUpTo(its.last.days, days, its.days);
        worst.bill = Math.max(worst.bill, its.worst.bill);
        return true;
      },
    },
  };
};

const addUpTo = (last: number, all: Float64Array, more: Float64Array): void => {
  for (let m = 0; m <= last; m++) all[m] = (all[m] as number) + (more[m] as number);
};

/** What a bundle brings, and up to which month there is any of it; -1: there is none. */
interface Gathered extends Detail {
  readonly last: Readonly<Record<'cash' | 'lumps' | 'stops' | 'days', number>>;
}

const known = new WeakMap<Bundle, Gathered>();

/** The details of contracts that are the same in one future after another, gathered once. */
const detailOf = (bundle: Bundle, horizon: number): Gathered => {
  const before = known.get(bundle);
  if (before) return before;
  const detail = detailFor(horizon);
  for (const contract of bundle.contracts) contract(detail.sink);
  const lastOf = (all: Float64Array): number => all.findLastIndex((n) => n !== 0);
  const { cash, lumps, stops, days } = detail;
  const last = { cash: lastOf(cash), lumps: lastOf(lumps), stops: lastOf(stops), days: lastOf(days) };
  const its = { ...detail, last };
  known.set(bundle, its);
  return its;
};
