import type { LoanTerms } from '../../cashflow/contracts/amortisation.ts';
import { type LoanFlows, loanFlows, loanPayments, owedAt } from '../../cashflow/contracts/loan.ts';
import { marketValue } from '../../cashflow/contracts/marketValue.ts';
import { type PurchaseTerms, purchase, purchaseFigures } from '../../cashflow/contracts/purchase.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { latest } from '../../quantity/remember.ts';
import type { Payment, Replacement, ValueLaw } from '../../scenario/inputs/inputs.ts';
import { SALE } from '../../scenario/inputs/ownedInputs.ts';
import { boughtBigBills, type Renewable } from './boughtBigBills.ts';
import { type AmountsAt, all, NOTHING } from './byReading.ts';
import type { Context } from './context.ts';
import { findingOne } from './findingOne.ts';
import { type HeldReplacement, nameOf, pathOf, type Run, runOf } from './held.ts';
import { buyOutMonth, type LeasePayment, leaseOf, leaseSpans } from './leases.ts';
import {
  askedLikeOurs,
  LIKE_OURS,
  offerAt,
  priceLevelAt,
  pricesLikeOurs,
  structureAt,
  worthLikeOurs,
} from './likeOurs.ts';
import { lossesBorne } from './lossesBorne.ts';
import { unearnedOver, unusedBack } from './paidAhead.ts';
import type { Financing, Plan, Standing } from './plan.ts';
import { around } from './purchaseExtras.ts';
import { type Piece, type Recipe, recipe } from './recipe.ts';
import { guaranteedMonths, runningCosts } from './runningCosts.ts';
import { netValue } from './selling.ts';

/** What the household brings to a purchase: the dealer's offer and what a present loan still wants. */
export interface Brought {
  /** Trade-in against this purchase; 0 when the old one goes another way. */
  readonly tradeIn: number;
  /** Payoff of the present loan, and what the old one brought another way towards it. */
  readonly payoff: number;
  readonly proceeds: number;
}

/** A purchase put together: its contracts, and what would be owned and owed at a later month. */
export interface Bought extends Standing, Pick<Plan, 'purchase'> {
  readonly pieces: readonly Piece[];
}

/** Which purchase: of what, at the end of which month, how it is paid, and what is brought to it. */
type Deal = {
  readonly index: number;
  readonly month: number;
  readonly brought: Recipe<Brought>;
  readonly financing: Financing;
};

const offerOf = ({ index, month }: Pick<Deal, 'index' | 'month'>, ctx: Context): Replacement =>
  offerAt(index, month, ctx);

/** The purchase's terms in month k: everything grown to k for the same model age. */
const purchaseTerms = (ctx: Context, deal: Deal): PurchaseTerms => {
  const offer = offerOf(deal, ctx);
  const brought = deal.brought.from(ctx);
  const level = priceLevelAt(deal.index, deal.month, ctx);
  const { payment } = offer;
  const grown = (n: number): number => n * level;
  return {
    price: grown(offer.price),
    salesTax: offer.salesTax,
    tradeInCredit: offer.tradeInCredit === null ? null : grown(offer.tradeInCredit),
    rebate: deal.financing === 'low rate' ? 0 : grown(offer.rebate),
    extras: [...offer.fees, ...offer.addOns].map(({ name, amount, financed, financeCharge }) => ({
      name,
      amount: grown(amount),
      financed,
      financeCharge,
    })),
    tradeIn: brought.tradeIn,
    payoffRolledIn: rolledInto(offer, brought),
    loan: payment.kind === 'loan' ? { downPayment: grown(payment.downPayment) } : null,
  };
};

/** The terms of a purchase's loan, from the month it is advanced; null where it is bought without one. */
const loanTerms = (ctx: Context, deal: Deal, terms: Recipe<PurchaseTerms>): LoanTerms<number> | null => {
  const { payment, lowRateInstead } = offerOf(deal, ctx);
  if (payment.kind !== 'loan') return null;
  return {
    principal: purchaseFigures(terms.from(ctx)).advance,
    notePerYear: deal.financing === 'low rate' ? (lowRateInstead ?? payment.apr) : payment.apr,
    payments: payment.months,
    firstPaymentMonth: payment.firstPayment,
    delayInterest: payment.interestDuringDelay ? 'charged' : 'free',
  };
};

