/** The textbook recursion against a constructed replacement programme in age, bills exponential, no end in sight. */
import { describe, expect, it } from 'vitest';
import { timeOnlyCosts } from '../../../src/engine/policy/timeOnly.ts';

/**
 * Hastings (1969), the repair-limit functional equation (from memory): mend if the bill is at most
 * L(age) = what replacing costs - what going on costs. The figures were computed by iterating on values and on limits.
 */
const given = {
  maxAge: 10,
  price: 20_000,
  discount: 0.95,
  tradeIn: (age: number) => 20_000 * 0.85 ** age,
  chance: (age: number) => 0.1 + 0.07 * age,
  meanBill: (age: number) => 600 + 180 * age,
  operating: (age: number) => 1500 + 150 * age,
};
const LIMITS = [
  0, 830.093895, 1340.39361, 1612.900238, 1715.780372, 1701.694915, 1607.577811, 1453.756654, 1237.776001,
  902.196432,
];
const VALUE_AT_AGE_1 = 75_135.193155;

/** E min(X, limit) of an exponential bill. */
const upTo = (mean: number, limit: number): number =>
  limit <= 0 ? limit : mean * -Math.expm1(-limit / mean);

const solve = () => {
  const { maxAge, price, discount, tradeIn, chance, meanBill, operating } = given;
  // At a limit below nil it is replaced with or without a bill, so "up to" may be below nil for both.
  const meanUpTo = (age: number, limit: number): number =>
    chance(age) * upTo(meanBill(age), limit) + (1 - chance(age)) * Math.min(0, limit);
  let valueAtAge1 = 0;
  for (let round = 0; round < 1000; round++) {
    const fresh = operating(0) + discount * valueAtAge1;
    const replacing = (age: number): number => price - tradeIn(age) + fresh;
    const J = timeOnlyCosts({
      last: maxAge,
      discount,
      // What running it from age a to a + 1 costs falls at the start of the year, and the recursion posts at its end.
      running: (age) => operating(age - 1) / discount,
      meanUpTo: (age, limit) => (age === maxAge ? 0 : meanUpTo(age, limit)),
      replacing,
      replacingBroken: replacing,
    });
    const going = (age: number): number =>
      operating(age) +
      discount *
        ((J[age + 1] as number) +
          (age + 1 === maxAge ? 0 : meanUpTo(age + 1, replacing(age + 1) - (J[age + 1] as number))));
    const limits = Array.from({ length: maxAge }, (_, age) => Math.max(0, replacing(age) - going(age)));
    const on = Math.min(replacing(1), going(1));
    const next = on + meanUpTo(1, replacing(1) - on);
    if (Math.abs(next - valueAtAge1) < 1e-10) return { limits, valueAtAge1: next };
    valueAtAge1 = next;
  }
  throw new Error('the iteration does not settle');
};

describe('the time-only recursion', () => {
  it('gives the limits by age of the constructed programme, which rise before they fall', () => {
    const { limits, valueAtAge1 } = solve();
    expect(Math.abs(valueAtAge1 - VALUE_AT_AGE_1)).toBeLessThan(1e-5);
    LIMITS.forEach((limit, age) => {
      expect(Math.abs((limits[age] as number) - limit), `age ${age}`).toBeLessThan(1e-5);
    });
    expect(limits[4]).toBeGreaterThan(limits[1] as number);
  });
});
