import jStat from 'jstat';
import { describe, expect, it } from 'vitest';
import { scrambledSobol } from '../../../src/engine/chance/sobol.ts';
import { copulaOf, type RankCorrelation } from '../../../src/engine/quantity/rankCorrelation.ts';
import { ksDistance, ksLimit } from '../../support/goodness.ts';

const N = 4096;

/** Points of `size` dimensions after the copula, by dimension. */
const joined = (size: number, entries: readonly RankCorrelation[]): number[][] => {
  const copula = copulaOf(size, entries);
  if ('refused' in copula) throw new Error('refused');
  const points = scrambledSobol(size, 20, 0);
  const u = new Float64Array(size + 1);
  const columns: number[][] = Array.from({ length: size }, () => []);
  for (let i = 0; i < N; i++) {
    points.fill(i, u);
    copula.apply(u);
    columns.forEach((column, d) => {
      column.push(u[d] as number);
    });
  }
  return columns;
};

const column = (columns: number[][], d: number): number[] => columns[d] as number[];

describe('rank-correlated uniforms', () => {
  it.each([-0.9, -0.5, 0, 0.2, 0.7, 0.98])('have the rank correlation asked for: %d', (rank) => {
    const columns = joined(2, [{ a: 0, b: 1, rank }]);
    // One standard error of 4,096 independent pairs is 0.016; evenly spread points do better.
    expect(Math.abs(jStat.spearmancoeff(column(columns, 0), column(columns, 1)) - rank)).toBeLessThan(0.016);
  });

  it('stay uniform, each of them (Kolmogorov-Smirnov)', () => {
    const columns = joined(3, [
      { a: 0, b: 1, rank: 0.6 },
      { a: 2, b: 1, rank: -0.4 },
    ]);
    for (const one of columns) expect(ksDistance(one, (x) => x)).toBeLessThan(ksLimit(N));
  });

  it('three at once have their three correlations', () => {
    const entries = [
      { a: 0, b: 1, rank: 0.6 },
      { a: 1, b: 2, rank: -0.4 },
      { a: 2, b: 0, rank: 0.3 },
    ];
    const columns = joined(3, entries);
    for (const { a, b, rank } of entries)
      expect(Math.abs(jStat.spearmancoeff(column(columns, a), column(columns, b)) - rank)).toBeLessThan(
        0.016,
      );
  });

  it('leave to the last bit what nothing is said of, and what lies beyond the set', () => {
    const copula = copulaOf(3, [{ a: 2, b: 0, rank: 0.8 }]);
    if ('refused' in copula) throw new Error('refused');
    const u = Float64Array.of(0.123, 0.456, 0.789, 0.321);
    copula.apply(u);
    expect([u[0], u[1], u[3]]).toEqual([0.123, 0.456, 0.321]);
    expect(u[2]).not.toBe(0.789);
  });

  it('do not depend on the order of the entries, nor of the two in a pair', () => {
    const entries = [
      { a: 0, b: 1, rank: 0.6 },
      { a: 1, b: 2, rank: -0.4 },
      { a: 3, b: 0, rank: 0.3 },
    ];
    const turned = entries.map(({ a, b, rank }) => ({ a: b, b: a, rank })).toReversed();
    expect(joined(4, turned)).toEqual(joined(4, entries));
  });

  it('stay strictly between 0 and 1, however far out', () => {
    const copula = copulaOf(3, [
      { a: 0, b: 2, rank: 0.68 },
      { a: 1, b: 2, rank: 0.68 },
    ]);
    if ('refused' in copula) throw new Error('refused');
    for (const end of [1e-300, 1 - 2 ** -53]) {
      const u = Float64Array.of(end, end, end);
      copula.apply(u);
      for (const x of u) expect(x > 0 && x < 1).toBe(true);
    }
  });
});

describe('correlations that cannot be', () => {
  const refusedOf = (size: number, entries: RankCorrelation[]): readonly RankCorrelation[] => {
    const copula = copulaOf(size, entries);
    return 'refused' in copula ? copula.refused : [];
  };

  it('are refused with all entries of the clash and no other', () => {
    const clash = [
      { a: 1, b: 2, rank: 0.9 },
      { a: 2, b: 4, rank: 0.9 },
      { a: 4, b: 1, rank: -0.9 },
    ];
    const innocent = [
      { a: 0, b: 1, rank: 0.1 },
      { a: 3, b: 5, rank: -0.95 },
    ];
    expect(refusedOf(6, innocent)).toEqual([]);
    expect(new Set(refusedOf(6, [...innocent, ...clash]))).toEqual(new Set(clash));
    expect(new Set(refusedOf(6, [...clash, ...innocent].toReversed()))).toEqual(new Set(clash));
  });

  it('are judged after rho = 2 sin(pi rank/6), at the boundary of three equal correlations', () => {
    // Three equal correlations are positive definite above -1/2: rank -6/pi asin(1/4) = -0.482584.
    const three = (rank: number): RankCorrelation[] => [
      { a: 0, b: 1, rank },
      { a: 0, b: 2, rank },
      { a: 1, b: 2, rank },
    ];
    expect(refusedOf(3, three(-0.4825))).toEqual([]);
    expect(refusedOf(3, three(-0.4826))).toHaveLength(3);
  });

  it.each([
    ['a correlation of 1', { a: 0, b: 1, rank: 1 }],
    ['a correlation of -1', { a: 0, b: 1, rank: -1 }],
    ['a correlation above 1', { a: 0, b: 1, rank: 1.2 }],
    ['a correlation that is no number', { a: 0, b: 1, rank: Number.NaN }],
    ['a quantity with itself', { a: 1, b: 1, rank: 0.5 }],
    ['a quantity there is not', { a: 0, b: 7, rank: 0.5 }],
  ])('are refused: %s', (_, entry) => {
    expect(refusedOf(3, [{ a: 1, b: 2, rank: 0.1 }, entry])).toEqual([entry]);
  });

  it('are refused where a pair is said twice', () => {
    const twice = [
      { a: 0, b: 1, rank: 0.5 },
      { a: 1, b: 0, rank: 0.5 },
    ];
    expect(refusedOf(3, [...twice, { a: 1, b: 2, rank: 0.2 }])).toEqual(twice);
  });
});
