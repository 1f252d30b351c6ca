import type { Rounding } from '../../cashflow/contracts/loan.ts';
import type { WorkPrices } from '../../cashflow/contracts/work.ts';
import { type Levels, levelAt, priceLevels, smoothLevels } from '../../cashflow/levels.ts';
import type { Luck } from '../../chance/failureTimes.ts';
import { smoothLevel } from '../../quantity/month.ts';
import type { Inputs, PricesRise } from '../../scenario/inputs/inputs.ts';
import type { Facts } from '../../scenario/inputs/scenario.ts';
import { FamilyLevels, PricesOfWork } from './familyLevels.ts';
import { type Memory, type Particulars, recalledFrom } from './memory.ts';

/** What of a future decides which contracts there are at all. */
export interface Turns {
  /** The month whose inspection ends the present vehicle, before the horizon; null for none. */
  readonly ends: number | null;
  /** The papers of a rebuilt wreck are refused. */
  readonly refused: boolean;
}

/** One future that was drawn: what luck every part of every vehicle has, and what turns out of each chance. */
export interface DrawnFuture {
  readonly kind: 'drawn';
  /** The luck of a vehicle's component, by its key and the component's position; -1 for repairs nobody named, -2 for big bills. */
  readonly luckOf: (vehicle: string, component: number) => Luck;
  /** What is remembered within this future, by what it is about, so that every way reads the same. */
  readonly recall: Memory;
  /** In (0, 1): a chance of c comes true when it is below c. By the place of the chance in the scenario. */
  readonly turnsOut: (what: string) => number;
  /** The present vehicle is given up at the end of this month: its bills of the month are not paid, its tow is. */
  readonly givenUpIn: number | null;
  /** Where a plan is put together for all futures that take the same turns: those turns. Null: luck decides. */
  readonly turns: Turns | null;
  /** At mean inputs, as they stand for the view: what is fixed before futures are drawn goes by these. Null: as it is. */
  readonly atMean: Context | null;
}

/** Failures at their expected number, bills at their mean. */
export interface ExpectedFuture {
  readonly kind: 'expected';
}

/** What happens: `expected` takes failures at their expected number and bills at their mean. */
export type Future = ExpectedFuture | DrawnFuture;
export const EXPECTED: Future = { kind: 'expected' };

/** Results at other numbers that are the same at these. */
export interface Still {
  /** Null where it hangs on a number that differs. */
  readonly of: <T>(name: string, compute: (ctx: Context) => T) => { readonly result: T } | null;
}

/** What every contract of one evaluation shares: horizon, pace, price levels, the household's prices of work. */
export interface Context {
  readonly inputs: Inputs;
  readonly facts: Facts;
  readonly future: Future;
  /** `to the cent` for the ledger, `unrounded` for a solver. */
  readonly rounding: Rounding;
  /** H in months. */
  readonly horizon: number;
  readonly distanceAMonth: number;
  readonly levels: Readonly<Record<keyof PricesRise, Levels>>;
  readonly work: WorkPrices;
  /** The same for work that is put off: a one-off, at the prices of the month in which it is done. */
  readonly workPutOff: WorkPrices;
  /** What an own hour is worth in month m; 0 where it is not priced. */
  readonly ownHourAt: (month: number) => number;
  /** The level of one-offs and sale costs in month m. */
  readonly oneOffLevel: (month: number) => number;
  /** The level of replacements' prices in month m, for the same model age. */
  readonly vehiclePriceLevel: (month: number) => number;
  /** What 1 that comes so many months later is worth at the household's rate. */
  readonly worthLater: (months: number) => number;
  /** The same with the present vehicle as the file describes it, whatever a collision has made of it since. */
  readonly origin: Context;
  /** What was worked out once for these numbers, by its name. */
  readonly known: Map<string, unknown>;
  /** What is known of numbers near these, where it hangs on none in which they differ; null: nothing. */
  readonly still: Still | null;
}

/** Nothing is read from the inputs before it is asked for: what reads are recorded of has read just what it needs. */
class Numbers implements Context {
  readonly inputs: Inputs;
  readonly facts: Facts;
  readonly future: Future;
  readonly rounding: Rounding;
  readonly levels: FamilyLevels;
  readonly work: WorkPrices;
  readonly workPutOff: WorkPrices;
  readonly known = new Map<string, unknown>();
  readonly still: Still | null;
  private readonly smooth: FamilyLevels;
  private readonly until: number | null;
  private readonly before: Context | null;
  private readonly later: number[] = [];

