import { describe, expect, it } from 'vitest';
import { uniformAt } from '../../../src/engine/chance/counter.ts';
import {
  partialInformation,
  perfectInformation,
  testInformation,
} from '../../../src/engine/chance/information.ts';

const SCRAMBLES = 16;
const N = 4096;
const column = (stream: number, f: (u: number, k: number) => number = (u) => u): Float64Array =>
  Float64Array.from({ length: N }, (_, k) => f(uniformAt(1, k, stream, 0), k));

/** Two ways: one at 0, one between -1 and 2 by a known number: E max(0, -cost) is 1/6. */
const x = column(1);
const bet = [new Float64Array(N), x.map((u) => 3 * u - 1)];

describe('what it is worth to know everything', () => {
  it('is what the best choice in each draw saves', () => {
    const { value, error } = perfectInformation(bet, SCRAMBLES);
    expect(Math.abs(value - 1 / 6)).toBeLessThan(4 * error);
    expect(error).toBeLessThan(0.01);
  });

  it('is nil where one way is always cheapest, and for one way', () => {
    expect(perfectInformation([x, x.map((u) => u + 1)], SCRAMBLES)).toEqual({ value: 0, error: 0 });
    expect(perfectInformation([x], SCRAMBLES)).toEqual({ value: 0, error: 0 });
  });

  it('does not mind what all ways share', () => {
    const shared = column(9, (u) => 1e6 * u);
    const moved = bet.map((cost) => cost.map((c, k) => c + (shared[k] as number)));
    expect(perfectInformation(moved, SCRAMBLES).value).toBeCloseTo(
      perfectInformation(bet, SCRAMBLES).value,
      8,
    );
  });

  it('refuses ways with different numbers of draws', () => {
    expect(() => perfectInformation([x, new Float64Array(4)], SCRAMBLES)).toThrow(RangeError);
  });
});

describe('what it is worth to know one number', () => {
  it('is all there is to know where that number decides', () => {
    const { worth, measurable } = partialInformation(bet, x, SCRAMBLES, 1);
    expect(measurable).toBe(true);
    expect(Math.abs(worth.value - 1 / 6)).toBeLessThan(4 * worth.error);
  });

  it('is the same for any rising function of the number', () => {
    const straight = partialInformation(bet, x, SCRAMBLES, 1);
    expect(partialInformation(bet, x.map(Math.exp), SCRAMBLES, 1)).toEqual(straight);
  });

  it('is nothing we can measure for numbers that have no part in it', () => {
    // A spread of thousands, and two ways that are even on average: the hardest case (model, section 4).
    const even = [column(2, (u) => 5000 * u), column(3, (u) => 5000 * u)];
    const found = Array.from({ length: 60 }, (_, k) =>
      partialInformation(even, column(100 + k), SCRAMBLES, 1),
    );
    expect(found.filter(({ measurable }) => measurable)).toEqual([]);
    const mean = found.reduce((sum, { worth }) => sum + worth.value, 0) / found.length;
    // Without the correction each would seem to be worth over 50.
    expect(mean).toBeLessThan(10);
  });

  it('takes equal numbers together, however many draws share them', () => {
    const yesOrNo = x.map((u) => (u < 1 / 3 ? 1 : 0));
    const { worth, measurable } = partialInformation(bet, yesOrNo, SCRAMBLES, 1);
    expect(measurable).toBe(true);
    expect(Math.abs(worth.value - 1 / 6)).toBeLessThan(4 * worth.error);
  });

  it('is nil of what does not vary', () => {
    const { worth, measurable } = partialInformation(bet, new Float64Array(N).fill(7), SCRAMBLES, 1);
    expect(worth.value).toBe(0);
    expect(measurable).toBe(false);
  });

  it('does not depend on what was asked before', () => {
    const fresh = [...bet];
    const first = partialInformation(bet, x, SCRAMBLES, 1);
    partialInformation([x, column(4)], column(5), SCRAMBLES, 2);
    partialInformation(bet, column(5), SCRAMBLES, 3);
    expect(partialInformation(fresh, x, SCRAMBLES, 1)).toEqual(first);
  });

  it('is whole for a yes or no that hardly ever comes true', () => {
    // 2 in 100: 1,000 saved if known, where otherwise 0.02 x 1,000 is less than 0.98 x 50.
    const rare = x.map((_, k) => (k % 50 === 0 ? 1 : 0));
    const costs = [new Float64Array(N), rare.map((yes) => (yes === 1 ? -1000 : 50))];
    const { worth, measurable } = partialInformation(costs, rare, SCRAMBLES, 1);
    expect(measurable).toBe(true);
    expect(worth.value).toBeGreaterThan(19);
    expect(worth.value).toBeLessThan(21);
  });
});

describe('what a test is worth', () => {
  const fails = Uint8Array.from(column(6), (u) => (u < 0.3 ? 1 : 0));
  const chance = fails.reduce((sum, one) => sum + one, 0) / N;
  /** Keeping costs 1,000, and 5,000 more where it fails; handing on 2,200 whatever comes. */
  const costs = [Float64Array.from(fails, (one) => 1000 + 5000 * one), new Float64Array(N).fill(2200)];

  it('is what choosing by Bayes saves: the other route to it', () => {
    const [sees, clears] = [0.8, 0.9];
    const yes = chance * sees + (1 - chance) * (1 - clears);
    const ifYes = (chance * sees) / yes;
    const ifNo = (chance * (1 - sees)) / (1 - yes);
    const best = (p: number) => Math.min(1000 + 5000 * p, 2200);
    const { worth } = testInformation(costs, fails, sees, clears, SCRAMBLES);
    expect(worth.value).toBeCloseTo(best(chance) - yes * best(ifYes) - (1 - yes) * best(ifNo), 9);
  });

  it('is at most that of one that is never wrong, which is all there is to know here', () => {
    const { perfect, event } = testInformation(costs, fails, 0.8, 0.9, SCRAMBLES);
    expect(perfect.value).toBeCloseTo(perfectInformation(costs, SCRAMBLES).value, 9);
    expect(event.value).toBeCloseTo(chance, 12);
  });

  it('is nil where its answer says nothing, or could change no choice', () => {
    expect(testInformation(costs, fails, 0.4, 0.6, SCRAMBLES).worth.value).toBeCloseTo(0, 9);
    const clear = [costs[0] as Float64Array, new Float64Array(N).fill(500)];
    expect(testInformation(clear, fails, 1, 1, SCRAMBLES).worth).toEqual({ value: 0, error: 0 });
  });

  it('is as good when it is always wrong as when it is never', () => {
    const wrong = testInformation(costs, fails, 0, 0, SCRAMBLES).worth.value;
    expect(wrong).toBeCloseTo(testInformation(costs, fails, 1, 1, SCRAMBLES).worth.value, 9);
  });
});
