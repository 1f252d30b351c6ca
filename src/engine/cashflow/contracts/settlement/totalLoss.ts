/** Whether a damaged vehicle is a total loss under a place's rule, decided exactly or left undecided with the reason. */
import { Decimal } from '../../../quantity/decimal.ts';
import { type Cents, toCents } from '../../../quantity/money.ts';
import type { Operator, PlaceRule, TotalLossTest } from '../../../scenario/places/placeRule.ts';

/** The facts the test needs, before the damage and of it, in cents. Nothing negative. */
export interface DamagedVehicle {
  /** The repair cost that counts under the rule (testedRepairCost). */
  readonly repair: Cents;
  /** Actual cash value before the damage, without tax. */
  readonly value: Cents;
  /** What the wreck would bring; null: no bid known. */
  readonly salvage: Cents | null;
  /** Model years since its own; null: not known. */
  readonly modelYears: number | null;
  /** Whether an insurer pays for the damage. */
  readonly insured: boolean;
}

export type Undecided =
  | 'the insurer decides'
  | 'exactly on the line, and whether that counts is not known'
  | 'no bid for the wreck'
  | 'the vehicle may be too old for the rule'
  | 'worth too little for the rule';

export type TotalLoss =
  | { readonly status: 'total loss' | 'repair' }
  | { readonly status: 'undecided'; readonly reason: Undecided };

const undecided = (reason: Undecided): TotalLoss => ({ status: 'undecided', reason });

/** Left against right, exactly, by an operator that may not be known on the line itself. */
const held = (left: Decimal, right: Decimal, operator: Operator): TotalLoss => {
  const order = left.cmp(right);
  if (order === 0 && operator === 'not known') {
    return undecided('exactly on the line, and whether that counts is not known');
  }
  return { status: order > 0 || (order === 0 && operator === '>=') ? 'total loss' : 'repair' };
};

const tested = (test: TotalLossTest, { repair, value, salvage }: DamagedVehicle): TotalLoss => {
  if (test.kind === 'insurer decides') return undecided('the insurer decides');
  if (test.kind === 'percent') {
    return held(new Decimal(repair).times(100), new Decimal(value).times(test.percent), test.operator);
  }
  if (salvage === null) return undecided('no bid for the wreck');
  return held(new Decimal(repair).plus(salvage), new Decimal(value), test.operator);
};

/** Why a rule may not speak of this vehicle, or null. */
const outOfReach = (
  { reach }: PlaceRule['totalLoss'],
  { value, modelYears, insured }: DamagedVehicle,
): Undecided | null => {
  if (reach.uninsuredOnly && insured) return 'the insurer decides';
  if (reach.modelYears === 'recent') return 'the vehicle may be too old for the rule';
  if (reach.modelYears !== null && (modelYears === null || modelYears > reach.modelYears)) {
    return 'the vehicle may be too old for the rule';
  }
  if (reach.valueAtLeast !== null && value < toCents(reach.valueAtLeast)) {
    return 'worth too little for the rule';
  }
  return null;
};

/**
 * Holds a repair against a place's rule. Percentage: repair x 100 against value x percent; formula: repair
 * + salvage against value; both in exact arithmetic, so that the line itself falls as the statute says. A rule that
 * leaves it to the insurer, does not reach this vehicle, or is not known on the line is undecided, with the reason.
 * A vehicle worth nothing is a total loss by any repair at all, and on the line with none.
 * Sources: the place's own; Va. Code 46.2-1600 (formula, strict), Ala. Code 32-8-87 (percentage, inclusive).
 */
export const totalLossUnder = (rule: PlaceRule['totalLoss'], vehicle: DamagedVehicle): TotalLoss => {
  const reason = outOfReach(rule, vehicle);
  return reason === null ? tested(rule.test, vehicle) : undecided(reason);
};

/**
 * The least repair cost, in whole cents, that is surely a total loss under a test; null where the insurer decides or
 * there is no bid for the wreck. Where it is not known whether the line itself counts, the first cent beyond it.
 */
export const totalLossFrom = (test: TotalLossTest, value: Cents, salvage: Cents | null): Cents | null => {
  if (test.kind === 'insurer decides' || (test.kind === 'formula' && salvage === null)) return null;
  const line =
    test.kind === 'percent'
      ? new Decimal(value).times(test.percent).div(100)
      : Decimal.max(0, new Decimal(value).minus(salvage ?? 0));
  const first = test.operator === '>=' ? line.ceil() : line.floor().plus(1);
  return first.toNumber() as Cents;
};

/** Whether a repair of this cost bars the vehicle from ever being rebuilt for the road; null: no such rule known. */
export const neverRebuilt = (rule: PlaceRule, repair: Cents, value: Cents): TotalLoss | null =>
  rule.neverAgain === null
    ? null
    : held(
        new Decimal(repair).times(100),
        new Decimal(value).times(rule.neverAgain.percent),
        rule.neverAgain.operator,
      );
