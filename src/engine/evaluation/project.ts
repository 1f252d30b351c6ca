import { cardCredit, cardUntilPaid } from '../cashflow/contracts/card.ts';
import { type Levels, levelAt } from '../cashflow/levels.ts';
import type { ByReading, Contract, Line, Reading, Sink } from '../cashflow/posting.ts';
import { type MonthlyFlows, monthlySink } from '../cashflow/sinks.ts';
import { bridgedBy } from '../plans/vehicle/cardAdds.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { type AwaitedFrom, type Plan, WHOLE } from '../plans/vehicle/plan.ts';
import { contractsOf, type Piece, recipe } from '../plans/vehicle/recipe.ts';
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
export const presentUpTo = (levels: Levels, v: Float64Array): Float64Array => {
  const known = prefixes.get(levels)?.get(v);
  if (known) return known;
  const sums = new Float64Array(v.length);
  for (let m = 1; m < v.length; m++)
    sums[m] = (sums[m - 1] as number) + levelAt(levels, m) * (v[m] as number);
  const byFactors = prefixes.get(levels) ?? new WeakMap<Float64Array, Float64Array>();
  prefixes.set(levels, byFactors.set(v, sums));
  return sums;
};

const END = "what we'd own at the end";

const atEnd = (what: string, path: string, reason: string): Line => ({ category: END, what, path, reason });

/** What the vehicle that is there at the horizon would bring, as a receipt. */
const ownedAtEnd = (ctx: Context, plan: Plan): Contract => {
  const { horizon } = ctx;
  const why = 'what selling it then would bring, net of its cost and hours';
  const owned: Line = { ...atEnd(plan.vehicleAtEnd, 'value', why), role: 'owned' };
  return (sink) => {
    const value = plan.valueAt(ctx, horizon);
    const [cash, counted] = [value('cash'), value('counted')];
    // Selling takes the same own hours whoever mends it.
    if (cash !== 0) sink.post(owned, horizon, -counted, -cash, -value('shop'));
  };
};

/** What is paid ahead then, or has not been paid to us yet. */
const toComeAtEnd = (ctx: Context, plan: Plan): Contract => {
  const { horizon } = ctx;
  const why = 'the unused part of yearly bills; a price whose buyer has not paid yet';
  const line = atEnd('paid ahead, or not paid to us yet', 'to come', why);
  return (sink) => {
    const toCome = plan.toCome(ctx, horizon);
    const [cash, counted] = [toCome('cash'), toCome('counted')];
    if (cash !== 0 || counted !== 0) sink.post(line, horizon, -counted, -cash, -toCome('shop'));
  };
};

/** The debt of the last day, as a cost. */
const owedAtEnd = (ctx: Context, plan: Plan): Contract => {
  const { horizon } = ctx;
  const line = atEnd('still owed on it', 'loan', 'the debt of the last day');
  return (sink) => {
    const owed = plan.owedAt(ctx, horizon);
    if (owed !== 0) sink.post(line, horizon, owed, owed, owed);
  };
};

/** What would be owned and owed at the horizon, before there are numbers. */
export const endPieces = (plan: Plan): Piece[] => [
  recipe((ctx) => [ownedAtEnd(ctx, plan)]),
  recipe((ctx) => [toComeAtEnd(ctx, plan)]),
  recipe((ctx) => [owedAtEnd(ctx, plan)]),
];

/** What went on the card, and when: on the first day, and at a later change of vehicle. */
export interface OnCard {
  readonly month: number;
  /** Paid back over two years. */
  readonly short: ByReading<number>;
  /** Paid back at the end of month `until`, when the buyer of the old one pays. */
  readonly bridged: ByReading<number>;
  readonly until: number;
}

/** Cash that savings do not cover, with own hands and with a shop doing the work. */
type Missing = Pick<ByReading<number>, 'cash' | 'shop'>;

/** What the days of a plan take in cash, posted by itself: what recurs is lived on, not saved for. */
export interface DaysCash {
  /** The first day, what belongs to a change of vehicle on that day left out. */
  readonly today: Missing;
  /** What a change of vehicle takes on its day. */
  readonly change: Missing;
}

/**
 * The card for cash that savings do not cover on the first day and at a later change of vehicle; spare money is saved up
 * till then.
 */
