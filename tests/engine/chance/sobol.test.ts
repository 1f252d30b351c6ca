import { describe, expect, it } from 'vitest';
import { directionNumbers, MOST_DIMENSIONS } from '../../../src/engine/chance/directions.ts';
import { type Points, plainSobol, scrambledSobol } from '../../../src/engine/chance/sobol.ts';
import { ksDistance, ksLimit } from '../../support/goodness.ts';

/** The first n points, as one column a dimension. */
const columnsOf = (points: Points, dimensions: number, n: number): Float64Array[] => {
  const columns = Array.from({ length: dimensions }, () => new Float64Array(n));
  const point = new Float64Array(dimensions);
  for (let i = 0; i < n; i++) {
    points.fill(i, point);
    columns.forEach((column, d) => {
      column[i] = point[d] as number;
    });
  }
  return columns;
};

/** How many of a column's values lie in each of `count` equal intervals. */
const histogram = (column: Float64Array, count: number): number[] => {
  const held = new Array<number>(count).fill(0);
  for (const u of column) held[Math.floor(u * count)] = (held[Math.floor(u * count)] as number) + 1;
  return held;
};

describe('plain Sobol points', () => {
  it('are the published first ten in three dimensions', () => {
    // Joe and Kuo direction numbers; SALib, tests/test_sobol.py (Gray code order, the origin first).
    const published = [
      [0, 0, 0],
      [0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25],
      [0.25, 0.75, 0.75],
      [0.375, 0.375, 0.625],
      [0.875, 0.875, 0.125],
      [0.625, 0.125, 0.875],
      [0.125, 0.625, 0.375],
      [0.1875, 0.3125, 0.9375],
      [0.6875, 0.8125, 0.4375],
    ];
    const points = plainSobol(3);
    const point = new Float64Array(3);
    const computed = published.map((_, i) => {
      points.fill(i, point);
      return [...point].map((u) => u - 2 ** -33);
    });
    expect(computed).toEqual(published);
  });

  it('are those of an independent implementation in high dimensions', () => {
    // SciPy 1.17.1, scipy.stats.qmc.Sobol(128, scramble=False, bits=32): points 1,000 and 54,321 times 2^16.
    const points = plainSobol(128);
    const point = new Float64Array(128);
    for (const [index, values] of [
      [1000, [6336, 58944, 9536, 29248, 12224, 35648]],
      [54321, [38699, 29445, 16827, 33827, 36907, 32361]],
    ] as const) {
      points.fill(index, point);
      const picked = [1, 7, 31, 63, 99, 127].map((d) => Math.floor((point[d] as number) * 2 ** 16));
      expect(picked).toEqual(values);
    }
  });

  it('have direction numbers with a leading one and nothing below it, in all 128 dimensions', () => {
    const numbers = directionNumbers(MOST_DIMENSIONS);
    expect(numbers).toHaveLength(MOST_DIMENSIONS);
    for (const words of numbers) {
      expect(words).toHaveLength(32);
      words.forEach((word, i) => {
        // m_i is odd and below 2^i: the word ends exactly at its own bit.
        expect(word % 2 ** (31 - i)).toBe(0);
        expect((word / 2 ** (31 - i)) % 2).toBe(1);
      });
    }
    expect(new Set(numbers.map((words) => words.join())).size).toBe(MOST_DIMENSIONS);
    expect(() => directionNumbers(MOST_DIMENSIONS + 1)).toThrow(RangeError);
    expect(() => scrambledSobol(-1, 1, 0)).toThrow(RangeError);
  });
});

