import { shopPriceOf } from '../cashflow/contracts/work.ts';
import type { Reading } from '../cashflow/posting.ts';
import { type Cents, toCents } from '../quantity/money.ts';
import { discountFactor, effective, effectivePerYear, nominal } from '../quantity/rate.ts';
import type { Inputs, RunningCosts, WorkCost } from '../scenario/inputs.ts';
import { copyOf } from '../scenario/lens.ts';
import type { Facts } from '../scenario/scenario.ts';
import type { Decision } from './decision.ts';
import { evaluatePair, type Pair, pairDifference } from './pair.ts';
import type { Evaluated } from './project.ts';

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

/**
 * D with a shop taking over from month m: own hands in both courses up to it, a shop from then on. From month 0 it is
 * the all-shop reading. What the first day put on a card was paid with own hands, so later it stays as it was.
 */
const shopFrom = (inputs: Inputs, facts: Facts, pair: Pair): Decision['shopFrom'] => {
  const noCard = copyOf({ ...inputs, household: { ...inputs.household, savings: null } });
  const [withCard, without] = [evaluatePair(inputs, facts, pair), evaluatePair(noCard, facts, pair)];
  const rate = effective(inputs.household.moneyEarns);
  const cost = ({ flows }: Evaluated, from: number): number =>
    flows.counted.reduce(
      (sum, amount, m) => sum + (m < from ? amount : (flows.shop[m] as number)) * discountFactor(rate, m),
      0,
    );
  const difference = (of: typeof withCard, reading: Reading): number =>
    of.replace.netPresentCost[reading] - of.keep.netPresentCost[reading];
  const card = difference(withCard, 'counted') - difference(without, 'counted');
  const years = Array.from({ length: Math.ceil(inputs.household.lookAhead / 12) }, (_, year) => year * 12);
  return years.map((month) => ({
    month,
    difference: toCents(
      month === 0
        ? difference(withCard, 'shop')
        : cost(without.replace, month) - cost(without.keep, month) + card,
    ),
  }));
};

/** The loan's rate, effective, where the household's money is said to earn more than it; null where it does not. */
const dearerMoney = (inputs: Inputs, noteRate: number | null): number | null => {
  if (noteRate === null) return null;
  const effectiveRate = effectivePerYear(nominal(noteRate));
  return inputs.household.moneyEarns > effectiveRate ? effectiveRate : null;
};

/**
 * The answer again under the assumptions a tool like this is most often wrong about.
 *
 * @param noteRate of the loan in the pair, nominal monthly; null where there is none
 */
export const whatIfs = (
  inputs: Inputs,
  facts: Facts,
  pair: Pair,
  noteRate: number | null,
): Pick<Decision, 'doubleHours' | 'ifNotCured' | 'shopFrom' | 'atLoanRate'> => {
  // Put together by spreads they would be of another kind to the compiler than all that was evaluated before them.
  const difference = (other: Inputs): number => pairDifference(copyOf(other), facts, pair);
  const at = (other: Inputs): Cents => toCents(difference(other));
  // Where both courses bear it alike (mended to be sold) it changes nothing, and nothing is said.
  const plain = pairDifference(inputs, facts, pair);
  const notCured = difference(withNothingCured(inputs));
  const rate = dearerMoney(inputs, noteRate);
  const hasHours = inputs.workNeeded.some((job) => job.by === 'own' && job.hours > 0);
  return {
    doubleHours: hasHours ? at(withDoubleHours(inputs)) : null,
    ifNotCured: Math.abs(notCured - plain) < 1 ? null : toCents(notCured),
    shopFrom: shopFrom(inputs, facts, pair),
    atLoanRate:
      rate === null
        ? null
        : { rate, difference: at({ ...inputs, household: { ...inputs.household, moneyEarns: rate } }) },
  };
};
