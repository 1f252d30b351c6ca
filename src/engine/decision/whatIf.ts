import { shopPriceOf } from '../cashflow/contracts/work.ts';
import { type Cents, toCents } from '../quantity/money.ts';
import { discountFactor, effective } from '../quantity/rate.ts';
import type { Inputs, RunningCosts, WorkCost } from '../scenario/inputs.ts';
import type { Facts } from '../scenario/scenario.ts';
import type { Decision } from './decision.ts';
import { evaluatePair, type Pair, pairDifference } from './pair.ts';

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

const withNothingCured = (inputs: Inputs): Inputs => ({
  ...inputs,
  workNeeded: inputs.workNeeded.map((job) => ({ ...job, notCured: { ...job.notCured, chance: 1 } })),
});

/** D with a shop taking over from month m: own hands in both courses up to it, a shop from then on. */
const shopFrom = (inputs: Inputs, facts: Facts, pair: Pair): Decision['shopFrom'] => {
  const both = evaluatePair(inputs, facts, pair);
  const rate = effective(inputs.household.moneyEarns);
  const cost = (flows: (typeof both)['keep']['flows'], from: number): number =>
    flows.counted.reduce(
      (sum, amount, m) => sum + (m < from ? amount : (flows.shop[m] as number)) * discountFactor(rate, m),
      0,
    );
  const months = Array.from({ length: Math.floor(inputs.household.lookAhead / 12) }, (_, year) => year * 12);
  // The day itself stays as planned when the mechanic is away later: month 0 is the all-shop reading.
  return months.map((month) => ({
    month,
    difference: toCents(cost(both.replace.flows, month) - cost(both.keep.flows, month)),
  }));
};

/** The loan rate of the replacement in the pair, if the household's money is said to earn more than it. */
const dearerMoney = (inputs: Inputs, replacement: number | null): number | null => {
  const deal = replacement === null ? undefined : inputs.replacement[replacement];
  if (deal?.payment.kind !== 'loan') return null;
  const effectiveRate = (1 + deal.payment.apr / 12) ** 12 - 1;
  return inputs.household.moneyEarns > effectiveRate ? effectiveRate : null;
};

/** The answer again under the assumptions a tool like this is most often wrong about. */
export const whatIfs = (
  inputs: Inputs,
  facts: Facts,
  pair: Pair,
  replacement: number | null,
): Pick<Decision, 'doubleHours' | 'ifNotCured' | 'shopFrom' | 'atLoanRate'> => {
  const at = (changed: Inputs): Cents => toCents(pairDifference(changed, facts, pair));
  const rate = dearerMoney(inputs, replacement);
  const hasHours = inputs.workNeeded.some((job) => job.by === 'own' && job.hours > 0);
  return {
    doubleHours: hasHours ? at(withDoubleHours(inputs)) : null,
    ifNotCured: inputs.workNeeded.length > 0 ? at(withNothingCured(inputs)) : null,
    shopFrom: shopFrom(inputs, facts, pair),
    atLoanRate:
      rate === null
        ? null
        : { rate, difference: at({ ...inputs, household: { ...inputs.household, moneyEarns: rate } }) },
  };
};
