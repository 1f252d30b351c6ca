import type { LoanFlows } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Brought } from './boughtVehicle.ts';
import type { Context } from './context.ts';
import { allDone } from './keepPlan.ts';
import { neededWork } from './neededWork.ts';
import { presentUnusedToday } from './paidAhead.ts';
import type { Plan } from './plan.ts';
import {
  letGoToday,
  type Offer,
  owedUntilPaid,
  type PayOff,
  payOff,
  presentLoan,
  priceOf,
} from './presentVehicle.ts';
import { type Piece, type Recipe, recipe } from './recipe.ts';
import { type Awaited, stillToPay } from './selling.ts';

/** The old vehicle gone: what it brought is known to a purchase; what of it is still to come, or still owed, by month. */
export interface Gone extends Pick<Plan, 'awaited' | 'toCome' | 'owedAt'> {
  readonly brought: Recipe<Brought>;
  readonly pieces: readonly Piece[];
}

/** The old vehicle goes today, by one offer. */
export const goesToday = (offer: Offer): Gone =>
  goneBy(offer, recipe(presentLoan), [
    ...(offer.mended ? [recipe(neededBeforeSale)] : []),
    recipe(unusedToday),
  ]);

const unusedToday = (ctx: Context): Contract[] => [presentUnusedToday(ctx)];

/** A sale of today: what it takes and brings, and what of its price pays off a loan. */
interface Paying {
  readonly contracts: readonly Contract[];
  readonly off: PayOff;
  readonly awaited: Awaited | null;
}

const saleOf = (ctx: Context, offer: Offer, loan: Recipe<LoanFlows | null>): Paying => {
  const { contract, awaited } = letGoToday(offer, ctx);
  const off = payOff(loan.from(ctx), 0, awaited, ctx);
  return {
    contracts: [contract, ...off.contracts],
    off,
    awaited: awaited && { ...awaited, payoff: off.amount },
  };
};

const sold = (ctx: Context, sale: Recipe<Paying>): readonly Contract[] => sale.from(ctx).contracts;

const broughtBy = (ctx: Context, offer: Offer, sale: Recipe<Paying>): Brought => ({
  tradeIn: offer.letGo === 'trade-in' ? priceOf(offer, ctx) : 0,
  payoff: sale.from(ctx).off.amount,
  proceeds: offer.letGo === 'trade-in' ? 0 : priceOf(offer, ctx),
});

/** The same with what else happens on the day, and with the loan that is left on it by then. */
export const goneBy = (offer: Offer, loan: Recipe<LoanFlows | null>, besides: readonly Piece[]): Gone => {
  const sale = recipe(saleOf, offer, loan);
  return {
    brought: recipe(broughtBy, offer, sale),
    pieces: [...besides, recipe(sold, sale)],
    awaited: (ctx) => sale.from(ctx).awaited,
    toCome: (ctx, at) => stillToPay(sale.from(ctx).awaited, at, ctx),
    owedAt: (ctx, at) => owedUntilPaid(loan.from(ctx), sale.from(ctx).off.comes, at),
  };
};

/** Mending it to sell it: all the work on the day, and nothing of what comes after. */
const neededBeforeSale = (ctx: Context): Contract[] => neededWork(ctx, allDone(ctx), ctx.horizon);
