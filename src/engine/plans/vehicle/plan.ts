import type { PurchaseTerms } from '../../cashflow/contracts/purchase.ts';
import type { ByReading, Contract, Reading } from '../../cashflow/posting.ts';
import { monthlySink } from '../../cashflow/sinks.ts';
import type { Context } from './context.ts';
import type { OptionIdentity } from './optionIdentity.ts';
import type { Awaited } from './selling.ts';

/** The rebate and note rate of a loan, as offered or with the low rate in the rebate's place. */
export type Financing = 'as offered' | 'low rate';

/** A complete plan for the horizon: a list of contracts, and what would be owned and owed if it stopped at a month. */
export interface Plan extends OptionIdentity {
  /** What happens from today on. */
  readonly contracts: readonly Contract[];
  /** A change of vehicle at the end of a later month: the sale, the purchase and all that follows it; null for none. */
  readonly changeOver: {
    readonly month: number;
    readonly contracts: readonly Contract[];
    readonly awaited: Awaited | null;
  } | null;
  /** The price of a sale begun today that its buyer has not paid yet; null where there is none. */
  readonly awaited: Awaited | null;
  /** What selling then would bring net of its cost and hours, in one reading; 0 where nothing is owned. */
  readonly valueAt: (month: number, reading: Reading) => number;
  /**
   * What would still come besides, in money of then: unearned parts of yearly bills, a price not paid yet.
   *
   * @param lookEnds that day, so that no bill of a bought vehicle is paid any more; at the horizon unless told
   */
  readonly toCome: (month: number, reading: Reading, lookEnds?: boolean) => number;
  /** Debt then. */
  readonly owedAt: (month: number) => number;
  readonly vehicleAtEnd: string;
  /** The purchase behind it, for a view of its loan; null where nothing is bought with one. */
  readonly purchase: { readonly terms: PurchaseTerms; readonly financing: Financing } | null;
}

/** What a plan is called, and what becomes of the present vehicle in it. */
type Name = Pick<Plan, 'id' | 'label' | 'work' | 'letGo'>;

/** A plan before it has a name. */
export type Nameless = Omit<Plan, keyof Name>;

/** A plan under a name of its own, perhaps with other contracts. Field by field: plans are built by the ten thousand. */
export const named = (plan: Nameless, by: Name & Partial<Pick<Plan, 'side' | 'contracts'>>): Plan => ({
  id: by.id,
  side: by.side ?? plan.side,
  label: by.label,
  replacement: plan.replacement,
  work: by.work,
  letGo: by.letGo,
  replaceMonth: plan.replaceMonth,
  contracts: by.contracts ?? plan.contracts,
  changeOver: plan.changeOver,
  awaited: plan.awaited,
  valueAt: plan.valueAt,
  toCome: plan.toCome,
  owedAt: plan.owedAt,
  vehicleAtEnd: plan.vehicleAtEnd,
  purchase: plan.purchase,
});

/** What contracts post in one month, in each reading: what that day takes in cash. */
export const cashIn = (contracts: readonly Contract[], month: number, ctx: Context): ByReading<number> => {
  const { flows } = contracts.reduce((sink, contract) => {
    contract(sink);
    return sink;
  }, monthlySink(ctx.horizon));
  return {
    counted: flows.counted[month] as number,
    cash: flows.cash[month] as number,
    shop: flows.shop[month] as number,
  };
};