/** What of a present loan goes into the next one: its payoff, less what the old one brought another way. */
const shortfallOf = ({ tradeIn, payoff, proceeds }: Brought): number =>
  tradeIn > 0 ? payoff : Math.max(0, payoff - proceeds);

/** What of it this purchase's own loan takes in. */
const rolledInto = ({ payment }: Replacement, brought: Brought): number =>
  payment.kind === 'loan' && payment.rollInShortfall ? shortfallOf(brought) : 0;

/**
 * Buying or leasing a replacement at the end of `month` and running it to the horizon.
 *
 * @param ctx for what there is, not for how much
 */
export const bought = (
  index: number,
  month: number,
  brought: Recipe<Brought>,
  financing: Financing,
  ctx: Context,
): Bought => {
  const offer = structureAt(index, ctx);
  const deal: Deal = { index, month, brought, financing };
  const { payment } = offer;
  const held: readonly HeldReplacement[] =
    payment.kind === 'lease'
      ? // Each lease is a vehicle of its own; one that is bought at its end goes on ageing.
        leaseSpans(payment, month, ctx.horizon).map(({ start, end, nth }) => ({
          whose: 'replacement',
          index,
          start,
          end: payment.afterwards === 'buy' ? ctx.horizon : end,
          nth,
        }))
      : [{ whose: 'replacement', index, start: month, end: ctx.horizon, nth: 0 }];
  const buying = payment.kind === 'lease' ? leased(deal, payment) : owned(deal, payment);
  const pieces = [...buying.pieces];
  const runs = held.map((one) => recipe(runOf, one));
  const unearned = recipe(unearnedOf, index, month, runs);
  held.forEach((one, i) => {
    const run = runs[i] as Recipe<Run>;
    pieces.push(recipe(losses, run, index, month), ...runningCosts(one, offer.components.length));
    // A lease is handed back before any bill could end it.
    if (payment.kind !== 'lease' || payment.afterwards === 'buy')
      pieces.push(recipe(bigBills, run, index, month));
    if (one.end < ctx.horizon) pieces.push(recipe(handedBack, run));
  });
  return {
    ...buying,
    pieces,
    toCome: (at, when, lookEnds) => all(unearned.from(at)(when, lookEnds)),
  };
};

const unearnedOf = (
  ctx: Context,
  index: number,
  month: number,
  runs: readonly Recipe<Run>[],
): ReturnType<typeof unearnedOver> =>
  unearnedOver(
    offerOf({ index, month }, ctx),
    runs.map((run) => run.from(ctx).span),
    ctx,
  );

const losses = (ctx: Context, run: Recipe<Run>, index: number, month: number): Contract[] =>
  lossesBorne(run.from(ctx).vehicle, marketWorth(index, month, ctx), run.from(ctx).span, ctx);

/** What is bought, as something that its like can stand in for. */
export const renewable = (index: number, month: number): Renewable => ({
  // Another like ours is the same whenever it is got.
  key: index === LIKE_OURS ? 'renewal of another like ours' : `renewal of ${index} got in ${month}`,
  vehicleAt: (ctx) => offerOf({ index, month }, ctx),
  pricesFrom: (ctx) => {
    if (index === LIKE_OURS) return (at) => pricesLikeOurs(at, ctx);
    const worth = marketWorth(index, month, ctx);
    const offer = offerOf({ index, month }, ctx);
    return (at) => usualPrices(worth(at), offer);
  },
  priceAt: (ctx) => (index === LIKE_OURS ? askedLikeOurs(ctx) : null),
});

const usualPrices = (running: number, { floor }: Replacement) => ({
  running,
  broken: Math.min(running, Math.max(floor, running * SALE.brokenDown.or.value)),
});

const bigBills = (ctx: Context, run: Recipe<Run>, index: number, month: number): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  return boughtBigBills(renewable(index, month), span, guaranteedMonths(vehicle, ctx.distanceAMonth), ctx);
};

const handedBack = (ctx: Context, run: Recipe<Run>): Contract[] => {
  const { vehicle, span } = run.from(ctx);
  return [unusedBack(vehicle, span, span.end, ctx)];
};

