import { TO_THE_CENT } from '../cashflow/contracts/settlement/arithmetic.ts';
import { estimateTotals } from '../cashflow/contracts/settlement/estimate.ts';
import { totalLossFrom } from '../cashflow/contracts/settlement/totalLoss.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import { goingAsked, goings } from '../plans/collision/disposal.ts';
import { thresholdOf } from '../plans/collision/eligibility.ts';
import { askedOf, COURSES } from '../plans/collision/retention.ts';
import { type Asked, claimOf, estimateIn, type Settles, settleIn } from '../plans/collision/settlement.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Ways } from '../plans/vehicle/option.ts';
import { type Cents, toCents } from '../quantity/money.ts';
import { claimTips } from './claimBreakEvens.ts';
import type { ClaimView, CourseView } from './collisionViews.ts';

const of = (id: string, course: string): boolean => id.startsWith(`${course}/`);

/** How an option's course is settled; null where it makes no claim. */
const askedFor = ({ id, side }: OptionResult, ctx: Context): Asked | null => {
  const course = COURSES.find((one) => of(id, one.id));
  if (course) return askedOf(course, ctx);
  const going = goings(ctx).find((one) => of(id, one.id));
  return going ? goingAsked(going, side === 'replace') : null;
};

/** Damage before tax that may still be found below the line; null where no line is known, or it is crossed. */
const leftToLine = (ctx: Context): Cents | null => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  const { result, tested, value, salvage } = thresholdOf(ctx);
  const from = totalLossFrom(said.place.totalLoss.test, value, salvage);
  if (from === null || result.status === 'total loss') return null;
  return Math.round(Math.max(0, from - tested) / (1 + claim.estimate.tax)) as Cents;
};

const risksOf = (id: string, ctx: Context): string[] => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  const is = (...courses: readonly string[]): boolean => courses.some((course) => of(id, `claim/${course}`));
  const { chance } = claim.estimate.supplement;
  const risks: string[] = [];
  if (chance > 0) {
    if (is('shop-repair', 'own-repair', 'rebuild', 'no-claim-shop', 'no-claim-own', 'no-claim-rebuild'))
      risks.push('more damage shows once it is opened');
    if (is('safe-only', 'left', 'no-claim-safe', 'no-claim-left'))
      risks.push('hidden damage stays hidden: its cost is not counted here');
    if (leftToLine(ctx) !== null && said.pays !== 'nobody' && is('shop-repair', 'own-repair'))
      risks.push('enough more damage makes it a total loss');
  }
  if (is('rebuild', 'no-claim-rebuild') && (claim.rebuild?.refused ?? 0) > 0)
    risks.push('the papers may be refused');
  if (is('no-claim-shop', 'no-claim-own', 'no-claim-safe', 'no-claim-left')) {
    if (thresholdOf(ctx).result.status === 'total loss')
      risks.push('over the line of a rule still to be checked: its papers may have to be branded');
  }
  return risks;
};

const foreclosesOf = (id: string, how: Settles | null, ctx: Context): string[] => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  const left: string[] = [];
  if (how === 'repair in money')
    left.push(
      'damage that was paid for and is not repaired comes off a later claim (not priced here)',
      'cover may be limited until it has been inspected',
    );
  if (of(id, 'claim/rebuild') || of(id, 'claim/no-claim-rebuild'))
    left.push('the papers stay branded, and a buyer must be told');
  if (how !== null && said.signingCloses !== false)
    left.push(said.signingCloses ? 'signing closes the claim' : 'signing may close the claim: ask first');
  if (how !== null && said.injured !== false)
    left.push('a release for the property must not give up a claim for an injury');
  if (how === null && said.pays !== 'nobody') left.push('a claim not made in time is lost');
  return left;
};

const courseView = (option: OptionResult, ctx: Context): CourseView => {
  const asked = askedFor(option, ctx);
  const paid = asked && settleIn(TO_THE_CENT, ctx.inputs, ctx.facts, asked);
  return {
    id: option.id,
    label: option.label,
    side: option.side,
    inHand: (0 - option.cashOnTheDay) as Cents,
    hours: option.hours.total,
    cost: option.netPresentCost,
    statement: paid?.statement ?? null,
    atMost: paid && paid.most !== paid.statement.payment ? paid.most : null,
    split: paid?.split ?? null,
    risks: risksOf(option.id, ctx),
    forecloses: foreclosesOf(option.id, asked?.how ?? null, ctx),
  };
};

/** What the insurer's money can do: the offer's arithmetic to the cent, every course, and where the answer turns. */
export const claimView = (ways: Ways, options: readonly OptionResult[], ctx: Context): ClaimView => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  const totals = estimateTotals(
    TO_THE_CENT,
    estimateIn(TO_THE_CENT, claim, said.estimate.taxOnlyWhenPaid),
    true,
  );
  const { result, tested, value, salvage } = thresholdOf(ctx);
  return {
    payer: said.pays,
    place: said.place,
    comparables:
      said.comparables.length === 0
        ? null
        : {
            ownDistance: ctx.inputs.vehicle.odometer,
            perDistance: said.perDistance,
            lines: said.comparables.map(({ what, price, odometer, forDistance, adjustment, says }) => ({
              what,
              price: toCents(price),
              distance: odometer,
              forDistance: toCents(forDistance),
              adjustment: toCents(adjustment),
              value: toCents(says),
            })),
          },
    value: toCents(claim.value),
    estimate: {
      lines: claim.estimate.lines.map(({ what, kind, betterment }, i) => ({
        what,
        kind,
        part: said.estimate.parts[i] ?? 'not said',
        amount: totals.amounts[i] as Cents,
        betterment: toCents(betterment),
      })),
      totals,
    },
    threshold: {
      result,
      tested,
      salvage,
      from: totalLossFrom(said.place.totalLoss.test, value, salvage),
      left: leftToLine(ctx),
    },
    courses: options.map((option) => courseView(option, ctx)),
    closed: ways.closed,
    tips: claimTips(ways.open, ctx),
  };
};
