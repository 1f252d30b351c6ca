import { bundled } from '../../cashflow/bundle.ts';
import type { Rounding } from '../../cashflow/contracts/loan.ts';
import type { WorkPrices } from '../../cashflow/contracts/work.ts';
import { type Levels, priceLevels, smoothLevels } from '../../cashflow/levels.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Luck } from '../../chance/failureTimes.ts';
import { smoothLevel } from '../../quantity/month.ts';
import { remember } from '../../quantity/remember.ts';
import type { Inputs, PricesRise } from '../../scenario/inputs/inputs.ts';
import type { Facts } from '../../scenario/inputs/scenario.ts';
import {
  type Memory,
  type Particulars,
  type Reads,
  type ReadsOfAny,
  type Recalled,
  recalledFrom,
  recalledIn,
} from './memory.ts';

/** One future that was drawn: what luck every part of every vehicle has, and what turns out of each chance. */
export interface DrawnFuture {
  readonly kind: 'drawn';
  /** The luck of a vehicle's component, by its key and the component's position; -1 for repairs nobody named. */
  readonly luckOf: (vehicle: string, component: number) => Luck;
  /** What is remembered within this future, by what it is about, so that every way reads the same. */
  readonly recall: Memory;
  /**
   * What is remembered of a thing from one future to the next, by what is read of it; null where a range moves any of
   * that, and where the thing is no part of the inputs.
   */
  readonly lasting: (thing: object, reads: ReadsOfAny) => Recalled[] | null;
  /** In (0, 1): a chance of c comes true when it is below c. By the place of the chance in the scenario. */
  readonly turnsOut: (what: string) => number;
  /** The present vehicle is given up at the end of this month: its bills of the month are not paid, its tow is. */
  readonly givenUpIn: number | null;
  /** At mean inputs, as they stand for the view: what is fixed before futures are drawn goes by these. Null: as it is. */
  readonly atMean: Context | null;
}

/** Failures at their expected number, bills at their mean. */
export interface ExpectedFuture {
  readonly kind: 'expected';
  /** What is remembered while several ways are evaluated at the same inputs; null where nothing is. */
  readonly recall: Memory | null;
}

/** What happens: `expected` takes failures at their expected number and bills at their mean. */
export type Future = ExpectedFuture | DrawnFuture;
export const EXPECTED: Future = { kind: 'expected', recall: null };

/** The same for several ways at the same inputs: what they share is worked out once. */
export const expectedOnce = (): Future => ({ kind: 'expected', recall: new Map() });

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
}

/**
 * Every family's price levels, and how one-offs and vehicles rise from month to month, by how much each rises a year: in
 * one piece, for it is asked in every future.
 */
const levelsOf = remember(
  (
    horizon: number,
    general: number,
    energy: number,
    cover: number,
    repairs: number,
    ownTime: number,
    vehicles: number,
    fees: number,
  ) => {
    const of = (growth: number): Levels => priceLevels(growth, horizon);
    return {
      levels: {
        general: of(general),
        energy: of(energy),
        cover: of(cover),
        repairs: of(repairs),
        ownTime: of(ownTime),
        vehicles: of(vehicles),
        fees: of(fees),
      },
      oneOffs: smoothLevels(general, horizon),
      prices: smoothLevels(vehicles, horizon),
      putOff: { parts: smoothLevels(repairs, horizon), ownTime: smoothLevels(ownTime, horizon) },
    };
  },
  (a, b) => a.every((growth, i) => growth === b[i]),
);

