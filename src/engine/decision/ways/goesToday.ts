import { owedAt } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Brought } from '../bought.ts';
import type { Context } from '../context.ts';
import { neededWork } from '../neededWork.ts';
import { letGoToday, type Offer, payOff, presentLoan, priceOf } from '../presentVehicle.ts';
import { allDone } from './keep.ts';

/** The old vehicle goes today, by one offer; what it brought is known to the purchase. */
export const goesToday = (
  offer: Offer,
  ctx: Context,
): { readonly brought: Brought; readonly contracts: Contract[] } => {
  const loan = presentLoan(ctx);
  const payoff = loan ? owedAt(loan, 0) : 0;
  const brought: Brought = {
    tradeIn: offer.letGo === 'trade-in' ? priceOf(offer, ctx) : 0,
    payoff,
    proceeds: offer.letGo === 'trade-in' ? 0 : priceOf(offer, ctx),
  };
  const mending = offer.mended ? neededBeforeSale(ctx) : [];
  return { brought, contracts: [...mending, letGoToday(offer, ctx), ...payOff(loan, 0)] };
};

/** Mending it to sell it: all the work on the day, and nothing of what comes after. */
const neededBeforeSale = (ctx: Context) => neededWork(allDone(ctx), ctx.horizon, ctx);
