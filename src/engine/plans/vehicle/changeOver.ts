import { owedAt } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { type Bought, type Brought, bought } from './boughtVehicle.ts';
import { all, sum } from './byReading.ts';
import type { Context } from './context.ts';
import { nameOf } from './held.ts';
import type { Treatments } from './neededWork.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import { type Nameless, WHOLE } from './plan.ts';
import { owedUntilPaid, type PayOff, payOff, presentLoan, presentWorth } from './presentVehicle.ts';
import { type Piece, type Recipe, recipe } from './recipe.ts';
import { type Awaited, stillToPay } from './selling.ts';

/** What the old one brings, before what selling it costs, and what letting it go takes. */
export interface Sold {
  readonly proceeds: Recipe<number>;
  readonly pieces: readonly Piece[];
  /** The price, where its buyer pays later; null where it is there at once. */
  readonly awaited: Recipe<Awaited | null>;
}

type Waiting = Sold['awaited'];

const offBy = (ctx: Context, month: number, awaited: Waiting): PayOff =>
  payOff(presentLoan(ctx), month, awaited.from(ctx), ctx);

const paidOff = (ctx: Context, off: Recipe<PayOff>): readonly Contract[] => off.from(ctx).contracts;

const broughtBy = (ctx: Context, proceeds: Recipe<number>, off: Recipe<PayOff>): Brought => ({
  tradeIn: 0,
  payoff: off.from(ctx).amount,
  proceeds: proceeds.from(ctx),
});

/** A present loan that a sale at the end of `month` pays off: what that takes, and what is awaited and owed then. */
export interface SaleOwing extends Pick<Nameless, 'awaited' | 'toCome' | 'owedAt'> {
  readonly off: Recipe<PayOff>;
  readonly pieces: readonly Piece[];
}

export const sellingPays = (month: number, { awaited }: Sold): SaleOwing => {
  const off = recipe(offBy, month, awaited);
  return {
    off,
    pieces: [recipe(paidOff, off)],
    awaited: (ctx) => {
      const price = awaited.from(ctx);
      return price && { ...price, payoff: off.from(ctx).amount };
    },
    toCome: (ctx, at) => stillToPay(awaited.from(ctx), at, ctx),
    owedAt: (ctx, at) => owedUntilPaid(presentLoan(ctx), off.from(ctx).comes, at),
  };
};

/** What is bought once the old one has gone at the end of a month. */
export const boughtThen = (index: number, month: number, sold: Sold, off: SaleOwing, ctx: Context): Bought =>
  bought(index, month, recipe(broughtBy, sold.proceeds, off.off), 'as offered', ctx);

/**
 * A plan that holds the present vehicle to the end of a month before H, then lets it go and gets a replacement.
 *
 * @param ctx for what there is, not for how much
 */
export const replacedAt = (
  index: number,
  month: number,
  treatments: Treatments,
  held: readonly Piece[],
  sold: Sold,
  ctx: Context,
): Nameless => {
  const worth = presentWorth(treatments, month);
  const off = sellingPays(month, sold);
  const next = boughtThen(index, month, sold, off, ctx);
  return {
    side: 'later',
    replacement: index,
    replaceMonth: month,
    pieces: held,
    changeOver: {
      month,
      pieces: [...sold.pieces, ...off.pieces, ...next.pieces],
      awaited: off.awaited,
      share: WHOLE,
    },
    awaited: () => null,
    valueAt: (ctx, at) => (at < month ? worth.from(ctx)(at) : next.valueAt(ctx, at)),
    toCome: (ctx, at, lookEnds) =>
      at < month ? all(presentUnearnedAt(at, ctx)) : sum(next.toCome(ctx, at, lookEnds), off.toCome(ctx, at)),
    owedAt: (ctx, at) => {
      if (at >= month) return next.owedAt(ctx, at) + off.owedAt(ctx, at);
      const loan = presentLoan(ctx);
      return loan ? owedAt(loan, at) : 0;
    },
    vehicleAtEnd: nameOf(index, ctx),
    purchase: next.purchase,
  };
};
