import { describe, expect, it } from 'vitest';
import { philox, streamOf, uniformAt } from '../../../src/engine/chance/counter.ts';
import { ksDistance, ksLimit } from '../../support/goodness.ts';

const words = (text: string): number[] => text.split(' ').map((word) => Number.parseInt(word, 16));

describe('the counter-based generator', () => {
  // Random123 (D. E. Shaw Research), tests/kat_vectors, the three lines "philox4x32 10": counter, key, answer.
  it.each([
    ['00000000 00000000 00000000 00000000', '00000000 00000000', '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
    ['ffffffff ffffffff ffffffff ffffffff', 'ffffffff ffffffff', '408f276d 41c83b0e a20bc7c6 6d5451fd'],
    ['243f6a88 85a308d3 13198a2e 03707344', 'a4093822 299f31d0', 'd16cfe09 94fdcceb 5001e420 24126ea1'],
  ])('gives the known answers: %s under %s', (counter, key, answer) => {
    const [c0, c1, c2, c3] = words(counter) as [number, number, number, number];
    const [k0, k1] = words(key) as [number, number];
    const out = new Uint32Array(4);
    philox(c0, c1, c2, c3, k0, k1, out);
    expect([...out]).toEqual(words(answer));
  });

  it('is Philox 4x32-10 on other counters too, in big integers', () => {
    const exact = (c: bigint[], k: bigint[]): number[] => {
      let [x0, x1, x2, x3] = c as [bigint, bigint, bigint, bigint];
      let [k0, k1] = k as [bigint, bigint];
      const low = 0xffffffffn;
      for (let round = 0; round < 10; round++) {
        const [p0, p1] = [0xd2511f53n * x0, 0xcd9e8d57n * x2];
        [x0, x1, x2, x3] = [(p1 >> 32n) ^ x1 ^ k0, p1 & low, (p0 >> 32n) ^ x3 ^ k1, p0 & low];
        k0 = (k0 + 0x9e3779b9n) & low;
        k1 = (k1 + 0xbb67ae85n) & low;
      }
      return [x0, x1, x2, x3].map(Number);
    };
    const out = new Uint32Array(4);
    const w = (i: number): number => Math.imul(i + 1, 0x9e3779b1) >>> 0;
    for (let i = 0; i < 200; i += 6) {
      const c = [w(i), w(i + 1), w(i + 2), w(i + 3)] as const;
      philox(...c, w(i + 4), w(i + 5), out);
      expect([...out]).toEqual(exact(c.map(BigInt), [w(i + 4), w(i + 5)].map(BigInt)));
    }
  });
});

describe('a uniform by its place', () => {
  it('is made of the first 52 bits of its block', () => {
    const out = new Uint32Array(4);
    philox(3, 99, 7, 0, 1234, 0, out);
    const u = uniformAt(1234, 7, 99, 3);
    expect(Math.floor(u * 2 ** 32)).toBe(out[0]);
    expect(Math.floor((u * 2 ** 32 - (out[0] as number)) * 2 ** 20)).toBe((out[1] as number) >>> 12);
  });

  it('is the same whenever it is asked for, and another at any other place', () => {
    const places: [number, number, number, number][] = [
      [1, 2, 3, 4],
      [2, 2, 3, 4],
      [1 + 2 ** 32, 2, 3, 4],
      [1, 3, 3, 4],
      [1, 2 + 2 ** 32, 3, 4],
      [1, 2, 4, 4],
      [1, 2, 3, 5],
      [4, 3, 2, 1],
    ];
    const first = places.map((place) => uniformAt(...place));
    expect(new Set(first).size).toBe(places.length);
    expect(places.toReversed().map((place) => uniformAt(...place))).toEqual(first.toReversed());
  });

  it.each([
    ['draws', (i: number) => uniformAt(5, i, streamOf('a'), 0)],
    ['seeds', (i: number) => uniformAt(i, 0, streamOf('a'), 0)],
    ['events', (i: number) => uniformAt(5, 0, streamOf('a'), i)],
    ['streams', (i: number) => uniformAt(5, 0, streamOf(`part ${i}`), 0)],
  ])('is uniform over %s, and no neighbour knows the next (Kolmogorov-Smirnov)', (_, at) => {
    const n = 5000;
    const values = Array.from({ length: n }, (__, i) => at(i));
    for (const u of values) expect(u > 0 && u < 1).toBe(true);
    expect(ksDistance(values, (x) => x)).toBeLessThan(ksLimit(n));
    // If each is independent of the one before, so is the fractional part of their sum uniform, and their product mean.
    const sums = values.slice(1).map((u, i) => (u + (values[i] as number)) % 1);
    expect(ksDistance(sums, (x) => x)).toBeLessThan(ksLimit(n));
    const lag = values.slice(1).reduce((sum, u, i) => sum + (u - 0.5) * ((values[i] as number) - 0.5), 0);
    expect(Math.abs((12 * lag) / n)).toBeLessThan(3 / Math.sqrt(n));
  });
});

describe('the number of a stream', () => {
  it('is FNV-1a with a finisher, the same on every machine', () => {
    // Frozen: another number here changes every printed figure. Checked against a separate implementation.
    expect(['', 'a', 'gearbox', 'Ölpumpe'].map(streamOf)).toEqual([
      2872998923, 2448022055, 1261166876, 3965173329,
    ]);
  });

  it('is a whole number of 32 bits', () => {
    for (let i = 0; i < 100; i++) {
      const h = streamOf(`x${i}`);
      expect(Number.isInteger(h) && h >= 0 && h < 2 ** 32).toBe(true);
    }
  });

  it('differs among ten thousand names, as 32 bits should', () => {
    const names = Array.from({ length: 10_000 }, (_, i) => `vehicle ${i % 100} component ${i}`);
    // Two of ten thousand share one of 2^32 numbers with a chance of about 1 %.
    expect(new Set(names.map(streamOf)).size).toBe(names.length);
  });
});
