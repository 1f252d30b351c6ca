import type { Chances } from '../analysis/chances.ts';
import type { ClaimView, CoverView } from '../analysis/collisionViews.ts';
import type { Lasting } from '../analysis/ifItDoesNotLast.ts';
import type { LeaseView } from '../analysis/leaseView.ts';
import type { LoanView } from '../analysis/loanView.ts';
import type { MonthlyFit } from '../analysis/monthlyFit.ts';
import type { WalkAway } from '../analysis/repairLimitView.ts';
import type { BreakEven, BreakEvenLine, Swing } from '../analysis/sensitivityView.ts';
import type { Survival } from '../analysis/survival.ts';
import type { WhatIfs } from '../analysis/whatIf.ts';
import type { ByReading } from '../cashflow/posting.ts';
import type { Best, OptionResult } from '../evaluation/optionResult.ts';
import type { EconomicLife, ReplaceLater } from '../evaluation/replacementTiming.ts';
import type { ClosedWay } from '../plans/vehicle/optionIdentity.ts';
import type { Cents } from '../quantity/money.ts';
import type { MayBeDriven } from '../scenario/inputs/inputs.ts';
import type { Danger, Facts, Quantity } from '../scenario/inputs/scenario.ts';

export type { LeaseView } from '../analysis/leaseView.ts';
export type { LoanView } from '../analysis/loanView.ts';
export type { MonthlyFit } from '../analysis/monthlyFit.ts';
export type { BreakEven, BreakEvenLine, Swing } from '../analysis/sensitivityView.ts';
export type { LedgerRow } from '../cashflow/ledger.ts';
export type { ByReading, Reading } from '../cashflow/posting.ts';
export type { Best, OptionResult } from '../evaluation/optionResult.ts';
export type { EconomicLife, ReplaceLater } from '../evaluation/replacementTiming.ts';
export type { ClosedWay, Side } from '../plans/vehicle/optionIdentity.ts';

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
export interface Decision extends WhatIfs {
  readonly version: string;
  readonly facts: Facts;
  readonly quantities: readonly Quantity[];
  readonly horizon: number;
  readonly options: readonly OptionResult[];
  readonly closed: readonly ClosedWay[];
  readonly bestKeep: OptionResult | null;
  readonly bestReplace: OptionResult | null;
  /**
   * The cheapest way of all kinds, own time counted: on average over the futures where they were drawn, else by its ledger.
   * Replacing later belongs to no kind. Null where no way is open.
   */
  readonly answer: OptionResult | null;
  /** The best way of each side in each reading; the counted ones are `bestKeep` and `bestReplace`. */
  readonly bestIn: ByReading<Best>;
  /**
   * NPC(best replacement now) - NPC(best keep), each reading by its own best ways; positive: keeping is cheaper. Null
   * where a side has no open way.
   */
  readonly difference: ByReading<Cents> | null;
  /** Differences below this many currency units are none: a 40,000th of the cheaper cost. */
  readonly grain: number;
  /** How much of it has been worked out: the verdict is provisional until futures are drawn, where any are asked for. */
  readonly tier: 'first' | 'tips' | 'futures';
  readonly verdict: Verdict;
  /** From this month on one side stays cheaper, counted cumulatively; null: from the start or never. */
  readonly crossing: { readonly month: number; readonly cheaper: 'keep' | 'replace' } | null;
  readonly breakEvens: readonly BreakEven[];
  readonly breakEvenLine: BreakEvenLine | null;
  readonly swings: readonly Swing[];
  /** Own hours counted at this price an hour, the answer tips; null: at none. */
  readonly ownHourTips: number | null;
  readonly payments: readonly LoanView[];
  readonly leases: readonly LeaseView[];
  /** Whether the regular month of each way fits, at averages. */
  readonly fits: readonly MonthlyFit[];
  readonly replaceLater: readonly ReplaceLater[];
  /** How long it has to last for keeping it to pay; null where that is no question, or not asked yet (first tier). */
  readonly lasting: Lasting | null;
  /** How likely ours is still on the road; null where big bills are left out. */
  readonly survival: Survival | null;
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
