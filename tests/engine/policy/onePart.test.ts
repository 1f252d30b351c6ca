/**
 * One part with a whole-month clock, solved exactly over month and age. Constructed, no publication: the figures of every
 * rule were computed beforehand by dynamic programming.
 */
import { describe, expect, it } from 'vitest';
import { chancesByMonth } from '../../../src/engine/policy/clock.ts';
import { type Course, weightsOf } from '../../../src/engine/policy/course.ts';
import { outlookOf } from '../../../src/engine/policy/outlook.ts';
import type { Part } from '../../../src/engine/policy/part.ts';
import { repairLimitRule } from '../../../src/engine/policy/repairLimit.ts';
import { timeOnlyCosts } from '../../../src/engine/policy/timeOnly.ts';
import { discountFactor, effective } from '../../../src/engine/quantity/rate.ts';

const H = 60;
const AGE = 66;
const BILL = 2500;
const life = { scale: 70, shape: 6 };
const sell = { running: 3000, broken: 1500 };
const monthly = { old: 300, fresh: 280 };
const months = Array.from({ length: H + 1 }, (_, m) => m);
const discount = months.map((m) => discountFactor(effective(0.05), m));
const v = discount[1] as number;

const installed = chancesByMonth(life, AGE, 1, H);
const fresh = chancesByMonth(life, 0, 1, H);
const part: Part = {
  repairIs: 'renewal',
  outlook: outlookOf({ repairIs: 'renewal', installed, fresh, patched: null }, H),
  restarts: [],
  costs: new Array(H + 1).fill(BILL),
};

const stopping = (price: number, sale: number): Float64Array =>
  Float64Array.from(months, (t) => {
    if (t === H) return -sale;
    let cost = price - sale;
    for (let m = t + 1; m <= H; m++)
      cost += (monthly.fresh * (discount[m] as number)) / (discount[t] as number);
    return cost - (price * 0.85 ** ((H - t) / 12) * (discount[H] as number)) / (discount[t] as number);
  });

const courseOf = (price: number): Course => ({
  until: H,
  weights: weightsOf(discount, []),
  running: new Float64Array(H + 1).fill(monthly.old),
  ifKeptOn: new Float64Array(H + 1),
  ends: new Float64Array(H + 1),
  ended: new Float64Array(H + 1),
  stopping: stopping(price, sell.running),
  stoppingBroken: stopping(price, sell.broken),
});

/** What a rule costs from today, whatever it decides by month and clock: exact over both. -1: the part that was in. */
const costOf = (
  course: Course,
  walksAt: (t: number, renewed: number, on: () => number) => boolean,
  pays: (t: number, on: number) => boolean,
): number => {
  const known = new Map<string, number>();
  const from = (t: number, renewed: number): number => {
    const stop = course.stopping[t] as number;
    if (t === H) return stop;
    const key = `${t} ${renewed}`;
    const had = known.get(key);
    if (had !== undefined) return had;
    const on = (): number => {
      const q = (renewed < 0 ? installed[t] : fresh[t - renewed]) as number;
      const mended = from(t + 1, t + 1);
      const failed = pays(t + 1, mended) ? BILL + mended : (course.stoppingBroken[t + 1] as number);
      return v * (monthly.old + q * failed + (1 - q) * from(t + 1, renewed));
    };
    const cost = walksAt(t, renewed, on) ? stop : on();
    known.set(key, cost);
    return cost;
  };
  return from(0, -1);
};

const figuresOf = (price: number) => {
  const course = courseOf(price);
  const fixed = (k: number): number =>
    costOf(
      course,
      (t) => t === k,
      () => true,
    );
  const rule = repairLimitRule(course, [part]);
  const failures = part.outlook.installed[0] as Float64Array;
  const J = timeOnlyCosts({
    last: H,
    discount: v,
    running: () => monthly.old,
    meanUpTo: (m, limit) => (failures[m - 1] as number) * Math.min(BILL, limit),
    replacing: (t) => course.stopping[t] as number,
    replacingBroken: (t) => course.stoppingBroken[t] as number,
  });
  return {
    keep: fixed(H),
    replaceNow: fixed(0),
    bestFixedDate: Math.min(...months.map(fixed)),
    timeOnlyRulePromises: J[0] as number,
    timeOnlyRuleCosts: costOf(
      course,
      (t) => (course.stopping[t] as number) <= (J[t] as number),
      (t) => BILL + (J[t] as number) <= (course.stoppingBroken[t] as number),
    ),
    replannedRule: costOf(
      course,
      (t, renewed) => rule.walksAt(t, Int16Array.of(renewed)),
      (t) => BILL <= rule.limit(t, 0, Int16Array.of(-1)),
    ),
    optimum: costOf(
      course,
      (t, _, on) => (course.stopping[t] as number) <= on(),
      (t, on) => BILL + on <= (course.stoppingBroken[t] as number),
    ),
  };
};

type Figures = ReturnType<typeof figuresOf>;
const row = (
  keep: number,
  replaceNow: number,
  bestFixedDate: number,
  timeOnlyRulePromises: number,
  timeOnlyRuleCosts: number,
  replannedRule: number,
  optimum: number,
): Figures => ({
  keep,
  replaceNow,
  bestFixedDate,
  timeOnlyRulePromises,
  timeOnlyRuleCosts,
  replannedRule,
  optimum,
});

const CASES: readonly (readonly [number, Figures])[] = [
  [9000, row(16303, 17749, 16303, 16251, 16259, 16258, 16258)],
  [8000, row(16303, 17096, 16303, 16243, 16378, 16253, 16252)],
  [7500, row(16303, 16770, 16303, 16201, 16569, 16249, 16248)],
  [7000, row(16303, 16444, 16303, 16119, 16765, 16249, 16237)],
  [6500, row(16303, 16118, 16118, 16004, 16773, 16118, 16118)],
  [6200, row(16303, 15922, 15922, 15922, 15922, 15922, 15922)],
];

describe('one part, every rule exactly', () => {
  for (const [price, expected] of CASES)
    it(`a replacement at ${price}`, () => {
      const got = figuresOf(price);
      for (const [what, figure] of Object.entries(expected))
        expect(
          Math.abs(got[what as keyof Figures] - figure),
          `${what}: ${got[what as keyof Figures]}`,
        ).toBeLessThan(1);
    });
});
