import { levelAt } from '../cashflow/levels.ts';
import { type Contract, KINDS, type Sink } from '../cashflow/posting.ts';
import { cardAdds } from '../plans/vehicle/cardAdds.ts';
import { replacedAt } from '../plans/vehicle/changeOver.ts';
import { type Context, upTo } from '../plans/vehicle/context.ts';
import { leasesUntil } from '../plans/vehicle/leases.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { wantsIn } from '../plans/vehicle/purchaseExtras.ts';
import { contractsOf } from '../plans/vehicle/recipe.ts';
import { soldWalking, type WalksAs } from '../plans/vehicle/retirement.ts';
import type { Awaited } from '../plans/vehicle/selling.ts';

/** What one change of vehicle costs, however far one looks. */
interface Change {
  /** Discounted to the day of the decision and summed to the end of each month, leases left out. */
  readonly upTo: Float64Array;
  /** Of that, what falls in a month for the year that begins with it, discounted. */
  readonly yearAhead: Float64Array;
  /** Cash of the month itself, leases included. */
  readonly cashThen: number;
  /** What would be owned if the look ended at a month: the vehicle, and what is still to come. */
  readonly ownedAt: (month: number) => number;
  readonly awaited: Awaited | null;
  readonly owedAt: (month: number) => number;
}

/**
 * What replacing the present vehicle at the end of month k costs from there on, if the look ends at month `until`: the
 * very contracts of a plan that walks away, each projected once as far as anybody looks and then cut where a look ends.
 * A lease knows where it is cut, so it is projected for each look.
 *
 * @param firstDayCash what the first day takes in cash: savings left then help on the day of the change
 * @param discount what 1 in each month is worth on the day of the decision
 * @returns the cost at the end of month k, in money of that month, own time counted
 */
export const replacingFrom = (
  treatments: Treatments,
  replacement: number,
  firstDayCash: number,
  discount: Float64Array,
  ctx: Context,
): ((month: number, how: WalksAs, until: number) => number) => {
  const { horizon } = ctx;
  const { savings, spareEachMonth } = ctx.inputs.household;
  const isLease = ctx.inputs.replacement[replacement]?.payment.kind === 'lease';
  const kept = new Map<string, Change>();
  const v = (month: number): number => discount[month] as number;
  const worth1AMonth = new Float64Array(horizon + 1);
  for (let m = 1; m <= horizon; m++) worth1AMonth[m] = (worth1AMonth[m - 1] as number) + v(m);

  /** What the look's end pulls forward is another change for each look; all else is one, however far one looks. */
  const contextFor = (month: number, until: number): Context =>
    until < horizon && wantsIn(month, ctx) > until ? upTo(until, ctx) : ctx;

  const changeAt = (month: number, how: WalksAs, until: number): Change => {
    const at = contextFor(month, until);
    const key = `${month} ${how} ${at.horizon}`;
    const known = kept.get(key);
    if (known) return known;
    const change = changeIn(month, how, at);
    kept.set(key, change);
    return change;
  };

  const changeIn = (month: number, how: WalksAs, ctx: Context): Change => {
    const sold = soldWalking(month, how, treatments);
    const plan = replacedAt(replacement, month, treatments, [], sold, ctx);
    const summed = new Float64Array(horizon + 1);
    const yearAhead = new Float64Array(horizon + 1);
    let cashThen = 0;
    const sink: Sink = {
      post(line, m, counted, cash) {
        if (m === month) cashThen += cash;
        if (line.category === 'lease') return;
        summed[m] = (summed[m] as number) + counted * v(m);
        // The bill for a year that begins on the day the look ends is not paid.
        if (KINDS[line.category].inAdvance) yearAhead[m] = (yearAhead[m] as number) + counted * v(m);
      },
      series(line, from, to, levels, counted) {
        if (line.category === 'lease') return;
        for (let m = from; m <= to; m++)
          summed[m] = (summed[m] as number) + counted * levelAt(levels, m) * v(m);
      },
      time: null,
      stands: null,
    };
    for (const contract of contractsOf(plan.changeOver?.pieces ?? [], ctx)) contract(sink);
    for (let m = 1; m <= horizon; m++) summed[m] = (summed[m] as number) + (summed[m - 1] as number);
    return {
      upTo: summed,
      yearAhead,
      cashThen,
      ownedAt: (at: number) => plan.valueAt(ctx, at)('counted') + plan.toCome(ctx, at, true)('counted'),
      awaited: plan.changeOver?.awaited(ctx) ?? null,
      owedAt: (at: number) => plan.owedAt(ctx, at),
    };
  };

  /** Contracts in money of the day of the decision. */
  const present = (contracts: readonly Contract[]): number => {
    let sum = 0;
    const sink: Sink = {
      post: (_line, m, counted) => {
        sum += counted * v(m);
      },
      // What leases post month by month is level.
      series: (_line, from, to, _levels, counted) => {
        sum += counted * ((worth1AMonth[to] as number) - (worth1AMonth[from - 1] as number));
      },
      time: null,
      stands: null,
    };
    for (const contract of contracts) contract(sink);
    return sum;
  };

  return (month, how, until) => {
    const change = changeAt(month, how, until);
    const paid = (change.upTo[until] as number) - (change.yearAhead[until] as number);
    const leases = isLease ? present(leasesUntil(replacement, month, until, ctx)) : 0;
    const end = v(until) * (change.owedAt(until) - change.ownedAt(until));
    const cost = (paid + leases + end) / v(month);
    if (savings === null) return cost;
    const lacking = change.cashThen + Math.min(0, firstDayCash - savings) - spareEachMonth * month;
    return cost + cardAdds(lacking, 'cash', change.awaited, month, until, ctx);
  };
};
