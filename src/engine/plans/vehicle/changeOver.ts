import { owedAt } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { type Bought, bought } from './boughtVehicle.ts';
import type { Context } from './context.ts';
import type { Treatments } from './neededWork.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import type { Nameless } from './plan.ts';
import { owedUntilPaid, payOff, presentLoan, presentValueAt } from './presentVehicle.ts';
import { type Awaited, netValue, stillToPay } from './selling.ts';

/** What the old one brings, before what selling it costs, and the contracts of letting it go. */
export interface Sold {
  readonly proceeds: number;
  readonly contracts: readonly Contract[];
  /** The price, where its buyer pays later; null where it is there at once. */
  readonly awaited: Awaited | null;
}

/** A plan that holds the present vehicle to the end of a month before H, then lets it go and gets a replacement. */
export const replacedAt = (
  index: number,
  month: number,
  treatments: Treatments,
  held: readonly Contract[],
  sold: Sold,
  ctx: Context,
): Nameless => {
  const loan = presentLoan(ctx);
  const off = payOff(loan, month, sold.awaited, ctx);
  const brought = { tradeIn: 0, payoff: off.amount, proceeds: sold.proceeds };
  const next: Bought = bought(index, month, brought, 'as offered', ctx);
  return {
    side: 'later',
    replacement: index,
    replaceMonth: month,
    contracts: held,
    changeOver: {
      month,
      contracts: [...sold.contracts, ...off.contracts, ...next.contracts],
      awaited: sold.awaited && { ...sold.awaited, payoff: off.amount },
    },
    awaited: null,
    valueAt: (at, reading) =>
      at < month
        ? netValue(ctx.inputs.vehicle, presentValueAt(treatments, at, month, ctx), at, reading, ctx)
        : next.valueAt(at, reading),
    toCome: (at, reading, lookEnds) =>
      at < month
        ? presentUnearnedAt(at, ctx)
        : next.toCome(at, lookEnds) + stillToPay(sold.awaited, at, reading, ctx),
    owedAt: (at) =>
      at < month ? (loan ? owedAt(loan, at) : 0) : next.owedAt(at) + owedUntilPaid(loan, off.comes, at),
    vehicleAtEnd: ctx.facts.replacementNames[index] as string,
    purchase: next.purchase,
  };
};
