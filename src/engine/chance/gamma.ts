/** The gamma law with rate 1: what a count of repairs says of the rate behind it. */

/** Lanczos's approximation with g = 7, coefficients by Godfrey (2001): 15 digits for a above 0. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function of a > 0. */
export const logGamma = (a: number): number => {
  if (a < 0.5) return logGamma(a + 1) - Math.log(a);
  const t = a + 6.5;
  const sum = LANCZOS.reduce((total, c, k) => total + (k === 0 ? c : c / (a - 1 + k)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (a - 0.5) * Math.log(t) - t + Math.log(sum);
};

const TINY = 1e-300;
const EXACT = 1e-16;

/** Lower tail as a series, for x below a + 1 (Abramowitz and Stegun 6.5.29). */
const series = (a: number, x: number): number => {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > sum * EXACT; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum * Math.exp(a * Math.log(x) - x - logGamma(a));
};

/** Upper tail as a continued fraction, for x from a + 1 on (6.5.31, in Lentz's form). */
const fraction = (a: number, x: number): number => {
  let b = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / b;
  let h = d;
  for (let n = 1, change = 0; Math.abs(change - 1) > EXACT && n < 10_000; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b || TINY);
    c = b + an / c || TINY;
    change = c * d;
    h *= change;
  }
  return h * Math.exp(a * Math.log(x) - x - logGamma(a));
};

/**
 * Chance that a gamma variable of shape a > 0 and rate 1 lies below x; for whole a also the chance that a Poisson count
 * of mean x is at least a.
 */
export const gammaChance = (a: number, x: number): number =>
  x <= 0 ? 0 : x < a + 1 ? series(a, x) : 1 - fraction(a, x);

/**
 * The x below which a gamma variable of shape a > 0 and rate 1 lies with chance p; 0 at 0, Infinity at 1. By halving:
 * slow and sure, to the last digits of a double. Throws RangeError for a shape that is not above 0: no halving ends there.
 */
export const gammaQuantile = (a: number, p: number): number => {
  if (!(a > 0)) throw new RangeError(`a gamma law has a shape above 0, not ${a}`);
  if (!(p > 0)) return 0;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  let low = 0;
  let high = a + 1;
  while (gammaChance(a, high) < p) high *= 2;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high || high - low < EXACT * high) return middle;
    if (gammaChance(a, middle) < p) low = middle;
    else high = middle;
  }
};
