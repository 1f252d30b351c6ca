import { gammaChance, gammaQuantile, logGamma } from './gamma.ts';

/**
 * What is thought of a rate of repairs, or of a multiplier of expected ones: a gamma law with mean a/b. Sources: NIST
 * e-Handbook of Statistical Methods 8.2.5 and 8.4.6.
 */
export interface RateBelief {
  /** Above 0: as sure as if this many repairs had been seen. */
  readonly a: number;
  /** Above 0: in so much time, or so many expected repairs. */
  readonly b: number;
}

/**
 * What is thought after `counted` repairs were seen over `exposure`, in the unit of b: time for a rate, repairs that
 * were expected over the record for a multiplier. Nothing seen over nothing teaches nothing.
 */
export const learn = ({ a, b }: RateBelief, counted: number, exposure: number): RateBelief => ({
  a: a + counted,
  b: b + exposure,
});

/** The rate that the true one is below with chance p. */
export const rateBelow = ({ a, b }: RateBelief, p: number): number => gammaQuantile(a, p) / b;

/** The chance that the true rate is below `rate`. */
export const chanceOfRateBelow = ({ a, b }: RateBelief, rate: number): number => gammaChance(a, b * rate);

/** The chance of exactly n repairs over `exposure` to come (negative binomial). */
export const chanceOfCount = ({ a, b }: RateBelief, exposure: number, n: number): number =>
  exposure <= 0
    ? n === 0
      ? 1
      : 0
    : Math.exp(
        logGamma(a + n) -
          logGamma(a) -
          logGamma(n + 1) +
          a * Math.log(b / (b + exposure)) +
          n * Math.log(exposure / (b + exposure)),
      );
