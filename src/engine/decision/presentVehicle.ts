import { type LoanFlows, loanFlows, loanPayments, owedAt } from '../cashflow/contracts/loan.ts';
import { oneOff } from '../cashflow/contracts/recurring.ts';
import { brokenValue, marketValue, netOfSelling } from '../cashflow/contracts/value.ts';
import { levelAt } from '../cashflow/levels.ts';
import type { Contract, Line, Reading, Sink } from '../cashflow/posting.ts';
import type { Inputs, Job, PresentVehicle, RunningCosts } from '../scenario/inputs.ts';
import { type Context, lasting, lastingOrOnce, together } from './context.ts';
import { deductibles } from './deductibles.ts';
import type { Reads } from './memory.ts';
import { isDoneBy, jobShopPrice, neededWork, renewedBy, type Treatments } from './neededWork.ts';
import { presentRotten } from './openWays.ts';
import { runningCosts } from './runningCosts.ts';
import type { Span } from './span.ts';

/** The channels by which the present vehicle can go on the day of the decision. */
export type LetGo = 'private' | 'trade-in' | 'as it stands' | 'scrap';

/** One way of letting it go today. What it brings stands in the inputs, under `price`. */
export interface Offer {
  readonly letGo: LetGo;
  readonly mended: boolean;
  readonly price: keyof PresentVehicle['sellsFor'];
  readonly path: string;
  /** Sold privately: its cost, own hours and the weeks it takes, still insured. */
  readonly privately: boolean;
}

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

/** Money in from a sale, less what selling costs, and the own hours it takes. */
const sale =
  (line: Line, month: number, price: number, cost: number, hours: number, ownHour: number): Contract =>
  (sink: Sink) => {
    const cash = cost - price;
    sink.post(line, month, cash + hours * ownHour, cash, cash + hours * ownHour);
    if (hours !== 0) sink.time?.(line, month, hours);
  };

/** What a private sale costs in cash in a month: its own cost, and insurance for the weeks it takes. */
const sellingCost = ({ selling, cover }: RunningCosts, month: number, ctx: Context): number =>
  selling.cost * ctx.oneOffLevel(month) +
  (cover.aYear * levelAt(ctx.levels.cover, month) * selling.weeks) / 52;

/** Letting the present vehicle go today by one offer: its price once, as a receipt at month 0. */
export const letGoToday = (offer: Offer, ctx: Context): Contract => {
  const line = saleLine(
    `sold: ${offer.letGo}`,
    offer.path,
    'the one receipt for it, less what selling costs',
  );
  const { vehicle } = ctx.inputs;
  return offer.privately
    ? sale(
        line,
        0,
        priceOf(offer, ctx),
        sellingCost(vehicle, 0, ctx),
        vehicle.selling.hours,
        ctx.work.ownHour,
      )
    : sale(line, 0, priceOf(offer, ctx), 0, 0, 0);
};

/** Paying off a present loan when its vehicle is sold at the end of `month`. */
export const payOff = (loan: LoanFlows | null, month: number): Contract[] => {
  if (!loan || owedAt(loan, month) === 0) return [];
  const line: Line = {
    category: 'loan',
    what: 'present loan paid off',
    path: 'vehicle.loan',
    reason: 'a sale pays it off',
  };
  return [oneOff(line, month, owedAt(loan, month))];
};

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
  const clean = marketValue(
    { now: sellsFor.running, law, floor, brandFactor },
    month,
    month * ctx.distanceAMonth,
  );
  const today = sellsFor.running * brandFactor;
  const left = today > 0 ? clean / today : 0;
  const gap = clean - brokenValue(clean, today, sellsFor.asItStands * brandFactor, sellsFor.scrap);
  let all = 0;
  for (const job of workNeeded) all += jobShopPrice(job, ctx);
  let added = 0;
  let lost = vehicle.damage;
  for (let i = 0; i < workNeeded.length; i++) {
    const job = workNeeded[i] as Job;
    if (isDoneBy(job, treatments[i] ?? 'done', month, until)) added += premium(job, ctx);
    else if (job.left.valueLost > 0) lost += job.left.valueLost;
    else if (all > 0) lost += (gap * jobShopPrice(job, ctx)) / all;
  }
  const running = clean + left * added;
  return lost === 0 ? running : Math.max(Math.min(sellsFor.scrap, running), running - lost);
};