/** A table of values grows with the price of the same model age; a decline applies to whatever it starts from. */
const grownLaw = (law: ValueLaw, level: number): ValueLaw =>
  law.kind === 'points'
    ? { ...law, points: law.points.map(({ month, value }) => ({ month, value: value * level })) }
    : { ...law, perDistance: law.perDistance * level, downTo: law.downTo * level };

/** What a replacement got at the end of `month` is worth later, before what selling it costs. */
const marketWorth = (index: number, month: number, ctx: Context): ((at: number) => number) => {
  if (index === LIKE_OURS) return (at) => worthLikeOurs(at, ctx);
  const offer = offerOf({ index, month }, ctx);
  const level = ctx.vehiclePriceLevel(month);
  const terms = {
    now: offer.worthDayAfter * level,
    law: grownLaw(offer.value, level),
    floor: offer.floor,
    brandFactor: offer.brandFactor,
  };
  return (at) => marketValue(terms, at - month, (at - month) * ctx.distanceAMonth);
};

const worthOf = (ctx: Context, index: number, month: number): AmountsAt => {
  const offer = offerOf({ index, month }, ctx);
  const worthAt = marketWorth(index, month, ctx);
  return latest((at) => netValue(offer, worthAt(at), at, ctx));
};

/** What comes with it, whether it is bought or leased. */
const extras = (ctx: Context, index: number, month: number): Contract[] => [
  ...around(offerOf({ index, month }, ctx), nameOf(index, ctx), pathOf(index, ctx), month, ctx),
  ...(index === LIKE_OURS ? findingOne(month, ctx) : []),
];

type Buying = Omit<Bought, 'toCome'>;

/** The price, and what is paid with it. */
const paying = (ctx: Context, { index, month }: Deal, terms: Recipe<PurchaseTerms>): Contract[] => [
  purchase(linesOf(nameOf(index, ctx), pathOf(index, ctx)), terms.from(ctx), month),
];

const payments = (ctx: Context, { index, month }: Deal, borrowed: Recipe<LoanFlows | null>): Contract[] => {
  const loan = borrowed.from(ctx);
  const line = linesOf(nameOf(index, ctx), pathOf(index, ctx));
  const paid = line('loan', 'loan payment', 'loan', 'monthly, as the loan says');
  return loan ? [loanPayments(paid, loan, month, ctx.horizon)] : [];
};

const loanOf = (ctx: Context, loan: Recipe<LoanTerms<number> | null>): LoanFlows | null => {
  const terms = loan.from(ctx);
  return terms && loanFlows(terms, ctx.rounding);
};

const owned = (deal: Deal, { kind }: Payment): Buying => {
  const { index, month } = deal;
  const worth = recipe(worthOf, index, month);
  const terms = recipe(purchaseTerms, deal);
  const loan = recipe(loanTerms, deal, terms);
  const borrowed = recipe(loanOf, loan);
  return {
    pieces: [recipe(paying, deal, terms), recipe(extras, index, month), recipe(payments, deal, borrowed)],
    valueAt: (ctx, at) => worth.from(ctx)(at),
    owedAt: (ctx, at) => {
      const flows = borrowed.from(ctx);
      return flows ? owedAt(flows, at - month) : 0;
    },
    purchase: kind === 'loan' ? { terms: terms.from, loan: loan.from } : null,
  };
};

/** The leases that follow each other. */
const leases = (ctx: Context, index: number, month: number): Contract[] => {
  const { payment } = offerOf({ index, month }, ctx);
  if (payment.kind !== 'lease') return [];
  const [name, path] = [nameOf(index, ctx), pathOf(index, ctx)];
  return leaseSpans(payment, month, ctx.horizon).map((span) =>
    leaseOf(payment, span, month, name, path, ctx),
  );
};

/** One lease after the other to the horizon, or one that is bought at its end. */
const leased = (deal: Deal, payment: LeasePayment): Buying => {
  const { index, month } = deal;
  const worth = recipe(worthOf, index, month);
  const boughtOut = buyOutMonth(payment, month);
  return {
    pieces: [recipe(extras, index, month), recipe(leases, index, month)],
    valueAt: (ctx, at) => (at >= boughtOut ? worth.from(ctx)(at) : NOTHING),
    owedAt: () => 0,
    purchase: null,
  };
};
