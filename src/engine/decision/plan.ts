import type { PurchaseTerms } from '../cashflow/contracts/purchase.ts';
import type { Contract } from '../cashflow/posting.ts';
import type { OptionResult, Reading } from './decision.ts';

/** The rebate and note rate of a loan, as offered or with the low rate in the rebate's place. */
export type Financing = 'as offered' | 'low rate';

/** A complete plan for the horizon: a list of contracts, and what would be owned and owed if it stopped at a month. */
export interface Plan
  extends Pick<OptionResult, 'id' | 'side' | 'label' | 'replacement' | 'work' | 'letGo' | 'replaceMonth'> {
  readonly contracts: readonly Contract[];
  /** What selling then would bring net of its cost and hours, in one reading; 0 where nothing is owned. */
  readonly valueAt: (month: number, reading: Reading) => number;
  /** Debt then. */
  readonly owedAt: (month: number) => number;
  readonly vehicleAtEnd: string;
  /** The purchase behind it, for a view of its loan; null where nothing is bought with one. */
  readonly purchase: { readonly terms: PurchaseTerms; readonly financing: Financing } | null;
}