/** What a vehicle brings in the one way of selling that all plans use at their end, net of its cost and hours. */
export const netValue = (
  vehicle: RunningCosts,
  value: number,
  month: number,
  reading: Reading,
  ctx: Context,
): number =>
  netOfSelling(
    value,
    sellingCost(vehicle, month, ctx),
    vehicle.selling.hours,
    reading === 'cash' ? 0 : ctx.ownHourAt(month),
    vehicle.floor,
  );

/** Selling the present vehicle at the end of month k ≥ 1, the way all later sales go. */
export const sellLater =
  (treatments: Treatments, month: number, ctx: Context): Contract =>
  (sink) => {
    const value = presentValueAt(treatments, month, month, ctx);
    const line = saleLine(
      'sold: private',
      'vehicle.sells_for.running',
      'the one receipt for it, when it goes',
    );
    const net = (reading: Reading): number => -netValue(ctx.inputs.vehicle, value, month, reading, ctx);
    sink.post(line, month, net('counted'), net('cash'), net('shop'));
    sink.time?.(line, month, ctx.inputs.vehicle.selling.hours);
  };

const SPAN_READS: Reads<Inputs> = { own: ['workNeeded'], household: [], vehicle: ['offTheRoad'] };

/** The present vehicle's span, held to the end of month `until`; one and the same within a drawn future. */
export const presentSpan = (treatments: Treatments, until: number, ctx: Context): Span => {
  const { future, inputs } = ctx;
  const particulars = [until, inputs.vehicle.offTheRoad, ...treatments];
  return lastingOrOnce(future, inputs, SPAN_READS, particulars, () => spanOf(treatments, until, ctx));
};

const spanOf = (treatments: Treatments, until: number, ctx: Context): Span => ({
  path: 'vehicle',
  luck: 'vehicle',
  name: ctx.facts.vehicleName,
  start: 0,
  end: until,
  idle: Math.min(ctx.inputs.vehicle.offTheRoad, until),
  bought: false,
  renewed: renewedBy(treatments, until, ctx),
  lastYearlyBill: until,
});

const OWN_PART_READS: Reads<Inputs['vehicle']> = {
  own: ['sellsFor', 'value', 'floor', 'brandFactor', 'damage', 'offTheRoad', 'ownDamage'],
  household: ['distanceAYear', 'atHome.shopHour'],
  inputs: ['workNeeded'],
};

/** Holding the present vehicle to the end of month `until`: the needed work, running it, and its loan's payments. */
export const holdPresent = (
  treatments: Treatments,
  until: number,
  loan: LoanFlows | null,
  ctx: Context,
): Contract[] => {
  const { vehicle } = ctx.inputs;
  const span = presentSpan(treatments, until, ctx);
  const worthAt = (month: number): number => presentValueAt(treatments, month, until, ctx);
  const contracts = [
    ...neededWork(treatments, until, ctx),
    ...runningCosts(vehicle, span, ctx),
    ...lasting(ctx.future, vehicle, OWN_PART_READS, [until, ...treatments], (lasts) =>
      together(deductibles(worthAt, span, ctx), 0, lasts),
    ),
  ];
  if (loan) {
    const line: Line = {
      category: 'loan',
      what: 'present loan',
      path: 'vehicle.loan',
      reason: 'keeping carries it on',
    };
    contracts.push(loanPayments(line, loan, 0, until));
  }
  return contracts;
};
