/**
 * A posting is one line of money in one month, and it knows why it is there. Contracts post to a sink; what the sink
 * does (add up a present cost, keep a ledger) is no business of theirs, so each cost rule is written once.
 */
import type { Levels } from './levels.ts';

/**
 * What a posting is for: the rows of the printed ledger, in the order in which every table and chart names them. The
 * only list of them: the type is made from it, so what can be posted can be printed.
 */
export const CATEGORIES = [
  /** What insurers pay for a collision, and refunds. */
  'settlement',
  'work needed now',
  'buying',
  'loan',
  'lease',
  'selling the old one',
  'energy',
  'insurance',
  'registration, tax, inspection',
  'parking',
  'scheduled upkeep',
  'repairs',
  'getting about without it',
  "what we'd own at the end",
] as const;
export type Category = (typeof CATEGORIES)[number];

/** The three readings of one plan: own time counted, cash alone, a shop doing everything. */
export type Reading = 'counted' | 'cash' | 'shop';
export type ByReading<T> = Readonly<Record<Reading, T>>;
export const READINGS: readonly Reading[] = ['counted', 'cash', 'shop'];

/** Why a posting exists: which contract, which lines of the scenario, and the reason in words. */
export interface Line {
  readonly category: Category;
  /** What it is, in the household's words: "front brakes, parts". */
  readonly what: string;
  /** The scenario path it comes from. */
  readonly path: string;
  /** Why it falls when and as it does. */
  readonly reason: string;
}

/**
 * Where contracts post. Amounts in currency units, positive costs, negative receipts, in three readings of the same
 * plan: `counted` (own hours at the household's price), `cash` (money alone), `shop` (a shop doing everything).
 */
export interface Sink {
  post(line: Line, month: number, counted: number, cash: number, shop: number): void;
  /**
   * The same posting in every month from `from` to `to`, both included, each at that month's price level. A ledger
   * writes the months out; a solver, which wants only what they come to, need not.
   */
  series(
    line: Line,
    from: number,
    to: number,
    levels: Levels,
    counted: number,
    cash: number,
    shop: number,
  ): void;
  /** Own hours spent in a month: shown as weekends, priced only within `counted`. Null where nobody asks. */
  readonly time: ((line: Line, month: number, hours: number) => void) | null;
  /**
   * Roadside stops, and days without the vehicle, in a month; expected or drawn. Their money is posted by itself. Null
   * where nobody asks: most sinks do not.
   */
  readonly stands: ((month: number, stops: number, days: number) => void) | null;
  /**
   * Takes contracts that several plans share as a whole, for a sink that wants no line of them. False: it does not take
   * these, and is shown every posting.
   */
  readonly whole?: ((bundle: Bundle) => boolean) | undefined;
}

/** Money that is the same whoever does the work. */
export const postMoney = (sink: Sink, line: Line, month: number, amount: number): void =>
  sink.post(line, month, amount, amount, amount);

/** A series of money that is the same whoever does the work. */
export const postMoneySeries = (
  sink: Sink,
  line: Line,
  from: number,
  to: number,
  levels: Levels,
  amount: number,
): void => {
  if (amount !== 0 && from <= to) sink.series(line, from, to, levels, amount, amount, amount);
};

/** A contract projects itself into postings. Plans are lists of contracts; putting two together is concatenation. */
export type Contract = (sink: Sink) => void;

/** What a bundle comes to for a solver: its present cost, and what it posts by itself, not as a series, in its month. */
export interface BundleSum {
  /** The discount factors it was added up with. */
  readonly factors: Float64Array;
  readonly present: ByReading<number>;
  readonly posted: ByReading<number>;
}

/** Contracts that several plans share: whoever wants only what they come to adds them up once. */
export interface Bundle {
  /** The month in which its contracts begin: the only one whose cash anybody asks for. */
  readonly month: number;
  readonly contracts: readonly Contract[];
  /** No luck touches it: it is the same in one future after another. */
  readonly lasts: boolean;
  sum: BundleSum | null;
}
