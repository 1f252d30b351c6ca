/** Rb: what it costs from a month on to get another vehicle, once ours has broken down for good in that month. */
import { levelAt } from '../../cashflow/levels.ts';
import type { ByReading, Sink } from '../../cashflow/posting.ts';
import { type Between, inCurves, inLines, type Weights } from './betweenMonths.ts';
import { perReading } from './bigBills.ts';
import type { Bought } from './boughtVehicle.ts';
import { NOTHING } from './byReading.ts';
import { cardAdds } from './cardAdds.ts';
import { boughtThen, type SaleOwing, type Sold, sellingPays } from './changeOver.ts';
import { type Context, stillFor } from './context.ts';
import { gettingAbout } from './gettingAbout.ts';
import { offerings } from './likeOurs.ts';
import type { Treatment, Treatments } from './neededWork.ts';
import { replacementClosed } from './openOptions.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import type { Standing } from './plan.ts';
import { contractsOf, type Piece, recipe } from './recipe.ts';
import { soldWalking, valueWalking } from './retirement.ts';

/** A part of a change of vehicle: what it comes to, in money of its month, and what its day takes in cash. */
interface Part {
  readonly cost: ByReading<number>;
  readonly day: { readonly cash: number; readonly shop: number };
}

type Amounts = { counted: number; cash: number; shop: number };

/** What pieces post from a month on, and what is owned and owed at the end. */
const partFrom = (month: number, pieces: readonly Piece[], end: Standing | null, ctx: Context): Part => {
  const { horizon } = ctx;
  const cost: Amounts = { counted: 0, cash: 0, shop: 0 };
  const day = { cash: 0, shop: 0 };
  const add = (m: number, counted: number, cash: number, shop: number): void => {
    const v = ctx.worthLater(m - month);
    cost.counted += counted * v;
    cost.cash += cash * v;
    cost.shop += shop * v;
  };
  const sink: Sink = {
    post(_line, m, counted, cash, shop) {
      if (m === month) {
        day.cash += cash;
        day.shop += shop;
      }
      add(m, counted, cash, shop);
    },
    series(_line, from, to, levels, counted, cash, shop) {
      for (let m = from; m <= to; m++) {
        const level = levelAt(levels, m);
        add(m, counted * level, cash * level, shop * level);
      }
    },
    time: null,
    stands: null,
  };
  for (const contract of contractsOf(pieces, ctx)) contract(sink);
  if (end !== null) {
    const [value, toCome] = [end.valueAt(ctx, horizon), end.toCome(ctx, horizon)];
    const owed = end.owedAt(ctx, horizon);
    // Selling takes the same own hours whoever mends it.
    const shop = value('counted');
    add(
      horizon,
      owed - value('counted') - toCome('counted'),
      owed - value('cash') - toCome('cash'),
      owed - shop - toCome('shop'),
    );
  }
  return { cost, day };
};

/** The same by month. */
interface Parts {
  readonly counted: Float64Array;
  readonly cash: Float64Array;
  readonly shop: Float64Array;
  readonly dayCash: Float64Array;
  readonly dayShop: Float64Array;
}

/** By month before the last, from what it comes to at the nodes; in the months of inspections that may end ours, itself. */
const byMonth = (
  partAt: (month: number) => Part,
  betweenFor: (horizon: number) => Between,
  ctx: Context,
): Parts => {
  const { horizon } = ctx;
  const { nodes, at } = betweenFor(horizon);
  const parts = nodes.map(partAt);
  const rows = { counted: zeros(horizon), cash: zeros(horizon), shop: zeros(horizon) };
  const [dayCash, dayShop] = [zeros(horizon), zeros(horizon)];
  for (let m = 1; m < horizon; m++)
    for (const [node, weight] of at[m] as Weights) {
      const { cost, day } = parts[node] as Part;
      rows.counted[m] = (rows.counted[m] as number) + weight * cost.counted;
      rows.cash[m] = (rows.cash[m] as number) + weight * cost.cash;
      rows.shop[m] = (rows.shop[m] as number) + weight * cost.shop;
      dayCash[m] = (dayCash[m] as number) + weight * day.cash;
      dayShop[m] = (dayShop[m] as number) + weight * day.shop;
    }
  for (const m of inspectedIn(ctx)) {
    const { cost, day } = partAt(m);
    rows.counted[m] = cost.counted;
    rows.cash[m] = cost.cash;
    rows.shop[m] = cost.shop;
    dayCash[m] = day.cash;
    dayShop[m] = day.shop;
  }
  return { ...rows, dayCash, dayShop };
};

/** The months before the last whose inspection may end ours. */
const inspectedIn = (ctx: Context): number[] => {
  const { vehicle } = ctx.origin.inputs;
  if (vehicle.ends.length === 0) return [];
  return Array.from({ length: ctx.horizon }, (_, m) => m).filter(
    (m) =>
      m > 0 && m >= vehicle.inspection.nextDue && (m - Math.max(1, vehicle.inspection.nextDue)) % 12 === 0,
  );
};

const zeros = (horizon: number): Float64Array => new Float64Array(horizon + 1);

interface Leaving {
  readonly sold: Sold;
  readonly off: SaleOwing;
}

const leavings = new Map<string, Leaving>();

/** Letting ours go at the end of a month, broken down, however much it comes to: the same recipes for whoever asks. */
const leavingIn = (month: number, treatments: Treatments): Leaving => {
  const key = `${month} ${treatments.join()}`;
  const known = leavings.get(key);
  if (known) return known;
  const sold = soldWalking(month, 'broken', treatments);
  const leaving = { sold, off: sellingPays(month, sold) };
  leavings.set(key, leaving);
  return leaving;
};

