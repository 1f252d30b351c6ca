/** Lives start at a location in the source; ours start at nil, so it is taken off on the way in and put back after. */
import { describe } from 'vitest';
import { failureTimes } from '../../src/engine/chance/failureTimes.ts';
import { patchIncrements } from '../../src/engine/chance/renewal.ts';
import {
  cumulativeHazard,
  failsWithin,
  survival,
  type WeibullLife,
} from '../../src/engine/chance/weibull.ts';
import { normalChance, normalQuantile } from '../../src/engine/quantity/normal.ts';
import { integral } from '../support/luck.ts';
import { type Inputs, publishedCases } from './cases.ts';

const lifeOf = (given: Inputs): WeibullLife => ({ scale: given.num('scale'), shape: given.num('shape') });

/** Age by which a new part fails where the luck drawn is that of the share: by the sampler of drawn futures. */
const failsBy = (life: WeibullLife, share: number): number => {
  const luck = {
    exponential: (i: number) => (i === 0 ? -Math.log1p(-share) : Number.POSITIVE_INFINITY),
    quantile: () => 0.5,
  };
  const part = { life, run: 0, pace: 1, patch: false, another: null };
  return failureTimes(part, [], 1000 * life.scale, luck)[0] as number;
};

const pick = (all: { readonly [name: string]: number }, expected: object) =>
  Object.fromEntries(Object.entries(all).filter(([name]) => name in expected));

const farAway = (life: WeibullLife): number => life.scale * 45 ** (1 / life.shape);

/** What `of` says at the age by which each share has failed. */
const atShares = (given: Inputs, of: (life: WeibullLife, age: number) => number): { values: number[] } => {
  const life = lifeOf(given);
  return { values: given.nums('shares').map((share) => of(life, failsBy(life, share))) };
};

describe('lives: Weibull, exponential, normal', () => {
  publishedCases('reliability-lifetimes.json', {
    lastsOn: (given) => {
      const [life, age] = [lifeOf(given), given.num('age')];
      return { chance: survival(life, age + given.num('mission')) / survival(life, age) };
    },
    failsWithin: (given) => ({
      chance: failsWithin(lifeOf(given), given.num('age'), given.num('mission')),
    }),
    moments: (given, expected) => {
      const life = lifeOf(given);
      // E X^k is the integral of k x^(k-1) S(x).
      const [m1, m2, m3, m4] = [1, 2, 3, 4].map((k) =>
        integral((x) => k * x ** (k - 1) * survival(life, x), farAway(life)),
      ) as [number, number, number, number];
      const variance = m2 - m1 ** 2;
      const sd = Math.sqrt(variance);
      const skewness = (m3 - 3 * m1 * m2 + 2 * m1 ** 3) / sd ** 3;
      const kurtosis = (m4 - 4 * m1 * m3 + 6 * m1 ** 2 * m2 - 3 * m1 ** 4) / variance ** 2;
      return pick({ mean: given.num('start') + m1, sd, variance, skewness, kurtosis }, expected);
    },
    failsBy: (given) => ({ age: given.num('start') + failsBy(lifeOf(given), given.num('share')) }),
    meanLeft: (given) => {
      const life = lifeOf(given);
      const run = given.num('age') - given.num('start');
      return { life: integral((x) => 1 - failsWithin(life, run, x), farAway(life)) };
    },
    // What fails in a short stretch around the age, of new parts; and of a part that is patched.
    density: (given) => {
      const h = 1e-5;
      return atShares(
        given,
        (life, age) => (failsWithin(life, 0, age + h) - failsWithin(life, 0, age - h)) / (2 * h),
      );
    },
    hazard: (given) => {
      const h = 1e-3;
      return atShares(
        given,
        (life, age) => (patchIncrements(life, age - h, 2 * h, 1)[0] as number) / (2 * h),
      );
    },
    cumulativeHazard: (given) => atShares(given, cumulativeHazard),
    normalPoint: (given) => ({ x: given.num('mean') + given.num('sd') * normalQuantile(given.num('share')) }),
    normalBelow: (given) => ({
      chance: normalChance((given.num('x') - given.num('mean')) / given.num('sd')),
    }),
    normalHazard: (given) => ({
      value: -Math.log(normalChance((given.num('mean') - given.num('x')) / given.num('sd'))),
    }),
    normalMeanLeft: (given) => {
      const lasts = (x: number) => normalChance((given.num('mean') - x) / given.num('sd'));
      const x = given.num('x');
      return { life: integral((more) => lasts(x + more), 10 * given.num('sd')) / lasts(x) };
    },
  });
});
