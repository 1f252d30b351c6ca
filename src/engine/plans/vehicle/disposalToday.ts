import type { LoanFlows } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Brought } from './boughtVehicle.ts';
import type { Context } from './context.ts';
import { allDone } from './keepPlan.ts';
import { neededWork } from './neededWork.ts';
import { presentUnusedToday } from './paidAhead.ts';
import type { Plan } from './plan.ts';
import { letGoToday, type Offer, owedUntilPaid, payOff, presentLoan, priceOf } from './presentVehicle.ts';
import { type Awaited, stillToPay } from './selling.ts';

/** The old vehicle gone: what it brought is known to a purchase; what of it is still to come, or still owed, by month. */
export interface Gone {
  readonly brought: Brought;
  readonly contracts: readonly Contract[];
  readonly awaited: Awaited | null;
  readonly toCome: Plan['toCome'];
  readonly owedAt: Plan['owedAt'];
}

/** The old vehicle goes today, by one offer. */
export const goesToday = (offer: Offer, ctx: Context): Gone => {
  const mending = offer.mended ? neededBeforeSale(ctx) : [];
  return goneBy(offer, presentLoan(ctx), [...mending, presentUnusedToday(ctx)], ctx);
};

/** The same with what else happens on the day, and with the loan that is left on it by then. */
export const goneBy = (
  offer: Offer,
  loan: LoanFlows | null,
  besides: readonly Contract[],
  ctx: Context,
): Gone => {
  const { contract, awaited } = letGoToday(offer, ctx);
  const off = payOff(loan, 0, awaited, ctx);
  const brought: Brought = {
    tradeIn: offer.letGo === 'trade-in' ? priceOf(offer, ctx) : 0,
    payoff: off.amount,
    proceeds: offer.letGo === 'trade-in' ? 0 : priceOf(offer, ctx),
  };
  return {
    brought,
    contracts: [...besides, contract, ...off.contracts],
    awaited: awaited && { ...awaited, payoff: off.amount },
    toCome: (at, reading) => stillToPay(awaited, at, reading, ctx),
    owedAt: (at) => owedUntilPaid(loan, off.comes, at),
  };
};

/** Mending it to sell it: all the work on the day, and nothing of what comes after. */
const neededBeforeSale = (ctx: Context) => neededWork(allDone(ctx), ctx.horizon, ctx);
