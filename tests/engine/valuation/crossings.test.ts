import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossings } from '../../../src/engine/valuation/crossings.ts';
import { integerFlips } from '../../../src/engine/valuation/integerFlips.ts';
import { brent, type Fn } from '../../../src/engine/valuation/roots.ts';

const counted = (f: Fn): { f: Fn; calls: () => number } => {
  let calls = 0;
  return {
    f: (x) => {
      calls++;
      return f(x);
    },
    calls: () => calls,
  };
};

describe('brent', () => {
  it('finds roots of smooth, flat and steep functions to the tolerance, in few steps', () => {
    const cases: [Fn, number, number, number][] = [
      [(x) => x ** 2 - 2, 0, 2, Math.SQRT2],
      [(x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
      [(x) => (x - 0.3) ** 9, 0, 1, 0.3],
      [(x) => Math.exp(50 * x) - 1e6, 0, 1, Math.log(1e6) / 50],
    ];
    for (const [f, a, b, root] of cases) {
      const { f: g, calls } = counted(f);
      expect(Math.abs(brent(g, a, b, 1e-12) - root)).toBeLessThanOrEqual(1e-10);
      expect(calls()).toBeLessThan(140);
    }
    const smooth = counted((x) => x ** 3 - x - 2);
    expect(brent(smooth.f, 1, 2, 1e-12)).toBeCloseTo(1.5213797068045676, 11);
    expect(smooth.calls()).toBeLessThan(15);
  });
  it('refuses two points on one side', () => {
    expect(() => brent((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RangeError);
  });
});

describe('crossings', () => {
  it('solves a straight line without a scan, to the last digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9000, max: 9000, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (root, slope) => {
          const { f, calls } = counted((x) => slope * (x - root));
          const found = crossings(f, -10_000, 10_000);
          expect(found).toMatchObject({ status: 'one', signAtLow: -1, signAtHigh: 1 });
          expect(found.roots[0]?.kind).toBe('root');
          expect(found.roots[0]?.at).toBeCloseTo(root, 6);
          expect(calls()).toBe(9);
        },
      ),
    );
  });
  it('says never, and on which side', () => {
    expect(crossings(() => 4000, 0, 1)).toEqual({ status: 'never', roots: [], signAtLow: 1, signAtHigh: 1 });
    expect(crossings((x) => -x * x - 5, -1, 1).status).toBe('never');
  });
  it('says always when nothing makes a cent of difference, noise and all', () => {
    expect(crossings(() => 0, 0, 1).status).toBe('always');
    expect(crossings((x) => 1e-9 * Math.sin(1e6 * x), 0, 1).status).toBe('always');
  });
  it('gives every root of a curve', () => {
    const found = crossings((x) => 100 * Math.sin(x), 1, 13);
    expect(found.status).toBe('several');
    expect(found.roots.map(({ at, kind }) => [kind, at.toFixed(9)])).toEqual(
      [1, 2, 3, 4].map((k) => ['root', (k * Math.PI).toFixed(9)]),
    );
  });
  it('finds two roots that lie between neighbouring scan points', () => {
    const found = crossings((x) => 1e6 * (x - 5.001) * (x - 5.009), 0, 10);
    expect(found.roots.map(({ at }) => at.toFixed(6))).toEqual(['5.001000', '5.009000']);
  });
  it('tells a jump from a root: a cliff at 12,000 a year is not a place where both cost the same', () => {
    const cliff: Fn = (x) => (x < 12_000 ? -350 - 0.01 * x : 900);
    const found = crossings(cliff, 0, 30_000);
    expect(found.roots.map(({ kind }) => kind)).toEqual(['jump']);
    expect(found.roots[0]?.at).toBeCloseTo(12_000, 3);
  });
  it('takes a step of cents for a root', () => {
    expect(crossings((x) => (x - 3.3) ** 3 + (x < 3.3 ? -0.2 : 0.2), 0, 10).roots[0]?.kind).toBe('root');
  });
  it('sees f touch zero and turn back, smoothly or in a corner', () => {
    for (const f of [(x: number) => 80 * (x - 4.2) ** 2, (x: number) => -250 * Math.abs(x - 4.2)]) {
      const found = crossings(f, 0, 10);
      expect(found.roots.map(({ kind }) => kind)).toEqual(['touch']);
      expect(found.roots[0]?.at).toBeCloseTo(4.2, 4);
    }
    expect(crossings((x) => 80 * (x - 4.2) ** 2 + 0.5, 0, 10).status).toBe('never');
  });
  it('says from where to where f stays at zero', () => {
    const found = crossings((x) => Math.max(0, x - 6), 0, 10, 11);
    expect(found).toEqual({
      status: 'one',
      roots: [{ at: 0, kind: 'touch', until: 6 }],
      signAtLow: 0,
      signAtHigh: 1,
    });
    const through = crossings((x) => (x < 4 ? x - 4 : Math.max(0, x - 6)), 0, 10, 11);
    expect(through.roots).toEqual([{ at: 4, kind: 'root', until: 6 }]);
  });
  it('counts a zero at the end of the range as a touch, on either path', () => {
    expect(crossings((x) => 40 * x, 0, 1).roots).toEqual([{ at: 0, kind: 'touch' }]);
    expect(crossings((x) => 40 * (x - 1) * (x + 1), 0, 1).roots).toEqual([{ at: 1, kind: 'touch' }]);
  });
  it('does not change when all money is multiplied, the unit with it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), (k) => {
        const f: Fn = (x) => 30 * (x - 2) * (x - 7) * (x - 7.3);
        const found = crossings((x) => k * f(x), 0, 10, 200, { unit: k });
        expect(found.roots.map(({ at }) => at.toFixed(6))).toEqual(['2.000000', '7.000000', '7.300000']);
      }),
    );
  });
  it('refuses a range without length, and a function that is not there', () => {
    expect(() => crossings((x) => x, 1, 1)).toThrow(RangeError);
    expect(() => crossings((x) => 1 / (x - 0.5), 0, 1, 3)).toThrow(RangeError);
  });
});

describe('integerFlips', () => {
  const values = Array.from({ length: 61 }, (_, k) => k);
  it('flips between 41 and 42', () => {
    expect(integerFlips((n) => 41.5 - n, values)).toEqual({
      status: 'one',
      flips: [{ from: 41, to: 42 }],
      ties: [],
      signAtLow: 1,
      signAtHigh: -1,
    });
  });
  it('flips across a tie, and back', () => {
    expect(integerFlips((n) => (n - 10) * (n - 30), values)).toMatchObject({
      status: 'several',
      flips: [
        { from: 9, to: 11 },
        { from: 29, to: 31 },
      ],
      ties: [10, 30],
    });
  });
  it('never flips where it only touches, and is always a tie where nothing matters', () => {
    expect(integerFlips((n) => (n - 10) ** 2, values)).toMatchObject({ status: 'never', ties: [10] });
    expect(integerFlips(() => 0, values).status).toBe('always');
  });
});
