import { owedAt } from '../../cashflow/contracts/loan.ts';
import { latest } from '../../quantity/remember.ts';
import type { Context } from './context.ts';
import type { Treatment, Treatments } from './neededWork.ts';
import { presentUnearnedAt } from './paidAhead.ts';
import type { Plan } from './plan.ts';
import { holdPresent, presentLoan, presentValueAt } from './presentVehicle.ts';
import { netValue } from './selling.ts';

/** Keeping the present vehicle to the horizon, the needed work met as `treatments` says. */
export const keepPlan = (
  id: string,
  label: string,
  work: Plan['work'],
  treatments: Treatments,
  ctx: Context,
): Plan => {
  const loan = presentLoan(ctx);
  const worthAt = latest((month) => presentValueAt(treatments, month, ctx.horizon, ctx));
  return {
    id,
    side: 'keep',
    label,
    replacement: null,
    work,
    letGo: null,
    replaceMonth: null,
    contracts: holdPresent(treatments, ctx.horizon, loan, ctx),
    changeOver: null,
    awaited: null,
    valueAt: (month, reading) => netValue(ctx.inputs.vehicle, worthAt(month), month, reading, ctx),
    toCome: (month) => presentUnearnedAt(month, ctx),
    owedAt: (month) => (loan ? owedAt(loan, month) : 0),
    vehicleAtEnd: ctx.facts.vehicleName,
    purchase: null,
  };
};

/** One treatment for each job. */
export const treatmentsOf = (ctx: Context, choose: (i: number) => Treatment): Treatments =>
  ctx.inputs.workNeeded.map((_, i) => choose(i));

/** Every job done on the day. */
export const allDone = (ctx: Context): Treatments => treatmentsOf(ctx, () => 'done');
