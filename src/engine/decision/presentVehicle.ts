import { type LoanFlows, loanFlows, loanPayments, owedAt } from '../cashflow/contracts/loan.ts';
import { oneOff } from '../cashflow/contracts/recurring.ts';
import { brokenValue, marketValue, netOfSelling } from '../cashflow/contracts/value.ts';
import type { Contract, Line, Reading, Sink } from '../cashflow/posting.ts';
import type { PresentVehicle, RunningCosts } from '../scenario/inputs.ts';
import type { Context } from './context.ts';
import { jobShopPrice, neededWork, properlyDoneIn, renewedBy, type Treatments } from './neededWork.ts';
import { runningCosts } from './runningCosts.ts';

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

/** What an offer brings; 0 where nobody put a price on it. */
export const priceOf = (offer: Offer, ctx: Context): number => ctx.inputs.vehicle.sellsFor[offer.price] ?? 0;

/** Every way of letting it go that somebody has put a price on. */
export const offersToday = (ctx: Context): Offer[] => {
  const { sellsFor } = ctx.inputs.vehicle;
  const needsWork = ctx.inputs.workNeeded.length > 0;
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
    add('private', true, 'running', 'running', true);
    add('trade-in', true, 'tradeInMended', 'trade_in_mended', false);
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
    if (hours !== 0) sink.time(line, month, hours);
  };

/** Letting the present vehicle go today by one offer: its price once, as a receipt at month 0. */
export const letGoToday = (offer: Offer, ctx: Context): Contract[] => {
  const { selling, cover } = ctx.inputs.vehicle;
  const line = saleLine(`sold: ${offer.letGo}`, offer.path, 'the one receipt for it, on the day');
  if (!offer.privately) return [sale(line, 0, priceOf(offer, ctx), 0, 0, 0)];
  const insured = saleLine(
    'insured while for sale',
    'vehicle.selling.weeks',
    'the weeks a private sale takes',
  );
  return [
    sale(line, 0, priceOf(offer, ctx), selling.cost, selling.hours, ctx.work.ownHour),
    oneOff(insured, 0, (cover.aYear * selling.weeks) / 52),
  ];
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

/** Running value of the present vehicle at the end of a month, with what buyers pay for the work done by then. */
const runningValue = (treatments: Treatments, month: number, ctx: Context): number => {
  const { vehicle, workNeeded } = ctx.inputs;
  const terms = {
    now: vehicle.sellsFor.running,
    law: vehicle.value,
    floor: vehicle.floor,
    brandFactor: vehicle.brandFactor,
  };
  const value = marketValue(terms, month, month * ctx.distanceAMonth);
  const kept = vehicle.sellsFor.running > 0 ? value / vehicle.sellsFor.running : 0;
  const paidFor = workNeeded.reduce(
    (sum, job, i) =>
      properlyDoneIn(job, treatments[i] ?? 'done') <= month
        ? sum + job.buyerPays * jobShopPrice(job, ctx)
        : sum,
    0,
  );
  return value + paidFor * kept;
};

/**
 * What the present vehicle would bring at the end of a month, undone work taken off: each undone job takes the value it
 * is said to cost, or its share, by shop price, of the gap between running and broken.
 */
export const presentValueAt = (treatments: Treatments, month: number, ctx: Context): number => {
  const { vehicle, workNeeded } = ctx.inputs;
  const running = runningValue(treatments, month, ctx);
  const undone = workNeeded.filter((job, i) => properlyDoneIn(job, treatments[i] ?? 'done') > month);
  if (undone.length === 0) return running;
  const { sellsFor } = vehicle;
  const gap = running - brokenValue(running, sellsFor.running, sellsFor.asItStands, sellsFor.scrap);
  const all = workNeeded.reduce((sum, job) => sum + jobShopPrice(job, ctx), 0);
  const lost = undone.reduce(
    (sum, job) =>
      sum +
      (job.left.valueLost > 0 ? job.left.valueLost : all > 0 ? (gap * jobShopPrice(job, ctx)) / all : 0),
    0,
  );
  return Math.max(Math.min(sellsFor.scrap, running), running - lost);
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
    vehicle.selling.cost * ctx.oneOffLevel(month),
    vehicle.selling.hours,
    reading === 'cash' ? 0 : ctx.ownHourAt(month),
    vehicle.floor,
  );

/** Selling the present vehicle at the end of month k ≥ 1, the way all later sales go. */
export const sellLater =
  (treatments: Treatments, month: number, ctx: Context): Contract =>
  (sink) => {
    const value = presentValueAt(treatments, month, ctx);
    const line = saleLine(
      'sold: private',
      'vehicle.sells_for.running',
      'the one receipt for it, when it goes',
    );
    const net = (reading: Reading): number => -netValue(ctx.inputs.vehicle, value, month, reading, ctx);
    sink.post(line, month, net('counted'), net('cash'), net('shop'));
    sink.time(line, month, ctx.inputs.vehicle.selling.hours);
  };

/** Holding the present vehicle to the end of month `until`: the needed work, running it, and its loan's payments. */
export const holdPresent = (
  treatments: Treatments,
  until: number,
  loan: LoanFlows | null,
  ctx: Context,
): Contract[] => {
  const { vehicle } = ctx.inputs;
  const contracts = [
    ...neededWork(treatments, until, ctx),
    ...runningCosts(
      vehicle,
      {
        path: 'vehicle',
        name: ctx.facts.vehicleName,
        start: 0,
        end: until,
        bought: false,
        renewed: renewedBy(treatments, ctx),
        lastYearlyBill: until,
      },
      ctx,
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
