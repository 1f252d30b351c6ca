import { cardCredit, cardGrowth, cardUntilPaid } from '../cashflow/contracts/card.ts';
import { type Levels, levelAt } from '../cashflow/levels.ts';
import type { Bundle, BundleSum, ByReading, Line, Reading, Sink } from '../cashflow/posting.ts';
import { type MonthlyFlows, monthlySink } from '../cashflow/sinks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import type { Awaited } from '../plans/vehicle/selling.ts';
import { discountFactor, effective } from '../quantity/rate.ts';
import { remember } from '../quantity/remember.ts';

/** The flows of one way by month, the last month with what is owned then as a receipt and what is owed as a cost. */
export interface Evaluated {
  readonly plan: Plan;
  readonly flows: MonthlyFlows;
  readonly netPresentCost: ByReading<number>;
  /** Cash out of the household on the day, before any of it is put on a card; negative: in. */
  readonly cashOnTheDay: number;
  /** What savings do not cover and a card lends. */
  readonly onCard: readonly OnCard[];
}

/** Discount factors v^m of months 0..H at an annual effective rate. */
const discounting = remember(
  (rate: number, horizon: number) =>
    Float64Array.from({ length: horizon + 1 }, (_, m) => discountFactor(effective(rate), m)),
  (a, b) => a[0] === b[0] && a[1] === b[1],
);

const prefixes = new WeakMap<Levels, WeakMap<Float64Array, Float64Array>>();

/** What 1 a month at a family's price levels is worth today, summed from month 1 to m; index is the month. */
const presentUpTo = (levels: Levels, v: Float64Array): Float64Array => {
  const known = prefixes.get(levels)?.get(v);
  if (known) return known;
  const sums = new Float64Array(v.length);
  for (let m = 1; m < v.length; m++)
    sums[m] = (sums[m - 1] as number) + levelAt(levels, m) * (v[m] as number);
  const byFactors = prefixes.get(levels) ?? new WeakMap<Float64Array, Float64Array>();
  prefixes.set(levels, byFactors.set(v, sums));
  return sums;
};

/** Posts what would be owned and owed at the horizon: V(H) and what is unearned as receipts, debt as a cost. */
const postEnd = (plan: Plan, sink: Sink, horizon: number): void => {
  const line = (what: string, path: string, reason: string): Line => ({
    category: "what we'd own at the end",
    what,
    path,
    reason,
  });
  const cash = plan.valueAt(horizon, 'cash');
  if (cash !== 0) {
    const owned = line(
      plan.vehicleAtEnd,
      'value',
      'what selling it then would bring, net of its cost and hours',
    );
    // Selling takes the same own hours whoever mends it.
    const counted = plan.valueAt(horizon, 'counted');
    sink.post(owned, horizon, -counted, -cash, -counted);
  }
  const toCome = (reading: Reading): number => plan.toCome(horizon, reading);
  const inCash = toCome('cash');
  const inCounted = toCome('counted');
  if (inCash !== 0 || inCounted !== 0)
    sink.post(
      line(
        'paid ahead, or not paid to us yet',
        'to come',
        'the unused part of yearly bills; a price whose buyer has not paid yet',
      ),
      horizon,
      -inCounted,
      -inCash,
      -toCome('shop'),
    );
  const owed = plan.owedAt(horizon);
  if (owed !== 0)
    sink.post(line('still owed on it', 'loan', 'the debt of the last day'), horizon, owed, owed, owed);
};

/** What went on the card, and when: on the first day, and at a later change of vehicle. */
export interface OnCard {
  readonly month: number;
  /** Paid back over two years. */
  readonly short: ByReading<number>;
  /** Paid back at the end of month `until`, when the buyer of the old one pays. */
  readonly bridged: ByReading<number>;
  readonly until: number;
}

/** The part of what a change of vehicle lacks that a price to come covers, interest and all. */
export const bridgedBy = (
  awaited: Awaited | null,
  reading: 'cash' | 'shop',
  missing: number,
  cardRate: number,
): number => {
  if (awaited === null || missing <= 0) return 0;
  const brings = Math.max(0, awaited.price[reading] - awaited.payoff);
  return Math.min(missing, brings / cardGrowth(cardRate, awaited.comes - awaited.begun));
};

/** What the first day takes, and what of the money went on a card. */
interface Day {
  readonly cash: ByReading<number>;
  readonly onCard: readonly OnCard[];
}

/** Cash that savings do not cover, with own hands and with a shop doing the work. */
type Missing = Pick<ByReading<number>, 'cash' | 'shop'>;

const add = (to: Record<Reading, number>, more: ByReading<number>): void => {
  to.counted += more.counted;
  to.cash += more.cash;
  to.shop += more.shop;
};

/** A sink that passes everything on and adds up what is posted by itself, not as a series, in one month. */
const watched = (sink: Sink, month: number) => {
  const cash = { counted: 0, cash: 0, shop: 0 };
  const { whole } = sink;
  const watching: Sink = {
    post(line, at, counted, inCash, shop) {
      if (at === month) {
        cash.counted += counted;
        cash.cash += inCash;
        cash.shop += shop;
      }
      sink.post(line, at, counted, inCash, shop);
    },
    // A series is what recurs: energy, upkeep, payments. It is lived on, not saved for.
    series: sink.series,
    time: sink.time,
    stands: sink.stands,
    whole:
      whole &&
      ((bundle) => {
        if (!whole(bundle)) return false;
        if (bundle.month === month && bundle.sum !== null) add(cash, bundle.sum.posted);
        return true;
      }),
  };
  return { cash, sink: watching };
};

