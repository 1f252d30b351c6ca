import { claimView } from '../analysis/claimView.ts';
import { coverView } from '../analysis/coverView.ts';
import { lastingOf } from '../analysis/ifItDoesNotLast.ts';
import { leaseView } from '../analysis/leaseView.ts';
import { leastCosts } from '../analysis/leastCosts.ts';
import type { LoanView } from '../analysis/loanView.ts';
import { loanView } from '../analysis/loanView.ts';
import { monthlyFits } from '../analysis/monthlyFit.ts';
import { grainOf, sensitivityOf } from '../analysis/sensitivity.ts';
import { survivalOf } from '../analysis/survival.ts';
import { whatIfs } from '../analysis/whatIf.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import { waysOf } from '../evaluation/options.ts';
import { presentEconomicLife, replaceLaterCurve } from '../evaluation/replacementTiming.ts';
import { bestInReadings, cheapest, cheapestOfAll, differenceOf, resultOf } from '../evaluation/results.ts';
import { averagesLeft } from '../plans/vehicle/averageLeft.ts';
import { type Context, contextOf, EXPECTED, unrounded } from '../plans/vehicle/context.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { laterPlan } from '../plans/vehicle/replaceLaterPlan.ts';
import { addCents, inUnits, NIL, toCents } from '../quantity/money.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { breakEvenPeriod } from '../valuation/breakEvenPeriod.ts';
import type { Decision } from './decision.ts';
import { noticesOf } from './notices.ts';
import { verdictOf } from './verdict.ts';

/** From which month on the side that is cheaper at the end stays cheaper, if it was not from the start. */
const crossingOf = (keep: OptionResult, replace: OptionResult): Decision['crossing'] => {
  const keepAhead = replace.cumulative.map((cost, m) => cost - (keep.cumulative[m] as number));
  const cheaper = (keepAhead[keepAhead.length - 1] as number) >= 0 ? 'keep' : 'replace';
  const found = breakEvenPeriod(cheaper === 'keep' ? keepAhead : keepAhead.map((d) => -d));
  return found.status === 'from' && found.period > 0 ? { month: found.period, cheaper } : null;
};

/** Best dates strictly between now and never, as ways of their own where waiting beats both keeping and replacing. */
const bestLater = (ctx: Context, curves: Decision['replaceLater'], now: readonly OptionResult[]): Plan[] => {
  const least = Math.min(...now.map((one) => inUnits(one.netPresentCost.counted)));
  return curves
    .filter(({ best }) => best.month > 0 && best.month < ctx.horizon && best.netPresentCost < least)
    .map(({ replacement, best }) => laterPlan(replacement, best.month, ctx))
    .filter((plan) => !now.some(({ id }) => id === plan.id));
};

/** The loan of each replacement, in its cheapest way. */
const paymentsOf = (plans: readonly Plan[], results: readonly OptionResult[], ctx: Context): LoanView[] =>
  ctx.inputs.replacement.flatMap((_, index) => {
    const best = cheapest(
      results.filter((result) => result.replacement === index),
      'replace',
    );
    const plan = plans.find(({ id }) => id === best?.id);
    return (plan && loanView(plan, results, ctx)) ?? [];
  });

/** The note rate of the loan behind the best replacement; null where it is bought without one. */
const noteRateOf = (payments: readonly LoanView[], bestReplace: OptionResult | null): number | null =>
  payments.find(({ replacement }) => replacement === bestReplace?.replacement)?.noteRate ?? null;

/** What the file says of money that is saved and spare; what is private was not read. */
const purseOf = ({ inputs, quantities }: Scenario): Parameters<typeof monthlyFits>[2] => {
  const { savings, spareEachMonth } = inputs.household;
  const said = quantities.some(({ key, isDefault }) => key === 'household.spareEachMonth' && !isDefault);
  return { spare: said ? spareEachMonth : null, savings };
};

/**
 * The first answer to a complete scenario: every way with its ledger, the pair, and what the page must say. A few
 * milliseconds: nothing is moved and nothing drawn, so its verdict goes by the ledger alone, and is provisional.
 *
 * @param version of the program, for the report to name
 */
