/**
 * A posting is one line of money in one month, and it knows why it is there. Contracts post to a sink; what the sink
 * does (add up a present cost, keep a ledger) is no business of theirs, so each cost rule is written once.
 */
import type { Levels } from './levels.ts';

/** What rules ask of a category, whatever its rows are called. */
interface Kind {
  /** It does not come every month: a fund is kept for it. */
  readonly inLumps: boolean;
  /** It is paid or comes once, and is no bill that one lives on from income. */
  readonly once: boolean;
  /** A bought vehicle pays it for the year that begins. */
  readonly inAdvance: boolean;
  /** It may never come: no part of a regular month. */
  readonly rare: boolean;
}

const kind = (...is: readonly (keyof Kind)[]): Kind => ({
  inLumps: is.includes('inLumps'),
  once: is.includes('once'),
  inAdvance: is.includes('inAdvance'),
  rare: is.includes('rare'),
});

/**
 * What a posting is for, and what kind of money that is: the rows of the printed ledger, in the order in which every table
 * and chart names them. The only list of them: the type is made from it, so what can be posted can be printed.
 */
export const KINDS = {
  /** What insurers pay for a collision, and refunds. */
  settlement: kind('once'),
  'work needed now': kind('inLumps', 'once'),
  buying: kind('inLumps', 'once'),
  loan: kind('once'),
  lease: kind('once'),
  'selling the old one': kind('inLumps', 'once'),
  energy: kind(),
  insurance: kind('inAdvance'),
  'registration, tax, inspection': kind('inAdvance'),
  parking: kind(),
  'scheduled upkeep': kind('inLumps'),
  repairs: kind('inLumps'),
  /** Bills that may end a vehicle: what is paid of them, and what giving it up takes. */
  'big bills': kind('inLumps', 'rare'),
  'getting about without it': kind(),
  "what we'd own at the end": kind(),
} as const satisfies Record<string, Kind>;
export type Category = keyof typeof KINDS;
export const CATEGORIES = Object.keys(KINDS) as readonly Category[];

/** What a posting is besides its category, for a rule that has to tell it from the others of it. */
export type Role =
  /** The failures of a component that the household named. */
  | 'named failures'
  /** What comes of buying one whose history nobody knows. */
  | 'bought unseen'
  /** A present loan paid off by a sale. */
  | 'loan paid off'
  /** Lent until a sale pays, or paid back from it: no payment that comes every month. */
  | 'bridge'
  /** What the vehicle that is there at the horizon would bring. */
  | 'owned';

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
  readonly role?: Role;
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
