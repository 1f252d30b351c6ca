/** Yearly bills paid ahead: what of them is unearned is owned, and comes back when the vehicle goes. */
import { unearnedOf } from '../../cashflow/contracts/recurring.ts';
import { inForce } from '../../cashflow/contracts/stepped.ts';
import { type Levels, levelAt } from '../../cashflow/levels.ts';
import { linesOf } from '../../cashflow/lines.ts';
import { type Category, type Contract, postMoney } from '../../cashflow/posting.ts';
import type { BillChange, RunningCosts, YearlyBills } from '../../scenario/inputs/inputs.ts';
import * as VEHICLE from '../../scenario/inputs/vehicleInputs.ts';
import { type BillStep, stepsOf } from './billSteps.ts';
import type { Context } from './context.ts';
import type { Span } from './span.ts';

/** Of a vehicle, what its yearly bills are. */
export type Billed = YearlyBills & Pick<RunningCosts, 'registrationRefunded' | 'changes'>;

export interface YearlyBill {
  readonly category: Category;
  readonly what: string;
  /** Where it stands below its vehicle in the scenario. */
  readonly at: string;
  readonly aYear: number;
  readonly nextDue: number;
  readonly levels: Levels;
  /** From when it is another figure. */
  readonly steps: readonly BillStep[];
  /** It is paid for twelve months; an inspection is for the day it is done. */
  readonly ahead: boolean;
  /** What is unearned of it comes back. An inspection is used up the day it is done. */
  readonly comesBack: boolean;
}

type Prices = Context['levels'];

interface Terms {
  readonly category: Category;
  readonly what: string;
  readonly of: (vehicle: Billed) => Billed[keyof YearlyBills];
  readonly changed: (change: BillChange) => number | null;
  readonly prices: (levels: Prices) => Levels;
  readonly comesBack: (vehicle: Billed) => boolean;
}

const FEES: Category = 'registration, tax, inspection';
const fees = ({ fees: levels }: Prices): Levels => levels;

/**
 * Every yearly bill that a file may give, in the order of the ledger. Read by functions, not by name: it is asked of every
 * vehicle in every future, and a field looked up by a name that varies is slow (a fifth of the drawing after a collision).
 */
const TERMS: Readonly<Record<keyof YearlyBills, Terms>> = {
  cover: {
    category: 'insurance',
    what: 'insurance',
    of: ({ cover }) => cover,
    changed: ({ cover }) => cover,
    prices: ({ cover }) => cover,
    comesBack: () => true,
  },
  registration: {
    category: FEES,
    what: 'registration',
    of: ({ registration }) => registration,
    changed: ({ registration }) => registration,
    prices: fees,
    comesBack: ({ registrationRefunded }) => registrationRefunded,
  },
  inspection: {
    category: FEES,
    what: 'inspection',
    of: ({ inspection }) => inspection,
    changed: ({ inspection }) => inspection,
    prices: fees,
    comesBack: () => false,
  },
  tax: {
    category: FEES,
    what: 'yearly tax',
    of: ({ tax }) => tax,
    changed: ({ tax }) => tax,
    prices: fees,
    comesBack: () => true,
  },
};
const BILLS = Object.entries(TERMS).map(([bill, terms]) => ({
  ...terms,
  ahead: bill !== 'inspection',
  at: VEHICLE.A_YEAR[bill as keyof YearlyBills].key,
}));

/** The yearly bills of a vehicle. */
export const yearlyBills = (vehicle: Billed, { levels }: Context): readonly YearlyBill[] =>
  BILLS.map(({ category, what, at, of, changed, prices, ahead, comesBack }) => {
    const { aYear, nextDue } = of(vehicle);
    return {
      category,
      what,
      at,
      aYear,
      nextDue,
      levels: prices(levels),
      steps: stepsOf(vehicle.changes, changed),
      ahead,
      comesBack: comesBack(vehicle),
    };
  });

/** What comes back of them by time goes on for as long as a sale takes: a year's worth, at the prices of a month. */
export const goingOnAYear = (vehicle: Billed, month: number, { levels }: Context): number => {
  let sum = 0;
  for (const { of, changed, prices, comesBack } of BILLS)
    if (comesBack(vehicle)) {
      const steps = stepsOf(vehicle.changes, changed);
      // Its weeks begin when the month is over.
      sum += inForce(of(vehicle).aYear, steps, month + 1) * levelAt(prices(levels), month);
    }
  return sum;
};

