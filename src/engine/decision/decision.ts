import type { LedgerRow } from '../cashflow/ledger.ts';
import type { ByReading } from '../cashflow/posting.ts';
import type { Cents } from '../quantity/money.ts';
import type { MayBeDriven } from '../scenario/inputs.ts';
import type { Danger, Facts, Quantity } from '../scenario/scenario.ts';
import type { Chances } from './chance/chances.ts';
import type { WalkAway } from './chance/walkAway.ts';
import type { ClaimView, CoverView } from './claim/view.ts';
import type { LeaseView } from './leaseView.ts';
import type { ClosedWay, Side } from './side.ts';

export type { LedgerRow } from '../cashflow/ledger.ts';
export type { ByReading, Reading } from '../cashflow/posting.ts';
export type { LeaseView } from './leaseView.ts';
export type { ClosedWay, Side } from './side.ts';

export interface OptionResult {
  /** Stable: "keep", "keep/patched", "replace/2021-hatchback/as-it-stands/trade-in". */
  readonly id: string;
  readonly side: Side;
  /** In a few words: "Mend it and keep it". */
  readonly label: string;
  /** Index into the scenario's replacements; null where none is bought. */
  readonly replacement: number | null;
  /** How the needed work is met. */
  readonly work: 'mended' | 'patched' | 'left' | 'skipped';
  /** How the present vehicle goes; null where it is kept. */
  readonly letGo: 'private' | 'trade-in' | 'as it stands' | 'scrap' | 'to the insurer' | null;
  readonly replaceMonth: number | null;
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

export type BreakEvenStatus = 'never' | 'always' | 'one' | 'several';

/** Where the answer tips when one number moves and all others stay. */
export interface BreakEven {
  readonly quantity: Quantity;
  /** never: the answer stays the same over the whole range; always: D is nil everywhere. */
  readonly status: BreakEvenStatus;
  /** In the quantity's unit, nearest to today's value first. */
  readonly roots: readonly {
    readonly at: number;
    readonly kind: 'root' | 'jump' | 'touch';
    /** How far from today's value: ln(at / today); at nil or below, steps of the number's own (see `howFar`). */
    readonly distance: number;
    /** Which side is cheaper just above it. */
    readonly above: 'keep' | 'replace';
  }[];
  /** D per unit at today's value, for pictures; currency units per unit. */
  readonly slope: number;
}

/** D when one number is moved down and up, all others held. */
export interface Swing {
  readonly quantity: Quantity;
  readonly low: { readonly value: number; readonly difference: number };
  readonly high: { readonly value: number; readonly difference: number };
}

/** The zero contour of D over two inputs. */
export interface BreakEvenLine {
  readonly x: Quantity;
  readonly y: Quantity;
  /** For each x the y at which D is nil; null where there is none within y's range. */
  readonly points: readonly { readonly x: number; readonly y: number | null }[];
  readonly today: { readonly x: number; readonly y: number };
  readonly keepIs: 'above' | 'below';
}

export interface LoanView {
  readonly replacement: number;
  readonly name: string;
  readonly amountFinanced: Cents;
  readonly payment: Cents;
  readonly months: number;
  readonly noteRate: number;
  /** By Regulation Z, Appendix J; null with the reason when it has none. */
  readonly apr: number | null;
  readonly totalOfPayments: Cents;
  readonly interest: Cents;
  /** Balance and what the vehicle would bring, month 0..months. */
  readonly balance: readonly { readonly month: number; readonly owed: Cents; readonly value: Cents }[];
  readonly monthsUnderWater: number;
  readonly owedAtHorizon: Cents;
  /** A year longer: the payment falls, the total rises. */
  readonly longer: { readonly months: number; readonly payment: Cents; readonly totalOfPayments: Cents };
  /** The low rate instead of the rebate: present cost of each, same term; null when there is no such choice. */
  readonly lowRateOrRebate: { readonly lowRate: Cents; readonly rebate: Cents } | null;
  readonly schedule: readonly {
    readonly month: number;
    readonly payment: Cents;
    readonly interest: Cents;
    readonly principal: Cents;
    readonly balance: Cents;
  }[];
}

export interface ReplaceLater {
  readonly replacement: number;
  readonly name: string;
  /** NPC of keeping through month k, then replacing; k = H is never. Counted reading, currency units. */
  readonly curve: readonly { readonly month: number; readonly netPresentCost: number }[];
  readonly best: { readonly month: number; readonly netPresentCost: number };
}

export interface EconomicLife {
  readonly name: string;
  /** Average monthly cost of owning over n months. */
  readonly curve: readonly { readonly months: number; readonly averageCost: number }[];
  readonly best: { readonly months: number; readonly averageCost: number };
}

export interface Caution {
  readonly job: string;
  readonly dangers: readonly Danger[];
}

/** What is said of driving with a needed job undone. */
export interface WorkView {
  readonly job: string;
  readonly mayBeDriven: MayBeDriven;
  /** Whether it is work of safety; not said: nobody answered. */
  readonly safety: 'yes' | 'no' | 'not said';
  /** Why it is safe to leave, or is not; ''. */
  readonly why: string;
  /** Own hands are out. */
  readonly qualifiedOnly: boolean;
}

/** Something the page must say, at the place where it matters. `kind` names the row it answers to. */
export interface Notice {
  readonly kind: string;
  /** Where it belongs: 'first' stands above the money. */
  readonly place: 'first' | 'answer' | 'assumptions' | 'payment' | 'work' | 'change' | 'method';
  readonly text: string;
  /** What the work named costs in the plan compared, where that belongs beside it; null elsewhere. */
  readonly cost: Cents | null;
}

export interface Verdict {
  /**
   * keep / replace: one side is cheaper and no unquoted number within a fifth of its value says otherwise;
   * close: too close to call; keepOnly / replaceOnly / none: one side has no open way, or neither has.
   */
  readonly kind: 'keep' | 'replace' | 'close' | 'keepOnly' | 'replaceOnly' | 'none';
  /** The cheaper side by the ledger even when it is too close to call. */
  readonly cheaper: 'keep' | 'replace' | 'same';
  /** The unquoted numbers that flip it within a fifth of their value, nearest first: what would settle it. */
  readonly settledBy: readonly BreakEven[];
  /** The three readings disagree about who is cheaper. */
  readonly readingsDisagree: boolean;
  /** How many of the numbers decide: flip it within half of their value, and how many of these are guesses. */
  readonly deciding: { readonly count: number; readonly guesses: number; readonly of: number };
}

/** The whole answer: what the report, the JSON and the terminal print, and nothing they would have to compute. */
export interface Decision {
  readonly version: string;
  readonly facts: Facts;
  readonly quantities: readonly Quantity[];
  readonly horizon: number;
  readonly options: readonly OptionResult[];
  readonly closed: readonly ClosedWay[];
  readonly bestKeep: OptionResult | null;
  readonly bestReplace: OptionResult | null;
  /** The best way of each side in each reading; the counted ones are `bestKeep` and `bestReplace`. */
  readonly bestIn: ByReading<Best>;
  /**
   * NPC(best replacement now) - NPC(best keep), each reading by its own best ways; positive: keeping is cheaper. Null
   * where a side has no open way.
   */
  readonly difference: ByReading<Cents> | null;
  /** Differences below this many currency units are none: a 40,000th of the cheaper cost. */
  readonly grain: number;
  readonly verdict: Verdict;
  /** From this month on one side stays cheaper, counted cumulatively; null: from the start or never. */
  readonly crossing: { readonly month: number; readonly cheaper: 'keep' | 'replace' } | null;
  readonly breakEvens: readonly BreakEven[];
  readonly breakEvenLine: BreakEvenLine | null;
  readonly swings: readonly Swing[];
  /** Own hours counted at this price an hour, the answer tips; null: at none. */
  readonly ownHourTips: number | null;
  /** With every own hour taking twice as long; null where the ways compared take none. */
  readonly doubleHours: Cents | null;
  /** If the needed work does not cure it the first time; null where nobody gave a chance of that and it changes nothing. */
  readonly ifNotCured: Cents | null;
  /** With a shop taking over all work from this month on. */
  readonly shopFrom: readonly { readonly month: number; readonly difference: Cents }[];
  /** At the loan's rate in place of what the money earns, where that is the higher; null where it is not. */
  readonly atLoanRate: { readonly rate: number; readonly difference: Cents } | null;
  readonly payments: readonly LoanView[];
  readonly leases: readonly LeaseView[];
  readonly replaceLater: readonly ReplaceLater[];
  readonly economicLife: EconomicLife;
  readonly sunk: { readonly spent: Cents; readonly returns: Cents };
  readonly cautions: readonly Caution[];
  /** The needed work, in the order of the file. */
  readonly work: readonly WorkView[];
  readonly notices: readonly Notice[];
  /** What drawn futures say; null where none were drawn. */
  readonly chances: Chances | null;
  /** The biggest bill worth paying; null where there is nothing to walk away to, or no futures were asked for. */
  readonly walkAway: WalkAway | null;
  /** What the insurer's money can do after a collision; null where there was none. */
  readonly claim: ClaimView | null;
  /** Cover for the present vehicle itself; null where its premium was not told apart. */
  readonly cover: CoverView | null;
}

/** All of a decision that drawn futures leave as it is. Who is cheaper, and how surely, is not among it. */
export type Certain = Omit<Decision, 'chances' | 'walkAway' | 'verdict'> & {
  readonly verdict: Omit<Verdict, 'kind' | 'cheaper'>;
};
