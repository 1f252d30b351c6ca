/** The lines of a claim besides the work: who pays whom on the day, and what a claim costs and brings around it. */
import { oneOff, unearnedOf, yearly } from '../../cashflow/contracts/recurring.ts';
import { TO_THE_CENT, UNROUNDED } from '../../cashflow/contracts/settlement/arithmetic.ts';
import { type FirstDayLine, firstDay, type Split } from '../../cashflow/contracts/settlement/lossPayee.ts';
import { shareCollected } from '../../cashflow/contracts/settlement/otherInsurer.ts';
import type { Category, Contract, Line } from '../../cashflow/posting.ts';
import { type Context, timesOf } from '../vehicle/context.ts';
import { claimOf, refundOf, rentalPaid, shareFromOther, storagePaid, towPaid } from './settlement.ts';

export const line = (category: Category, what: string, path: string, reason: string): Line => ({
  category,
  what,
  path,
  reason,
});

/** Months until the other side has paid back what can be had of it. Common practice, no source. */
const MONTHS_TO_RECOVER = 6;

const ITEMS: Record<FirstDayLine['item'], { readonly category: Category; readonly reason: string }> = {
  'insurer pays the owner': { category: 'settlement', reason: 'what is left of the payment for the owner' },
  'insurer pays the lender': { category: 'settlement', reason: 'a lender named in the policy is paid first' },
  'insurer pays the shop': { category: 'settlement', reason: 'the cheque may only be spent on the repair' },
  'gap cover pays the lender': { category: 'settlement', reason: 'what a total loss leaves owing' },
  'lender is paid': { category: 'loan', reason: 'it lowers what is owed' },
  'shortfall is paid': { category: 'loan', reason: 'the debt outlives the vehicle' },
};

/**
 * The settlement as lines of the day.
 *
 * @param payOff the vehicle goes to the insurer, so what is still owed falls due
 */
export const settlement = (split: Split<number>, payOff: boolean): Contract[] =>
  firstDay(split, payOff).map(({ item, amount }) =>
    oneOff(line(ITEMS[item].category, item, 'claim', ITEMS[item].reason), 0, amount),
  );

/** Dearer insurance, at the yearly bills that follow a claim on the own policy, whatever is driven by then. */
const surcharge = (ctx: Context): Contract => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { aYear, years } = claim.surcharge;
  const first = ctx.inputs.vehicle.cover.nextDue || 12;
  const prices = ctx.levels.cover;
  const last = first + 12 * (years - 1);
  const bills = yearly(
    line('insurance', 'dearer after the claim', 'claim.surcharge', 'for its years, with the yearly bill'),
    aYear,
    prices,
    first,
    Math.min(ctx.horizon, last),
  );
  const over = ctx.horizon < first || ctx.horizon >= last + 12;
  if (aYear === 0 || years === 0 || over) return bills;
  const unused = oneOff(
    line("what we'd own at the end", 'dearer after the claim, unused', 'claim.surcharge', 'paid ahead'),
    ctx.horizon,
    -unearnedOf(aYear, prices, first, ctx.horizon),
  );
  return (sink) => {
    bills(sink);
    unused(sink);
  };
};

/** What comes back of the deductible once the own insurer has collected from the other side. */
const recovered = (split: Split<number>, ctx: Context): Contract[] => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  if (said.pays !== 'own' || claim.recovered === 0) return [];
  const collected = (split.payment + claim.deductible) * shareFromOther(claim, said);
  const given = { collected, insurerPaid: split.payment, deductible: claim.deductible };
  const owner = shareCollected(UNROUNDED, given, said.recoveredFor ?? 'in proportion').owner;
  const times = timesOf(claim.recovered, 'claim.recovered', ctx.future);
  const month = Math.min(MONTHS_TO_RECOVER, ctx.horizon);
  return [
    oneOff(
      line('settlement', 'deductible paid back', 'claim.recovered', 'if the other side pays, months later'),
      month,
      -owner * times,
    ),
  ];
};

/**
 * What a claim brings beside the settlement, and what it costs later. None of it where no claim is made.
 *
 * @param insured whether a vehicle is insured afterwards, for insurance to be dearer
 */
export const byClaim = (split: Split<number>, days: number, insured: boolean, ctx: Context): Contract[] => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  // The other driver's insurer pays these within its statement.
  if (said.pays !== 'own') return [];
  const paid = (what: string, key: string, amount: number): Contract =>
    oneOff(line('settlement', `${what}, the insurer's part`, `claim.${key}`, 'up to its limit'), 0, -amount);
  return [
    paid('rental', 'rental', rentalPaid(claim, days)),
    paid('tow', 'tow', towPaid(claim)),
    paid('storage', 'storage', storagePaid(claim)),
    ...recovered(split, ctx),
    ...(insured ? [surcharge(ctx)] : []),
  ];
};

/** What the collision costs whoever pays: tow, storage, seats for children, days without. */
export const byCollision = (days: number, seats: boolean, ctx: Context): Contract[] => {
  const { tow, storage, rental, childSeats } = claimOf(ctx.inputs, ctx.facts).claim;
  const work = (what: string, key: string, amount: number): Contract =>
    oneOff(line('work needed now', what, `claim.${key}`, 'whoever pays for it'), 0, amount);
  return [
    work('tow', 'tow', tow?.costs ?? 0),
    work('storage', 'storage', (storage?.aDay ?? 0) * (storage?.days ?? 0)),
    work("children's seats", 'also_needed.child_seats', seats ? (childSeats?.costs ?? 0) : 0),
    oneOff(
      line('getting about without it', 'rental', 'claim.rental', 'while it is being repaired'),
      0,
      (rental?.aDay ?? 0) * days,
    ),
  ];
};

/** What was paid ahead and comes back once the vehicle is gone. */
export const refunds = (ctx: Context): Contract[] => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  return claim.refunds.map((ahead, i) => {
    const back =
      ctx.rounding === 'unrounded' ? refundOf(UNROUNDED, ahead) : refundOf(TO_THE_CENT, ahead) / 100;
    const at = `claim.refunds[${i}]`;
    return oneOff(line('settlement', `${ahead.what}, unused`, at, 'in proportion'), 0, -back);
  });
};
