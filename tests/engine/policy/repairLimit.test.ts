import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chancesByMonth } from '../../../src/engine/policy/clock.ts';
import { type Course, keepingFrom, weightsOf } from '../../../src/engine/policy/course.ts';
import { outlookOf } from '../../../src/engine/policy/outlook.ts';
import { costAhead, NEVER, type Part, stateOf } from '../../../src/engine/policy/part.ts';
import { repairLimitRule, UNNAMED } from '../../../src/engine/policy/repairLimit.ts';

const H = 36;
const NO_ENDS = new Float64Array(H + 1);

const partOf = (scale: number, shape: number, run: number, bill: number): Part => {
  const life = { scale, shape };
  const law = {
    repairIs: 'renewal',
    installed: chancesByMonth(life, run, 1, H),
    fresh: chancesByMonth(life, 0, 1, H),
    patched: null,
  } as const;
  return {
    repairIs: 'renewal',
    outlook: outlookOf(law, H),
    restarts: [],
    costs: new Array(H + 1).fill(bill),
  };
};

const courseOf = (
  rate: number,
  running: readonly number[],
  stopping: readonly number[],
  broken: readonly number[],
  ends = NO_ENDS,
): Course => ({
  until: H,
  weights: weightsOf(
    Array.from({ length: H + 1 }, (_, m) => (1 + rate) ** -m),
    ends,
  ),
  running: Float64Array.from(running),
  ifKeptOn: new Float64Array(H + 1),
  ends,
  stopping: Float64Array.from(stopping),
  stoppingBroken: Float64Array.from(broken),
  ended: Float64Array.from(broken),
});

const byMonth = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: H + 1, maxLength: H + 1 });

const anything = fc.record({
  rate: fc.double({ min: 0, max: 0.02, noNaN: true }),
  running: byMonth(0, 500),
  stopping: byMonth(-2000, 9000),
  // What a broken one brings less, and a hurry costs more.
  worse: byMonth(0, 3000),
  parts: fc.array(
    fc.record({
      scale: fc.double({ min: 5, max: 120, noNaN: true }),
      shape: fc.double({ min: 0.7, max: 6, noNaN: true }),
      run: fc.double({ min: 0, max: 100, noNaN: true }),
      bill: fc.double({ min: 0, max: 3000, noNaN: true }),
    }),
    { maxLength: 3 },
  ),
  month: fc.integer({ min: 0, max: H - 1 }),
  mended: fc.array(fc.integer({ min: -1, max: H }), { minLength: 3, maxLength: 3 }),
});

type Anything = typeof anything extends fc.Arbitrary<infer T> ? T : never;

const built = (it: Anything, fall = 0) => {
  const parts = it.parts.map(({ scale, shape, run, bill }) => partOf(scale, shape, run, bill));
  const stopping = it.stopping.map((cost) => cost - fall);
  const course = courseOf(
    it.rate,
    it.running,
    stopping,
    stopping.map((cost, m) => cost + (it.worse[m] as number)),
  );
  const mended = Int16Array.from(parts, (_, j) => Math.min(it.month, it.mended[j] as number));
  return { parts, course, mended, rule: repairLimitRule(course, parts) };
};

describe('the rule of the repair limit', () => {
  it('is what K says, looked up or added up', () => {
    fc.assert(
      fc.property(anything, (any) => {
        const { parts, course, mended, rule } = built(any);
        const { month } = any;
        const K = (renewing: number): Float64Array =>
          parts.reduce(
            (sum, part, j) => {
              const state = stateOf(part, month, j === renewing ? month : (mended[j] as number));
              const row = costAhead(part, month, state, course.weights, H);
              return sum.map((cost, i) => cost + (row[i] as number));
            },
            keepingFrom(course, month),
          );
        for (const j of [UNNAMED, ...parts.keys()]) {
          const expected = Math.max(0, (course.stoppingBroken[month] as number) - Math.min(...K(j)));
          expect(rule.limit(month, j, mended)).toBeCloseTo(expected, 6);
          for (const more of [-1, -0.01, 0.01, 1])
            expect(rule.pays(expected + more, month, j, mended), `${more} above the limit`).toBe(more < 0);
        }
        const later = Math.min(...K(UNNAMED).subarray(1));
        const now = course.stopping[month] as number;
        if (Math.abs(later - now) > 1e-6) expect(rule.walksAt(month, mended)).toBe(now <= later);
      }),
      { numRuns: 200 },
    );
  });

  it('never has a higher limit where replacing is cheaper by as much in every month', () => {
    fc.assert(
      fc.property(anything, fc.double({ min: 0, max: 4000, noNaN: true }), (any, fall) => {
        const before = built(any);
        const after = built(any, fall);
        for (const j of [UNNAMED, ...before.parts.keys()])
          expect(after.rule.limit(any.month, j, after.mended)).toBeLessThanOrEqual(
            before.rule.limit(any.month, j, before.mended) + 1e-6,
          );
      }),
      { numRuns: 200 },
    );
  });

  it('never walks away in the last month, where there is nothing to replace it for', () => {
    const course = courseOf(
      0,
      new Array(H + 1).fill(100),
      new Array(H + 1).fill(0),
      new Array(H + 1).fill(0),
    );
    expect(repairLimitRule(course, []).walksAt(H, new Int16Array(0))).toBe(false);
  });

  it('counts what may end it: a sure end leaves nothing worth paying for', () => {
    const ends = new Float64Array(H + 1);
    ends[12] = 1;
    const stopping = new Array(H + 1).fill(3000);
    const course = courseOf(
      0,
      new Array(H + 1).fill(10),
      stopping,
      stopping.map((x) => x + 500),
      ends,
    );
    const rule = repairLimitRule(course, []);
    const nothing = new Int16Array(0);
    // Eleven months at 10, then replaced in month 11 in peace, or in month 12 broken: 3,000 + 110 or 3,500 + 120.
    expect(keepingFrom(course, 0)[11]).toBeCloseTo(3110, 9);
    expect(keepingFrom(course, 0)[12]).toBeCloseTo(3620, 9);
    expect(keepingFrom(course, 0)[H]).toBeCloseTo(3620, 9);
    expect(rule.limit(12, UNNAMED, nothing)).toBe(0);
    expect(rule.walksAt(12, nothing)).toBe(true);
  });

  it('knows a repair by its month: one just mended is worth more than one mended long ago', () => {
    const stopping = [...new Array(H).fill(4000), 0];
    const course = courseOf(0, new Array(H + 1).fill(50), stopping, new Array(H + 1).fill(5000));
    const rule = repairLimitRule(course, [partOf(30, 5, 0, 2000), partOf(1000, 1, 0, 0)]);
    const mendedIn = (month: number): number => rule.limit(24, 1, Int16Array.of(month, NEVER));
    expect(mendedIn(24)).toBeGreaterThan(mendedIn(2) + 100);
  });
});
