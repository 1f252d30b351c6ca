import { type LoanFlows, loanFlows, loanPayments, owedAt } from '../../cashflow/contracts/loan.ts';
import { brokenValue, marketValue } from '../../cashflow/contracts/marketValue.ts';
import { oneOff } from '../../cashflow/contracts/recurring.ts';
import type { Contract, Line } from '../../cashflow/posting.ts';
import { latest } from '../../quantity/remember.ts';
import type { Job, PresentVehicle } from '../../scenario/inputs/inputs.ts';
import type { AmountsAt } from './byReading.ts';
import type { Context } from './context.ts';
import { heldPresent, presentSpan } from './held.ts';
import { lossesBorne } from './lossesBorne.ts';
import { buyersPart, isDoneBy, jobShopPrice, neededWork, type Treatments } from './neededWork.ts';
import { presentRotten } from './openOptions.ts';
import { type Piece, type Recipe, recipe } from './recipe.ts';
import { runningCosts } from './runningCosts.ts';
import { type Awaited, NO_FLOOR, netPrice, netValue, type Sale, sellPrivately } from './selling.ts';

/** The channels by which the present vehicle can go on the day of the decision. */
export type LetGo = 'private' | 'trade-in' | 'as it stands' | 'scrap';

/** One way of letting it go today. What it brings stands in the inputs, under `price`. */
export type Offer = {
  readonly letGo: LetGo;
  readonly mended: boolean;
  readonly price: keyof PresentVehicle['sellsFor'];
  readonly path: string;
  /** Sold privately: at its cost, own hours and the weeks it takes. */
  readonly privately: boolean;
};

/**
 * What an offer brings; 0 where nobody put a price on it. Private prices are stated for a clean title, so a branded one
 * takes its part of them; with the work done, buyers add what they pay for it.
 */
export const priceOf = (offer: Offer, ctx: Context): number => {
  const stated = ctx.inputs.vehicle.sellsFor[offer.price] ?? 0;
  if (!offer.privately) return stated;
  const paidFor = offer.mended ? ctx.inputs.workNeeded.reduce((sum, job) => sum + premium(job, ctx), 0) : 0;
  return stated * ctx.inputs.vehicle.brandFactor + paidFor;
};

/** What a buyer adds, on the day, for a job done. */
const premium = (job: Job, ctx: Context): number => job.buyerPays * jobShopPrice(job, ctx);

/** Every way of letting it go that somebody has put a price on. */
export const offersToday = (ctx: Context): Offer[] => {
  const { sellsFor } = ctx.inputs.vehicle;
  const needsWork = ctx.inputs.workNeeded.length > 0;
  // A frame rusted through cannot be sold as running, and what is known of it is told.
  const rotten = presentRotten(ctx.facts);
  const offers: Offer[] = [];
  const add = (
    letGo: LetGo,
    mended: boolean,
    price: Offer['price'],
    key: string,
    privately: boolean,
  ): void => {
    if (sellsFor[price] !== null)
      offers.push({ letGo, mended, price, path: `vehicle.sells_for.${key}`, privately });
  };
  if (needsWork) {
    add('as it stands', false, 'asItStands', 'as_it_stands', true);
    if (!rotten) {
      add('private', true, 'running', 'running', true);
      add('trade-in', true, 'tradeInMended', 'trade_in_mended', false);
    }
  } else if (rotten) {
    add('as it stands', false, 'asItStands', 'as_it_stands', true);
  } else {
    // With nothing to mend it stands as it runs.
    add('private', false, 'running', 'running', true);
  }
  add('trade-in', false, 'tradeIn', 'trade_in', false);
  add('scrap', false, 'scrap', 'scrap', false);
  return offers;
};

/** A present loan's flows; null when nothing is owed. */
export const presentLoan = (ctx: Context): LoanFlows | null => {
  const { loan } = ctx.inputs.vehicle;
  if (!loan || loan.owed === 0) return null;
  return loanFlows(
    {
      principal: loan.owed,
      notePerYear: loan.note,
      payments: loan.monthsLeft,
      firstPaymentMonth: 1,
      delayInterest: 'free',
    },
    ctx.rounding,
  );
};

const saleLine = (what: string, path: string, reason: string): Line => ({
  category: 'selling the old one',
  what,
  path,
  reason,
});

/** Letting the present vehicle go today by one offer: its price once, as a receipt; privately, when its buyer pays. */
export const letGoToday = (offer: Offer, ctx: Context): Sale => {
  const price = priceOf(offer, ctx);
  if (offer.privately) {
    const line = saleLine(`sold: ${offer.letGo}`, offer.path, 'the one receipt for it, when its buyer pays');
    return sellPrivately(line, price, NO_FLOOR, 0, ctx);
  }
  const line = saleLine(`sold: ${offer.letGo}`, offer.path, 'the one receipt for it');
  return { contract: (sink) => sink.post(line, 0, -price, -price, -price), awaited: null };
};

/** What letting it go today by one offer comes to, own time counted, in today's money: for choosing between offers. */
export const bringsToday = (offer: Offer, ctx: Context): number =>
  offer.privately
    ? netPrice(ctx.inputs.vehicle, priceOf(offer, ctx), NO_FLOOR, 0, 'counted', ctx)
    : priceOf(offer, ctx);

/** Where no dealer takes it in part payment: what leaves most once it is sold as it stands. */
export const bestSaleToday = (ctx: Context): Offer => {
  const offers = offersToday(ctx).filter((o) => !o.mended && o.letGo !== 'trade-in');
  return offers.reduce((a, b) => (bringsToday(b, ctx) > bringsToday(a, ctx) ? b : a));
};

