import type { Range } from '../../quantity/range.ts';
import type { ClaimFacts } from './claim.ts';
import type { Numbers } from './declared.ts';
import type * as HOME from './householdInputs.ts';
import type { Inputs } from './inputs.ts';
import type { Mark, Unit } from './specs.ts';
import type { Written } from './written.ts';

export type { Mark, Unit } from './specs.ts';

/** A place of `Inputs` that a number moves: it becomes `times` the number and `plus`. */
export interface Move {
  readonly key: string;
  readonly times: number;
  readonly plus: number;
}

/** Everything known about one number of the file besides its value. */
export interface Quantity {
  /** Its name: as a rule where it stands in `Inputs`, dotted: "replacement.0.payment.apr". */
  readonly key: string;
  /**
   * The places of `Inputs` that move with it in drawn futures, each by `times` its value and `plus`: the pump all
   * vehicles fill up at, what was filled in from it. Worked out for numbers that are ranges; empty for all others.
   */
  readonly moves: readonly Move[];
  /** Where it stands (or would stand) in the scenario file: "replacement.loan.apr". Typed there, it counts. */
  readonly path: string;
  /** Where the file has it now: more places than one where all vehicles give the same price at the pump. */
  readonly standsAt: readonly string[];
  /** What follows the figure where it is typed: " mpg", " per gallon", " months"; '' for a bare number. */
  readonly suffix: string;
  /** Only a range may stand there: it is typed as its range, all points in proportion. */
  readonly onlyRange: boolean;
  /** In the household's words: "yearly cost of insurance, 2009 wagon". */
  readonly label: string;
  readonly unit: Unit;
  /** What the base case counts with: the mean of the range where one is given. */
  readonly value: number;
  /** 10, 50 and 90 % points, where the file gives them; null: taken as exact. */
  readonly range: Range | null;
  /** A range of one unknown number, or of a bill that is another each time it comes. */
  readonly varies: 'once' | 'each time';
  /** The schema's range, inclusive: what the solver scans. */
  readonly min: number;
  readonly max: number;
  /** What counts as a fifth where there is no ratio to count by: at nil, or below it. In its own unit. */
  readonly step: number;
  readonly integer: boolean;
  readonly mark: Mark;
  /** It can be looked up, and was: a fact that nobody asks to be otherwise. */
  readonly known: boolean;
  /** True when the scenario did not give it. */
  readonly isDefault: boolean;
  /** Who said so, or which table, with its date. */
  readonly source: string;
  readonly note: string;
}

/** A requirement the household put, and from when. */
export interface Need {
  readonly what: string;
  readonly atLeast: number | true;
  readonly fromMonth: number;
}

/** Two ranged numbers that go together, by their keys; Spearman's rank correlation. */
export interface Correlation {
  readonly a: string;
  readonly b: string;
  readonly rank: number;
}

/** A test that tells, imperfectly, whether a component of the present vehicle will fail soon. */
export interface Look extends Numbers<typeof HOME.LOOK> {
  readonly what: string;
  /** Position of the component. */
  readonly component: number;
}

/** How many independent scrambles of the points are drawn beside each other. */
export const SCRAMBLES = 16;

/** How the future is drawn and what is asked of it. */
export interface Chance extends Numbers<typeof HOME.CHANCE> {
  readonly correlations: readonly Correlation[];
  readonly looks: readonly Look[];
  /** The ways that turned out best of their sides on average, by id; null: best at average inputs, until futures say. */
  readonly pair: { readonly keep: string; readonly replace: string } | null;
}

/** `per100`: units of energy per 100 of distance; `perUnit`: distance on one unit. */
export type EnergyStated = 'per100' | 'perUnit';

/** Words and facts that are not numbers of the model, but decide which ways are open and what the page says. */
export interface Facts {
  readonly title: string;
  /** ISO date of the decision. */
  readonly date: string;
  readonly note: string;
  readonly invented: boolean;
  readonly currency: string;
  readonly distanceUnit: 'miles' | 'km';
  readonly energyUnit: { readonly vehicle: string; readonly replacement: readonly string[] };
  /** How each economy is stated: energy for 100 of distance, or distance on one unit of energy. */
  readonly energyStated: { readonly vehicle: EnergyStated; readonly replacement: readonly EnergyStated[] };
  /** How many units of the household's currency one US dollar buys; the public tables are in dollars. */
  readonly perDollar: number;
  readonly mechanic: string;
  readonly partner: string;
  readonly vehicleName: string;
  readonly needs: readonly Need[];
  /** What each vehicle offers against the needs: seats, tows, ...; missing means nobody said. */
  readonly offers: {
    readonly vehicle: Readonly<Record<string, number | boolean>>;
    readonly replacement: readonly Readonly<Record<string, number | boolean>>[];
  };
  /** `null`: nobody said. */
  readonly mayBeDriven: boolean | null;
  readonly recallChecked: boolean;
  /** "Do not drive" of an open recall. */
  readonly recallStop: boolean;
  readonly structuralRust: 'not said' | 'none' | 'unknown' | 'found';
  /** Month by which the present vehicle must pass inspection or be registered again; null: nothing is due. */
  readonly inspectionDueMonth: number | null;
  /** ISO date of that day, where a day was given; ''. */
  readonly inspectionDay: string;
  readonly inspectionFailed: boolean;
  readonly lenderRequiresCover: boolean;
  readonly jobs: readonly JobFacts[];
  readonly sunk: readonly { readonly what: string; readonly amount: number; readonly returns: number }[];
  readonly replacementNames: readonly string[];
  /** ISO date on which the offer ends; '' for none. */
  readonly offerEnds: readonly string[];
  readonly creditConfirmed: readonly boolean[];
  /** What does not have a price, in the household's words. */
  readonly notMoney: readonly string[];
  /** Paths of the file marked private: their text and figures stay out of anything passed on. */
  readonly private: readonly string[];
  readonly hoursPriced: boolean;
  readonly chance: Chance;
  /** Keys of the two numbers whose break-even line was asked for; null: the report chooses. */
  readonly twoWay: readonly [string, string] | null;
  /** What is said about a collision; null where `Inputs.claim` is. */
  readonly claim: ClaimFacts | null;
}

export interface JobFacts {
  readonly name: string;
  /** Which cautions apply at the point of use. */
  readonly dangers: readonly Danger[];
  /** Only qualified work will do: the own-hands price is withdrawn. */
  readonly qualifiedOnly: boolean;
  /** Whether driving without it is said to be safe; null: nobody said. */
  readonly saidSafe: boolean | null;
  /** Why it is safe, or is not, in the household's words; ''. */
  readonly why: string;
  readonly quoteEnds: string;
  /** Recall, guarantee, service contract, comprehensive cover: what was asked; '' if nobody said. */
  readonly someoneElsePays: string;
  readonly firstTime: boolean;
  /** Already spent on this very job: sunk. */
  readonly alreadySpent: number;
}

export type Danger =
  | 'lifting'
  | 'brakes'
  | 'steering'
  | 'exhaust'
  | 'airbag'
  | 'fuel'
  | 'battery'
  | 'high-voltage'
  | 'structure';

/** A complete scenario: words, numbers, and what is known about each number. */
export interface Scenario {
  readonly facts: Facts;
  readonly inputs: Inputs;
  readonly quantities: readonly Quantity[];
  /** What it was read from, so that it can be read again with a number otherwise; null for one made without a file. */
  readonly written: Written | null;
}