/** Reads the shared part of the inputs once for all contracts. */
export const contextOf = (inputs: Inputs, facts: Facts, future: Future, rounding: Rounding): Context => {
  const { household } = inputs;
  const rise = household.pricesRise;
  const horizon = household.lookAhead;
  const { levels, oneOffs, prices, putOff } = levelsOf(
    horizon,
    rise.general,
    rise.energy,
    rise.cover,
    rise.repairs,
    rise.ownTime,
    rise.vehicles,
    rise.fees,
  );
  return {
    inputs,
    facts,
    future,
    rounding,
    horizon,
    distanceAMonth: household.distanceAYear / 12,
    levels,
    work: {
      ownHour: household.priceOfOwnHour,
      shopHour: household.atHome.shopHour,
      dayWithout: household.dayWithout,
      parts: levels.repairs,
      ownTime: levels.ownTime,
      general: levels.general,
    },
    workPutOff: {
      ownHour: household.priceOfOwnHour,
      shopHour: household.atHome.shopHour,
      dayWithout: household.dayWithout,
      parts: putOff.parts,
      ownTime: putOff.ownTime,
      general: oneOffs,
    },
    ownHourAt: (month) => household.priceOfOwnHour * (levels.ownTime[Math.min(month, horizon)] as number),
    oneOffLevel: (month) => oneOffs[month] ?? smoothLevel(rise.general, month),
    vehiclePriceLevel: (month) => prices[month] ?? smoothLevel(rise.vehicles, month),
  };
};

/**
 * The same evaluation with some of it otherwise. Every field by name: a spread would make an object that the optimizing
 * compiler takes for something else, and it would throw away what it compiled for the first kind.
 */
const contextWith = (
  by: Partial<Pick<Context, 'inputs' | 'future' | 'rounding' | 'horizon'>>,
  ctx: Context,
): Context => ({
  inputs: by.inputs ?? ctx.inputs,
  facts: ctx.facts,
  future: by.future ?? ctx.future,
  rounding: by.rounding ?? ctx.rounding,
  horizon: by.horizon ?? ctx.horizon,
  distanceAMonth: ctx.distanceAMonth,
  levels: ctx.levels,
  work: ctx.work,
  workPutOff: ctx.workPutOff,
  ownHourAt: ctx.ownHourAt,
  oneOffLevel: ctx.oneOffLevel,
  vehiclePriceLevel: ctx.vehiclePriceLevel,
});

/** The same inputs in another future. */
export const inFuture = (future: Future, ctx: Context): Context => contextWith({ future }, ctx);

/** The same for a solver, which needs functions without steps. */
export const unrounded = (ctx: Context): Context => contextWith({ rounding: 'unrounded' }, ctx);

/** The same up to an earlier month. */
export const upTo = (horizon: number, ctx: Context): Context => contextWith({ horizon }, ctx);

/**
 * The same future for another vehicle in the present one's place. What the household is like must not differ, nor what
 * is read of the vehicle (`Reads.vehicle`) by what lasts and is asked for with it: its cover.
 */
export const withVehicle = (vehicle: Inputs['vehicle'], ctx: Context): Context =>
  contextWith({ inputs: { ...ctx.inputs, vehicle } }, ctx);

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

/** Worked out once within a future that remembers; anew in one that does not. */
export const onceIn = <T>(future: Future, thing: unknown, particulars: Particulars, compute: () => T): T =>
  future.recall === null ? compute() : recalledFrom(future.recall, thing, particulars, compute);

/** What lasts is looked through one by one, and particulars may be a range's numbers, of which none comes twice. */
const MOST_LASTING = 64;

/**
 * What no luck touches: worked out once for all futures where no range moves what it reads, anew otherwise. Drawn futures
 * are never rounded, so rounding is no particular of it.
 *
 * @param reads one and the same list for one caller, and for it alone
 * @param particulars what else it goes by
 * @param compute hears whether the result lasts
 */
export const lasting = <H extends object, T>(
  future: Future,
  thing: H,
  reads: Reads<H>,
  particulars: Particulars,
  compute: (lasts: boolean) => T,
): T => {
  const kept = future.kind === 'drawn' ? future.lasting(thing, reads) : null;
  return kept ? recalledIn(kept, particulars, compute, MOST_LASTING) : compute(false);
};

/** The same, and where it does not last once within a future, of whatever thing it is asked there. */
export const lastingOrOnce = <H extends object, T>(
  future: Future,
  thing: H,
  reads: Reads<H>,
  particulars: Particulars,
  compute: () => T,
): T =>
  lasting(future, thing, reads, particulars, (lasts) =>
    lasts ? compute() : onceIn(future, reads, particulars, compute),
  );

/** Contracts that begin in `month`: where they last, all in one, to be added up only once. */
export const together = (
  contracts: readonly Contract[],
  month: number,
  lasts: boolean,
): readonly Contract[] => (lasts ? [bundled(contracts, month, true)] : contracts);
