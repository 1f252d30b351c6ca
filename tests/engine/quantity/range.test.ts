import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uniformAt } from '../../../src/engine/chance/counter.ts';
import { type Range, type RangeLaw, rangeLaw } from '../../../src/engine/quantity/range.ts';
import { ksDistance, ksLimit } from '../../support/goodness.ts';

const range = (low: number, likely: number, high: number, min: number | null, max: number | null): Range => ({
  low,
  likely,
  high,
  min,
  max,
});

const lawOf = (given: Range): RangeLaw => {
  const law = rangeLaw(given);
  if ('refused' in law) throw new Error(law.refused);
  return law;
};

const refusalOf = (given: Range): string | null => {
  const law = rangeLaw(given);
  return 'refused' in law ? law.refused : null;
};

const FORMS = {
  'without bounds': range(-40, 10, 90, null, null),
  'bounded below': range(300, 700, 1900, 0, null),
  'bounded above': range(2, 7, 9, null, 10),
  'bounded on both sides': range(0.1, 0.25, 0.7, 0, 1),
} as const;
const forms = Object.entries(FORMS);

/** Where the open side of a law is cut. */
const ends = ({ min, max }: Range): [number, number] => [
  max !== null && min === null ? 0.005 : 0,
  min !== null && max === null ? 0.995 : 1,
];

describe('a range', () => {
  it.each(forms)('%s passes through its three points', (_, given) => {
    const { quantile, chanceBelow } = lawOf(given);
    for (const [u, x] of [
      [0.1, given.low],
      [0.5, given.likely],
      [0.9, given.high],
    ] as const) {
      expect(quantile(u)).toBeCloseTo(x, 9);
      expect(chanceBelow(x)).toBeCloseTo(u, 12);
    }
  });

  it('has the quantile as published, a1 + a2 ln(y/(1-y)) + a3 (y - 0.5) ln(y/(1-y)) (Keelin 2016)', () => {
    // Written from the general form: three equations in a1, a2, a3 at y = 0.1, 0.5, 0.9, solved by hand.
    const { quantile } = lawOf(range(-40, 10, 90, null, null));
    const [a1, a2, a3] = [10, 130 / (2 * Math.log(9)), 30 / (0.8 * Math.log(9))];
    for (const y of [0.001, 0.02, 0.3, 0.77, 0.96, 0.9999]) {
      const odds = Math.log(y / (1 - y));
      expect(quantile(y)).toBeCloseTo(a1 + a2 * odds + a3 * (y - 0.5) * odds, 9);
    }
  });

  it('that is symmetric is the logistic law, whose mean is its middle', () => {
    const { quantile, mean } = lawOf(range(-Math.log(9), 0, Math.log(9), null, null));
    expect(mean).toBeCloseTo(0, 12);
    for (const u of [0.01, 0.2, 0.6, 0.99]) expect(quantile(u)).toBeCloseTo(Math.log(u / (1 - u)), 12);
  });

  it.each(forms)('%s rises from end to end, and the chance undoes it', (_, given) => {
    const { quantile, chanceBelow } = lawOf(given);
    const [from, to] = ends(given);
    let before = Number.NEGATIVE_INFINITY;
    for (let i = 1; i < 1000; i++) {
      const u = from + (to - from) * (i / 1000);
      const x = quantile(u);
      expect(x).toBeGreaterThan(before);
      expect(chanceBelow(x)).toBeCloseTo(u, 11);
      before = x;
    }
  });

  it.each(forms)('%s has the mean of its own quantiles, by midpoints and by drawing', (_, given) => {
    const { mean, quantile } = lawOf(given);
    const n = 200_000;
    let sum = 0;
    for (let i = 0; i < n; i++) sum += quantile((i + 0.5) / n);
    const spread = given.high - given.low;
    expect(Math.abs(sum / n - mean) / spread).toBeLessThan(4e-5);

    const draws = Float64Array.from({ length: 20_000 }, (__, i) => quantile(uniformAt(11, i, 1, 0)));
    const drawn = draws.reduce((total, x) => total + x, 0) / draws.length;
    const variance = draws.reduce((total, x) => total + (x - drawn) ** 2, 0) / (draws.length - 1);
    expect(Math.abs(drawn - mean)).toBeLessThan(3 * Math.sqrt(variance / draws.length));
  });

  it.each(forms)('%s is followed by what is drawn from it (Kolmogorov-Smirnov)', (_, given) => {
    const { quantile, chanceBelow } = lawOf(given);
    const [from, to] = ends(given);
    const drawn = Array.from({ length: 4000 }, (__, i) => uniformAt(12, i, 2, 0))
      .filter((u) => u > from && u < to)
      .map(quantile);
    const uncut = (x: number): number => (chanceBelow(x) - from) / (to - from);
    expect(ksDistance(drawn, uncut)).toBeLessThan(ksLimit(drawn.length));
    // The test can fail: drawn numbers moved by a tenth of their spread do not pass.
    const moved = drawn.map((x) => x + (given.high - given.low) / 10);
    expect(ksDistance(moved, uncut)).toBeGreaterThan(ksLimit(moved.length));
  });

  it('of three equal points is that number, with or without bounds', () => {
    for (const [min, max] of [
      [null, null],
      [0, null],
      [5, 5],
    ] as const) {
      const { mean, quantile, chanceBelow } = lawOf(range(5, 5, 5, min, max));
      expect([mean, quantile(0), quantile(0.3), quantile(1)]).toEqual([5, 5, 5, 5]);
      expect([chanceBelow(4.99), chanceBelow(5), chanceBelow(5.01)]).toEqual([0, 0, 1]);
    }
  });
});

