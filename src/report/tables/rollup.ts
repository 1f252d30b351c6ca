import { op, table } from 'arquero';
import type { LedgerRow } from '../../engine/answer/decision.ts';
import { CATEGORIES, type Category } from '../../engine/cashflow/posting.ts';
import type { Cents } from '../../engine/quantity/money.ts';
import { ledgerYear } from '../../engine/quantity/month.ts';

export interface CategoryRow {
  readonly category: Category;
  /** By year, 0 the day itself; whole cents of that year's money. */
  readonly years: readonly Cents[];
  readonly amount: Cents;
  /** In today's money. */
  readonly present: Cents;
}

export interface LineRow {
  readonly category: Category;
  readonly what: string;
  readonly path: string;
  readonly reason: string;
  readonly postings: number;
  readonly first: number;
  readonly last: number;
  readonly amount: Cents;
  readonly present: Cents;
}

/** Whole cents throughout: sums of integers are exact, so every printed total is the sum of what stands above it. */
const columns = (ledger: readonly LedgerRow[]) => ({
  category: ledger.map((r) => r.category),
  what: ledger.map((r) => r.what),
  path: ledger.map((r) => r.path),
  reason: ledger.map((r) => r.reason),
  month: ledger.map((r) => r.month),
  year: ledger.map((r) => ledgerYear(r.month)),
  amount: ledger.map((r) => r.amount.counted),
  present: ledger.map((r) => r.present.counted),
});

const byCategory = (a: { readonly category: Category }, b: { readonly category: Category }): number =>
  CATEGORIES.indexOf(a.category) - CATEGORIES.indexOf(b.category);

/** The ledger by category and year, own time counted; categories without any money are left out. */
export const byCategoryAndYear = (ledger: readonly LedgerRow[], horizon: number): readonly CategoryRow[] => {
  const cells = table(columns(ledger))
    .groupby('category', 'year')
    .rollup({ amount: op.sum('amount'), present: op.sum('present') })
    .objects() as { category: Category; year: number; amount: number; present: number }[];
  return CATEGORIES.flatMap((category) => {
    const own = cells.filter((c) => c.category === category);
    if (own.every((c) => c.amount === 0 && c.present === 0)) return [];
    const years = Array.from(
      { length: ledgerYear(horizon) + 1 },
      (_, year) => (own.find((c) => c.year === year)?.amount ?? 0) as Cents,
    );
    const total = (pick: (c: (typeof own)[number]) => number): Cents =>
      own.reduce((sum, c) => sum + pick(c), 0) as Cents;
    return [{ category, years, amount: total((c) => c.amount), present: total((c) => c.present) }];
  });
};

/** One row for each line of the ledger: how often it was posted, from which month to which, and its sums. */
export const byLine = (ledger: readonly LedgerRow[]): readonly LineRow[] =>
  (
    table(columns(ledger))
      .groupby('category', 'what', 'path', 'reason')
      .rollup({
        postings: op.count(),
        first: op.min('month'),
        last: op.max('month'),
        amount: op.sum('amount'),
        present: op.sum('present'),
      })
      .objects() as LineRow[]
  ).toSorted((a, b) => byCategory(a, b) || a.first - b.first || (a.what < b.what ? -1 : 1));
