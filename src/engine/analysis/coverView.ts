import type { CoverPart } from '../scenario/inputs/claim.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import {
  changeDeductible,
  claimsToPay,
  coverCost,
  type Exposure,
  lossesOf,
  valueToPay,
  worstLoss,
} from '../valuation/cover.ts';
import type { CoverPartView, CoverView } from './collisionViews.ts';

const partView = (
  kind: CoverPartView['kind'],
  part: CoverPart,
  value: number,
  wreck: number,
  savings: number | null,
): CoverPartView => {
  const cover = { premium: part.aYear, deductible: part.deductible };
  const losses = lossesOf(part.totalShare, part.meanLoss);
  // Without cover a total loss still leaves the wreck to sell.
  const atStake = Math.max(0, value - wreck);
  const exposure: Exposure = { claims: part.chanceAYear, losses, value: atStake };
  const total = lossesOf(1, 0);
  const worst = {
    withIt: worstLoss(cover, { losses: total, value: atStake }),
    without: worstLoss(null, { losses: total, value: atStake }),
  };
  const valueTip = valueToPay(cover, exposure);
  const { other } = part;
  const change =
    other && changeDeductible(cover, { premium: other.aYear, deductible: other.deductible }, exposure);
  return {
    kind,
    premium: part.aYear,
    deductible: part.deductible,
    withIt: coverCost(cover, exposure),
    without: coverCost(null, exposure),
    worst,
    savingsAfter:
      savings === null ? null : { withIt: savings - worst.withIt, without: savings - worst.without },
    claimsTip: claimsToPay(cover, exposure),
    valueTip: valueTip.status === 'at' ? { ...valueTip, at: valueTip.at + wreck } : valueTip,
    other:
      other && change ? { ...other, gain: change.gain, worst: change.worst, claimsTip: change.tips } : null,
  };
};

/** Keeping or dropping cover for the vehicle itself, by expected cost and by what one loss can take; null where its
 * premium was not told apart. The value is what it sells for running today. */
export const coverView = (
  { vehicle, household }: Inputs,
  { lenderRequiresCover }: Facts,
): CoverView | null => {
  const { collision, comprehensive } = vehicle.ownDamage;
  if (!collision && !comprehensive) return null;
  const value = vehicle.sellsFor.running * vehicle.brandFactor;
  const wreck = vehicle.sellsFor.scrap;
  const parts = [
    collision && partView('collision', collision, value, wreck, household.savings),
    comprehensive && partView('comprehensive', comprehensive, value, wreck, household.savings),
  ].filter((one) => one !== null);
  return {
    value,
    chanceAYear: {
      collision: collision?.chanceAYear ?? null,
      comprehensive: comprehensive?.chanceAYear ?? null,
    },
    parts,
    mustKeep: lenderRequiresCover ? 'a lender asks for it until the debt is gone' : null,
  };
};
