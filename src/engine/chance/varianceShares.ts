import { average, type Estimate, leaveOneOut } from './estimates.ts';

/** How much of the variance of a figure one group of unknowns carries: by itself, and with all it does together. */
export interface VarianceShares {
  readonly first: Estimate;
  readonly total: Estimate;
}

/** A share below this is what the last digits of sums leave behind, not something the group does. */
const ROUNDING = 1e-9;

/**
 * Shares of one group in the variance of f, from two independent samples A and B and from A with this group's columns
 * taken from B. First order by Saltelli et al., Computer Physics Communications 181 (2010), table 2 (b); total by
 * Jansen, Computer Physics Communications 117 (1999). f is taken from its mean first, which changes no expectation and
 * spares digits. The variance is that of A and B together.
 *
 * By luck of the draw an estimate may fall a little below 0 or above 1; it is not cut, so that the error stays honest.
 * Where f does not vary, or the group does nothing to it, both shares are 0, exactly.
 *
 * @param fA f at sample A, scramble-major, and so fB and fAB, draw for draw
 * @param fAB f at A with the group's columns from B
 */
export const varianceShares = (
  fA: Float64Array,
  fB: Float64Array,
  fAB: Float64Array,
  scrambles: number,
): VarianceShares => {
  const points = fA.length / scrambles;
  if (!Number.isInteger(points) || fB.length !== fA.length || fAB.length !== fA.length)
    throw new RangeError(
      `${fA.length}, ${fB.length} and ${fAB.length} values do not make ${scrambles} scrambles`,
    );
  const middle = (average(fA) + average(fB)) / 2;
  // Of each scramble: sum of f, of its square, of both estimators' products.
  const parts = Array.from({ length: scrambles }, (_, s) => {
    let [sum, squares, first, total] = [0, 0, 0, 0];
    for (let k = s * points; k < (s + 1) * points; k++) {
      const a = (fA[k] as number) - middle;
      const b = (fB[k] as number) - middle;
      const moved = (fAB[k] as number) - middle - a;
      sum += a + b;
      squares += a * a + b * b;
      first += b * moved;
      total += moved * moved;
    }
    return { sum, squares, first, total };
  });
  const share = (of: 'first' | 'total') => (without: number | null) => {
    const kept = parts.filter((_, s) => s !== without);
    const n = kept.length * points;
    const over = (part: 'sum' | 'squares' | 'first' | 'total') => kept.reduce((sum, p) => sum + p[part], 0);
    const variance = over('squares') / (2 * n) - (over('sum') / (2 * n)) ** 2;
    if (!(variance > 0)) return 0;
    return over(of) / (of === 'first' ? n : 2 * n) / variance;
  };
  const estimate = (of: 'first' | 'total'): Estimate => {
    const found = leaveOneOut(share(of), scrambles);
    return Math.abs(found.value) + found.error < ROUNDING ? { value: 0, error: 0 } : found;
  };
  return { first: estimate('first'), total: estimate('total') };
};
