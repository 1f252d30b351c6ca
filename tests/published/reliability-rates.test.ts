import { describe } from 'vitest';
import { gammaQuantile } from '../../src/engine/chance/gamma.ts';
import {
  chanceOfCount,
  chanceOfRateBelow,
  learn,
  type RateBelief,
  rateBelow,
} from '../../src/engine/chance/repairRate.ts';
import { type Inputs, publishedCases } from './cases.ts';

const beliefOf = (given: Inputs): RateBelief => ({ a: given.num('a'), b: given.num('b') });
const learnt = (given: Inputs): RateBelief =>
  learn(beliefOf(given), given.num('counted'), given.num('exposure'));

/** The mean times between repairs that the true one is above with these chances. */
const timesAbove = (belief: RateBelief, given: Inputs): number[] =>
  given.nums('shares').map((share) => 1 / rateBelow(belief, share));

/** Mean times between repairs that would show so few, and so many, in one case of twenty each (at 90 %). */
const bounds = (given: Inputs): { lower: number; upper: number } => {
  const [failures, hours] = [given.num('failures'), given.num('hours')];
  const tail = (1 - given.num('confidence')) / 2;
  return {
    lower: hours / gammaQuantile(failures + 1, 1 - tail),
    upper: hours / gammaQuantile(failures, tail),
  };
};

const foreseen = (given: Inputs, count: number): number =>
  chanceOfCount(beliefOf(given), given.num('exposure'), count);

describe('rates of repairs, learnt from counts', () => {
  publishedCases('reliability-rates.json', {
    rateBelowChance: (given) => ({ chance: chanceOfRateBelow(beliefOf(given), given.num('rate')) }),
    meanTimes: (given) => ({ times: timesAbove(beliefOf(given), given) }),
    learnt: (given) => ({ ...learnt(given) }),
    learntMeanTime: (given) => ({ time: learnt(given).b / learnt(given).a }),
    learntTimes: (given) => ({ times: timesAbove(learnt(given), given) }),
    learntChance: (given) => ({ chance: chanceOfRateBelow(learnt(given), given.num('rate')) }),
    counts: (given) => ({ chances: given.nums('counts').map((count) => foreseen(given, count)) }),
    countMoments: (given, expected) => {
      const chances = Array.from({ length: 200 }, (_, count) => foreseen(given, count));
      const mean = chances.reduce((sum, chance, count) => sum + count * chance, 0);
      const variance = chances.reduce((sum, chance, count) => sum + (count - mean) ** 2 * chance, 0);
      return 'mean' in expected ? { mean } : { variance };
    },
    meanTimeFactors: (given) => {
      const { lower, upper } = bounds(given);
      const observed = given.num('hours') / given.num('failures');
      return { lower: lower / observed, upper: upper / observed };
    },
    meanTimeInterval: (given) => bounds(given),
    meanTimeLowerBound: (given) => ({
      lower: given.num('hours') / gammaQuantile(given.num('failures') + 1, 1 - given.num('beyond')),
    }),
    chiSquare: (given) => ({ x: 2 * gammaQuantile(given.num('degrees') / 2, given.num('share')) }),
  });
});
