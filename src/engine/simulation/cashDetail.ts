import { levelAt } from '../cashflow/levels.ts';
import { type Contract, KINDS, type Line, type Sink } from '../cashflow/posting.ts';

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
  /** Begins anew with what is the same in every future. */
  readonly startFrom: (same: Detail) => void;
}

/**
 * What comes at once, besides what comes in lumps: what a lease takes besides its payments (to start, to hand it back, to buy
 * it), and what pays the present loan off when the vehicle goes; the payments themselves come as a series. What a card lends
 * until the sale pays goes back at once too.
 */
const atOnce = ({ category, role }: Line): boolean =>
  KINDS[category].inLumps || category === 'lease' || role === 'loan paid off' || role === 'bridge';

const TWO_YEARS = 24;

/** A sink for one way's details, to be used for one future after another. */
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
    startFrom: (same) => {
      cash.set(same.cash);
      lumps.set(same.lumps);
      stops.set(same.stops);
      days.set(same.days);
      worst.bill = same.worst.bill;
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
        const lumpy = KINDS[line.category].inLumps;
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
    },
  };
};

/** What contracts that are the same in every future bring. */
export const detailOf = (contracts: readonly Contract[], horizon: number): Detail => {
  const detail = detailFor(horizon);
  for (const contract of contracts) contract(detail.sink);
  return detail;
};
