import { describe, expect, it } from 'vitest';
import { gammaChance, gammaQuantile, logGamma } from '../../../src/engine/chance/gamma.ts';
import { chanceOfCount, chanceOfRateBelow, learn, rateBelow } from '../../../src/engine/chance/repairRate.ts';

describe('the gamma law', () => {
  it('has the factorials for its function', () => {
    let logFactorial = 0;
    for (let n = 1; n < 60; n++) {
      expect(logGamma(n)).toBeCloseTo(logFactorial, 11);
      logFactorial += Math.log(n);
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(logGamma(0.1)).toBeCloseTo(2.252712651734206, 12);
  });

  it('of shape 1 is the exponential', () => {
    for (const x of [1e-9, 0.3, 1, 2, 2.5, 10, 40])
      expect(gammaChance(1, x)).toBeCloseTo(-Math.expm1(-x), 14);
    expect(gammaChance(1, 0)).toBe(0);
  });

  it('is what is left of a Poisson count', () => {
    for (const mean of [0.2, 3, 9.5, 30]) {
      let below = 0;
      for (let n = 0, one = Math.exp(-mean); n < 40; n++) {
        expect(gammaChance(n + 1, mean)).toBeCloseTo(1 - below - one, 12);
        below += one;
        one *= mean / (n + 1);
      }
    }
  });

  it('finds the point of each chance again', () => {
    for (const a of [0.3, 1, 4, 25.5, 400])
      for (const p of [1e-6, 0.05, 0.5, 0.95, 1 - 1e-6])
        expect(gammaChance(a, gammaQuantile(a, p))).toBeCloseTo(p, 12);
    expect(gammaQuantile(3, 0)).toBe(0);
    expect(gammaQuantile(3, 1)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('what is thought of a rate', () => {
  const prior = { a: 4, b: 4 };

  it('is not changed by a record of nothing, and moves towards what is seen', () => {
    expect(learn(prior, 0, 0)).toEqual(prior);
    const after = learn(prior, 9, 3);
    expect(after.a / after.b).toBeCloseTo(13 / 7, 12);
    expect(rateBelow(after, 0.5)).toBeGreaterThan(rateBelow(prior, 0.5));
    expect(chanceOfRateBelow(after, rateBelow(after, 0.2))).toBeCloseTo(0.2, 12);
  });

  it('is the same whether learnt at once or piece by piece', () => {
    expect(learn(learn(prior, 2, 1.5), 1, 0.5)).toEqual(learn(prior, 3, 2));
  });

  it('foresees counts whose chances sum to one and whose mean is the expected rate', () => {
    const chances = Array.from({ length: 200 }, (_, n) => chanceOfCount({ a: 13, b: 7 }, 5, n));
    expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 10);
    expect(chances.reduce((sum, one, n) => sum + n * one, 0)).toBeCloseTo((5 * 13) / 7, 9);
    expect([chanceOfCount(prior, 0, 0), chanceOfCount(prior, 0, 2)]).toEqual([1, 0]);
  });
});
