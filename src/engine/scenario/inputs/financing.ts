import type { Numbers } from './declared.ts';
import type * as PURCHASE from './purchaseInputs.ts';

/** What is paid besides the price of a replacement, and how it is paid for: a part of the engine's inputs. */
export interface Fee extends Numbers<typeof PURCHASE.FEE> {
  readonly name: string;
  readonly financed: boolean;
  /** Whether Regulation Z counts it as a finance charge. */
  readonly financeCharge: boolean;
}

/** How a replacement is paid for. */
export type Payment =
  | { readonly kind: 'cash' }
  | ({
      readonly kind: 'loan';
      readonly downPayment: number;
      /** Whether interest runs in the months before the first payment's own. */
      readonly interestDuringDelay: boolean;
      /** A present loan's shortfall is rolled into this one rather than paid in cash. */
      readonly rollInShortfall: boolean;
    } & Numbers<typeof PURCHASE.LOAN>)
  | ({ readonly kind: 'lease' } & Lease);

export interface Lease
  extends Numbers<typeof PURCHASE.LEASE>,
    Numbers<typeof PURCHASE.LEASE_FEES>,
    Numbers<typeof PURCHASE.LEASE_END> {
  /** The distance it allows, and the price of more, in the household's unit. */
  readonly distanceAYear: number;
  readonly overDistance: number;
  /** What happens at its end when the horizon goes on: the same again, or bought for residual plus fee. */
  readonly afterwards: 'again' | 'buy';
}
