/**
 * The textbook repair limit, in which the value of going on hangs on time (or age) alone and not on what was mended
 * when: Hastings (1969). It serves only for comparison with published programmes; followed where a repair renews, it can
 * cost more than either keeping or replacing.
 */
export interface TimeOnly {
  /** From step 0 to the last. */
  readonly last: number;
  /** What 1 a step later is worth now. */
  readonly discount: number;
  /** Falls at the end of step m, for m = 1..last. */
  readonly running: (step: number) => number;
  /** E min(X, limit) of the bill X of step m, nil where nothing fails. */
  readonly meanUpTo: (step: number, limit: number) => number;
  readonly replacing: (step: number) => number;
  readonly replacingBroken: (step: number) => number;
}

/** J(t) = min{R(t), v·[c(t+1) + E min(X + J(t+1), Rb(t+1))]}, J(last) = R(last); index is the step. */
export const timeOnlyCosts = (given: TimeOnly): Float64Array => {
  const { last, discount, running, meanUpTo, replacing, replacingBroken } = given;
  const J = new Float64Array(last + 1);
  J[last] = replacing(last);
  for (let t = last - 1; t >= 0; t--) {
    const on = J[t + 1] as number;
    // E min(X + J, Rb) = J + E min(X, Rb - J).
    const going = discount * (running(t + 1) + on + meanUpTo(t + 1, replacingBroken(t + 1) - on));
    J[t] = Math.min(replacing(t), going);
  }
  return J;
};