export const firstAnswer = (scenario: Scenario, version: string): Decision => {
  const { inputs, facts, quantities } = scenario;
  const ctx = contextOf(inputs, facts, EXPECTED, 'to the cent');
  const smooth = unrounded(ctx);
  const ways = waysOf(ctx);
  const plans = ways.open.map((way) => way.build(ctx));
  // After a collision each course that keeps it has its own best date, and is a way of its own.
  const replaceLater = inputs.claim
    ? []
    : inputs.replacement.flatMap((_, index) => replaceLaterCurve(index, smooth) ?? []);
  const now = plans.map((plan) => resultOf(plan, ctx));
  const options = [...now, ...bestLater(ctx, replaceLater, now).map((plan) => resultOf(plan, ctx))];
  const bestIn = bestInReadings(options);
  const { keep: bestKeep, replace: bestReplace } = bestIn.counted;
  const difference = differenceOf(bestIn);
  const grain = grainOf(leastCosts(smooth));
  const payments = paymentsOf(plans, options, ctx);
  const leases = inputs.replacement.flatMap((_, index) => leaseView(index, ctx) ?? []);
  return {
    version,
    facts,
    quantities,
    horizon: ctx.horizon,
    options,
    closed: ways.closed,
    bestKeep,
    bestReplace,
    answer: cheapestOfAll(options, ({ netPresentCost }) => netPresentCost.counted),
    bestIn,
    difference,
    grain,
    tier: 'first',
    verdict: verdictOf(bestIn.counted, difference, [], [], grain),
    crossing: bestKeep && bestReplace ? crossingOf(bestKeep, bestReplace) : null,
    breakEvens: [],
    breakEvenLine: null,
    swings: [],
    ownHourTips: null,
    doubleHours: null,
    ifNotCured: null,
    shopFrom: [],
    atLoanRate: null,
    payments,
    leases,
    fits: monthlyFits(plans, now, purseOf(scenario), smooth),
    replaceLater,
    lasting: null,
    survival: survivalOf(smooth),
    economicLife: presentEconomicLife(smooth),
    sunk: {
      spent: addCents(
        NIL,
        ...facts.sunk.map(({ amount }) => toCents(amount)),
        ...facts.jobs.map((job) => toCents(job.alreadySpent)),
      ),
      returns: addCents(NIL, ...facts.sunk.map(({ returns }) => toCents(returns))),
    },
    cautions: facts.jobs
      .filter((job) => job.dangers.length > 0)
      .map((job) => ({ job: job.name, dangers: job.dangers })),
    work: facts.jobs.map((job, i) => ({
      job: job.name,
      mayBeDriven: inputs.workNeeded[i]?.mayBeDriven ?? 'yes',
      safety: job.saidSafe === null ? 'not said' : job.saidSafe ? 'no' : 'yes',
      why: job.why,
      qualifiedOnly: job.qualifiedOnly,
    })),
    notices: noticesOf({
      inputs,
      facts,
      options,
      bestKeep,
      bestReplace,
      payments,
      leases,
      averagesLeft: averagesLeft(ways.open.find(({ id }) => id === bestKeep?.id)?.treatments ?? null, smooth),
    }),
    chances: null,
    walkAway: null,
    claim: inputs.claim ? claimView(ways, options, ctx) : null,
    cover: coverView(inputs, facts),
  };
};

/**
 * A first answer with what each number does to it: every place where it tips, how far each number swings it, what would
 * be if. Where it tips is asked of the file it was read from: one with other inputs than its file's, or without a file,
 * has no such answers.
 */
export const withTips = (scenario: Scenario, first: Decision): Decision => {
  const { difference, bestIn, bestReplace, payments, grain } = first;
  const told: Decision = { ...first, tier: 'tips' };
  if (!difference) return told;
  const { inputs, facts } = scenario;
  const smooth = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const sides = leastCosts(smooth);
  const { breakEvens, swings, line } = sensitivityOf(scenario, sides);
  const hourTips = breakEvens.find(({ quantity }) => quantity.key === 'household.priceOfOwnHour');
  return {
    ...told,
    breakEvens,
    swings,
    breakEvenLine: line,
    lasting: lastingOf(first.bestKeep, bestReplace, smooth),
    ownHourTips: hourTips?.roots[0]?.at ?? null,
    ...whatIfs(scenario, noteRateOf(payments, bestReplace), grain),
    verdict: verdictOf(bestIn.counted, difference, breakEvens, swings, grain),
  };
};

/** Both at once: the whole answer at average inputs, pure; the same scenario gives the same decision. */
export const decideAtAverage = (scenario: Scenario, version: string): Decision =>
  withTips(scenario, firstAnswer(scenario, version));
