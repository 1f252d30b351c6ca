/** Where the sign of a function of whole numbers changes: every value is tried, nothing is interpolated. */

/** The sign differs between these two values; those between them, if any, are ties. */
export type Flip = { readonly from: number; readonly to: number };

export type IntegerFlips = {
  /** `always`: a tie at every value. `never`: one sign throughout. Else how many flips there are. */
  readonly status: 'never' | 'always' | 'one' | 'several';
  readonly flips: readonly Flip[];
  /** The values at which |f| < unit/100: nobody could tell the difference. */
  readonly ties: readonly number[];
  readonly signAtLow: number;
  readonly signAtHigh: number;
};

/**
 * Evaluates f at each of `values` (in rising order, at least one) and says between which two its sign flips:
 * "flips between 41 and 42". `unit` is one money unit.
 */
export const integerFlips = (f: (n: number) => number, values: readonly number[], unit = 1): IntegerFlips => {
  const signs = values.map((n) => {
    const y = f(n);
    return { n, sign: Math.abs(y) < unit / 100 ? 0 : Math.sign(y) };
  });
  const decided = signs.filter(({ sign }) => sign !== 0);
  const flips = decided.flatMap((here, k) => {
    const next = decided[k + 1];
    return next && next.sign !== here.sign ? [{ from: here.n, to: next.n }] : [];
  });
  const many = flips.length === 0 ? 'never' : flips.length === 1 ? 'one' : 'several';
  return {
    status: decided.length === 0 ? 'always' : many,
    flips,
    ties: signs.filter(({ sign }) => sign === 0).map(({ n }) => n),
    signAtLow: signs[0]?.sign ?? 0,
    signAtHigh: signs.at(-1)?.sign ?? 0,
  };
};
