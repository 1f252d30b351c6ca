/**
 * A part that is patched fails by a power law (Crow's, Duane's): the expected failures are the cumulative hazard of its
 * Weibull life. Sources write it factor x time^power, power = 1 - growth.
 */
import { describe, expect } from 'vitest';
import { average, leaveOneOut, shareOf } from '../../src/engine/chance/estimates.ts';
import { failureTimes } from '../../src/engine/chance/failureTimes.ts';
import { gammaChance } from '../../src/engine/chance/gamma.ts';
import { patchIncrements } from '../../src/engine/chance/renewal.ts';
import { cumulativeHazard, survival, type WeibullLife } from '../../src/engine/chance/weibull.ts';
import { drawn, integral, SCRAMBLES } from '../support/luck.ts';
import { type Inputs, publishedCases } from './cases.ts';

const processOf = (given: Inputs): WeibullLife => {
  const shape = given.has('power') ? given.num('power') : 1 - given.num('growth');
  return { scale: given.num('factor') ** (-1 / shape), shape };
};

const DRAWS = 16_384;

const costRate = (given: Inputs, age: number): number => {
  const life = { scale: given.num('scale'), shape: given.num('shape') };
  const lasts = survival(life, age);
  const cost = given.num('costPlanned') * lasts + given.num('costFailure') * (1 - lasts);
  return cost / integral((x) => survival(life, x), age, 2000);
};

describe('parts that are patched, and parts replaced at an age', () => {
  publishedCases('reliability-repairable.json', {
    expectedBy: (given) => ({ failures: cumulativeHazard(processOf(given), given.num('time')) }),
    meanTimeSoFar: (given) => ({
      time: given.num('time') / cumulativeHazard(processOf(given), given.num('time')),
    }),
    meanTimeAt: (given) => {
      const stretch = given.num('time') * 1e-4;
      const failures = patchIncrements(
        processOf(given),
        given.num('time') - stretch / 2,
        stretch,
        1,
      )[0] as number;
      return { time: stretch / failures };
    },
    chanceOfCount: (given) => {
      const mean = cumulativeHazard(processOf(given), given.num('time'));
      const count = given.num('count');
      return { chance: gammaChance(count, mean) - gammaChance(count + 1, mean) };
    },
    chanceOfCountDrawn: (given, expected) => {
      const part = { life: processOf(given), run: 0, pace: 1, patch: true, another: null };
      const counts = drawn(1, DRAWS, (luck) => failureTimes(part, [], given.num('time'), luck).length);
      const { value, error } = shareOf(counts, (count) => count === given.num('count'), SCRAMBLES);
      expect(Math.abs(value - (expected.chance as number))).toBeLessThan(4 * error);
      return { chance: value };
    },
    bestAge: (given) => {
      let [low, high] = [1, 5 * given.num('scale')];
      while (high - low > 1e-3) {
        const [left, right] = [(2 * low + high) / 3, (low + 2 * high) / 3];
        if (costRate(given, left) < costRate(given, right)) high = right;
        else low = left;
      }
      return { age: (low + high) / 2 };
    },
    costRate: (given) => ({ rate: costRate(given, given.num('age')) }),
    // Cost over time of many lives, each ended by failure or at the age.
    costRateDrawn: (given, expected) => {
      const age = given.num('age');
      const life = { scale: given.num('scale'), shape: given.num('shape') };
      const part = { life, run: 0, pace: 1, patch: false, another: null };
      const ends = drawn(2, DRAWS, (luck) => failureTimes(part, [], age, luck)[0] ?? age);
      const rate = (lives: Float64Array) =>
        average(lives.map((end) => (end < age ? given.num('costFailure') : given.num('costPlanned')))) /
        average(lives);
      const { value, error } = leaveOneOut(
        (without) => rate(ends.filter((_, k) => Math.floor((k * SCRAMBLES) / DRAWS) !== without)),
        SCRAMBLES,
      );
      expect(Math.abs(value - (expected.rate as number))).toBeLessThan(4 * error);
      return { rate: value };
    },
  });
});
