/** One root of a function between two points of opposite sign. */

/** A function of one number that a solver may call as often as it likes. */
export type Fn = (x: number) => number;

const MOST_STEPS = 200;

/**
 * The point between a and b where f changes sign, to within `tolerance` (in x), by Brent's method: inverse quadratic
 * interpolation where it is safe, bisection where it is not. For a function with a jump, the place of the jump.
 * Throws RangeError when f(a) and f(b) have the same sign.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4 (from memory).
 */
export const brent = (f: Fn, a: number, b: number, tolerance: number): number => {
  let [worse, best] = [a, b];
  let [fWorse, fBest] = [f(a), f(b)];
  if (fWorse === 0) return a;
  if (fBest === 0) return b;
  if (Math.sign(fWorse) === Math.sign(fBest))
    throw new RangeError('no change of sign between the two points');
  // `across` is the latest point on the other side of the root from `best`.
  let [across, fAcross] = [worse, fWorse];
  let step = best - worse;
  let stepBefore = step;
  for (let k = 0; k < MOST_STEPS; k++) {
    if (Math.sign(fBest) === Math.sign(fAcross)) {
      [across, fAcross] = [worse, fWorse];
      step = best - worse;
      stepBefore = step;
    }
    if (Math.abs(fAcross) < Math.abs(fBest)) {
      [worse, best, across] = [best, across, best];
      [fWorse, fBest, fAcross] = [fBest, fAcross, fBest];
    }
    const within = 2 * Number.EPSILON * Math.abs(best) + tolerance / 2;
    const half = (across - best) / 2;
    if (Math.abs(half) <= within || fBest === 0) return best;
    const jump = interpolate(worse, best, across, fWorse, fBest, fAcross);
    const safe =
      Math.abs(stepBefore) >= within &&
      Math.abs(fWorse) > Math.abs(fBest) &&
      jump * half > 0 &&
      Math.abs(jump) < Math.min(1.5 * Math.abs(half), Math.abs(stepBefore) / 2);
    stepBefore = safe ? step : half;
    step = safe ? jump : half;
    [worse, fWorse] = [best, fBest];
    best += Math.abs(step) > within ? step : Math.sign(half) * within;
    fBest = f(best);
  }
  return best;
};

/** The step from b to where the parabola in f through three points (the secant, if two coincide) crosses zero. */
const interpolate = (a: number, b: number, c: number, fa: number, fb: number, fc: number): number => {
  const s = fb / fa;
  if (a === c) return (s * (c - b)) / (s - 1);
  const [q, r] = [fa / fc, fb / fc];
  return (-s * ((c - b) * q * (q - r) - (b - a) * (r - 1))) / ((q - 1) * (r - 1) * (s - 1));
};
