/** What the other driver's insurer pays, and what of a deductible comes back when one's own insurer collects from it. */
import { Decimal } from '../../../quantity/decimal.ts';
import type { Cents } from '../../../quantity/money.ts';
import { remember } from '../../../quantity/remember.ts';
import type { FaultRule } from '../../../scenario/places/placeRule.ts';
import { type Arithmetic, atLeastNil, less, lesser, noSign, plus, sum, turned } from './arithmetic.ts';
import { type Statement, statementOf } from './insurerPayment.ts';

/**
 * The share of a loss that can be had from the other driver, by one's own share of the fault (0 to 1) and the place's
 * rule. Without fault of one's own: 1 under every rule. Throws RangeError outside 0 to 1.
 * Source: the four doctrines of contributory and comparative negligence, common knowledge of the trade, no source.
 */
export const recoverableShare = (ownFault: number, rule: FaultRule): number => {
  if (!(ownFault >= 0 && ownFault <= 1)) throw new RangeError('a share of the fault lies between 0 and 1');
  const barred =
    (rule === 'nothing if any' && ownFault > 0) ||
    (rule === 'nothing from half' && ownFault >= 0.5) ||
    (rule === 'nothing above half' && ownFault > 0.5);
  return barred ? 0 : restOf(ownFault);
};

/** Decimal, because 1 - 0.9 is a shade below a tenth and would lose a cent that is just half due; one share a scenario. */
const restOf = remember(
  (share: number): number => new Decimal(1).minus(share).toNumber(),
  ([a], [b]) => a === b,
  1,
);

/** A claim on the other driver's insurer. All positive; no deductible is taken. */
export interface ClaimOnOther<N extends number = Cents> {
  /** The vehicle: the payment of a statement made with deductible 0, for a repair or a total loss. */
  readonly damage: N;
  /** What a buyer pays less for a repaired vehicle: a claim of its own, 0 unless made. A plain receipt. */
  readonly lostMarketValue: N;
  /** Rental or days without, as claimed. */
  readonly lossOfUse: N;
  readonly towAndStorage: N;
  /** From recoverableShare. */
  readonly share: number;
  /** The most the other policy pays for property, less what others have had of it; null: not known to bind. */
  readonly limit: N | null;
}

/**
 * The other insurer's statement: everything claimed, less one's own share of the fault (the remainder rounded half up
 * once), at most the limit. Nothing claimed: 0. Source: liability cover in general, common practice, no source.
 */
export const claimOnOther = <N extends number>(
  money: Arithmetic<N>,
  claim: ClaimOnOther<N>,
): Statement<N> => {
  const { damage, lostMarketValue, lossOfUse, towAndStorage, share, limit } = claim;
  noSign({
    'the damage': damage,
    'the lost market value': lostMarketValue,
    'the loss of use': lossOfUse,
    'tow and storage': towAndStorage,
    'the share': share,
    'the limit': limit ?? 0,
  });
  const claimed = sum([damage, lostMarketValue, lossOfUse, towAndStorage]);
  const theirs = money.times(claimed, share);
  const beyond = limit === null ? (0 as N) : atLeastNil(less(theirs, limit));
  return statementOf([
    ['damage', damage],
    ['lost market value', lostMarketValue],
    ['loss of use', lossOfUse],
    ['tow and storage', towAndStorage],
    ['own share of the fault', less(theirs, claimed)],
    ['beyond the limit', turned(beyond)],
  ]);
};

/**
 * What one's own insurer collects from the other, shared out. Both parts positive; owner + insurer = collected less
 * what exceeds their losses, which nobody may keep. `in proportion`: by what each has borne, rounded half up for the
 * owner; `owner first`: until the deductible is whole.
 * Source: both are in use, by place and policy; common practice, no source.
 */
export const shareCollected = <N extends number>(
  money: Arithmetic<N>,
  given: { readonly collected: N; readonly insurerPaid: N; readonly deductible: N },
  rule: 'in proportion' | 'owner first',
): { readonly owner: N; readonly insurer: N } => {
  const { collected, insurerPaid, deductible } = given;
  noSign({
    'what is collected': collected,
    'what the insurer paid': insurerPaid,
    'the deductible': deductible,
  });
  const loss = plus(insurerPaid, deductible);
  const had = lesser(collected, loss);
  const owner = rule === 'owner first' ? lesser(had, deductible) : money.share(had, deductible, loss);
  return { owner, insurer: less(had, owner) };
};