describe('a range bounded on one side alone', () => {
  it('of 100, 400 and 6,000 would have no mean, so it is cut at its 99.5 % point', () => {
    const { mean, quantile, chanceBelow } = lawOf(range(100, 400, 6000, 0, null));
    // ln 9 (a2 + a3/2) is more than ln 9: the upper tail falls more slowly than 1/x, so the uncut mean is infinite.
    const [z10, z50, z90] = [Math.log(100), Math.log(400), Math.log(6000)];
    const a2 = (z90 - z10) / (2 * Math.log(9));
    const a3 = (z90 + z10 - 2 * z50) / (0.8 * Math.log(9));
    expect(a2 + a3 / 2).toBeGreaterThan(1);

    const odds = Math.log(0.995 / 0.005);
    const top = Math.exp(z50 + a2 * odds + a3 * 0.495 * odds);
    expect(quantile(1)).toBeCloseTo(top, 4);
    expect(quantile(0.9999)).toBe(quantile(0.995));
    expect(chanceBelow(top * 0.999)).toBeLessThan(0.995);
    expect(chanceBelow(top * 1.001)).toBe(1);
    expect(mean).toBeGreaterThan(400);
    expect(mean).toBeLessThan(top);
    // The cut law's mean, part by part: the mass below the cut, and 0.5 % on the point.
    const n = 200_000;
    let below = 0;
    for (let i = 0; i < n; i++) below += quantile(0.995 * ((i + 0.5) / n));
    expect(Math.abs((0.995 * below) / n + 0.005 * top - mean) / mean).toBeLessThan(1e-5);
  });

  it('is not cut where its other bound is told', () => {
    const { quantile } = lawOf(range(100, 400, 6000, 0, 50_000));
    expect(quantile(0.9999)).toBeGreaterThan(quantile(0.995));
    expect(quantile(1)).toBe(50_000);
  });

  it('above is the mirror of one bounded below', () => {
    const below = lawOf(range(100, 400, 6000, 0, null));
    const above = lawOf(range(-6000, -400, -100, null, 0));
    expect(above.mean).toBeCloseTo(-below.mean, 6);
    for (const u of [0.001, 0.1, 0.4, 0.9, 0.999])
      expect(above.quantile(u)).toBeCloseTo(-below.quantile(1 - u), 6);
    expect(above.quantile(0)).toBe(above.quantile(0.005));
  });
});

describe('what is no range', () => {
  it('is refused where the transformed quantile would fall somewhere: |a3|/a2 from 1.66711 on', () => {
    // The quantile rises everywhere when a2 + a3 g(y) > 0, g(y) = y - 0.5 + y (1 - y) ln(y/(1-y)); g is at most 0.59984.
    let steepest = 0;
    for (let i = 1; i < 100_000; i++) {
      const y = i / 100_000;
      steepest = Math.max(steepest, y - 0.5 + y * (1 - y) * Math.log(y / (1 - y)));
    }
    expect(1 / steepest).toBeCloseTo(1.66711, 5);

    // a3/a2 is 2.5 times (low + high - 2 likely)/(high - low); with 0 and 1 outside it is 1.66711 at 0.166578.
    expect(refusalOf(range(0, 0.16658, 1, null, null))).toBeNull();
    expect(refusalOf(range(0, 0.16657, 1, null, null))).toMatch(/too close to one end/);
    expect(refusalOf(range(0, 1 - 0.16658, 1, null, null))).toBeNull();
    expect(refusalOf(range(0, 1 - 0.16657, 1, null, null))).toMatch(/between 0.167 and 0.833/);
  });

  it('is judged on the transformed points: bounds can make three points a range or none', () => {
    // 1, 10 and 100 stand unevenly, their logarithms evenly; with 1, 50 and 100 it is the other way about.
    expect(refusalOf(range(1, 10, 100, null, null))).toMatch(/too close to one end/);
    expect(refusalOf(range(1, 10, 100, 0, null))).toBeNull();
    expect(refusalOf(range(1, 90, 100, null, null))).not.toBeNull();
    expect(refusalOf(range(1, 50, 100, null, null))).toBeNull();
    expect(refusalOf(range(1, 50, 100, 0, null))).toMatch(/between 2.2 and 46.4/);
    expect(refusalOf(range(1, 46, 100, 0, null))).toBeNull();
  });

  it.each([
    ['points out of order', range(3, 2, 4, null, null), /rise/],
    ['a point that is no number', range(1, Number.NaN, 4, null, null), /rise/],
    ['a point without end', range(1, 2, Number.POSITIVE_INFINITY, null, null), /rise/],
    ['two equal points', range(1, 1, 4, null, null), /two of the three/],
    ['a point on its lower bound', range(0, 1, 2, 0, null), /above 0/],
    ['a point beyond its upper bound', range(0, 1, 2, null, 1.5), /below 1.5/],
    ['a constant below its bound', range(-1, -1, -1, 0, null), /not lie below 0/],
    ['a constant above its bound', range(2, 2, 2, 0, 1), /not lie above 1/],
  ])('is refused: %s', (_, given, reason) => {
    expect(refusalOf(given)).toMatch(reason);
  });

  it('is told which likely values would do, and they do', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.double({ min: 1.05, max: 1000, noNaN: true }),
        fc.boolean(),
        fc.boolean(),
        (low, times, floored, capped) => {
          const high = low * times;
          const [min, max] = [floored ? 0 : null, capped ? high * 1.5 : null];
          const told = refusalOf(range(low, low + (high - low) * 1e-9, high, min, max));
          const [, least, most] = /between (\S+) and (\S+)$/.exec(told ?? '') ?? [];
          for (const likely of [Number(least), Number(most)])
            expect(refusalOf(range(low, likely, high, min, max))).toBeNull();
        },
      ),
      { numRuns: 300, seed: 5 },
    );
  });
});
