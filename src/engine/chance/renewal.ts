import { cumulativeHazard, failsWithin, type WeibullLife } from './weibull.ts';

/** Grid steps to a month: with two, four and sixteen the answers agree to four digits. */
const STEPS_A_MONTH = 2;

/**
 * Expected failures in each of the next `months` months when a failure *renews* the part: the delayed renewal equation
 * M(x) = G(x) + integral of M(x - s) dF(s), with G the remaining life of the part that is in and F the life of new
 * ones. (The plain renewal function, or M(run + x) - M(run), is wrong for an aged part.)
 *
 * Solved on a grid with the trapezoid rule in dF; exact in G and F, second order in the step.
 *
 * @param installed life law of the part that is in, `run` its age; `next` the law of those that follow
 * @param pace life used up in one month, in the life's unit
 * @returns expected failures of month 1, 2, ... at index 0, 1, ...
 */
export const renewalIncrements = (
  installed: WeibullLife,
  run: number,
  next: WeibullLife,
  pace: number,
  months: number,
): Float64Array => renewalsAfter((m) => failsWithin(installed, run, m * pace), next, pace, months);

/**
 * The same where the remaining life of the part that is in is a law of its own.
 *
 * @param failsBy chance that the part that is in has failed by the end of month m (a real number)
 */
export const renewalsAfter = (
  failsBy: (month: number) => number,
  next: WeibullLife,
  pace: number,
  months: number,
): Float64Array => {
  const n = months * STEPS_A_MONTH;
  const step = pace / STEPS_A_MONTH;
  // ΔF of new parts, by step.
  const dF = new Float64Array(n + 1);
  let before = 0;
  for (let i = 1; i <= n; i++) {
    const now = failsWithin(next, 0, i * step);
    dF[i] = now - before;
    before = now;
  }
  // Mean of M over each step; M itself at the grid's points.
  const mean = new Float64Array(n + 1);
  const M = new Float64Array(n + 1);
  const half = 1 - (dF[1] ?? 0) / 2;
  for (let i = 1; i <= n; i++) {
    let sum = failsBy(i / STEPS_A_MONTH) + ((dF[1] ?? 0) / 2) * (M[i - 1] as number);
    for (let j = 2; j <= i; j++) sum += (dF[j] as number) * (mean[i - j + 1] as number);
    M[i] = sum / half;
    mean[i] = ((M[i - 1] as number) + (M[i] as number)) / 2;
  }
  return Float64Array.from(
    { length: months },
    (_, m) => (M[(m + 1) * STEPS_A_MONTH] as number) - (M[m * STEPS_A_MONTH] as number),
  );
};

/**
 * Expected failures in each of the next `months` months when a repair is a *patch* that leaves the clock running:
 * H(run + x) - H(run), month by month.
 */
export const patchIncrements = (life: WeibullLife, run: number, pace: number, months: number): Float64Array =>
  Float64Array.from(
    { length: months },
    (_, m) => cumulativeHazard(life, run + (m + 1) * pace) - cumulativeHazard(life, run + m * pace),
  );

/**
 * Expected failures where the part that is in has a remaining life of its own, and each repair is a patch: it fails once
 * by that law, and from then on by the hazard of its clock, which was never restarted.
 */
export const patchesAfter = (
  failsBy: (month: number) => number,
  life: WeibullLife,
  run: number,
  pace: number,
  months: number,
): Float64Array => {
  const steps = 8;
  return Float64Array.from({ length: months }, (_, m) => {
    let sum = failsBy(m + 1) - failsBy(m);
    for (let i = 0; i < steps; i++) {
      const from = m + i / steps;
      const hazard =
        cumulativeHazard(life, run + (from + 1 / steps) * pace) - cumulativeHazard(life, run + from * pace);
      sum += failsBy(from + 0.5 / steps) * hazard;
    }
    return sum;
  });
};