/** What comes back when ours goes, broken down, at the end of a month: its price, and the unused part of its bills. */
const comesBack = (treatments: Treatments, month: number, ctx: Context): ByReading<number> => {
  const worth = valueWalking(month, 'broken', treatments, ctx);
  const unearned = presentUnearnedAt(month, ctx);
  return perReading((reading) => worth(reading) + unearned);
};

const plus = ({ cost, day }: Part, { counted, cash, shop }: ByReading<number>): Part => ({
  cost: { counted: cost.counted + counted, cash: cost.cash + cash, shop: cost.shop + shop },
  day: { cash: day.cash + cash, shop: day.shop + shop },
});

/**
 * Letting ours go in a hurry, and a loan that it pays off; what comes back is left out, and taken off month by month, for
 * it moves by steps: as bills fall due, and as work that was put off is done.
 */
const leavingOf = (treatments: Treatments, ctx: Context): Parts =>
  stillFor(ctx, `leaving, ${treatments.join()}`, (at) =>
    byMonth(
      (month) => {
        const { sold, off } = leavingIn(month, treatments);
        const open: Standing = { valueAt: () => NOTHING, toCome: off.toCome, owedAt: off.owedAt };
        const part = partFrom(month, [...sold.pieces, ...off.pieces], open, at);
        return plus(part, comesBack(treatments, month, at));
      },
      inLines,
      at,
    ),
  );

/** What can follow: what is bought, by its place; null for doing without. */
type Next = number | null;

/** What is bought, however much it comes to. */
const boughtIn = (next: number, month: number, ctx: Context): Bought =>
  stillFor(ctx, `bought ${next} ${month}`, (at) => {
    const { sold, off } = leavingIn(
      month,
      at.inputs.workNeeded.map((): Treatment => 'done'),
    );
    return boughtThen(next, month, sold, off, at);
  });

/** Getting what follows, ours gone. */
const gettingOf = (next: Next, ctx: Context): Parts =>
  stillFor(ctx, `getting ${next}`, (at) =>
    byMonth(
      (month) => {
        if (next === null) return partFrom(month, [recipe(gettingAbout, month + 1)], null, at);
        const bought = boughtIn(next, month, at);
        return partFrom(month, bought.pieces, bought, at);
      },
      inCurves,
      at,
    ),
  );

/** What giving ours up at the end of each month before the last costs from then on, in money of that month, and what follows. */
export interface WalkingAway {
  readonly counted: Float64Array;
  readonly cash: Float64Array;
  readonly shop: Float64Array;
  /** What is cheapest with own time counted; with a shop doing everything it may be another. */
  readonly next: readonly Next[];
}

/**
 * The cheapest of all that can follow, bought in a hurry; what savings lack is put on the card. Doing without follows only
 * where nothing that can be bought serves from then on.
 *
 * @param firstDay what the first day takes in cash, own hands and shop: savings left then help on the day of the change
 */
export const walkingAway = (
  treatments: Treatments,
  firstDay: { readonly cash: number; readonly shop: number },
  ctx: Context,
): WalkingAway => {
  const { horizon } = ctx;
  const { savings, spareEachMonth } = ctx.inputs.household;
  const left = leavingOf(treatments, ctx);
  const [counted, cash, shop] = [zeros(horizon), zeros(horizon), zeros(horizon)];
  const follows: Next[] = new Array(horizon + 1).fill(null);
  const gets = offerings(ctx).map((index) => ({ index, parts: gettingOf(index, ctx.origin) }));
  const serves = (index: number, month: number): boolean =>
    ctx.facts.needs.length === 0 || replacementClosed(index, month, ctx) === null;
  for (let m = 1; m < horizon; m++) {
    const back = comesBack(treatments, m, ctx);
    const { off } = leavingIn(m, treatments);
    const onCard = (reading: 'cash' | 'shop', day: number): number => {
      if (savings === null) return 0;
      const lacking = day - back[reading] + Math.min(0, firstDay[reading] - savings) - spareEachMonth * m;
      if (lacking <= 0) return 0;
      return cardAdds(lacking, reading, off.awaited(ctx), m, horizon, ctx);
    };
    counted[m] = Number.POSITIVE_INFINITY;
    shop[m] = Number.POSITIVE_INFINITY;
    const consider = (index: Next, got: Parts): void => {
      const card = onCard('cash', (left.dayCash[m] as number) + (got.dayCash[m] as number));
      const cost = (left.counted[m] as number) - back.counted + (got.counted[m] as number) + card;
      if (cost < (counted[m] as number)) {
        counted[m] = cost;
        cash[m] = (left.cash[m] as number) - back.cash + (got.cash[m] as number) + card;
        follows[m] = index;
      }
      const cardAtShop = onCard('shop', (left.dayShop[m] as number) + (got.dayShop[m] as number));
      const atShop = (left.shop[m] as number) - back.shop + (got.shop[m] as number) + cardAtShop;
      shop[m] = Math.min(shop[m] as number, atShop);
    };
    for (const { index, parts } of gets) if (serves(index, m)) consider(index, parts);
    if (counted[m] === Number.POSITIVE_INFINITY) consider(null, gettingOf(null, ctx.origin));
  }
  return { counted, cash, shop, next: follows };
};
