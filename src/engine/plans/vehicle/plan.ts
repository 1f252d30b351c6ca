import type { LoanTerms } from '../../cashflow/contracts/amortisation.ts';
import type { PurchaseTerms } from '../../cashflow/contracts/purchase.ts';
import type { ByReading } from '../../cashflow/posting.ts';
import { monthlySink } from '../../cashflow/sinks.ts';
import type { Amounts } from './byReading.ts';
import type { Context } from './context.ts';
import type { OptionIdentity } from './optionIdentity.ts';
import { contractsOf, type Piece } from './recipe.ts';
import type { Awaited } from './selling.ts';

/** The rebate and note rate of a loan, as offered or with the low rate in the rebate's place. */
export type Financing = 'as offered' | 'low rate';

/** What would be owned and owed if a plan stopped at the end of a month, in money of then, given numbers. */
export interface Standing {
  /** What selling then would bring net of its cost and hours; 0 where nothing is owned. */
  readonly valueAt: (ctx: Context, month: number) => Amounts;
  /**
   * What would still come besides: unearned parts of yearly bills, a price not paid yet.
   *
   * @param lookEnds that day, so that no bill of a bought vehicle is paid any more; at the horizon unless told
   */
  readonly toCome: (ctx: Context, month: number, lookEnds?: boolean) => Amounts;
  /** Debt then. */
  readonly owedAt: (ctx: Context, month: number) => number;
}

/** The price of a sale that its buyer has not paid yet, given numbers; null where there is none. */
export type AwaitedFrom = (ctx: Context) => Awaited | null;

/** It comes to it for sure. */
const SURELY = { counted: 1, cash: 1, shop: 1 };
export const WHOLE = (): ByReading<number> => SURELY;

/** A complete plan for the horizon before there are numbers: what happens, and what would be owned and owed. */
export interface Plan extends OptionIdentity, Standing {
  /** What happens from today on. */
  readonly pieces: readonly Piece[];
  /** A change of vehicle at the end of a later month: the sale, the purchase and all that follows it; null for none. */
  readonly changeOver: {
    readonly month: number;
    readonly pieces: readonly Piece[];
    readonly awaited: AwaitedFrom;
    /** The chance that it comes to it: the old one may have been given up by then. */
    readonly share: (ctx: Context) => ByReading<number>;
  } | null;
  /** The price of a sale begun today. */
  readonly awaited: AwaitedFrom;
  readonly vehicleAtEnd: string;
  /** The purchase behind it and the terms of its loan, for a view of it; null where nothing is bought with one. */
  readonly purchase: {
    readonly terms: (ctx: Context) => PurchaseTerms;
    readonly loan: (ctx: Context) => LoanTerms<number> | null;
  } | null;
}

/** What a plan is called, and what becomes of the present vehicle in it. */
type Name = Pick<Plan, 'id' | 'label' | 'work' | 'letGo'>;

/** A plan before it has a name. */
export type Nameless = Omit<Plan, keyof Name>;

/** What contracts post in one month, in each reading: what that day takes in cash. */
export const cashIn = (pieces: readonly Piece[], month: number, ctx: Context): ByReading<number> => {
  const sink = monthlySink(ctx.horizon);
  for (const contract of contractsOf(pieces, ctx)) contract(sink);
  const { flows } = sink;
  return {
    counted: flows.counted[month] as number,
    cash: flows.cash[month] as number,
    shop: flows.shop[month] as number,
  };
};
