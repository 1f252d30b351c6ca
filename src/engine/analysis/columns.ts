import type { ScrambleDraws } from '../simulation/draws.ts';

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
      // Columns of another kind of number are copied one by one: `set` would be several times slower.
      if (column instanceof Float64Array) all.set(column, at);
      else for (let i = 0; i < column.length; i++) all[at + i] = column[i] as number;
      at += column.length;
    }
    return all;
  };

/** a - b, draw by draw. */
export const minus = (a: Float64Array, b: Float64Array): Float64Array => {
  const difference = new Float64Array(a.length);
  for (let i = 0; i < a.length; i++) difference[i] = (a[i] as number) - (b[i] as number);
  return difference;
};
