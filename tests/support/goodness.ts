/** How well drawn numbers fit the law they should follow: the one-sample Kolmogorov-Smirnov test. */

/** The greatest distance between the share of values at or below x and the chance of it. */
export const ksDistance = (values: readonly number[], chanceBelow: (x: number) => number): number => {
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  return sorted.reduce((worst, x, i) => {
    const chance = chanceBelow(x);
    return Math.max(worst, chance - i / n, (i + 1) / n - chance);
  }, 0);
};

/** Limits of the asymptotic law: Smirnov, Annals of Mathematical Statistics 19(2), 1948; 1.3581 for 5 %, 1.6276 for 1 %. */
const LAMBDA = { '5 %': 1.3581, '1 %': 1.6276 } as const;

/**
 * The distance that n right values exceed once in twenty or once in a hundred, with the correction for small n of
 * Stephens, Journal of the Royal Statistical Society B 32(1), 1970.
 */
export const ksLimit = (n: number, level: keyof typeof LAMBDA = '1 %'): number =>
  LAMBDA[level] / (Math.sqrt(n) + 0.12 + 0.11 / Math.sqrt(n));