  constructor(
    inputs: Inputs,
    facts: Facts,
    future: Future,
    rounding: Rounding,
    until: number | null,
    before: Context | null,
    still: Still | null = null,
  ) {
    const { household } = inputs;
    this.inputs = inputs;
    this.facts = facts;
    this.future = future;
    this.rounding = rounding;
    this.levels = new FamilyLevels(household, priceLevels);
    this.smooth = new FamilyLevels(household, smoothLevels);
    this.work = new PricesOfWork(household, this.levels);
    this.workPutOff = new PricesOfWork(household, this.smooth);
    this.until = until;
    this.before = before;
    this.still = still;
  }

  get origin(): Context {
    return this.before ?? this;
  }

  get horizon(): number {
    return this.until ?? this.inputs.household.lookAhead;
  }
  get distanceAMonth(): number {
    return this.inputs.household.distanceAYear / 12;
  }
  ownHourAt(month: number): number {
    return this.inputs.household.priceOfOwnHour * levelAt(this.levels.ownTime, month);
  }
  oneOffLevel(month: number): number {
    return this.smooth.general[month] ?? smoothLevel(this.inputs.household.pricesRise.general, month);
  }
  worthLater(months: number): number {
    const known = this.later[months];
    if (known !== undefined) return known;
    const worth = (1 + this.inputs.household.moneyEarns) ** (-months / 12);
    this.later[months] = worth;
    return worth;
  }
  vehiclePriceLevel(month: number): number {
    return this.smooth.vehicles[month] ?? smoothLevel(this.inputs.household.pricesRise.vehicles, month);
  }
}

/** The numbers of one evaluation, read when they are asked for. */
export const contextOf = (
  inputs: Inputs,
  facts: Facts,
  future: Future,
  rounding: Rounding,
  still: Still | null = null,
): Context => new Numbers(inputs, facts, future, rounding, null, null, still);

const originIn = (ctx: Context, change: (origin: Context) => Context): Context | null =>
  ctx.origin === ctx ? null : change(ctx.origin);

/** The same inputs in another future. */
export const inFuture = (future: Future, ctx: Context): Context =>
  new Numbers(
    ctx.inputs,
    ctx.facts,
    future,
    ctx.rounding,
    null,
    originIn(ctx, (origin) => inFuture(future, origin)),
  );

/** The same for a solver, which needs functions without steps. */
export const unrounded = (ctx: Context): Context =>
  new Numbers(ctx.inputs, ctx.facts, ctx.future, 'unrounded', null, originIn(ctx, unrounded));

/** The same up to an earlier month. */
export const upTo = (until: number, ctx: Context): Context =>
  new Numbers(
    ctx.inputs,
    ctx.facts,
    ctx.future,
    ctx.rounding,
    until,
    originIn(ctx, (at) => upTo(until, at)),
  );

/** The same future for another vehicle in the present one's place. */
export const withVehicle = (vehicle: Inputs['vehicle'], ctx: Context): Context => {
  const { household, workNeeded, replacement, doingWithout, anotherLikeOurs, usualLike, claim } = ctx.inputs;
  return new Numbers(
    { household, vehicle, workNeeded, replacement, doingWithout, anotherLikeOurs, usualLike, claim },
    ctx.facts,
    ctx.future,
    ctx.rounding,
    null,
    ctx.origin,
  );
};

/** How often something of chance `chance` happens: its chance when expected; in a drawn future once or not at all. */
export const timesOf = (chance: number, what: string, future: Future): number =>
  chance === 0 || future.kind === 'expected' ? chance : future.turnsOut(what) < chance ? 1 : 0;

/** Within one future every way reads the same of the same thing in the same particulars. */
export const recalled = <T>(
  future: DrawnFuture,
  thing: unknown,
  particulars: Particulars,
  draw: () => T,
): T => recalledFrom(future.recall, thing, particulars, draw);

/** Worked out once for these numbers, whoever asks for it; told from all else by its name. */
export const onceFor = <T>(ctx: Context, name: string, compute: () => T): T => {
  const known = ctx.known.get(name);
  if (known !== undefined) return known as T;
  const result = compute();
  ctx.known.set(name, result);
  return result;
};

/** The same by month. */
export const onceByMonth = <T>(ctx: Context, name: string, month: number, compute: () => T): T => {
  const byMonth = onceFor(ctx, name, (): (T | undefined)[] => []);
  const known = byMonth[month];
  if (known !== undefined) return known;
  const result = compute();
  byMonth[month] = result;
  return result;
};

/**
 * The same, taken from numbers near these where it hangs on none in which they differ.
 *
 * @param compute reads the numbers of the context it is handed and nothing else, and leaves nothing to be read later
 */
export const stillFor = <T>(ctx: Context, name: string, compute: (ctx: Context) => T): T =>
  onceFor(ctx, name, () => {
    const same = ctx.still?.of(name, compute);
    return same ? same.result : compute(ctx);
  });
