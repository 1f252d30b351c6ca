import { monthlySink } from '../cashflow/sinks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { allDone } from '../plans/vehicle/keepPlan.ts';
import { presentClosed, replacementClosed } from '../plans/vehicle/openOptions.ts';
import { presentUnearnedAt } from '../plans/vehicle/paidAhead.ts';
import { holdPresent, presentValueAt } from '../plans/vehicle/presentVehicle.ts';
import { contractsOf } from '../plans/vehicle/recipe.ts';
import { laterPlan } from '../plans/vehicle/replaceLaterPlan.ts';
import { netValue } from '../plans/vehicle/selling.ts';
import { leastOf } from '../quantity/least.ts';
import { effective, perPeriod } from '../quantity/rate.ts';
import { averageCostOfOwning } from '../valuation/economicLife.ts';
import { presentCostOf } from './project.ts';

export interface ReplaceLater {
  readonly replacement: number;
  readonly name: string;
  /** NPC of keeping through month k, then replacing; k = H is never. Counted reading, currency units. */
  readonly curve: readonly { readonly month: number; readonly netPresentCost: number }[];
  readonly best: { readonly month: number; readonly netPresentCost: number };
}

export interface EconomicLife {
  readonly name: string;
  /** Average monthly cost of owning over n months. */
  readonly curve: readonly { readonly months: number; readonly averageCost: number }[];
  readonly best: { readonly months: number; readonly averageCost: number };
}

/**
 * What keeping to the end of month k and then getting one replacement costs, for every k from 0 to H (never). The best
 * date is looked for among those on which both vehicles still serve every need; null where there is none.
 */
export const replaceLaterCurve = (index: number, ctx: Context): ReplaceLater | null => {
  const curve = Array.from({ length: ctx.horizon + 1 }, (_, month) => ({
    month,
    netPresentCost: presentCostOf(laterPlan(index, month, ctx), ctx).counted,
  }));
  const serves = ({ month }: { readonly month: number }): boolean =>
    (month === 0 || presentClosed(month, ctx) === null) &&
    (month === ctx.horizon || replacementClosed(index, month, ctx) === null);
  const best = leastOf(curve.filter(serves), ({ netPresentCost }) => netPresentCost);
  if (!best) return null;
  return {
    replacement: index,
    name: ctx.facts.replacementNames[index] as string,
    curve,
    best,
  };
};

/**
 * The present vehicle's own average cost of owning over n months, its market value at the start charged and what is
 * unearned of its bills then, both credited at the end. It counts from
 * the day the needed work is done, that work being paid for either way; its loan is no part of it. A figure of its own,
 * not to be set beside the costs of the ways compared.
 */
export const presentEconomicLife = (ctx: Context): EconomicLife => {
  const done = allDone(ctx);
  const sink = monthlySink(ctx.horizon);
  const held = holdPresent(done, ctx.horizon, ctx, 'without its loan');
  for (const contract of contractsOf(held, ctx)) contract(sink);
  const { vehicle } = ctx.inputs;
  const values = Array.from({ length: ctx.horizon + 1 }, (_, m) => {
    const price = presentValueAt(done, m, ctx.horizon, ctx);
    const value = m === 0 ? price : netValue(vehicle, price, m, ctx)('counted');
    return value + presentUnearnedAt(m, ctx);
  });
  const byMonths = averageCostOfOwning({
    values,
    costs: Array.from(sink.flows.counted, (cost, m) => (m === 0 ? 0 : cost)),
    ratePerPeriod: perPeriod(effective(ctx.inputs.household.moneyEarns)),
  });
  // Inspections fall once a year, and registration that is not paid back, so only whole years are alike; a horizon
  // shorter than one is taken as it is.
  const curve = byMonths
    .map((averageCost, i) => ({ months: i + 1, averageCost }))
    .filter(({ months }) => months % 12 === 0 || ctx.horizon < 12);
  const best = leastOf(curve, ({ averageCost }) => averageCost) as (typeof curve)[number];
  return { name: ctx.facts.vehicleName, curve, best };
};
