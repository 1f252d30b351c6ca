import { cardGrowth, cardOwed } from '../cashflow/contracts/card.ts';
import { type LedgerRow, ledger, ledgerTotal } from '../cashflow/ledger.ts';
import { type ByReading, READINGS, type Reading } from '../cashflow/posting.ts';
import { postingSink } from '../cashflow/sinks.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { savingsLowest } from '../plans/vehicle/savings.ts';
import { leastOf } from '../quantity/least.ts';
import { type Cents, inUnits, lessCents, NIL, toCents } from '../quantity/money.ts';
import { discountFactor, effective } from '../quantity/rate.ts';
import { cumulative } from '../valuation/breakEvenPeriod.ts';
import { equivalentMonthlyCost } from '../valuation/present.ts';
import type { Best, OptionResult } from './optionResult.ts';
import { type Evaluated, evaluatePlan, project } from './project.ts';

const byReading = <T>(of: (reading: keyof ByReading<T>) => T): ByReading<T> => ({
  counted: of('counted'),
  cash: of('cash'),
  shop: of('shop'),
});

/**
 * Present cost if the plan stopped at the end of each month: what was paid by then, less what would be owned and is
 * unearned, plus what would be owed. Its last value is the net present cost.
 */
const costIfStopped = (evaluated: Evaluated, ctx: Context): number[] => {
  const { plan, flows, netPresentCost, onCard } = evaluated;
  const rate = effective(ctx.inputs.household.moneyEarns);
  const paid = cumulative(Array.from(flows.counted, (amount, m) => amount * discountFactor(rate, m)));
  return paid.map((sum, m) => {
    if (m === ctx.horizon) return netPresentCost.counted;
    const { cardRate } = ctx.inputs.household;
    const card = onCard
      .filter(({ month }) => month <= m)
      .reduce((total, { month, short, bridged, until }) => {
        const bridge = m < until ? bridged.counted * cardGrowth(cardRate, m - month) : 0;
        return total + short.counted * cardOwed(cardRate, m - month) + bridge;
      }, 0);
    const owned = plan.valueAt(ctx, m)('counted') + plan.toCome(ctx, m)('counted');
    return sum + (plan.owedAt(ctx, m) + card - owned) * discountFactor(rate, m);
  });
};

/** One way with everything the report says of it: its ledger to the cent, and the totals that are sums of its rows. */
export const resultOf = (plan: Plan, ctx: Context): OptionResult => {
  const evaluated = evaluatePlan(plan, ctx);
  const sink = postingSink();
  project(plan, sink, ctx);
  const rate = effective(ctx.inputs.household.moneyEarns);
  const rows: LedgerRow[] = ledger(sink.postings, (month) => discountFactor(rate, month));
  const netPresentCost = byReading((reading): Cents => ledgerTotal(rows, 'present', reading));
  const monthlyCost = (reading: keyof ByReading<Cents>): number =>
    equivalentMonthlyCost(inUnits(netPresentCost[reading]), rate, ctx.horizon);
  const cashOnTheDay = toCents(evaluated.cashOnTheDay);
  const savingsAfter = lessCents(toCents(ctx.inputs.household.savings ?? 0), cashOnTheDay);
  const end = rows.filter((row) => row.category === "what we'd own at the end");
  const hours = evaluated.flows.hours;
  return {
    id: plan.id,
    side: plan.side,
    label: plan.label,
    replacement: plan.replacement,
    work: plan.work,
    letGo: plan.letGo,
    replaceMonth: plan.replaceMonth,
    netPresentCost,
    equivalentMonthlyCost: byReading((reading) => toCents(monthlyCost(reading))),
    costPerDistance: byReading((reading) =>
      ctx.distanceAMonth > 0 ? monthlyCost(reading) / ctx.distanceAMonth : 0,
    ),
    cashOnTheDay,
    savingsAfter,
    savingsLowest: Math.min(savingsAfter, toCents(savingsLowest(plan, ctx))) as Cents,
    hours: { onTheDay: hours[0] as number, total: hours.reduce((sum, h) => sum + h, 0) },
    valueAtEnd: (0 -
      ledgerTotal(
        end.filter((row) => row.role === 'owned'),
        'amount',
        'counted',
      )) as Cents,
    owedAtEnd: ledgerTotal(
      end.filter((row) => row.amount.counted > 0),
      'amount',
      'counted',
    ),
    ledger: rows,
    cumulative: costIfStopped(evaluated, ctx),
    paidOut: paidOut(rows, ctx.horizon),
  };
};

/** Cash paid out by the end of each month, nothing credited for what is owned. */
const paidOut = (rows: readonly LedgerRow[], horizon: number): number[] => {
  const byMonth = new Array<number>(horizon + 1).fill(0);
  for (const row of rows)
    if (row.category !== "what we'd own at the end")
      byMonth[row.month] = (byMonth[row.month] as number) + inUnits(row.amount.cash);
  return cumulative(byMonth);
};

/** The cheapest of a side in a reading; the first of equals. Null where no way is open. */
export const cheapest = (
  results: readonly OptionResult[],
  side: OptionResult['side'],
  reading: Reading = 'counted',
): OptionResult | null =>
  leastOf(
    results.filter((result) => result.side === side),
    ({ netPresentCost }) => netPresentCost[reading],
  );

/** The cheapest way of all kinds by these costs; the first of equals. Null where none is open. */
export const cheapestOfAll = (
  results: readonly OptionResult[],
  cost: (result: OptionResult) => number,
): OptionResult | null =>
  leastOf(
    results.filter(({ side }) => side !== 'later'),
    cost,
  );

/** The best of each side, chosen anew in each reading. */
export const bestInReadings = (results: readonly OptionResult[]): ByReading<Best> =>
  byReading((reading) => ({
    keep: cheapest(results, 'keep', reading),
    replace: cheapest(results, 'replace', reading),
  }));

/** NPC(replace) - NPC(keep) in each reading, from the ledgers' totals; null where a side has no open way. */
export const differenceOf = (best: ByReading<Best>): ByReading<Cents> | null => {
  const apart = (reading: Reading): Cents => {
    const { keep, replace } = best[reading];
    return keep && replace ? lessCents(replace.netPresentCost[reading], keep.netPresentCost[reading]) : NIL;
  };
  return best.counted.keep && best.counted.replace ? byReading(apart) : null;
};

/** The readings do not agree on which side is cheaper. */
export const readingsDisagree = (difference: ByReading<Cents>): boolean =>
  new Set(READINGS.map((reading) => Math.sign(difference[reading])).filter((sign) => sign !== 0)).size > 1;