describe('scrambled points', () => {
  const columns = columnsOf(scrambledSobol(128, 1, 0), 128, 1024);

  it('lie strictly between 0 and 1', () => {
    for (const column of columns) for (const u of column) expect(u > 0 && u < 1).toBe(true);
  });

  it('stay a net in every dimension: each of 2^k intervals holds one of the first 2^k points', () => {
    for (const column of columns)
      for (const n of [1, 2, 16, 256, 1024])
        expect(histogram(column.subarray(0, n), n)).toEqual(new Array(n).fill(1));
  });

  it('stay one in each later stretch of 2^k points', () => {
    const points = scrambledSobol(5, 9, 3);
    const point = new Float64Array(5);
    const stretch = Array.from({ length: 5 }, () => new Float64Array(256));
    for (let i = 0; i < 256; i++) {
      points.fill(256 * 37 + i, point);
      stretch.forEach((column, d) => {
        column[i] = point[d] as number;
      });
    }
    for (const column of stretch) expect(histogram(column, 256)).toEqual(new Array(256).fill(1));
  });

  it('stay a net in the first two dimensions together: every box of area 2^-10 holds one of 1,024', () => {
    const [x, y] = columns as [Float64Array, Float64Array];
    for (let k = 0; k <= 10; k++) {
      const held = new Set(
        Array.from(x, (u, i) => Math.floor(u * 2 ** k) * 1024 + Math.floor((y[i] as number) * 2 ** (10 - k))),
      );
      expect(held.size).toBe(1024);
    }
  });

  it('spread evenly over every pair of dimensions, the first fifteen exactly', () => {
    // 64 boxes, 16 points in each. Pseudo-random points would miss that in all 8,128 pairs; of these 3 % do,
    // none of them among the first 15 dimensions, which the ranges that come first are given.
    const uneven: [number, number][] = [];
    const cells = columns.map((column) => Uint8Array.from(column, (u) => Math.floor(u * 8)));
    for (let b = 1; b < 128; b++)
      for (let a = 0; a < b; a++) {
        const held = new Uint16Array(64);
        const [x, y] = [cells[a] as Uint8Array, cells[b] as Uint8Array];
        for (let i = 0; i < 1024; i++) {
          const box = (x[i] as number) * 8 + (y[i] as number);
          held[box] = (held[box] as number) + 1;
        }
        if (held.some((count) => count !== 16)) uneven.push([a, b]);
      }
    expect(uneven.length / 8128).toBeLessThan(0.04);
    expect(uneven.filter(([, b]) => b < 15)).toEqual([]);
  });

  it('are reached by index, in any order', () => {
    const points = scrambledSobol(6, 4, 2);
    const inOrder = columnsOf(scrambledSobol(6, 4, 2), 6, 512);
    const point = new Float64Array(6);
    for (let i = 0; i < 2048; i++) {
      const index = (i * 7919) % 512;
      points.fill(index, point);
      expect([...point]).toEqual(inOrder.map((column) => column[index]));
    }
  });

  it('keep a dimension when others follow it, and the places of `out` beyond their own', () => {
    const few = columnsOf(scrambledSobol(3, 8, 1), 3, 64);
    const many = columnsOf(scrambledSobol(40, 8, 1), 40, 64);
    expect(many.slice(0, 3)).toEqual(few);
    const out = Float64Array.of(7, 7, 7, 7);
    scrambledSobol(3, 8, 1).fill(5, out);
    expect(out[3]).toBe(7);
    scrambledSobol(0, 8, 1).fill(5, out);
    expect(out[3]).toBe(7);
  });

  it('are the same for the same seed and scramble, others for another', () => {
    const first = (seed: number, scramble: number): number[] => {
      const point = new Float64Array(4);
      scrambledSobol(4, seed, scramble).fill(11, point);
      return [...point];
    };
    expect(first(3, 5)).toEqual(first(3, 5));
    const all = [first(3, 5), first(3, 6), first(4, 5), first(3 + 2 ** 32, 5)].flat();
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('the scramble', () => {
  const SCRAMBLES = 1000;
  const scrambles = Array.from({ length: SCRAMBLES }, (_, s) => s);

  it('makes each single point uniform: over 128 dimensions it fails as often as chance has it', () => {
    const indices = [0, 1, 13, 63];
    const values = indices.map(() => Array.from({ length: 128 }, () => new Float64Array(SCRAMBLES)));
    const point = new Float64Array(128);
    for (const s of scrambles) {
      const points = scrambledSobol(128, 31, s);
      indices.forEach((index, k) => {
        points.fill(index, point);
        values[k]?.forEach((column, d) => {
          column[s] = point[d] as number;
        });
      });
    }
    const distances = values.flat().map((column) => ksDistance([...column], (x) => x));
    // Of 512 right tests some 26 exceed the 5 % limit and 5 the 1 % limit; three standard errors are 15 and 7.
    expect(distances.filter((d) => d > ksLimit(SCRAMBLES, '5 %')).length).toBeLessThan(41);
    expect(distances.filter((d) => d > ksLimit(SCRAMBLES, '1 %')).length).toBeLessThan(13);
  });

  // The first 64 points of five dimensions near and far, under a thousand scrambles.
  const LOOKED = [0, 1, 17, 63, 127];
  const N = 64;
  const looked = scrambles.map((s) => {
    const columns = columnsOf(scrambledSobol(128, 31, s), 128, N);
    return LOOKED.map((d) => columns[d] as Float64Array);
  });

  it('makes two dimensions of one point independent', () => {
    for (const d of [1, 2, 3, 4]) {
      const sums = looked.map((columns) => ((columns[0]?.[5] as number) + (columns[d]?.[5] as number)) % 1);
      expect(ksDistance(sums, (x) => x)).toBeLessThan(ksLimit(SCRAMBLES));
    }
  });

  it('gives means without bias, and no more spread than Owen proved', () => {
    // In one dimension each of n intervals holds one point, uniform in it and independent of the others: the variance of
    // the mean of u is 1/(12 n^3), that of e^(3u) is 9 (e^6 - 1)/6 / (12 n^3) to the first order.
    const cases = [
      { f: (u: number) => u, mean: 0.5, slope: 1 },
      { f: (u: number) => Math.exp(3 * u), mean: (Math.exp(3) - 1) / 3, slope: (9 * (Math.exp(6) - 1)) / 6 },
    ];
    for (const { f, mean, slope } of cases)
      for (const d of LOOKED.keys()) {
        const means = looked.map((columns) => {
          const column = columns[d] as Float64Array;
          return column.reduce((sum, u) => sum + f(u), 0) / N;
        });
        const variance = slope / (12 * N ** 3);
        const spread = means.reduce((sum, m) => sum + (m - mean) ** 2, 0) / SCRAMBLES;
        const bias = means.reduce((sum, m) => sum + m - mean, 0) / SCRAMBLES;
        expect(Math.abs(bias)).toBeLessThan(3 * Math.sqrt(variance / SCRAMBLES));
        // A variance from 1,000 means is known to 4.5 %.
        expect(Math.abs(spread / variance - 1)).toBeLessThan(0.14);
      }
  });
});
