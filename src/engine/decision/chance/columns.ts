import type { ScrambleDraws } from './draws.ts';

/** A column of all draws, scramble after scramble. */
export type Gather = (of: (one: ScrambleDraws) => ArrayLike<number>) => Float64Array;

/** Gathers columns from whole scrambles in order. */
export const gatherer =
  (draws: readonly ScrambleDraws[]): Gather =>
  (of) => {
    const columns = draws.map(of);
    const all = new Float64Array(columns.reduce((sum, column) => sum + column.length, 0));
    let at = 0;
    for (const column of columns) {
      all.set(column, at);
      at += column.length;
    }
    return all;
  };

/** a - b, draw by draw. */
export const minus = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((value, i) => value - (b[i] as number));
