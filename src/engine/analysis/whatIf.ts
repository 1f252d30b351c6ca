import { shopPriceOf } from '../cashflow/contracts/work.ts';
import { comparedWays } from '../evaluation/options.ts';
import { evaluatePlan, presentCostOf } from '../evaluation/project.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import type { Way } from '../plans/vehicle/option.ts';
import { type Cents, toCents } from '../quantity/money.ts';
import { discountFactor, effective, effectivePerYear, nominal, type Rate } from '../quantity/rate.ts';
import type { Ground } from '../scenario/file/rewrite.ts';
import type { Inputs, RunningCosts, WorkCost } from '../scenario/inputs/inputs.ts';
import { differenceAt } from './leastCosts.ts';

/** By how much keeping would be the cheaper if something went differently. */
export interface WhatIfs {
  /** With every own hour taking twice as long; null where the ways compared take none. */
  readonly doubleHours: Cents | null;
  /** If the needed work does not cure it the first time; null where nobody gave a chance of that and it changes nothing. */
  readonly ifNotCured: Cents | null;
  /** With a shop taking over all work from this month on. */
  readonly shopFrom: readonly { readonly month: number; readonly difference: Cents }[];
  /** At the loan's rate in place of what the money earns, where that is the higher; null where it is not. */
  readonly atLoanRate: { readonly rate: number; readonly difference: Cents } | null;
}

/**
 * Every own hour takes twice as long, while a shop works as before: its prices are settled first where they follow from
 * hours. The work known only on average turns labour into hours by a shop's price of one, so half of it doubles them.
 */
const withDoubleHours = (inputs: Inputs): Inputs => {
  const { atHome } = inputs.household;
  const slow = <T extends Omit<WorkCost, 'by'>>(work: T): T => ({
    ...work,
    hours: work.hours * 2,
    shopPrice: shopPriceOf(work, atHome.shopHour),
  });
  const slowUpkeep = <T extends RunningCosts>(vehicle: T): T => ({
    ...vehicle,
    upkeep: vehicle.upkeep.map(slow),
    components: vehicle.components.map(slow),
  });
  return {
    ...inputs,
    household: { ...inputs.household, atHome: { ...atHome, shopHour: atHome.shopHour / 2 } },
    vehicle: slowUpkeep(inputs.vehicle),
    workNeeded: inputs.workNeeded.map((job) => ({
      ...slow(job),
      notCured: slow(job.notCured),
      moreFound: slow(job.moreFound),
      patch: job.patch && slow(job.patch),
    })),
    replacement: inputs.replacement.map(slowUpkeep),
  };
};

/** The first attempt at every needed job fails, and the second is paid for. */
const withNothingCured = (inputs: Inputs): Inputs => ({
  ...inputs,
  workNeeded: inputs.workNeeded.map((job) => ({ ...job, notCured: { ...job.notCured, chance: 1 } })),
});

/** What a way costs with own hands up to month m and a shop from then on, by m; without the card of the first day. */
const costFrom =
  (way: Way, at: Context, rate: Rate) =>
  (from: number): number => {
    const { flows } = evaluatePlan(way.build(at), at);
    return flows.counted.reduce(
      (sum, amount, m) => sum + (m < from ? amount : (flows.shop[m] as number)) * discountFactor(rate, m),
      0,
    );
  };

/**
 * D with a shop taking over from month m: own hands up to it, a shop from then on, the best way of each side chosen anew
 * for each m. From month 0 it is the all-shop reading. What the first day put on a card was paid with own hands, so later
 * it stays as it was.
 */
const shopFrom = ({ inputs, facts }: Ground): WhatIfs['shopFrom'] => {
  const noCard = { ...inputs, household: { ...inputs.household, savings: null } };
  const rate = effective(inputs.household.moneyEarns);
  const [ctx, without] = [inputs, noCard].map((of) => contextOf(of, facts, EXPECTED, 'unrounded'));
  if (!ctx || !without) return [];
  const years = Array.from({ length: Math.ceil(inputs.household.lookAhead / 12) }, (_, year) => year * 12);
  const ways = comparedWays(ctx).map((way) => {
    const whole = presentCostOf(way.build(ctx), ctx);
    const card = whole.counted - presentCostOf(way.build(without), without).counted;
    const from = costFrom(way, without, rate);
    return {
      side: way.side,
      costs: years.map((month) => (month === 0 ? whole.shop : from(month) + card)),
    };
  });
  const least = (side: Way['side'], year: number): number =>
    Math.min(...ways.filter((way) => way.side === side).map(({ costs }) => costs[year] as number));
  return years.map((month, year) => ({
    month,
    difference: toCents(least('replace', year) - least('keep', year)),
  }));
};

/** The loan's rate, effective, where the household's money is said to earn more than it; null where it does not. */
const dearerMoney = (inputs: Inputs, noteRate: number | null): number | null => {
  if (noteRate === null) return null;
  const effectiveRate = effectivePerYear(nominal(noteRate));
  return inputs.household.moneyEarns > effectiveRate ? effectiveRate : null;
};

/**
 * The answer again under the assumptions a tool like this is most often wrong about, each side's best way chosen anew.
 *
 * @param noteRate of the loan of the best replacement, nominal monthly; null where there is none
 * @param grain what is no difference, in currency units
 */
export const whatIfs = ({ inputs, facts }: Ground, noteRate: number | null, grain: number): WhatIfs => {
  const difference = (other: Inputs): number => differenceAt({ inputs: other, facts });
  const at = (other: Inputs): Cents => toCents(difference(other));
  const notCured = difference(withNothingCured(inputs));
  const matters =
    inputs.workNeeded.some((job) => job.notCured.chance > 0) ||
    Math.abs(notCured - difference(inputs)) > grain;
  const rate = dearerMoney(inputs, noteRate);
  const hasHours = inputs.workNeeded.some((job) => job.by === 'own' && job.hours > 0);
  return {
    doubleHours: hasHours ? at(withDoubleHours(inputs)) : null,
    ifNotCured: matters ? toCents(notCured) : null,
    shopFrom: shopFrom({ inputs, facts }),
    atLoanRate:
      rate === null
        ? null
        : { rate, difference: at({ ...inputs, household: { ...inputs.household, moneyEarns: rate } }) },
  };
};