export const cardFor = (
  plan: Pick<Plan, 'changeOver' | 'awaited'>,
  { today, change: later }: DaysCash,
  ctx: Context,
): { readonly onCard: readonly OnCard[]; readonly contracts: readonly Contract[] } => {
  const { savings, spareEachMonth, cardRate } = ctx.inputs.household;
  const onCard: OnCard[] = [];
  const contracts: Contract[] = [];
  if (savings === null) return { onCard, contracts };
  const change = plan.changeOver;
  // Own hours are no cash: the card carries what the same hands have to pay, in both readings with own hands.
  // What a change lacks may be bridged; what the first day lacks besides is no part of it.
  const put = (
    month: number,
    { cash, shop }: Missing,
    awaitedFrom: AwaitedFrom,
    mayBeBridged: Missing = { cash, shop },
  ): void => {
    const awaited = awaitedFrom(ctx);
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
    const share = change && month > 0 && month === change.month ? change.share(ctx) : WHOLE();
    const part =
      (contract: Contract): Contract =>
      (sink) =>
        contract(scaled(sink, share));
    contracts.push(
      part(cardCredit(rest.cash, rest.shop, cardRate, month, ctx.horizon)),
      part(cardUntilPaid(bridge.cash, bridge.shop, cardRate, month, until, ctx.horizon)),
    );
  };
  const lacks = ({ cash, shop }: Missing): boolean => cash > 0 || shop > 0;
  const first =
    change?.month === 0 ? { cash: today.cash + later.cash, shop: today.shop + later.shop } : today;
  const missing = { cash: first.cash - savings, shop: first.shop - savings };
  // What the first day left over is there too; what it lacked is on the card already.
  const lacking = (reading: 'cash' | 'shop', month: number): number =>
    later[reading] + Math.min(0, today[reading] - savings) - spareEachMonth * month;
  const lackingAt = (month: number): Missing => ({
    cash: lacking('cash', month),
    shop: lacking('shop', month),
  });
  if (lacks(missing)) {
    if (change?.month === 0) put(0, missing, change.awaited, lackingAt(0));
    else put(0, missing, plan.awaited);
  }
  if (change && change.month > 0) {
    const then = lackingAt(change.month);
    if (lacks(then)) put(change.month, then, change.awaited);
  }
  return { onCard, contracts };
};

/** A sink that passes a part of everything on, in each reading its own. */
const scaled = (sink: Sink, share: ByReading<number>): Sink =>
  share === WHOLE()
    ? sink
    : {
        post: (line, month, counted, cash, shop) =>
          sink.post(line, month, counted * share.counted, cash * share.cash, shop * share.shop),
        series: (line, from, to, levels, counted, cash, shop) =>
          sink.series(line, from, to, levels, counted * share.counted, cash * share.cash, shop * share.shop),
        time: sink.time && ((line, month, hours) => sink.time?.(line, month, hours * share.counted)),
        stands:
          sink.stands &&
          ((month, stops, days) => sink.stands?.(month, stops * share.counted, days * share.counted)),
      };

/** A sink that passes everything on and adds up what is posted by itself, not as a series, in one month. */
const watched = (sink: Sink, month: number) => {
  const cash = { cash: 0, shop: 0 };
  const watching: Sink = {
    post(line, at, counted, inCash, shop) {
      if (at === month) {
        cash.cash += inCash;
        cash.shop += shop;
      }
      sink.post(line, at, counted, inCash, shop);
    },
    series: sink.series,
    time: sink.time,
    stands: sink.stands,
  };
  return { cash, sink: watching };
};

/** What the first day takes in cash, and what of the money went on a card. */
interface Day {
  readonly cash: Missing;
  readonly onCard: readonly OnCard[];
}

/** Projects a plan into a sink: its contracts, the card, and its end. */
export const project = (plan: Plan, sink: Sink, ctx: Context): Day => {
  const change = plan.changeOver;
  const today = watched(sink, 0);
  for (const contract of contractsOf(plan.pieces, ctx)) contract(today.sink);
  const share = change?.share(ctx) ?? WHOLE();
  const later = watched(scaled(sink, share), change?.month ?? 0);
  for (const contract of contractsOf(change?.pieces ?? [], ctx)) contract(later.sink);
  const { onCard, contracts } = cardFor(plan, { today: today.cash, change: later.cash }, ctx);
  for (const contract of contracts) contract(sink);
  for (const atTheEnd of [ownedAtEnd, toComeAtEnd, owedAtEnd]) atTheEnd(ctx, plan)(sink);
  const cash =
    change?.month === 0
      ? { cash: today.cash.cash + later.cash.cash, shop: today.cash.shop + later.cash.shop }
      : today.cash;
  return { cash, onCard };
};

/** Adds up present costs; `besides` is shown every posting as well. */
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
});

/** What 1 in each month 0..H is worth on the day of the decision. */
export const discountsOf = (ctx: Context): Float64Array =>
  discounting(ctx.inputs.household.moneyEarns, ctx.horizon);

/**
 * Net present cost of a plan, unrounded: all that a solver asks of it, so nothing else is kept.
 *
 * @param besides a sink that is shown every posting as well, for what else somebody wants to know of it
 */
export const presentCostOf = (plan: Plan, ctx: Context, besides: Sink | null = null): ByReading<number> => {
  const sum = { counted: 0, cash: 0, shop: 0 };
  project(plan, presentSink(sum, discountsOf(ctx), besides), ctx);
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
