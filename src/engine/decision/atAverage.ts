import { addCents, inUnits, NIL, toCents } from '../quantity/money.ts';
import { withQuantity } from '../scenario/lens.ts';
import type { Quantity, Scenario } from '../scenario/scenario.ts';
import { breakEvenPeriod } from '../valuation/breakEvenPeriod.ts';
import { averagesLeft } from './averageLeft.ts';
import { breakEvenOf, type DifferenceAt, nearestTip } from './breakEven.ts';
import { breakEvenLine } from './breakEvenLine.ts';
import { claimView } from './claim/claimView.ts';
import { coverView } from './claim/coverView.ts';
import { type Context, contextOf, EXPECTED, unrounded } from './context.ts';
import type { BreakEven, BreakEvenLine, Decision, LoanView, OptionResult, Swing } from './decision.ts';
import { leaseView } from './leaseView.ts';
import { loanView } from './loanView.ts';
import { noticesOf } from './notices.ts';
import { differenceOfPair, type Pair } from './pair.ts';
import type { Plan } from './plan.ts';
import { cheapest, differenceOf, resultOf } from './results.ts';
import { centsWide, swingOf } from './swings.ts';
import { presentEconomicLife, replaceLaterCurve } from './timing.ts';
import { verdictOf } from './verdict.ts';
import { laterPlan } from './ways/later.ts';
import type { Way } from './ways/way.ts';
import { waysOf } from './ways/ways.ts';
import { whatIfs } from './whatIf.ts';

/** What the pair's difference says about every number: where it tips, and how far it swings. */
interface Sensitivity {
  readonly breakEvens: BreakEven[];
  readonly swings: Swing[];
  readonly line: BreakEvenLine | null;
}

const DISTANCE = 'household.distanceAYear';

/** The two numbers of the break-even line: those asked for, or the distance driven and what weighs most besides. */
const lineBetween = ({ facts, quantities }: Scenario, swings: readonly Swing[]): (Quantity | undefined)[] => {
  const named = (key: string) => quantities.find((quantity) => quantity.key === key);
  if (facts.twoWay) return facts.twoWay.map(named);
  return [
    named(DISTANCE),
    swings.find(({ quantity }) => quantity.key !== DISTANCE && !quantity.integer)?.quantity,
  ];
};

const sensitivityOf = (scenario: Scenario, pair: Pair): Sensitivity => {
  const { inputs, facts, quantities } = scenario;
  const D = differenceOfPair(facts, pair);
  const at =
    (quantity: Quantity): DifferenceAt =>
    (value) =>
      D(withQuantity(inputs, quantity, value));
  const swings = quantities
    .map((quantity) => swingOf(quantity, at(quantity)))
    .sort((a, b) => centsWide(b) - centsWide(a));
  const breakEvens = quantities.map((quantity) => breakEvenOf(quantity, at(quantity)));
  const [x, y] = lineBetween(scenario, swings);
  const line =
    x && y
      ? breakEvenLine(x, y, (xValue, yValue) => D(withQuantity(withQuantity(inputs, x, xValue), y, yValue)))
      : null;
  return { breakEvens: breakEvens.sort((a, b) => nearestTip(a) - nearestTip(b)), swings, line };
};

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

/**
 * A complete scenario in, the answer at average inputs out: every way with its ledger, the verdict, where it tips, and
 * what the page must say. Pure: the same scenario gives the same decision. Nothing is drawn.
 *
 * @param version of the program, for the report to name
 */
export const decideAtAverage = (scenario: Scenario, version: string): Decision => {
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
  const bestKeep = cheapest(options, 'keep');
  const bestReplace = cheapest(options, 'replace');
  const wayOf = (best: OptionResult | null): Way | undefined => ways.open.find(({ id }) => id === best?.id);
  const [keep, replace] = [wayOf(bestKeep), wayOf(bestReplace)];
  const pair = keep && replace ? { keep, replace } : null;
  const difference = bestKeep && bestReplace ? differenceOf(bestKeep, bestReplace) : null;
  const sensitivity: Sensitivity = pair
    ? sensitivityOf(scenario, pair)
    : { breakEvens: [], swings: [], line: null };
  const payments = paymentsOf(plans, options, ctx);
  const leases = inputs.replacement.flatMap((_, index) => leaseView(index, ctx) ?? []);
  const hourTips = sensitivity.breakEvens.find(({ quantity }) => quantity.key === 'household.priceOfOwnHour');
  return {
    version,
    facts,
    quantities,
    horizon: ctx.horizon,
    options,
    closed: ways.closed,
    bestKeep,
    bestReplace,
    difference,
    verdict: verdictOf(bestKeep, bestReplace, difference, sensitivity.breakEvens, sensitivity.swings),
    crossing: bestKeep && bestReplace ? crossingOf(bestKeep, bestReplace) : null,
    breakEvens: sensitivity.breakEvens,
    breakEvenLine: sensitivity.line,
    swings: sensitivity.swings,
    ownHourTips: hourTips?.roots[0]?.at ?? null,
    ...(pair
      ? whatIfs(inputs, facts, pair, noteRateOf(payments, bestReplace))
      : { doubleHours: null, ifNotCured: null, shopFrom: [], atLoanRate: null }),
    payments,
    leases,
    replaceLater,
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
    notices: noticesOf({
      inputs,
      facts,
      options,
      bestKeep,
      bestReplace,
      payments,
      leases,
      averagesLeft: averagesLeft(keep?.treatments ?? null, smooth),
    }),
    chances: null,
    walkAway: null,
    claim: inputs.claim ? claimView(ways, options, ctx) : null,
    cover: coverView(inputs, facts),
  };
};
