import { owedAt } from '../../cashflow/contracts/loan.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { type Bought, bought } from '../bought.ts';
import type { Context } from '../context.ts';
import type { Treatments } from '../neededWork.ts';
import type { Nameless } from '../plan.ts';
import { netValue, payOff, presentLoan, presentValueAt } from '../presentVehicle.ts';

/** What the old one brings, before what selling it costs, and the contracts of letting it go. */
export interface Sold {
  readonly proceeds: number;
  readonly contracts: readonly Contract[];
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
  const payoff = loan ? owedAt(loan, month) : 0;
  const brought = { tradeIn: 0, payoff, proceeds: sold.proceeds };
  const next: Bought = bought(index, month, brought, 'as offered', ctx);
  return {
    side: 'later',
    replacement: index,
    replaceMonth: month,
    contracts: held,
    changeOver: { month, contracts: [...sold.contracts, ...payOff(loan, month), ...next.contracts] },
    valueAt: (at, reading) =>
      at < month
        ? netValue(ctx.inputs.vehicle, presentValueAt(treatments, at, month, ctx), at, reading, ctx)
        : next.valueAt(at, reading),
    owedAt: (at) => (at < month ? (loan ? owedAt(loan, at) : 0) : next.owedAt(at)),
    vehicleAtEnd: ctx.facts.replacementNames[index] as string,
    purchase: next.purchase,
  };
};