/** When, and with how much, a present loan is paid off by a sale. */
export interface PayOff {
  /** The month at whose end the money for it comes. */
  readonly comes: number;
  readonly amount: number;
  readonly contracts: readonly Contract[];
}

/**
 * Paying off a present loan when its vehicle is sold at the end of `month`. Where the price comes later the loan runs on
 * till then, payments and all, and is paid off out of the price; where the look ends first it is still owed.
 */
export const payOff = (
  loan: LoanFlows | null,
  month: number,
  awaited: Awaited | null,
  ctx: Context,
): PayOff => {
  const comes = awaited?.comes ?? month;
  const amount = loan ? owedAt(loan, comes) : 0;
  if (!loan || owedAt(loan, month) === 0) return { comes, amount, contracts: [] };
  const line = (what: string, reason: string): Line => ({
    category: 'loan',
    what,
    path: 'vehicle.loan',
    reason,
  });
  const contracts: Contract[] = [];
  if (comes > month) {
    const on = line('present loan', 'runs on until the sale pays it off');
    contracts.push(loanPayments(on, loan, 0, Math.min(comes, ctx.horizon), month + 1));
  }
  if (comes <= ctx.horizon && amount !== 0)
    contracts.push(
      oneOff(
        { ...line('present loan paid off', 'a sale pays it off'), role: 'loan paid off' },
        comes,
        amount,
      ),
    );
  return { comes, amount, contracts };
};

/** What is still owed on a present loan at the end of a month from `month` on, the vehicle sold then. */
export const owedUntilPaid = (loan: LoanFlows | null, comes: number, at: number): number =>
  loan && at < comes ? owedAt(loan, at) : 0;

/**
 * What the present vehicle, held until `until`, would bring at the end of a month. Buyers' part in work that was done
 * falls as the vehicle does; each undone job takes the value it is said to cost, or its share, by shop price, of the gap
 * between running and broken.
 */
export const presentValueAt = (
  treatments: Treatments,
  month: number,
  until: number,
  ctx: Context,
): number => {
  const { vehicle, workNeeded } = ctx.inputs;
  const { sellsFor, value: law, floor, brandFactor } = vehicle;
  const today = sellsFor.running * brandFactor;
  const terms = { now: sellsFor.running, law, floor, brandFactor };
  const marketAt = (at: number): number => marketValue(terms, at, at * ctx.distanceAMonth);
  const cleanWhen = (at: number): number => (at === 0 ? today : marketAt(at));
  const clean = marketAt(month);
  const gap = clean - brokenValue(clean, today, sellsFor.asItStands * brandFactor, sellsFor.scrap);
  let all = 0;
  for (const job of workNeeded) all += jobShopPrice(job, ctx);
  let added = 0;
  let lost = vehicle.damage;
  for (let i = 0; i < workNeeded.length; i++) {
    const job = workNeeded[i] as Job;
    const treatment = treatments[i] ?? 'done';
    if (isDoneBy(job, treatment, month, until)) added += buyersPart(job, treatment, clean, cleanWhen, ctx);
    else if (job.left.valueLost > 0) lost += job.left.valueLost;
    else if (all > 0) lost += (gap * jobShopPrice(job, ctx)) / all;
  }
  const running = clean + added;
  return lost === 0 ? running : Math.max(Math.min(sellsFor.scrap, running), running - lost);
};

const worthOf = (ctx: Context, treatments: Treatments, until: number): AmountsAt =>
  latest((month) => netValue(ctx.inputs.vehicle, presentValueAt(treatments, month, until, ctx), month, ctx));

/** What the present vehicle, held until `until`, would bring by month, net of what selling it costs. */
export const presentWorth = (treatments: Treatments, until: number): Recipe<AmountsAt> =>
  recipe(worthOf, treatments, until);

/** Selling the present vehicle at the end of month k ≥ 1, the way all later sales go. */
export const sellLater = (treatments: Treatments, month: number, ctx: Context): Sale =>
  sellPrivately(
    saleLine('sold: private', 'vehicle.sells_for.running', 'the one receipt for it, when it goes'),
    presentValueAt(treatments, month, month, ctx),
    ctx.inputs.vehicle.floor,
    month,
    ctx,
  );

const losses = (ctx: Context, treatments: Treatments, until: number): Contract[] =>
  lossesBorne(
    ctx.inputs.vehicle,
    (month) => presentValueAt(treatments, month, until, ctx),
    presentSpan(treatments, until, ctx),
    ctx,
  );

const loanCarriedOn = (ctx: Context, until: number): Contract[] => {
  const loan = presentLoan(ctx);
  const line: Line = {
    category: 'loan',
    what: 'present loan',
    path: 'vehicle.loan',
    reason: 'keeping carries it on',
  };
  return loan ? [loanPayments(line, loan, 0, until)] : [];
};

/**
 * Holding the present vehicle to the end of month `until`: the needed work, running it, and its loan's payments.
 *
 * @param ctx for what there is, not for how much
 */
export const holdPresent = (
  treatments: Treatments,
  until: number,
  ctx: Context,
  loan: 'with its loan' | 'without its loan' = 'with its loan',
): Piece[] => [
  recipe(neededWork, treatments, until),
  ...runningCosts(heldPresent(treatments, until, ctx), ctx.inputs.vehicle.components.length),
  recipe(losses, treatments, until),
  ...(loan === 'with its loan' ? [recipe(loanCarriedOn, until)] : []),
];