/**
 * Projects a plan into a sink: its contracts, the card for cash that savings do not cover on the first day and at a
 * later change of vehicle (spare money is saved up till then), and its end.
 */
export const project = (plan: Plan, sink: Sink, ctx: Context): Day => {
  const change = plan.changeOver;
  const today = watched(sink, 0);
  for (const contract of plan.contracts) contract(today.sink);
  const before = { ...today.cash };
  const later = change?.month === 0 ? today : watched(sink, change?.month ?? 0);
  for (const contract of change?.contracts ?? []) contract(later.sink);
  const { savings, spareEachMonth, cardRate } = ctx.inputs.household;
  const onCard: OnCard[] = [];
  if (savings !== null) {
    // Own hours are no cash: the card carries what the same hands have to pay, in both readings with own hands.
    // What a change lacks may be bridged; what the first day lacks besides is no part of it.
    const put = (
      month: number,
      { cash, shop }: Missing,
      awaited: Awaited | null,
      mayBeBridged: Missing = { cash, shop },
    ): void => {
      const bridge = {
        cash: bridgedBy(awaited, 'cash', Math.min(cash, mayBeBridged.cash), cardRate),
        shop: bridgedBy(awaited, 'shop', Math.min(shop, mayBeBridged.shop), cardRate),
      };
      const rest = { cash: Math.max(0, cash - bridge.cash), shop: Math.max(0, shop - bridge.shop) };
      const until = awaited?.comes ?? month;
      onCard.push({
        month,
        short: { counted: rest.cash, cash: rest.cash, shop: rest.shop },
        bridged: { counted: bridge.cash, cash: bridge.cash, shop: bridge.shop },
        until,
      });
      cardCredit(rest.cash, rest.shop, cardRate, month, ctx.horizon)(sink);
      cardUntilPaid(bridge.cash, bridge.shop, cardRate, month, until, ctx.horizon)(sink);
    };
    const missing = { cash: today.cash.cash - savings, shop: today.cash.shop - savings };
    // What the first day left over is there too; what it lacked is on the card already.
    const lacking = (first: number, at: number, month: number): number =>
      at + Math.min(0, first - savings) - spareEachMonth * month;
    if (change === null || change.month > 0) put(0, missing, plan.awaited);
    else
      put(0, missing, change.awaited, {
        cash: lacking(before.cash, today.cash.cash - before.cash, 0),
        shop: lacking(before.shop, today.cash.shop - before.shop, 0),
      });
    if (change && change.month > 0)
      put(
        change.month,
        {
          cash: lacking(today.cash.cash, later.cash.cash, change.month),
          shop: lacking(today.cash.shop, later.cash.shop, change.month),
        },
        change.awaited,
      );
  }
  postEnd(plan, sink, ctx.horizon);
  return { cash: today.cash, onCard };
};

/** Adds up present costs; `besides` is shown every posting as well, or what it takes as a whole. */
const presentSink = (
  sum: Record<Reading, number>,
  v: Float64Array,
  besides: Omit<Sink, 'time'> | null,
): Sink => ({
  post(line, month, counted, cash, shop) {
    const factor = v[month] as number;
    sum.counted += counted * factor;
    sum.cash += cash * factor;
    sum.shop += shop * factor;
    besides?.post(line, month, counted, cash, shop);
  },
  series(line, from, to, levels, counted, cash, shop) {
    const upTo = presentUpTo(levels, v);
    const factor = (upTo[to] as number) - (upTo[from - 1] as number);
    sum.counted += counted * factor;
    sum.cash += cash * factor;
    sum.shop += shop * factor;
    besides?.series(line, from, to, levels, counted, cash, shop);
  },
  time: null,
  stands: besides?.stands ?? null,
  whole(bundle) {
    if (besides !== null && !besides.whole?.(bundle)) return false;
    add(sum, bundleSum(bundle, v).present);
    return true;
  },
});

/** A bundle's sum at these factors, worked out once. */
const bundleSum = (bundle: Bundle, v: Float64Array): BundleSum => {
  if (bundle.sum?.factors === v) return bundle.sum;
  const present = { counted: 0, cash: 0, shop: 0 };
  const posted = { counted: 0, cash: 0, shop: 0 };
  const sink = presentSink(present, v, {
    post(_line, month, counted, cash, shop) {
      if (month !== bundle.month) return;
      posted.counted += counted;
      posted.cash += cash;
      posted.shop += shop;
    },
    series: () => undefined,
    stands: null,
    // One within another, which other plans or futures share as well.
    whole(inner) {
      if (inner.month === bundle.month) add(posted, bundleSum(inner, v).posted);
      return true;
    },
  });
  for (const contract of bundle.contracts) contract(sink);
  bundle.sum = { factors: v, present, posted };
  return bundle.sum;
};

/**
 * Net present cost of a plan, unrounded: all that a solver asks of it, so nothing else is kept.
 *
 * @param besides a sink that is shown every posting as well, for what else somebody wants to know of it
 */
export const presentCostOf = (plan: Plan, ctx: Context, besides: Sink | null = null): ByReading<number> => {
  const v = discounting(ctx.inputs.household.moneyEarns, ctx.horizon);
  const sum = { counted: 0, cash: 0, shop: 0 };
  project(plan, presentSink(sum, v, besides), ctx);
  return sum;
};

/** Evaluates one plan. */
export const evaluatePlan = (plan: Plan, ctx: Context): Evaluated => {
  const sink = monthlySink(ctx.horizon);
  const day = project(plan, sink, ctx);
  return {
    plan,
    flows: sink.flows,
    netPresentCost: presentCostOf(plan, ctx),
    cashOnTheDay: day.cash.cash,
    onCard: day.onCard,
  };
};
