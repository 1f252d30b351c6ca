/** Rb: what it costs from a month on to get another vehicle, once ours has broken down for good in that month. */
import { levelAt } from '../../cashflow/levels.ts';
import type { ByReading, Sink } from '../../cashflow/posting.ts';
import { remember } from '../../quantity/remember.ts';
import { perReading } from './bigBills.ts';
import type { Bought } from './boughtVehicle.ts';
import { NOTHING } from './byReading.ts';
import { cardAdds } from './cardAdds.ts';
import { boughtThen, type SaleOwing, type Sold, sellingPays } from './changeOver.ts';
import { type Context, onceFor, stillFor } from './context.ts';
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

/**
 * Months at which a change of vehicle is worked out: the middles of years, two years apart where one looks far. Between
 * them it is taken from the parabola through the three nearest, for prices fall and rise smoothly; and where yearly bills
 * do not, the middle of a year has their mean.
 */
const nodesOf = (horizon: number): number[] => {
  const apart = horizon >= 54 ? 24 : 12;
  const nodes: number[] = [];
  for (let m = 6; m < horizon; m += apart) nodes.push(m);
  return nodes.length > 0 ? nodes : horizon > 1 ? [Math.floor(horizon / 2)] : [];
};

/** What each of the nodes counts for at a month: Lagrange's weights of the three nearest, or of as many as there are. */
const weightsAt = (
  nodes: readonly number[],
  month: number,
): readonly (readonly [node: number, weight: number])[] => {
  const nearest = nodes.findIndex((node) => month <= node);
  const last = nodes.length - 1;
  const from = Math.max(0, Math.min(last - 2, (nearest < 0 ? last : nearest) - 1));
  const used = nodes.slice(from, from + 3);
  return used.map((node, i) => [
    from + i,
    used.reduce(
      (product, other) => (other === node ? product : (product * (month - other)) / (node - other)),
      1,
    ),
  ]);
};

const weightsFor = remember(
  (horizon: number) => {
    const nodes = nodesOf(horizon);
    return { nodes, at: Array.from({ length: horizon }, (_, month) => weightsAt(nodes, month)) };
  },
  ([a], [b]) => a === b,
  8,
);

/** By month before the last, from what it comes to at the nodes. */
const byMonth = (partAt: (month: number) => Part, horizon: number): ((month: number) => Part) => {
  const { nodes, at } = weightsFor(horizon);
  const parts = nodes.map(partAt);
  return (month) => {
    const cost: Amounts = { counted: 0, cash: 0, shop: 0 };
    const day = { cash: 0, shop: 0 };
    for (const [node, weight] of at[month] ?? []) {
      const part = parts[node] as Part;
      cost.counted += weight * part.cost.counted;
      cost.cash += weight * part.cost.cash;
      cost.shop += weight * part.cost.shop;
      day.cash += weight * part.day.cash;
      day.shop += weight * part.day.shop;
    }
    return { cost, day };
  };
};

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

const plus = ({ cost, day }: Part, { counted, cash, shop }: ByReading<number>, times: 1 | -1): Part => ({
  cost: {
    counted: cost.counted + times * counted,
    cash: cost.cash + times * cash,
    shop: cost.shop + times * shop,
  },
  day: { cash: day.cash + times * cash, shop: day.shop + times * shop },
});

/**
 * Letting ours go in a hurry, and a loan that it pays off; what comes back is left out, and taken off month by month, for
 * it moves by steps: as bills fall due, and as work that was put off is done.
 */
const leavingOf = (treatments: Treatments, ctx: Context): ((month: number) => Part) =>
  stillFor(ctx, `leaving, ${treatments.join()}`, (at) =>
    byMonth((month) => {
      const { sold, off } = leavingIn(month, treatments);
      const open: Standing = { valueAt: () => NOTHING, toCome: off.toCome, owedAt: off.owedAt };
      const part = partFrom(month, [...sold.pieces, ...off.pieces], open, at);
      return plus(part, comesBack(treatments, month, at), 1);
    }, at.horizon),
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
const gettingOf = (next: Next, ctx: Context): ((month: number) => Part) =>
  stillFor(ctx, `getting ${next}`, (at) =>
    byMonth((month) => {
      if (next === null) return partFrom(month, [recipe(gettingAbout, month + 1)], null, at);
      const bought = boughtIn(next, month, at);
      return partFrom(month, bought.pieces, bought, at);
    }, at.horizon),
  );

/** What can follow at the end of a month: what serves from then on; doing without only where nothing does. */
const openAt = (month: number, ctx: Context): readonly Next[] => {
  const all = onceFor(ctx, 'what can be bought', () => offerings(ctx));
  if (ctx.facts.needs.length === 0 && all.length > 0) return all;
  const open = all.filter((index) => replacementClosed(index, month, ctx) === null);
  return open.length > 0 ? open : [null];
};

/** What giving ours up at the end of a month costs from then on, by reading, and what follows. */
export interface WalkingAway {
  readonly cost: ByReading<number>;
  /** What is cheapest with own time counted; with a shop doing everything it may be another. */
  readonly next: Next;
}

/**
 * The cheapest of all that can follow, bought in a hurry; what savings lack is put on the card.
 *
 * @param firstDay what the first day takes in cash, own hands and shop: savings left then help on the day of the change
 * @param month 1..H-1
 */
export const walkingAway = (
  treatments: Treatments,
  month: number,
  firstDay: Part['day'],
  ctx: Context,
): WalkingAway => {
  const { savings, spareEachMonth } = ctx.inputs.household;
  const left = plus(leavingOf(treatments, ctx)(month), comesBack(treatments, month, ctx), -1);
  const onCard = (reading: 'cash' | 'shop', lacking: number): number => {
    if (lacking <= 0) return 0;
    const { off } = leavingIn(month, treatments);
    return cardAdds(lacking, reading, off.awaited(ctx), month, ctx.horizon, ctx);
  };
  const best: Amounts = { counted: Number.POSITIVE_INFINITY, cash: 0, shop: Number.POSITIVE_INFINITY };
  let follows: Next = null;
  for (const next of openAt(month, ctx)) {
    const got = gettingOf(next, ctx.origin)(month);
    const lacking = (reading: 'cash' | 'shop'): number =>
      savings === null
        ? 0
        : left.day[reading] +
          got.day[reading] +
          Math.min(0, firstDay[reading] - savings) -
          spareEachMonth * month;
    const card = {
      cash: onCard('cash', lacking('cash')),
      shop: onCard('shop', lacking('shop')),
    };
    const counted = left.cost.counted + got.cost.counted + card.cash;
    if (counted < best.counted) {
      best.counted = counted;
      best.cash = left.cost.cash + got.cost.cash + card.cash;
      follows = next;
    }
    best.shop = Math.min(best.shop, left.cost.shop + got.cost.shop + card.shop);
  }
  return { cost: best, next: follows };
};
