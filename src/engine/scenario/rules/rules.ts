import { DEFAULTS } from '../defaults.ts';
import {
  claimBounds,
  claimDates,
  claimDatesPast,
  claimValued,
  lenderFits,
  payerFits,
  placeKnown,
  tradeInDamaged,
} from './claim.ts';
import { coverFits } from './cover.ts';
import { datesFar } from './dates.ts';
import { dangerAsked, drivenFits, ownHandsFit } from './driving.ts';
import { estimateSums, linesOnce, linesPriced } from './estimate.ts';
import {
  currencyGiven,
  distanceGiven,
  distanceUsual,
  earnsMoreThanLoan,
  privateWords,
  somethingElse,
  twoWayKnown,
} from './household.ts';
import { odometerOfItsAge } from './odometers.ts';
import { billsOnBothSides } from './oneSided.ts';
import { lifeKnown, looksTell } from './parts.ts';
import { pumpGoesFirst, pumpsFit } from './pump.ts';
import type { Raw, Verdict } from './raw.ts';
import {
  leaseDistance,
  longLoan,
  newIsNew,
  oneGuarantee,
  paidOneWay,
  pricedOnce,
  termsFit,
  usedIsDriven,
} from './replacement.ts';
import { aboveNew, dearerLater, shopBelowParts } from './values.ts';
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
} from './vehicle.ts';
import {
  datesPast,
  qualifiedWork,
  renewsKnown,
  safetyFirst,
  sameClock,
  upkeepDue,
  workPriced,
} from './work.ts';

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
      ].flatMap((rule) => rule(raw)),
      ...sale.problems,
      ...componentShares(raw, DEFAULTS.work.shareOfAverage.value),
      ...[dangerAsked, drivenFits, ownHandsFit].flatMap((rule) => rule(raw)),
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
        datesPast,
        claimDatesPast,
        tradeInDamaged,
        longLoan,
      ].flatMap((rule) => rule(raw)),
    ],
  };
};
