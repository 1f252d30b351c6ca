import jStat from 'jstat';
import { describe, expect, it } from 'vitest';
import { normalChance, normalQuantile } from '../../../src/engine/quantity/normal.ts';

/** u, z to the digits a double holds, summed as a series with 100 digits. */
const EXACT: readonly (readonly [number, number])[] = [
  [1.0494515075362608e-21, -9.5],
  [2.0838581586720695e-13, -7.25],
  [1.8989562465887718e-8, -5.5],
  [2.866515718791939e-7, -5.0],
  [0.0013498980316300946, -3.0],
  [0.06680720126885807, -1.5],
  [0.24588385038026145, -0.6875],
  [0.4012936743170763, -0.25],
  [0.5497382248301129, 0.125],
  [0.7441683586520661, 0.65625],
  [0.8413447460685429, 1.0],
  [0.9937903346742238, 2.5],
];

describe('the normal law', () => {
  it.each(EXACT)('has %d below %d (a series with 100 digits)', (u, z) => {
    expect(Math.abs(normalQuantile(u) / z - 1)).toBeLessThan(2e-15);
    expect(Math.abs(normalChance(z) / u - 1)).toBeLessThan(3e-14);
  });

  it('agrees with a general statistics library', () => {
    for (let z = -5; z <= 5; z += 0.03125) {
      expect(Math.abs(normalChance(z) - jStat.normal.cdf(z, 0, 1))).toBeLessThan(1e-13);
      const u = normalChance(z);
      expect(Math.abs(normalQuantile(u) - jStat.normal.inv(u, 0, 1))).toBeLessThan(1e-7);
    }
  });

  it('has the published values of a normal with mean 5 and spread 2', () => {
    // MatthewReid854/reliability, tests/test_Distributions.py: 20 % point, 70 % survival, F(0).
    expect(5 + 2 * normalQuantile(0.2)).toBeCloseTo(3.3167575328541714, 12);
    expect(5 + 2 * normalQuantile(0.3)).toBeCloseTo(3.9511989745839187, 12);
    expect(normalChance(-2.5)).toBeCloseTo(0.006209665325776132, 15);
  });

  it('is the same from both ends, and each function undoes the other', () => {
    for (let i = 1; i < 4096; i++) {
      const u = i / 4096;
      expect(normalQuantile(u) + normalQuantile(1 - u)).toBe(0);
      expect(Math.abs(normalChance(normalQuantile(u)) - u)).toBeLessThan(4e-16);
    }
  });

  it('rises without a break where one approximation hands over to the next', () => {
    for (const u of [0.075, 0.925, Math.exp(-25)]) {
      const [a, b] = [normalQuantile(u * (1 - 1e-12)), normalQuantile(u * (1 + 1e-12))];
      expect(b).toBeGreaterThan(a);
      expect(b - a).toBeLessThan(1e-10);
    }
    for (const z of [0.67448975, -0.67448975, -Math.sqrt(32)]) {
      const [a, b] = [normalChance(z - 1e-9), normalChance(z + 1e-9)];
      expect(b).toBeGreaterThan(a);
      expect((b - a) / (2e-9 * jStat.normal.pdf(z, 0, 1))).toBeCloseTo(1, 1);
    }
  });

  it('says what lies at and beyond the ends', () => {
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([
      Number.NEGATIVE_INFINITY,
      0,
      Number.POSITIVE_INFINITY,
    ]);
    expect([normalQuantile(-0.1), normalQuantile(1.1), normalQuantile(Number.NaN)]).toEqual([
      Number.NaN,
      Number.NaN,
      Number.NaN,
    ]);
    expect([-50, 0, 50, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY].map(normalChance)).toEqual([
      0, 0.5, 1, 0, 1,
    ]);
    expect(normalChance(Number.NaN)).toBeNaN();
  });
});
