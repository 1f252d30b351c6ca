import { type Levels, levelAt } from './levels.ts';
import type { Line, Sink } from './posting.ts';

/** A series written out month by month, for sinks that keep every posting. */
const writtenOut =
  (post: Sink['post']): Sink['series'] =>
  (line, from, to, levels: Levels, counted, cash, shop) => {
    for (let m = from; m <= to; m++) {
      const level = levelAt(levels, m);
      post(line, m, counted * level, cash * level, shop * level);
    }
  };

/** Flows of one plan by month 0..H, in the three readings, and own hours; what the solver and the charts need. */
export interface MonthlyFlows {
  readonly counted: Float64Array;
  readonly cash: Float64Array;
  readonly shop: Float64Array;
  readonly hours: Float64Array;
}

/** A sink that keeps only the sums by month: no reasons, no rows. Month 0 to `horizon`. */
export const monthlySink = (horizon: number): Sink & { readonly flows: MonthlyFlows } => {
  const flows: MonthlyFlows = {
    counted: new Float64Array(horizon + 1),
    cash: new Float64Array(horizon + 1),
    shop: new Float64Array(horizon + 1),
    hours: new Float64Array(horizon + 1),
  };
  const post: Sink['post'] = (_line, month, counted, cash, shop) => {
    flows.counted[month] = (flows.counted[month] as number) + counted;
    flows.cash[month] = (flows.cash[month] as number) + cash;
    flows.shop[month] = (flows.shop[month] as number) + shop;
  };
  return {
    flows,
    post,
    series: writtenOut(post),
    stands: null,
    time(_line, month, hours) {
      flows.hours[month] = (flows.hours[month] as number) + hours;
    },
  };
};

/** One posting as it was made, before it is rounded for print. */
export interface Posting {
  readonly line: Line;
  readonly month: number;
  readonly counted: number;
  readonly cash: number;
  readonly shop: number;
  readonly hours: number;
}

/** A sink that keeps every posting with its reason. */
export const postingSink = (): Sink & { readonly postings: Posting[] } => {
  const postings: Posting[] = [];
  const post: Sink['post'] = (line, month, counted, cash, shop) => {
    postings.push({ line, month, counted, cash, shop, hours: 0 });
  };
  return {
    postings,
    post,
    series: writtenOut(post),
    stands: null,
    time(line, month, hours) {
      const at = postings.findLastIndex((one) => one.line === line && one.month === month);
      const found = postings[at];
      if (found) postings[at] = { ...found, hours: found.hours + hours };
      else postings.push({ line, month, counted: 0, cash: 0, shop: 0, hours });
    },
  };
};
