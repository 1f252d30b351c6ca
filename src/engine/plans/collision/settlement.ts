/** What is settled on the day, for one course: the insurer's statement and who gets the money, by either arithmetic. */
import {
  type Arithmetic,
  less,
  lesser,
  sumOf,
  TO_THE_CENT,
  UNROUNDED,
} from '../../cashflow/contracts/settlement/arithmetic.ts';
import {
  type Estimate,
  type EstimateLine,
  estimateTotals,
} from '../../cashflow/contracts/settlement/estimate.ts';
import {
  type LossTerms,
  repairPayment,
  type Statement,
  totalLossPayment,
  underRule,
} from '../../cashflow/contracts/settlement/insurerPayment.ts';
import { type Split, splitRepair, splitTotalLoss } from '../../cashflow/contracts/settlement/lossPayee.ts';
import { claimOnOther, recoverableShare } from '../../cashflow/contracts/settlement/otherInsurer.ts';
import { unusedRefund } from '../../cashflow/contracts/settlement/refund.ts';
import type { Claim, ClaimFacts, PaidAheadFor } from '../../scenario/inputs/claim.ts';
import type { Inputs } from '../../scenario/inputs/inputs.ts';
import type { Facts } from '../../scenario/inputs/scenario.ts';
import { type Context, onceFor } from '../vehicle/context.ts';

/** What the insurer is asked for: the repair once done, money instead, or a total loss given up or kept. */
export type Settles = 'repair done' | 'repair in money' | 'given up' | 'kept';

/** What a settlement depends on besides the claim's numbers. */
export interface Asked {
  readonly how: Settles;
  /** A replacement is bought: tax paid only once it is incurred is paid. */
  readonly replaced: boolean;
  /** Days without the vehicle that a rental is claimed for. */
  readonly days: number;
  /** Damage found later that the insurer agrees to, before tax. */
  readonly more: number;
}

export interface SettledIn<N extends number> {
  readonly statement: Statement<N>;
  /** Payment under the reading of an unknown rule that pays most. The statement is the one that pays least. */
  readonly most: N;
  readonly split: Split<N>;
}

/** The claim, where there is one: callers are ways of a scenario that has one. */
export const claimOf = (
  inputs: Inputs,
  facts: Facts,
): { readonly claim: Claim; readonly said: ClaimFacts } => {
  if (!inputs.claim || !facts.claim) throw new RangeError('There is no claim');
  return { claim: inputs.claim, said: facts.claim };
};

/** The estimate in one of the two arithmetics, with what is found later as a line of its own. */
export const estimateIn = <N extends number>(
  money: Arithmetic<N>,
  { estimate }: Claim,
  taxOnlyWhenIncurred: boolean,
  more = 0,
): Estimate<N> => {
  const lines = estimate.lines.map((one): EstimateLine<N> => {
    const { what, kind, taxed, labour } = one;
    const amount = labour
      ? money.times(money.units(labour.rate), labour.hours)
      : money.units(one.amount ?? 0);
    const betterment = lesser(money.units(one.betterment), amount);
    return labour
      ? { what, kind, taxed, betterment, hours: labour.hours, ratePerHour: money.units(labour.rate) }
      : { what, kind, taxed, betterment, amount };
  });
  const found: EstimateLine<N> = {
    what: 'found later',
    kind: 'supplement',
    taxed: true,
    betterment: 0 as N,
    amount: money.units(more),
  };
  return { lines: more > 0 ? [...lines, found] : lines, taxRate: estimate.tax, taxOnlyWhenIncurred };
};

/** What the insurer adds for a rental, by the days it is needed for. */
export const rentalPaid = ({ rental }: Claim, days: number): number =>
  rental ? Math.min(rental.paidADay, rental.aDay) * Math.min(days, rental.paidDays) : 0;

export const towPaid = ({ tow }: Claim): number => (tow ? Math.min(tow.paid, tow.costs) : 0);

export const storagePaid = ({ storage }: Claim): number =>
  storage ? storage.aDay * Math.min(storage.days, storage.paidDays) : 0;

/** What comes back of something paid ahead. */
export const refundOf = <N extends number>(
  money: Arithmetic<N>,
  { paid, months, left, fee }: PaidAheadFor,
): N =>
  unusedRefund(money, {
    paid: money.units(paid),
    of: Math.max(months, left),
    unused: left,
    fee: money.units(fee),
  });

