import { changesApart, changesFar, changesFollow, changesSay } from './changeRules.ts';
import {
  claimBounds,
  claimDates,
  claimDatesPast,
  claimValued,
  lenderFits,
  payerFits,
  placeKnown,
  tradeInDamaged,
} from './claimRules.ts';
import { coverFits, coverGoesOn, endingCoverKnown } from './coverRules.ts';
import { datesFar } from './dateRules.ts';
import { dangerAsked, drivenFits, ownHandsFit } from './drivingRules.ts';
import { estimateSums, linesOnce, linesPriced } from './estimateRules.ts';
import {
  currencyGiven,
  distanceGiven,
  distanceUsual,
  earnsMoreThanLoan,
  privateWords,
  somethingElse,
  twoWayKnown,
} from './householdRules.ts';
import { odometerOfItsAge } from './odometerRules.ts';
import { billsOnBothSides } from './oneSidedRules.ts';
import { lifeKnown, looksTell } from './partRules.ts';
import { pumpGoesFirst, pumpsFit } from './pumpRules.ts';
import type { Raw, Verdict } from './rawView.ts';
import {
  leaseDistance,
  longLoan,
  newIsNew,
  oneGuarantee,
  paidOneWay,
  pricedOnce,
  termsFit,
  usedIsDriven,
} from './replacementRules.ts';
import { aboveNew, dearerLater, shopBelowParts } from './valueRules.ts';
import {
  componentShares,
  distanceKeys,
  energyUnitsAlike,
  fuelFits,
  fuelOnBothSides,
  salePrices,
  someRepairs,
  upkeepOnBothSides,
  valueTable,
  yearKnown,
} from './vehicleRules.ts';
import {
  datesPast,
  qualifiedWork,
  renewsKnown,
  safetyFirst,
  sameClock,
  upkeepDue,
  workPriced,
} from './workRules.ts';

/** Everything that takes more than one place of the file to see. */
export const applyRules = (raw: Raw): Verdict => {
  const sale = salePrices(raw);
  const qualified = qualifiedWork(raw);
  return {
    problems: [
      ...[
        somethingElse,
        distanceGiven,
        currencyGiven,
        privateWords,
        twoWayKnown,
        yearKnown,
        valueTable,
        distanceKeys,
        fuelFits,
        pumpsFit,
        changesFollow,
        changesSay,
        changesApart,
      ].flatMap((rule) => rule(raw)),
      ...sale.problems,
      ...[componentShares, dangerAsked, drivenFits, ownHandsFit].flatMap((rule) => rule(raw)),
      ...[workPriced, safetyFirst, renewsKnown, upkeepDue, sameClock, lifeKnown, looksTell].flatMap((rule) =>
        rule(raw),
      ),
      ...qualified.problems,
      ...[paidOneWay, pricedOnce, termsFit, leaseDistance, usedIsDriven, oneGuarantee, newIsNew].flatMap(
        (rule) => rule(raw),
      ),
      ...[
        claimValued,
        placeKnown,
        payerFits,
        lenderFits,
        claimBounds,
        claimDates,
        linesPriced,
        linesOnce,
        estimateSums,
        coverFits,
        endingCoverKnown,
      ].flatMap((rule) => rule(raw)),
    ],
    warnings: [
      ...sale.warnings,
      ...qualified.warnings,
      ...[
        distanceUsual,
        earnsMoreThanLoan,
        fuelOnBothSides,
        pumpGoesFirst,
        upkeepOnBothSides,
        billsOnBothSides,
        energyUnitsAlike,
        someRepairs,
        dearerLater,
        aboveNew,
        shopBelowParts,
        odometerOfItsAge,
        datesFar,
        changesFar,
        coverGoesOn,
        datesPast,
        claimDatesPast,
        tradeInDamaged,
        longLoan,
      ].flatMap((rule) => rule(raw)),
    ],
  };
};
