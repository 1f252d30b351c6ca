/** Selling a vehicle privately: what it takes, what it brings, and when the money is there. */
import { netOfSelling } from '../../cashflow/contracts/marketValue.ts';
import { inForce } from '../../cashflow/contracts/stepped.ts';
import { levelAt } from '../../cashflow/levels.ts';
import { type ByReading, type Contract, type Line, READINGS, type Reading } from '../../cashflow/posting.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import { parkingSteps } from './billSteps.ts';
import { type Amounts, NOTHING } from './byReading.ts';
import type { Context } from './context.ts';
import { goingOnAYear } from './paidAhead.ts';

/** A sale that takes less than so many weeks pays at once. */
const AT_ONCE = 2;
const WEEKS_A_MONTH = 4.35;

/** Months from the day a private sale is begun to the day its buyer pays. */
export const monthsToPay = ({ selling }: Pick<RunningCosts, 'selling'>): number =>
  selling.weeks < AT_ONCE ? 0 : Math.ceil(selling.weeks / WEEKS_A_MONTH - 1e-9);

/** What 1 that comes so many months later is worth. */
const later = (months: number, ctx: Context): number => (months === 0 ? 1 : ctx.worthLater(months));

/**
 * What a private sale costs in cash, begun at the end of a month: its own cost, and what goes on for the weeks it takes:
 * insurance, tax, parking, and registration where it is paid back by time.
 */
const sellingCost = (vehicle: RunningCosts, month: number, ctx: Context): number => {
  const { selling, parkingAMonth, changes } = vehicle;
  const aMonth = inForce(parkingAMonth, parkingSteps(changes), month + 1);
  const parking = 12 * aMonth * levelAt(ctx.levels.fees, month);
  const aYear = goingOnAYear(vehicle, month, ctx) + parking;
  return selling.cost * ctx.oneOffLevel(month) + (aYear * selling.weeks) / 52;
};

/** What its own hours count for in a reading. */
const ownHourIn = (reading: Reading, month: number, ctx: Context): number =>
  reading === 'cash' ? 0 : ctx.ownHourAt(month);

/**
 * What a price brings when a sale is begun at the end of a month, in money of that month: privately, net of cost and
 * hours, the price paid weeks later; or `floor`, as scrap, at once and for nothing, where that is more.
 */
export const netPrice = (
  vehicle: RunningCosts,
  price: number,
  floor: number,
  month: number,
  reading: Reading,
  ctx: Context,
): number =>
  netOfSelling(
    price,
    sellingCost(vehicle, month, ctx),
    vehicle.selling.hours,
    ownHourIn(reading, month, ctx),
    floor,
    later(monthsToPay(vehicle), ctx),
  );

/** What a vehicle brings in the one way of selling that all plans use at their end. */
export const netValue = (vehicle: RunningCosts, price: number, month: number, ctx: Context): Amounts => {
  const cost = sellingCost(vehicle, month, ctx);
  const waiting = later(monthsToPay(vehicle), ctx);
  const { hours } = vehicle.selling;
  return (reading) =>
    netOfSelling(price, cost, hours, ownHourIn(reading, month, ctx), vehicle.floor, waiting);
};

/** No scrap price: scrapping it is a way of its own. */
export const NO_FLOOR = Number.NEGATIVE_INFINITY;

/** The price of a vehicle sold privately whose buyer has not paid yet. */
export interface Awaited {
  /** The month at whose end the sale was begun, and the one at whose end its price comes. */
  readonly begun: number;
  readonly comes: number;
  readonly price: ByReading<number>;
  /** Of the price, what pays off a loan on the vehicle. */
  readonly payoff: number;
}

/** What of a price not paid yet is owned at the end of a month, in money of that month. */
export const stillToPay = (awaited: Awaited | null, month: number, ctx: Context): Amounts => {
  if (!awaited || month < awaited.begun || month >= awaited.comes) return NOTHING;
  const waiting = later(awaited.comes - month, ctx);
  return (reading) => awaited.price[reading] * waiting;
};

/** A sale that is begun: its money, and what of that comes later; null where it pays at once. */
export interface Sale {
  readonly contract: Contract;
  readonly awaited: Awaited | null;
}

const SELLING: Line = {
  category: 'selling the old one',
  what: 'what selling it takes',
  path: 'vehicle.selling',
  reason: 'its cost and own hours; insurance, tax and parking of the weeks it takes',
};

/**
 * Selling the present vehicle privately, begun at the end of a month, or as scrap that day where that brings more: the
 * choice of each reading.
 *
 * @param floor what it brings as scrap, or NO_FLOOR
 */
export const sellPrivately = (
  line: Line,
  price: number,
  floor: number,
  month: number,
  ctx: Context,
): Sale => {
  const { vehicle } = ctx.inputs;
  const months = monthsToPay(vehicle);
  const { hours } = vehicle.selling;
  const cost = sellingCost(vehicle, month, ctx);
  const scrap = Math.min(floor, price);
  const waiting = later(months, ctx);
  const costs = { counted: 0, cash: 0, shop: 0 };
  const atOnce = { counted: 0, cash: 0, shop: 0 };
  const comes = { counted: 0, cash: 0, shop: 0 };
  for (const reading of READINGS) {
    const anHour = ownHourIn(reading, month, ctx);
    if (netOfSelling(price, cost, hours, anHour, NO_FLOOR, waiting) < scrap) atOnce[reading] = scrap;
    else {
      costs[reading] = cost + hours * anHour;
      (months === 0 ? atOnce : comes)[reading] = price;
    }
  }
  const paid = Math.min(month + months, ctx.horizon + 1);
  return {
    contract: (sink) => {
      // One line where all of it falls on one day.
      if (months === 0 || (comes.counted === 0 && comes.cash === 0 && comes.shop === 0)) {
        sink.post(
          line,
          month,
          costs.counted - atOnce.counted,
          costs.cash - atOnce.cash,
          costs.shop - atOnce.shop,
        );
        sink.time?.(line, month, hours);
        return;
      }
      sink.post(SELLING, month, costs.counted, costs.cash, costs.shop);
      sink.time?.(SELLING, month, hours);
      if (atOnce.counted !== 0 || atOnce.cash !== 0 || atOnce.shop !== 0)
        sink.post(line, month, -atOnce.counted, -atOnce.cash, -atOnce.shop);
      // Where the look ends first, the price is among what is owned then.
      if (paid <= ctx.horizon) sink.post(line, paid, -comes.counted, -comes.cash, -comes.shop);
    },
    awaited: months === 0 ? null : { begun: month, comes: month + months, price: comes, payoff: 0 },
  };
};
