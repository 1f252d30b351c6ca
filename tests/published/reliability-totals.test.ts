/** Totals of bills that come at random: by the arrivals and the estimates of drawn futures. */
import { describe, expect } from 'vitest';
import {
  average,
  type Estimate,
  meanOf,
  shareOf,
  standardDeviation,
} from '../../src/engine/chance/estimates.ts';
import { arrivalTimes } from '../../src/engine/chance/failureTimes.ts';
import { gammaQuantile } from '../../src/engine/chance/gamma.ts';
import { drawn, SCRAMBLES } from '../support/luck.ts';
import { type Inputs, publishedCases } from './cases.ts';

const MONTHS = 12;
const ALL = new Float64Array(MONTHS).fill(1);

/** Totals of a year: `rate` bills expected, each by its quantile. */
const totals = (seed: number, draws: number, rate: number, bill: (u: number) => number): Float64Array =>
  drawn(seed, draws, (luck) =>
    arrivalTimes(() => rate / MONTHS, ALL, luck).reduce((sum, _, i) => sum + bill(luck.quantile(i)), 0),
  );

/** Severities 1, 2, ... with these chances. */
const ofWhole = (given: Inputs): Float64Array => {
  const upTo = given.nums('severities').map((_, k, all) => all.slice(0, k + 1).reduce((a, b) => a + b, 0));
  return totals(3, 65_536, given.num('rate'), (u) => 1 + upTo.filter((below) => u >= below).length);
};

const ofGamma = (given: Inputs): Float64Array =>
  totals(4, 8192, given.num('rate'), (u) => gammaQuantile(given.num('shape'), u));

/** Draws once what all the figures of a file are taken from. */
const once = (draw: (given: Inputs) => Float64Array): ((given: Inputs) => Float64Array) => {
  const kept = new Map<string, Float64Array>();
  return (given) => {
    const key = `${given.num('rate')}`;
    const known = kept.get(key) ?? draw(given);
    kept.set(key, known);
    return known;
  };
};
const [wholeTotals, gammaTotals] = [once(ofWhole), once(ofGamma)];

const within = ({ value, error }: Estimate, published: unknown): number => {
  expect(Math.abs(value - (published as number))).toBeLessThan(4 * error);
  return value;
};

describe('totals of bills', () => {
  publishedCases('reliability-totals.json', {
    total: (given, expected) => ({
      chance: within(
        shareOf(wholeTotals(given), (total) => total === given.num('is'), SCRAMBLES),
        expected.chance,
      ),
    }),
    totalMean: (given, expected) => ({ mean: within(meanOf(wholeTotals(given), SCRAMBLES), expected.mean) }),
    totalVariance: (given) => ({ variance: standardDeviation(wholeTotals(given)) ** 2 }),
    gammaTotal: (given, expected) => {
      const all = gammaTotals(given);
      const [mean, sd] = [average(all), standardDeviation(all)];
      const skewness = average(all.map((total) => ((total - mean) / sd) ** 3));
      const figures = { mean, variance: sd ** 2, skewness };
      return Object.fromEntries(Object.entries(figures).filter(([name]) => name in expected));
    },
  });
});
