/** What is paid besides the price of a replacement, and how it is paid for: a part of the engine's inputs. */
export interface Fee {
  readonly name: string;
  readonly amount: number;
  readonly financed: boolean;
  /** Whether Regulation Z counts it as a finance charge. */
  readonly financeCharge: boolean;
}

/** How a replacement is paid for. */
export type Payment =
  | { readonly kind: 'cash' }
  | {
      readonly kind: 'loan';
      /** Note rate, nominal a year, compounded monthly. */
      readonly apr: number;
      readonly months: number;
      readonly downPayment: number;
      /** Month of the first payment: 1 unless the start is delayed. */
      readonly firstPayment: number;
      /** Whether interest runs in the months before the first payment's own. */
      readonly interestDuringDelay: boolean;
      /** A present loan's shortfall is rolled into this one rather than paid in cash. */
      readonly rollInShortfall: boolean;
    }
  | ({ readonly kind: 'lease' } & Lease);

export interface Lease {
  /** Capitalised cost: the price the lease starts from. */
  readonly startsFrom: number;
  readonly residual: number;
  readonly moneyFactor: number;
  readonly months: number;
  readonly dueAtSigning: number;
  readonly distanceAYear: number;
  readonly overDistance: number;
  readonly acquisitionFee: number;
  readonly dispositionFee: number;
  readonly taxOnPayment: number;
  /** What happens at its end when the horizon goes on: the same again, or bought for residual plus fee. */
  readonly afterwards: 'again' | 'buy';
  readonly purchaseFee: number;
  /** Charge for ending it before its term; null: what is left is prorated. */
  readonly earlyTermination: number | null;
}
