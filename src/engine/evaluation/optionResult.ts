import type { LedgerRow } from '../cashflow/ledger.ts';
import type { ByReading } from '../cashflow/posting.ts';
import type { OptionIdentity } from '../plans/vehicle/optionIdentity.ts';
import type { Cents } from '../quantity/money.ts';

/** What an option comes to. */
export interface OptionResult extends OptionIdentity {
  readonly netPresentCost: ByReading<Cents>;
  readonly equivalentMonthlyCost: ByReading<Cents>;
  /** Equivalent cost for one unit of distance, in currency units; 0 where nothing is driven. */
  readonly costPerDistance: ByReading<number>;
  /** Cash that leaves the household on the day itself (negative: comes in). */
  readonly cashOnTheDay: Cents;
  /** Savings left the day after; below zero is what has to be borrowed. */
  readonly savingsAfter: Cents;
  /** The least that is left in the first three months, what comes every month or year lived on from income. */
  readonly savingsLowest: Cents;
  readonly hours: { readonly onTheDay: number; readonly total: number };
  readonly valueAtEnd: Cents;
  readonly owedAtEnd: Cents;
  readonly ledger: readonly LedgerRow[];
  /** Cumulative present cost at the end of each month 0..H if the plan stopped there (value less debt credited). */
  readonly cumulative: readonly number[];
  /** Cumulative cash paid out, undiscounted, month 0..H, no credit for value. */
  readonly paidOut: readonly number[];
}

/** The cheapest way of each side; null where none is open. */
export interface Best {
  readonly keep: OptionResult | null;
  readonly replace: OptionResult | null;
}
