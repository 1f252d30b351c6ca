/** Which courses are open, and why the others are not. Judged at average inputs. */
import { TO_THE_CENT } from '../../cashflow/contracts/settlement/arithmetic.ts';
import { testedRepairCost } from '../../cashflow/contracts/settlement/estimate.ts';
import {
  neverRebuilt,
  type TotalLoss,
  totalLossUnder,
} from '../../cashflow/contracts/settlement/totalLoss.ts';
import { type Cents, toCents } from '../../quantity/money.ts';
import { remember } from '../../quantity/remember.ts';
import type { Claim, ClaimFacts, ClaimWork } from '../../scenario/inputs/claim.ts';
import { toBeChecked } from '../../scenario/places/placeRule.ts';
import { type Context, onceFor } from '../vehicle/context.ts';
import { presentClosed } from '../vehicle/openOptions.ts';
import { claimOf, estimateIn, type Settles, settleIn } from './settlement.ts';
import type { Deed } from './treatment.ts';

interface Threshold {
  readonly result: TotalLoss;
  readonly tested: Cents;
  readonly value: Cents;
  readonly salvage: Cents | null;
}

/** To the cent in decimals, which takes its time: kept while a solver moves what has nothing to do with it. */
const threshold = remember(
  (claim: Claim, said: ClaimFacts, age: number): Threshold => {
    const rule = said.place.totalLoss;
    const tested = testedRepairCost(TO_THE_CENT, estimateIn(TO_THE_CENT, claim, false), rule.leftOut);
    const value = toCents(Math.max(0, claim.value - claim.damageBefore));
    const salvage = claim.salvage === null ? null : toCents(claim.salvage);
    const insured = said.pays !== 'nobody';
    const result = totalLossUnder(rule, { repair: tested, value, salvage, modelYears: age, insured });
    return { result, tested, value, salvage };
  },
  (a, b) => a[0] === b[0] && a[1] === b[1] && a[2] === b[2],
  4,
);

/** The place's test on this damage: the cost that counts, the value, and what they come to. */
export const thresholdOf = (ctx: Context): Threshold => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  return threshold(claim, said, ctx.inputs.vehicle.age);
};

/** Why the lender leaves no cash to take; null where it does, or nothing is owed. */
const lenderCloses = (ctx: Context): string | null => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  const { lender } = said;
  if (!lender) return null;
  if (lender.requiresRepair === true) return `${lender.name} requires the repair`;
  if (lender.paidFirst === false) return null;
  if (lender.cheque === 'only for the repair')
    return `${lender.name} releases the cheque only for the repair`;
  if (lender.paidFirst === true && lender.cheque === null)
    return `${lender.name} must be paid first, and nobody has asked whether it releases the cheque`;
  return null;
};

/** Why an insurer does not settle in this manner; null where it does. */
export const settlementClosed = (how: Settles, ctx: Context): string | null =>
  onceFor(ctx, `closed ${how}`, () => whyClosed(how, ctx));

const whyClosed = (how: Settles, ctx: Context): string | null => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  if (said.pays === 'nobody') return 'nobody’s insurer pays for it';
  const { result } = thresholdOf(ctx);
  const total = how === 'given up' || how === 'kept';
  if (total && result.status === 'repair')
    return `under the rule of ${said.place.name} it is no total loss: the estimate is below the line`;
  if (!total && result.status === 'total loss')
    return `under the rule of ${said.place.name} it is a total loss: the estimate is over the line`;
  if (how === 'kept' && said.place.mayKeep === false)
    return `${said.place.name} does not let the owner keep a total loss`;
  if (how === 'kept' && claim.salvage === null)
    return 'there is no bid for the wreck, so nobody can say what keeping it costs';
  if (how === 'repair in money') {
    const lender = lenderCloses(ctx);
    if (lender) return lender;
  }
  const days = 0;
  const { payment } = settleIn(TO_THE_CENT, ctx.inputs, ctx.facts, {
    how,
    replaced: true,
    days,
    more: 0,
  }).split;
  return payment === 0 ? 'the payment would be nil: there is nothing to claim' : null;
};