/** When a vehicle's bills fall: a bought one pays at its start, a kept one when they are due. */
type Paying = Pick<Span, 'bought' | 'start'>;

const unearnedOfBill = (
  { aYear, nextDue, levels, steps }: YearlyBill,
  { bought, start }: Paying,
  month: number,
): number =>
  aYear === 0 && steps.length === 0
    ? 0
    : unearnedOf(aYear, levels, bought ? start : start + nextDue, month, steps);

/**
 * What is unearned of a vehicle's bills at the end of a month, in money of that month: those that come back alone. That
 * day's bills are paid.
 */
const unearnedAt = (vehicle: Billed, paying: Paying, month: number, ctx: Context): number => {
  let sum = 0;
  for (const bill of yearlyBills(vehicle, ctx))
    if (bill.comesBack) sum += unearnedOfBill(bill, paying, month);
  return sum;
};

/**
 * The same where the look ends that day: a bought vehicle's bill for a year that begins then is not paid any more, and a
 * year that is over has left nothing.
 */
const unearnedAtTheEnd = (vehicle: Billed, paying: Paying, month: number, ctx: Context): number =>
  paying.bought && (month - paying.start) % 12 === 0 ? 0 : unearnedAt(vehicle, paying, month, ctx);

/**
 * What is unearned of the bills of whichever vehicle is there: those of a lease handed back have come back.
 *
 * @param held the vehicles, one after the other
 */
export const unearnedOver =
  (vehicle: Billed, held: readonly Span[], ctx: Context): ((month: number, lookEnds?: boolean) => number) =>
  (month, lookEnds = month === ctx.horizon) => {
    const span = held.find(({ start, end }) =>
      lookEnds ? start < month && month <= end : start <= month && month < end,
    );
    if (!span) return 0;
    return lookEnds ? unearnedAtTheEnd(vehicle, span, month, ctx) : unearnedAt(vehicle, span, month, ctx);
  };

/**
 * What comes back when a vehicle goes at the end of a month: a receipt for each bill, in its own category.
 *
 * @param paidThatDay a bill due that day was paid; not on the day of the decision for a vehicle that goes at once
 */
export const unusedBack = (
  vehicle: Billed,
  { name, path, bought, start }: Pick<Span, 'name' | 'path' | 'bought' | 'start'>,
  month: number,
  ctx: Context,
  paidThatDay = true,
): Contract => {
  const line = linesOf(name, path);
  return (sink) => {
    for (const bill of yearlyBills(vehicle, ctx)) {
      if (!bill.comesBack) continue;
      const { category, what, at, nextDue } = bill;
      const due = !bought && month === start + nextDue;
      const back = due && !paidThatDay ? 0 : unearnedOfBill(bill, { bought, start }, month);
      if (back !== 0)
        postMoney(sink, line(category, `${what}, unused`, at, 'the unused part comes back'), month, -back);
    }
  };
};

/** The present vehicle as one whose bills are paid ahead. */
const presentPaying = (ctx: Context): Pick<Span, 'name' | 'path' | 'bought' | 'start'> => ({
  name: ctx.facts.vehicleName,
  path: 'vehicle',
  bought: false,
  start: 0,
});

/** What comes back of the present vehicle's bills when it goes at the end of a month to which it was held. */
export const presentUnusedBack = (month: number, ctx: Context): Contract =>
  unusedBack(ctx.inputs.vehicle, presentPaying(ctx), month, ctx);

/**
 * The same when it goes on the day of the decision, at once.
 *
 * @param insuranceApart what comes back of the insurance is listed by itself
 */
export const presentUnusedToday = (ctx: Context, insuranceApart = false): Contract => {
  const { vehicle } = ctx.inputs;
  const billed = insuranceApart
    ? { ...vehicle, cover: { aYear: 0, nextDue: vehicle.cover.nextDue } }
    : vehicle;
  return unusedBack(billed, presentPaying(ctx), 0, ctx, false);
};

/** What is unearned of them at the end of a month at which it is kept. */
export const presentUnearnedAt = (month: number, ctx: Context): number =>
  unearnedAt(ctx.inputs.vehicle, presentPaying(ctx), month, ctx);
