import { owedAt } from '../../cashflow/contracts/loan.ts';
import { all } from './byReading.ts';
import type { Context } from './context.ts';
import { holdOurs } from './givenUp.ts';
import type { Treatment, Treatments } from './neededWork.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import type { Plan } from './plan.ts';
import { presentLoan, presentWorth } from './presentVehicle.ts';

/**
 * Keeping the present vehicle to the horizon, the needed work met as `treatments` says.
 *
 * @param ctx for what there is, not for how much
 */
export const keepPlan = (
  id: string,
  label: string,
  work: Plan['work'],
  treatments: Treatments,
  ctx: Context,
): Plan => {
  const worth = presentWorth(treatments, ctx.horizon);
  return {
    id,
    side: 'keep',
    label,
    replacement: null,
    work,
    letGo: null,
    replaceMonth: null,
    pieces: holdOurs(treatments, ctx.horizon, ctx),
    changeOver: null,
    awaited: () => null,
    valueAt: (at, month) => worth.from(at)(month),
    toCome: (at, month) => all(presentUnearnedAt(month, at)),
    owedAt: (at, month) => {
      const loan = presentLoan(at);
      return loan ? owedAt(loan, month) : 0;
    },
    vehicleAtEnd: ctx.facts.vehicleName,
    purchase: null,
  };
};

/** One treatment for each job. */
export const treatmentsOf = (ctx: Context, choose: (i: number) => Treatment): Treatments =>
  ctx.inputs.workNeeded.map((_, i) => choose(i));

/** Every job done on the day. */
export const allDone = (ctx: Context): Treatments => treatmentsOf(ctx, () => 'done');
