import { describe, expect, it } from 'vitest';
import { patchIncrements, renewalIncrements } from '../../../src/engine/chance/renewal.ts';
import { failsWithin, survival } from '../../../src/engine/chance/weibull.ts';

const sum = (counts: Float64Array): number => counts.reduce((total, one) => total + one, 0);
const expected = (scale: number, shape: number, run: number, months: number): number => {
  const life = { scale, shape };
  return sum(renewalIncrements(life, run, life, 1, months));
};

describe('the chance that an aged part fails', () => {
  it('is G(x) = 1 - S(run + x)/S(run)', () => {
    const life = { scale: 100, shape: 3 };
    expect(failsWithin(life, 120, 60)).toBeCloseTo(1 - survival(life, 180) / survival(life, 120), 12);
  });

  it('forgets its age where the shape is 1', () => {
    const life = { scale: 50, shape: 1 };
    expect(failsWithin(life, 1000, 20)).toBeCloseTo(failsWithin(life, 0, 20), 12);
  });

  it('of a part long past its life loses no digits', () => {
    const life = { scale: 10, shape: 6 };
    expect(failsWithin(life, 100, 1e-6)).toBeCloseTo(1 - Math.exp(-0.06), 4);
  });
});

describe('expected failures that renew', () => {
  it('of the aged part: 1.076, not the plain 0.196 nor the difference 0.649 (model, section 3; constructed)', () => {
    expect(expected(100, 3, 120, 60)).toBeCloseTo(1.076, 3);
  });

  it('come at a constant rate where the shape is 1 (the Poisson process)', () => {
    const counts = renewalIncrements({ scale: 40, shape: 1 }, 500, { scale: 40, shape: 1 }, 1, 24);
    for (const count of counts) expect(count).toBeCloseTo(1 / 40, 6);
  });

  it('tend to one in every mean life (the elementary renewal theorem)', () => {
    // Mean of a Weibull with shape 2: scale times the root of pi over 2.
    const mean = (20 * Math.sqrt(Math.PI)) / 2;
    const counts = renewalIncrements({ scale: 20, shape: 2 }, 0, { scale: 20, shape: 2 }, 1, 240);
    expect(sum(counts.slice(120))).toBeCloseTo(120 / mean, 2);
  });

  it('agree with drawn lives within their own error', () => {
    // A plain congruential generator will do for a check of means: x' = 16807 x mod (2^31 - 1), seed 7.
    let state = 7;
    const uniform = (): number => {
      state = (state * 16807) % 2147483647;
      return state / 2147483647;
    };
    const [scale, shape, run, months] = [30, 2.5, 25, 48];
    const draws = 40_000;
    const counts: number[] = [];
    for (let i = 0; i < draws; i++) {
      let at = scale * ((run / scale) ** shape - Math.log(uniform())) ** (1 / shape) - run;
      let failures = 0;
      while (at <= months) {
        failures++;
        at += scale * (-Math.log(uniform())) ** (1 / shape);
      }
      counts.push(failures);
    }
    const mean = counts.reduce((a, b) => a + b, 0) / draws;
    const spread = Math.sqrt(counts.reduce((a, b) => a + (b - mean) ** 2, 0) / draws / draws);
    expect(Math.abs(expected(scale, shape, run, months) - mean)).toBeLessThan(3 * spread);
  });
});

describe('expected failures that are patched', () => {
  it('are H(run + x) - H(run): the clock runs on', () => {
    const counts = patchIncrements({ scale: 100, shape: 3 }, 120, 1, 60);
    expect(sum(counts)).toBeCloseTo(1.8 ** 3 - 1.2 ** 3, 12);
  });
});
