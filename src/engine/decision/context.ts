import type { Rounding } from '../cashflow/contracts/loan.ts';
import type { WorkPrices } from '../cashflow/contracts/work.ts';
import { type Levels, priceLevels } from '../cashflow/levels.ts';
import { smoothLevel } from '../quantity/month.ts';
import type { Inputs, PricesRise } from '../scenario/inputs.ts';
import type { Facts } from '../scenario/scenario.ts';

/** What happens: `expected` takes failures at their expected number and bills at their mean. */
export type Future = { readonly kind: 'expected' };
export const EXPECTED: Future = { kind: 'expected' };

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
  /** What an own hour is worth in month m; 0 where it is not priced. */
  readonly ownHourAt: (month: number) => number;
  /** The level of one-offs and sale costs in month m. */
  readonly oneOffLevel: (month: number) => number;
  /** The level of replacements' prices in month m, for the same model age. */
  readonly vehiclePriceLevel: (month: number) => number;
}

/** Reads the shared part of the inputs once for all contracts. */
export const contextOf = (inputs: Inputs, facts: Facts, future: Future, rounding: Rounding): Context => {
  const { household } = inputs;
  const rise = household.pricesRise;
  const horizon = household.lookAhead;
  const of = (growth: number): Levels => priceLevels(growth, horizon);
  const levels = {
    general: of(rise.general),
    energy: of(rise.energy),
    cover: of(rise.cover),
    repairs: of(rise.repairs),
    ownTime: of(rise.ownTime),
    vehicles: of(rise.vehicles),
    fees: of(rise.fees),
  };
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
    ownHourAt: (month) => household.priceOfOwnHour * (levels.ownTime[Math.min(month, horizon)] as number),
    oneOffLevel: (month) => smoothLevel(rise.general, month),
    vehiclePriceLevel: (month) => smoothLevel(rise.vehicles, month),
  };
};
