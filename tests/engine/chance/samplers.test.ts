import jStat from 'jstat';
import { describe, expect, it } from 'vitest';
import { streamOf, uniformAt } from '../../../src/engine/chance/counter.ts';
import { scrambledSobol } from '../../../src/engine/chance/sobol.ts';
import {
  cumulativeHazard,
  failsWithin,
  survival,
  type WeibullLife,
} from '../../../src/engine/chance/weibull.ts';
import { ksDistance, ksLimit } from '../../support/goodness.ts';

const N = 4000;

/** What a draw's exponential is made of: from the counter, and from a dimension of the points. */
const SOURCES: Readonly<Record<string, () => number[]>> = {
  'the counter': () => Array.from({ length: N }, (_, i) => uniformAt(6, i, streamOf('wear'), 0)),
  'the first dimension': () => dimension(0),
  'the sixty-first dimension': () => dimension(60),
  'the last dimension': () => dimension(127),
};

const dimension = (d: number): number[] => {
  const points = scrambledSobol(128, 6, 0);
  const point = new Float64Array(128);
  return Array.from({ length: N }, (_, i) => {
    points.fill(i, point);
    return point[d] as number;
  });
};

const sources = Object.entries(SOURCES);
const exponential = (u: number): number => -Math.log1p(-u);

/** The age at the next failure of a part of age `run`: u = scale ((run/scale)^shape + E)^(1/shape). */
const nextFailure = ({ scale, shape }: WeibullLife, run: number, e: number): number =>
  scale * (cumulativeHazard({ scale, shape }, run) + e) ** (1 / shape);

describe('the limits of the Kolmogorov-Smirnov test', () => {
  it('are the published ones within half a per cent from ten values on', () => {
    // Massey, Journal of the American Statistical Association 46(253), 1951; Miller, ibid. 51(273), 1956 (from memory).
    const published = [
      [10, 0.40925, 0.48893],
      [20, 0.29408, 0.35241],
      [30, 0.2417, 0.28987],
    ] as const;
    for (const [n, five, one] of published) {
      expect(Math.abs(ksLimit(n, '5 %') / five - 1)).toBeLessThan(0.005);
      expect(Math.abs(ksLimit(n, '1 %') / one - 1)).toBeLessThan(0.005);
    }
  });

  it('measure the distance of a sample done by hand', () => {
    // Three of four values lie at or below 0.3; below 0.7 there is none of two.
    expect(ksDistance([0.9, 0.1, 0.2, 0.3], (x) => x)).toBeCloseTo(0.75 - 0.3, 12);
    expect(ksDistance([0.7, 0.8], (x) => x)).toBeCloseTo(0.7, 12);
  });
});

describe.each(sources)('drawn from %s (Kolmogorov-Smirnov)', (_, source) => {
  const uniforms = source();

  it('uniforms are uniform', () => {
    expect(ksDistance(uniforms, (x) => x)).toBeLessThan(ksLimit(N));
    expect(ksDistance(uniforms, (x) => x ** 1.1)).toBeGreaterThan(ksLimit(N));
  });

  it('exponentials are exponential, as the library has it', () => {
    const drawn = uniforms.map(exponential);
    expect(ksDistance(drawn, (x) => jStat.exponential.cdf(x, 1))).toBeLessThan(ksLimit(N));
  });

  it.each([
    [{ scale: 100, shape: 3 }, 0],
    [{ scale: 100, shape: 3 }, 120],
    [{ scale: 70, shape: 6 }, 66],
    [{ scale: 50, shape: 1 }, 30],
    [{ scale: 90_000, shape: 0.8 }, 40_000],
  ])('lives by inversion follow what is left of %o after %d', (life, run) => {
    const drawn = uniforms.map((u) => nextFailure(life, run, exponential(u)));
    for (const age of drawn) expect(age).toBeGreaterThanOrEqual(run);
    expect(ksDistance(drawn, (age) => failsWithin(life, run, age - run))).toBeLessThan(ksLimit(N));
    const fresh = jStat.weibull.cdf(run, life.scale, life.shape);
    const library = (age: number): number =>
      (jStat.weibull.cdf(age, life.scale, life.shape) - fresh) / (1 - fresh);
    expect(ksDistance(drawn, library)).toBeLessThan(ksLimit(N));
  });
});

describe('the Weibull life, beside a general statistics library', () => {
  it.each([[{ scale: 100, shape: 3 }], [{ scale: 70, shape: 6 }], [{ scale: 90_000, shape: 0.8 }]])(
    'has the same chances: %o',
    (life) => {
      for (let p = 0.01; p < 1; p += 0.01) {
        const age = jStat.weibull.inv(p, life.scale, life.shape);
        expect(1 - survival(life, age)).toBeCloseTo(p, 10);
        expect(failsWithin(life, 0, age)).toBeCloseTo(jStat.weibull.cdf(age, life.scale, life.shape), 12);
        expect(nextFailure(life, 0, exponential(p)) / age).toBeCloseTo(1, 10);
      }
    },
  );

  it('of shape 1 is the exponential law', () => {
    for (const x of [0.1, 5, 40, 300])
      expect(failsWithin({ scale: 40, shape: 1 }, 77, x)).toBeCloseTo(jStat.exponential.cdf(x, 1 / 40), 12);
  });
});
