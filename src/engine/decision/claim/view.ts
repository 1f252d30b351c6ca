/** What the report and the JSON say of a claim and of cover: results only, in cents and words. */
import type { LineKind } from '../../cashflow/contracts/settlement/estimate.ts';
import type { FirstDayLine, Split } from '../../cashflow/contracts/settlement/lossPayee.ts';
import type { Statement } from '../../cashflow/contracts/settlement/payment.ts';
import type { TotalLoss } from '../../cashflow/contracts/settlement/totalLoss.ts';
import type { Cents } from '../../quantity/money.ts';
import type { Unit } from '../../scenario/scenario.ts';
import type { Tips } from '../../valuation/cover.ts';
import type { Estimate } from '../chance/chances.ts';
import type { ClosedWay } from '../decision.ts';

/** One course, run on into its best continuation: what is settled today, what is done, then keep or replace. */
export interface CourseView {
  /** Id of its option in `Decision.options`. */
  readonly id: string;
  readonly label: string;
  readonly side: 'keep' | 'replace' | 'later';
  /** What the household has of the settlement that day once lender, shop and own plan are paid; below nil: pays in. */
  readonly inHand: Cents;
  /** Own hours on the settlement and the repair itself. */
  readonly hours: number;
  /** Net present cost to the horizon, own time counted. */
  readonly netPresentCost: Cents;
  /** In how many futures it is the cheapest course; null where none were drawn. */
  readonly cheapest: Estimate | null;
  /** The insurer's statement; null where no claim is made. */
  readonly statement: Statement | null;
  /** Who gets the payment where a lender is named; null where nothing is owed or no claim is made. */
  readonly split: Split | null;
  /** The settlement as flows of the first day. */
  readonly firstDay: readonly FirstDayLine[];
  /** What may still go against it: a supplement, hidden damage, papers refused. */
  readonly risks: readonly string[];
  /** What it rules out later. */
  readonly forecloses: readonly string[];
}

/** Where a course tips, in the claim's own terms. */
export interface ClaimBreakEven {
  /** "payment below which own repair stops paying". */
  readonly what: string;
  readonly unit: Unit;
  readonly today: number | null;
  readonly tips: Tips;
}

export interface ClaimView {
  /** Cheapest first; those of the same settlement and work by their best continuation. */
  readonly courses: readonly CourseView[];
  readonly closed: readonly ClosedWay[];
  /** What it was worth before, damage from before not yet taken off. */
  readonly value: Cents;
  readonly estimate: {
    readonly lines: readonly {
      readonly what: string;
      readonly kind: LineKind;
      readonly hours: number | null;
      readonly amount: Cents;
      readonly betterment: Cents;
    }[];
    readonly tax: Cents;
    readonly total: Cents;
  };
  /** The place's test, and the repair estimate from which it is a total loss. */
  readonly test: {
    readonly result: TotalLoss;
    readonly repair: Cents;
    readonly value: Cents;
    readonly salvage: Cents | null;
    readonly from: Cents | null;
  };
  readonly breakEvens: readonly ClaimBreakEven[];
}

export interface CoverChoice {
  readonly what: 'collision' | 'comprehensive';
  readonly premium: number;
  readonly deductible: number;
  /** Expected cost of a year with it and without it, currency units. */
  readonly withIt: number;
  readonly withoutIt: number;
  /** The most one loss takes, with it and without it. */
  readonly worstWith: number;
  readonly worstWithout: number;
  /** Claims a year, and value of the vehicle, from which it pays. */
  readonly claimsToPay: Tips;
  readonly valueToPay: Tips;
  readonly other: {
    readonly premium: number;
    readonly deductible: number;
    readonly gain: number;
    readonly tips: Tips;
  } | null;
}

export interface CoverView {
  readonly choices: readonly CoverChoice[];
  readonly lenderRequires: boolean;
  /** Savings the household could bear a loss from; null: not told. */
  readonly savings: number | null;
}
