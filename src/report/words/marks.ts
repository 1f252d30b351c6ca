import type { Mark, Quantity } from '../../engine/scenario/scenario.ts';

/** Whose number it is, as the page says it. */
export const markWords: Readonly<Record<Mark, string>> = {
  quoted: 'quoted',
  measured: 'measured',
  guess: 'our guess',
  table: 'from a table',
  choice: 'our choice',
};

/** The same inside a sentence about one number: "is our guess", "was quoted". */
export const markClause = (q: Quantity): string =>
  ({
    quoted: 'quoted',
    measured: 'measured',
    guess: 'our guess',
    table: 'a figure from a table',
    choice: 'our choice',
  })[q.mark];
