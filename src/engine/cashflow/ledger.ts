import { addCents, type Cents, NIL, toCents } from '../quantity/money.ts';
import type { ByReading, Line } from './posting.ts';
import type { Posting } from './sinks.ts';

/** One posting of the printed ledger, in whole cents; its columns sum to every printed total, to the cent. */
export interface LedgerRow extends Line {
  readonly month: number;
  /** Nominal money of that month. */
  readonly amount: ByReading<Cents>;
  /** The same in today's money: discounted to month 0, rounded once, here. */
  readonly present: ByReading<Cents>;
  readonly hours: number;
}

const rounded = (posting: Posting, factor: number): ByReading<Cents> => ({
  counted: toCents(posting.counted * factor),
  cash: toCents(posting.cash * factor),
  shop: toCents(posting.shop * factor),
});

/** Postings of the same line in the same month as one: a vehicle that may end in any year has several replacements. */
const together = (postings: readonly Posting[]): Posting[] => {
  const rows = new Map<string, Posting>();
  for (const one of postings) {
    const { category, what, path, reason } = one.line;
    const key = [one.month, category, what, path, reason].join('\n');
    const before = rows.get(key);
    rows.set(
      key,
      before
        ? {
            ...before,
            counted: before.counted + one.counted,
            cash: before.cash + one.cash,
            shop: before.shop + one.shop,
            hours: before.hours + one.hours,
          }
        : one,
    );
  }
  return [...rows.values()];
};

/**
 * The printed ledger of a plan, by month and in the order of its contracts. Rounding happens once a row, so a total
 * differs from the unrounded evaluation by at most half a cent for each of its rows.
 *
 * @param discountFactor what 1 in month m is worth today
 */
export const ledger = (
  postings: readonly Posting[],
  discountFactor: (month: number) => number,
): LedgerRow[] =>
  together(postings)
    .map((posting) => ({
      ...posting.line,
      month: posting.month,
      amount: rounded(posting, 1),
      present: rounded(posting, discountFactor(posting.month)),
      hours: posting.hours,
    }))
    .sort((a, b) => a.month - b.month);

/** The sum of one column of a ledger, in one reading. */
export const ledgerTotal = (
  rows: readonly LedgerRow[],
  column: 'amount' | 'present',
  reading: keyof ByReading<Cents>,
): Cents => rows.reduce((sum, row) => addCents(sum, row[column][reading]), NIL);