/** The share that can be had from the other driver; where the place's rule is not known, the least it can be. */
export const shareFromOther = ({ fault }: Claim, { place }: ClaimFacts): number =>
  recoverableShare(fault, place.fault?.rule ?? 'nothing if any');

/** The settlement in one arithmetic. Where a place's rule is not known it is the reading that pays least. */
export const settleIn = <N extends number>(
  money: Arithmetic<N>,
  inputs: Inputs,
  facts: Facts,
  { how, replaced, days, more }: Asked,
): SettledIn<N> => {
  const { claim, said } = claimOf(inputs, facts);
  const own = said.pays === 'own';
  const terms: LossTerms<N> = {
    value: money.units(claim.value),
    damageFromBefore: money.units(claim.damageBefore),
    taxRate: claim.salesTax,
    fees: money.units(how === 'kept' ? claim.transferFee : claim.titleFee),
    taxOnlyWhenIncurred: said.taxOnlyWhenBought,
    deductible: own ? money.units(claim.deductible) : (0 as N),
  };
  const totals = estimateTotals(
    money,
    estimateIn(money, claim, said.estimate.taxOnlyWhenPaid, more),
    how === 'repair done',
  );
  const asked = (damage: Statement<N>): Statement<N> =>
    own
      ? damage
      : claimOnOther(money, {
          damage: damage.payment,
          lostMarketValue: 0 as N,
          lossOfUse: money.units(rentalPaid(claim, days)),
          towAndStorage: money.units(towPaid(claim) + storagePaid(claim)),
          share: shareFromOther(claim, said),
          limit: claim.otherLimit === null ? null : money.units(claim.otherLimit),
        });
  const salvage = how === 'kept' ? money.units(claim.salvage ?? 0) : null;
  const total = how === 'given up' || how === 'kept';
  const paid = underRule(said.place.settlement, (reading) =>
    asked(
      total
        ? totalLossPayment(money, terms, { salvage, replaced }, reading)
        : repairPayment(money, terms, totals, reading),
    ),
  );
  const statements = paid.status === 'known' ? [paid.statement] : paid.readings.map((one) => one.statement);
  const statement = statements[0] as Statement<N>;
  const most = (statements[statements.length - 1] as Statement<N>).payment;
  const owed = money.units(inputs.vehicle.loan?.owed ?? 0);
  const gap = claim.gap && {
    limit: claim.gap.limit === null ? null : money.units(claim.gap.limit),
    excluded: money.units(claim.gap.notCovered),
  };
  const named = said.lender !== null && said.lender.paidFirst !== false;
  const cheque = (named && said.lender?.cheque) || 'released to the owner';
  const split = total
    ? splitTotalLoss(
        statement.payment,
        owed,
        gap,
        // A wreck that is kept keeps what was paid ahead for it.
        how === 'given up' ? sumOf(claim.refunds, (ahead) => refundOf(money, ahead)) : (0 as N),
      )
    : splitRepair(statement.payment, owed, cheque);
  return { statement, most, split };
};

/** The settlement in currency units, rounded as the context has it. */
export const settled = (ctx: Context, asked: Asked): Split<number> => {
  const { how, replaced, days, more } = asked;
  if (ctx.rounding === 'unrounded')
    return onceFor(
      ctx,
      `settled ${how} ${replaced} ${days} ${more}`,
      () => settleIn(UNROUNDED, ctx.inputs, ctx.facts, asked).split,
    );
  const { split } = settleIn(TO_THE_CENT, ctx.inputs, ctx.facts, asked);
  const [payment, owed, lender, owner, shop, refund, gap, stillOwed] = [
    split.payment,
    split.owed,
    split.lender,
    split.owner,
    split.shop,
    split.refund,
    split.gap,
    split.stillOwed,
  ].map((cents) => cents / 100) as [number, number, number, number, number, number, number, number];
  return { payment, owed, lender, owner, shop, refund, gap, stillOwed };
};

/** What the insurer pays more once it has seen what was found later. */
export const paidForMore = (ctx: Context, asked: Asked): number => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { amount, paid } = claim.estimate.supplement;
  return less(settled(ctx, { ...asked, more: amount * paid }).payment, settled(ctx, asked).payment);
};