const handsClosed = (plan: Omit<ClaimWork, 'days'> | null, ctx: Context): string | null => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  if (!plan) return 'no plan for it was written';
  if (said.airbagsDeployed === true && !said.rebuild.inspected)
    return 'an airbag has gone off: closed until somebody qualified has inspected it';
  if (said.flooded === true && !said.rebuild.inspected)
    return 'it was flooded: closed until somebody qualified has inspected it';
  if (said.structure === 'damaged' && plan.by === 'own' && plan.qualified === 0)
    return 'the structure is damaged: that is qualified work, and none is in the plan';
  return null;
};

/** Why it is not safe to drive with only part of the damage mended; null where nothing is known against it. */
const structureClosed = (ctx: Context): string | null => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  if (said.structure === 'damaged') return 'the structure behind the damage is not sound';
  if (said.structure === 'not checked')
    return 'nobody qualified has looked at the structure behind the damage yet';
  return null;
};

const leftClosed = (ctx: Context): string | null => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  if (ctx.facts.mayBeDriven === false) return 'as it stands it is not to be driven';
  if (said.airbagsDeployed === true) return 'an airbag has gone off: it is not safe to drive';
  if (said.flooded === true) return 'it was flooded: it is not safe to drive';
  if (claim.belts) return 'the seat belts have to be mended first';
  if (claim.calibration) return 'the sensors have to be set anew first';
  return structureClosed(ctx);
};

const rebuildClosed = (ctx: Context): string | null => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  const { tested, value } = thresholdOf(ctx);
  const never = neverRebuilt(said.place, tested, value);
  if (never && never.status !== 'repair')
    return `${said.place.name} never lets a vehicle damaged as badly as this be rebuilt for the road`;
  const hands = handsClosed(claim.rebuild, ctx);
  if (hands) return hands;
  if (!said.rebuild.insuranceQuoted)
    return 'no insurer has quoted for it as rebuilt: get that in writing first';
  if (!said.rebuild.retitlingConfirmed)
    return 'the office has not confirmed that it would be retitled: ask first';
  if ((claim.rebuild?.monthsOff ?? 0) >= ctx.horizon)
    return 'it would be off the road for all of the time looked at';
  return null;
};

/** Why it is not mended without a claim as if nothing had branded it, or rebuilt without one; null where it may be. */
const unclaimedClosed = (deed: Deed, ctx: Context): string | null => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  const total = thresholdOf(ctx).result.status === 'total loss';
  if (deed === 'rebuild')
    return total ? null : `under the rule of ${said.place.name} it is no total loss: its papers stay clean`;
  // A rule that was not read in the law itself closes nothing: what it would do is a risk of the course.
  return total && !toBeChecked(said.place.totalLoss)
    ? `under the rule of ${said.place.name} its papers are branded, claim or not: see rebuilding it`
    : null;
};

/** Why the lender does not let the damage stay; null where it does, or nothing is owed. */
const lenderWantsRepair = (ctx: Context): string | null => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  return said.lender?.requiresRepair === true ? `${said.lender.name} requires the repair` : null;
};

/** Why this may not be done to it; null where it may. `claimed`: on an insurer's money. */
export const deedClosed = (deed: Deed, claimed: boolean, ctx: Context): string | null => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const needs = presentClosed(ctx.horizon, ctx);
  if (needs) return needs;
  const unclaimed = claimed ? null : unclaimedClosed(deed, ctx);
  if (unclaimed) return unclaimed;
  switch (deed) {
    case 'shop':
      return null;
    case 'own':
      return handsClosed(claim.ownRepair, ctx);
    case 'safe':
      return lenderWantsRepair(ctx) ?? handsClosed(claim.safeOnly, ctx) ?? structureClosed(ctx);
    case 'left':
      return lenderWantsRepair(ctx) ?? leftClosed(ctx);
    case 'rebuild':
      return rebuildClosed(ctx);
  }
};
