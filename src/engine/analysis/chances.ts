import type { Estimate } from '../chance/estimates.ts';
import type { Quantity } from '../scenario/inputs/scenario.ts';

export type { Estimate } from '../chance/estimates.ts';

/**
 * What the drawn futures say: plain data for the report, the JSON and the terminal. Money in currency units, costs
 * positive; chances as fractions.
 */

/** Three points of what something costs: one in ten futures is cheaper, half are, one in ten is dearer. */
export interface CostSpread {
  readonly mean: Estimate;
  readonly good: Estimate;
  readonly middle: Estimate;
  readonly bad: Estimate;
}

/** One way over all futures, every way meeting the same ones. */
export interface WayChances {
  /** The option's id; 'fixed' for replacing on the best fixed date, 'right-to-walk' for the rule of the repair limit. */
  readonly id: string;
  readonly label: string;
  /** Present cost. */
  readonly cost: CostSpread;
  /** Expected regret: what choosing it costs above the way that turned out cheapest, on average. */
  readonly regret: Estimate;
  /** Share of futures in which it is the cheapest of the options. */
  readonly cheapest: Estimate;
}

/** A bar of the density of D. */
export interface Bar {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/** The two ways compared, chosen by mean cost and held. */
export interface PairChances {
  readonly keep: string;
  readonly replace: string;
  /** P(keeping is cheaper). */
  readonly keepCheaper: Estimate;
  /** D = cost of replacing less cost of keeping. */
  readonly mean: Estimate;
  /** D at 10, 50 and 90 %. */
  readonly low: Estimate;
  readonly middle: Estimate;
  readonly high: Estimate;
  /** The ledger's D: at average inputs and expected failures. */
  readonly atAverageInputs: number;
  /** The two differ by more than two standard errors. */
  readonly gapMatters: boolean;
  /** 'keep', 'replace', or 'cannot tell': within two standard errors of even, either in mean or in chance. */
  readonly likelier: 'keep' | 'replace' | 'cannot tell';
  /** Twenty to forty bars between the 0.5 and 99.5 % points, one edge at nil where it lies within. */
  readonly bars: readonly Bar[];
}

/** How much of the variance of D one group of unknowns carries. */
export interface VarianceShare {
  /** In the household's words: "distance driven a year", "luck with the gearbox, 2009 wagon". */
  readonly what: string;
  readonly kind: 'number' | 'luck';
  /** By itself. */
  readonly first: Estimate;
  /** With all it does together with others. */
  readonly total: Estimate;
}

/** Failures of one component over the horizon: by the renewal function, and counted in the drawn futures. */
export interface FailuresCheck {
  readonly component: string;
  readonly vehicle: string;
  /** At average inputs. */
  readonly expected: number;
  readonly drawn: Estimate;
  /** Counted less expected, what is expected being averaged over inputs as they are drawn. */
  readonly apart: Estimate;
  /** They are no further apart than chance leaves them: within four standard errors. */
  readonly agree: boolean;
}

/** A month of the fan of money paid out so far. */
export interface FanPoint {
  readonly month: number;
  readonly good: number;
  readonly middle: number;
  readonly bad: number;
}

/** How one way's money comes: lumpy or level. Cash, not present cost. */
export interface LumpyWay {
  readonly id: string;
  readonly label: string;
  /** What it takes every month on average besides lumps: energy, bills, payments. */
  readonly regularAMonth: number;
  /** Cash out in the worst single month, and in the worst twelve months running. */
  readonly worstMonth: { readonly middle: number; readonly bad: number };
  readonly worstYear: { readonly middle: number; readonly bad: number };
  /** Cash paid out by the end of month m, from 0 on. */
  readonly fan: readonly FanPoint[];
  readonly fund: {
    /** On the first day, after what that day takes; null: savings are not known. */
    readonly start: number | null;
    /** Put by each month for lumps: the household's set-aside less this way's regular cost above keeping's. */
    readonly aMonth: number;
    /** Chance that it has run dry by the end of month m; empty where the start is not known. */
    readonly dry: readonly { readonly month: number; readonly chance: number }[];
    /** The fund to start with that holds that chance under the level asked for, and never below nil. */
    readonly needed: Estimate;
  };
  /** Chance of at least one roadside stop within 12 months; expected tows and days without it a year. */
  readonly stopWithinAYear: Estimate;
  readonly towsAYear: Estimate;
  readonly daysWithoutAYear: Estimate;
  /** The largest single repair bill within two years. */
  readonly worstBill: {
    /** One in ten futures has a larger one. */
    readonly bad: number;
    /** As so many payments of the replacement's loan or lease; null where there is none. */
    readonly payments: number | null;
    /** Chance of any bill larger than three such payments (or than `bad`, where there is none) within two years. */
    readonly overThreePayments: Estimate | null;
  };
  readonly withoutIncome: {
    readonly months: number;
    /** What must be paid in these months whatever happens: payments, insurance, energy, rent of a place to park. */
    readonly mustPay: number;
    /** Chance that the fund does not last through them, when they come after the first year. */
    readonly dry: Estimate | null;
  };
}

/** What it would be worth to know one thing before deciding. */
export interface WorthKnowing {
  readonly what: string;
  readonly kind: 'number' | 'part';
  readonly worth: Estimate;
  /** Above two standard errors of nil; otherwise "nothing we can measure". */
  readonly measurable: boolean;
}

/** An imperfect test the file describes. */
export interface LookWorth {
  readonly what: string;
  readonly component: string;
  readonly within: number;
  readonly costs: number;
  readonly sees: number;
  readonly clears: number;
  /** Chance that the event happens. */
  readonly event: Estimate;
  readonly worth: Estimate;
  readonly perfect: Estimate;
  readonly pays: 'yes' | 'no' | 'cannot tell';
}

/** The rule of the repair limit, followed through the futures. */
export interface RuleChances {
  /** The rule lets it go today: replacing now is no dearer, on average, than keeping it to any later month. */
  readonly today: boolean;
  readonly way: WayChances;
  /** Cost of the other way less the rule's, on the same futures: positive, the rule is cheaper. */
  readonly against: readonly {
    readonly id: string;
    readonly label: string;
    readonly saves: Estimate;
  }[];
  /** Chance of having walked away by the end of month 12, 24, and the horizon. */
  readonly walkedBy: readonly { readonly month: number; readonly chance: Estimate }[];
}

export interface Chances {
  readonly seed: number;
  readonly futures: number;
  readonly scrambles: number;
  /** Numbers the file gives as ranges. */
  readonly ranged: readonly Quantity[];
  /**
   * How many guesses (and table values) are taken as exact because no range is given, of those that move the answer at
   * least a tenth as far as the number that moves it most.
   */
  readonly exactGuesses: number;
  readonly pair: PairChances | null;
  readonly ways: readonly WayChances[];
  /** The way that is cheapest on average, and what being wrong with it costs. */
  readonly shares: readonly VarianceShare[];
  readonly failures: readonly FailuresCheck[];
  /** Best keep, then best replace, then the right to walk away where there is one. */
  readonly lumpy: readonly LumpyWay[];
  /** Perfect knowledge of everything. */
  readonly perfect: Estimate;
  readonly worthKnowing: readonly WorthKnowing[];
  readonly looks: readonly LookWorth[];
  readonly rule: RuleChances | null;
}
