import { describe, expect, it } from 'vitest';
import { uniformAt } from '../../../src/engine/chance/counter.ts';
import {
  average,
  leaveOneOut,
  meanOf,
  pointsOf,
  quantileOf,
  quantilesOf,
  shareOf,
  standardDeviation,
} from '../../../src/engine/chance/estimates.ts';

const draws = (count: number, seed: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => uniformAt(seed, k, 1, 0));

describe('a mean over drawn futures', () => {
  it('has the spread of the means of the scrambles for its error', () => {
    const { value, error } = meanOf(Float64Array.of(1, 3, 4, 6, 9, 13), 3);
    expect(value).toBe(6);
    // Means 2, 5 and 11: standard deviation 4.5826, over the root of 3.
    expect(error).toBeCloseTo(Math.sqrt(21 / 3), 12);
  });

  it('covers the truth about as often as its error says', () => {
    const missed = Array.from({ length: 200 }, (_, seed) => meanOf(draws(256, seed), 16)).filter(
      ({ value, error }) => Math.abs(value - 0.5) > 2 * error,
    ).length;
    // Student's t with 15 degrees of freedom is beyond 2 in 6.4 % of cases: 12.8 of 200.
    expect(missed).toBeGreaterThan(3);
    expect(missed).toBeLessThan(27);
  });

  it('knows nothing of its error from one scramble, and says so', () => {
    expect(meanOf(Float64Array.of(1, 2), 1)).toEqual({ value: 1.5, error: Number.POSITIVE_INFINITY });
  });

  it('refuses values that do not make equal scrambles', () => {
    expect(() => meanOf(Float64Array.of(1, 2, 3), 2)).toThrow(RangeError);
    expect(() => meanOf(Float64Array.of(), 2)).toThrow(RangeError);
  });

  it('of equal values is that value, without error', () => {
    expect(meanOf(new Float64Array(64).fill(0.1), 4)).toEqual({ value: 0.1, error: 0 });
  });
});

describe('points of drawn futures', () => {
  it('lie between the order statistics', () => {
    expect(pointsOf(Float64Array.of(60, 20, 100, 10, 30), [0, 0.25, 0.5, 0.9, 1])).toEqual([
      10, 20, 30, 84, 100,
    ]);
    expect(pointsOf(Float64Array.of(7), [0.3])).toEqual([7]);
  });

  it('are those of the values in order, ties and repeated shares too', () => {
    const values = draws(999, 3).map((u) => Math.round(40 * u));
    const sorted = values.slice().sort();
    const ps = Array.from({ length: 200 }, (_, k) => (k >> 1) / 99);
    pointsOf(values, ps).forEach((point, i) => {
      const at = (ps[i] as number) * 998;
      const [low, high] = [sorted[Math.floor(at)] as number, sorted[Math.ceil(at)] as number];
      expect(point).toBeCloseTo(low + (at - Math.floor(at)) * (high - low), 9);
    });
  });

  it('are those of all draws; the error is the spread of the scrambles own points', () => {
    const values = Float64Array.of(3, 1, 2, 6, 4, 5);
    const { value, error } = quantileOf(values, 0.5, 2);
    expect(value).toBe(3.5);
    // Middles 2 and 5.
    expect(error).toBeCloseTo(1.5, 12);
    expect([...values]).toEqual([3, 1, 2, 6, 4, 5]);
  });

  it('of uniform draws are where they should be, within their errors', () => {
    const ps = [0.1, 0.5, 0.9];
    quantilesOf(draws(16384, 5), ps, 16).forEach(({ value, error }, k) => {
      expect(Math.abs(value - (ps[k] as number))).toBeLessThan(4 * error);
      expect(error).toBeLessThan(0.01);
    });
  });
});

describe('a share of drawn futures', () => {
  it('is the mean of yes and no', () => {
    const { value, error } = shareOf(Float64Array.of(-1, 2, 3, 4), (x) => x > 0, 2);
    expect(value).toBe(0.75);
    expect(error).toBeCloseTo(0.25, 12);
  });
});

describe('an error by leaving out one scramble at a time', () => {
  it('is the plain one for a mean', () => {
    const values = draws(64, 3);
    const byLeaving = leaveOneOut(
      (without) => average(values.filter((_, k) => without === null || Math.floor(k / 8) !== without)),
      8,
    );
    const plain = meanOf(values, 8);
    expect(byLeaving.value).toBeCloseTo(plain.value, 14);
    expect(byLeaving.error).toBeCloseTo(plain.error, 12);
  });

  it('is infinite for one scramble', () => {
    expect(leaveOneOut(() => 5, 1)).toEqual({ value: 5, error: Number.POSITIVE_INFINITY });
  });
});

describe('a standard deviation', () => {
  it('is infinite where there is nothing to compare', () => {
    expect(standardDeviation([4])).toBe(Number.POSITIVE_INFINITY);
  });
});
