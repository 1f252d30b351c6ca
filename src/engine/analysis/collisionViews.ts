import type { EstimateTotals, LineKind } from '../cashflow/contracts/settlement/estimate.ts';
import type { Statement } from '../cashflow/contracts/settlement/insurerPayment.ts';
import type { Split } from '../cashflow/contracts/settlement/lossPayee.ts';
import type { TotalLoss } from '../cashflow/contracts/settlement/totalLoss.ts';
import type { ByReading } from '../cashflow/posting.ts';
import type { ClosedWay, Side } from '../plans/vehicle/optionIdentity.ts';
import type { Cents } from '../quantity/money.ts';
import type { PartKind, Payer } from '../scenario/inputs/claim.ts';
import type { PlaceRule } from '../scenario/places/placeRule.ts';
import type { Tips } from '../valuation/cover.ts';

/** One course of a claim that is open, as a claimant asks of it. Its ledger is that of the option of the same id. */
export interface CourseView {
  readonly id: string;
  readonly label: string;
  readonly side: Side;
  /** Cash in the household's hands once the day is over, all bills of the day paid; negative: it has to pay. */
  readonly inHand: Cents;
  /** Own hours up to the horizon. */
  readonly hours: number;
  readonly cost: ByReading<Cents>;
  /** What the insurer pays, line by line; null where no claim is made. */
  readonly statement: Statement | null;
  /** What the payment would be under the reading of the rule that pays most; null where all readings agree. */
  readonly atMost: Cents | null;
  readonly split: Split | null;
  readonly risks: readonly string[];
  readonly forecloses: readonly string[];
}

/** A place where the answer about a claim turns. `at` in the unit of what it is about; null: nowhere, and why. */
export interface ClaimTip {
  readonly what: 'payout' | 'hours' | 'salvage' | 'estimate';
  readonly at: number | null;
  readonly words: string;
}

export interface ClaimView {
  readonly payer: Payer;
  readonly place: PlaceRule;
  readonly comparables: {
    readonly ownDistance: number;
    readonly perDistance: number;
    readonly lines: readonly {
      readonly what: string;
      readonly price: Cents;
      readonly distance: number;
      readonly forDistance: Cents;
      readonly adjustment: Cents;
      readonly value: Cents;
    }[];
  } | null;
  readonly value: Cents;
  readonly estimate: {
    readonly lines: readonly {
      readonly what: string;
      readonly kind: LineKind;
      readonly part: PartKind;
      readonly amount: Cents;
      /** Of the amount, what is not paid because the part is newer than the one it replaces. */
      readonly betterment: Cents;
    }[];
    /** As repaired: with tax that is paid only once the work is done. */
    readonly totals: EstimateTotals;
  };
  readonly threshold: {
    readonly result: TotalLoss;
    /** The repair cost that the place holds against the value. */
    readonly tested: Cents;
    readonly salvage: Cents | null;
    /** The least repair cost that is surely a total loss; null where no rule says so. */
    readonly from: Cents | null;
    /** Damage before tax that may still be found below it; null where no line is known, or it is crossed. */
    readonly left: Cents | null;
  };
  readonly courses: readonly CourseView[];
  readonly closed: readonly ClosedWay[];
  readonly tips: readonly ClaimTip[];
}

/** One kind of cover on the present vehicle, for a year at today's value; currency units. */
export interface CoverPartView {
  readonly kind: 'collision' | 'comprehensive';
  readonly premium: number;
  readonly deductible: number;
  /** Expected cost of a year, premium and what is borne: with it, and without. */
  readonly withIt: number;
  readonly without: number;
  /** The most one loss can take. */
  readonly worst: { readonly withIt: number; readonly without: number };
  /** Savings the day after a total loss; null where savings were not told. */
  readonly savingsAfter: { readonly withIt: number; readonly without: number } | null;
  /** Claims a year, and value of the vehicle, from which it costs less to have it. */
  readonly claimsTip: Tips;
  readonly valueTip: Tips;
  readonly other: {
    readonly aYear: number;
    readonly deductible: number;
    /** Above 0: the change pays on average. */
    readonly gain: number;
    /** More to bear in the worst single loss. */
    readonly worst: number;
    readonly claimsTip: Tips;
  } | null;
}

export interface CoverView {
  readonly value: number;
  readonly chanceAYear: Readonly<Record<'collision' | 'comprehensive', number | null>>;
  readonly parts: readonly CoverPartView[];
  /** Why going without is closed; null where it is open. */
  readonly mustKeep: string | null;
}
