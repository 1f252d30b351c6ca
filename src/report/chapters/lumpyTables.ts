import type { LumpyWay } from '../../engine/analysis/chances.ts';
import type { Html } from '../markup/html.ts';
import { type Cell, table } from '../tables/table.ts';
import { lumpyWays } from '../words/lumpy.ts';
import type { Page } from './page.ts';

/** The ways that are open, with what heads their column; the rule's own is left out where it hands on today. */
export const columns = ({ d }: Page): readonly { readonly head: string; readonly way: LumpyWay }[] => {
  const { keep, replace, walk } = lumpyWays(d);
  return [
    { head: 'Kept', way: keep },
    { head: 'Handed on', way: replace },
    { head: 'Kept, free to walk away', way: d.chances?.rule?.today ? null : walk },
  ].flatMap(({ head, way }) => (way ? [{ head, way }] : []));
};

/** A table with a way a column: each row says one thing of every way. */
export const byWay = (
  page: Page,
  caption: string,
  first: string,
  rows: readonly (readonly [what: string, words: (w: LumpyWay) => Cell] | null)[],
): Html => {
  const of = columns(page);
  return table({
    caption,
    head: [first, ...of.map((c) => c.head)],
    rows: rows.flatMap((row) => (row ? [[row[0], ...of.map((c) => row[1](c.way))]] : [])),
  });
};

/** A row for each of some months, a column a way. */
export const byMonth = (
  page: Page,
  caption: string,
  months: readonly number[],
  words: (w: LumpyWay, month: number) => string,
): Html => {
  const of = columns(page);
  return table({
    caption,
    kind: 'wordy',
    stacks: true,
    head: ['After month', ...of.map((c) => c.head)],
    rows: months.map((month) => [month === 0 ? 'today' : month, ...of.map((c) => words(c.way, month))]),
  });
};
