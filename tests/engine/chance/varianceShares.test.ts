import { describe, expect, it } from 'vitest';
import { scrambledSobol } from '../../../src/engine/chance/sobol.ts';
import { varianceShares } from '../../../src/engine/chance/varianceShares.ts';

const SCRAMBLES = 16;
const POINTS = 256;

/** f at A, at B, and at A with input `i` from B, over `inputs` uniform numbers. */
const samples = (f: (x: Float64Array) => number, inputs: number, i: number) => {
  const [fA, fB, fAB] = [0, 0, 0].map(() => new Float64Array(SCRAMBLES * POINTS)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const point = new Float64Array(2 * inputs);
  for (let s = 0; s < SCRAMBLES; s++) {
    const sobol = scrambledSobol(2 * inputs, 11, s);
    for (let k = 0; k < POINTS; k++) {
      sobol.fill(k, point);
      const a = point.slice(0, inputs);
      const at = s * POINTS + k;
      fA[at] = f(a);
      fB[at] = f(point.slice(inputs));
      a[i] = point[inputs + i] as number;
      fAB[at] = f(a);
    }
  }
  return [fA, fB, fAB] as const;
};

describe('shares of variance', () => {
  it('of a sum are each number own share of the variance, first and total alike', () => {
    const f = (x: Float64Array) => 3 * (x[0] as number) + 4 * (x[1] as number) + 1e6;
    for (const [i, share] of [9 / 25, 16 / 25].entries()) {
      const { first, total } = varianceShares(...samples(f, 2, i), SCRAMBLES);
      expect(Math.abs(first.value - share)).toBeLessThan(4 * first.error + 1e-9);
      expect(Math.abs(total.value - share)).toBeLessThan(4 * total.error + 1e-9);
      expect(first.error).toBeLessThan(0.02);
    }
  });

  it('of a pure product lie in the total alone', () => {
    const f = (x: Float64Array) => ((x[0] as number) - 0.5) * ((x[1] as number) - 0.5);
    const { first, total } = varianceShares(...samples(f, 2, 0), SCRAMBLES);
    expect(Math.abs(first.value)).toBeLessThan(4 * first.error);
    expect(Math.abs(total.value - 1)).toBeLessThan(4 * total.error);
  });

  it('of a number that f does not use are nil exactly', () => {
    const { first, total } = varianceShares(...samples((x) => x[0] as number, 2, 1), SCRAMBLES);
    expect([first, total]).toEqual([
      { value: 0, error: 0 },
      { value: 0, error: 0 },
    ]);
  });

  it('of a number that moves only the last digits of a sum are nil exactly', () => {
    const f = (x: Float64Array) => 1e4 * (x[0] as number) + 1e-10 * (x[1] as number);
    const { first, total } = varianceShares(...samples(f, 2, 1), SCRAMBLES);
    expect([first, total]).toEqual([
      { value: 0, error: 0 },
      { value: 0, error: 0 },
    ]);
  });

  it('of what does not vary are nil exactly', () => {
    const still = new Float64Array(32).fill(1234.56);
    const { first, total } = varianceShares(still, still, still, 4);
    expect([first, total]).toEqual([
      { value: 0, error: 0 },
      { value: 0, error: 0 },
    ]);
  });

  it('refuses samples of different sizes', () => {
    const of = (n: number) => new Float64Array(n);
    expect(() => varianceShares(of(8), of(8), of(4), 2)).toThrow(RangeError);
    expect(() => varianceShares(of(9), of(9), of(9), 2)).toThrow(RangeError);
  });
});
