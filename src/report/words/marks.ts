import type { Mark } from '../../engine/scenario/inputs/scenario.ts';

/** Whose number it is, as the page says it. */
export const markWords: Readonly<Record<Mark, string>> = {
  quoted: 'quoted',
  measured: 'measured',
  guess: 'our guess',
  table: 'from a table',
  choice: 'our choice',
};
