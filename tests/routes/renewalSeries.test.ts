/** Two routes to the expected failures of a new part: the renewal equation on a grid, and a power series. */
import { describe, expect, it } from 'vitest';
import { meanOf } from '../../src/engine/chance/estimates.ts';
import { failureTimes } from '../../src/engine/chance/failureTimes.ts';
import { logGamma } from '../../src/engine/chance/gamma.ts';
import { renewalIncrements } from '../../src/engine/chance/renewal.ts';
import { drawn, SCRAMBLES } from '../support/luck.ts';

/** Smith and Leadbetter, "On the Renewal Function for the Weibull Distribution", Technometrics 5(3), 1963. */
const bySeries = (shape: number, lives: number): number => {
  const TERMS = 60;
  const own = Array.from({ length: TERMS + 1 }, (_, k) =>
    Math.exp(logGamma(k * shape + 1) - logGamma(k + 1)),
  );
  const all: number[] = [0];
  let sum = 0;
  for (let k = 1; k <= TERMS; k++) {
    let coefficient = own[k] as number;
    for (let j = 1; j < k; j++) coefficient -= (own[j] as number) * (all[k - j] as number);
    all[k] = coefficient;
    const term = coefficient * Math.exp(k * shape * Math.log(lives) - logGamma(k * shape + 1));
    sum += k % 2 === 1 ? term : -term;
  }
  return sum;
};

const MONTHS = 60;
const byEquation = (shape: number, lives: number): number => {
  const life = { scale: MONTHS / lives, shape };
  return renewalIncrements(life, 0, life, 1, MONTHS).reduce((sum, one) => sum + one, 0);
};

describe('expected failures of a new part', () => {
  it.each([
    [1, 1.5],
    [1.5, 0.5],
    [1.5, 1],
    [2, 1],
    [2, 1.5],
    [3, 1],
    [3, 1.2],
  ])('are the series by the renewal equation: shape %d, over %d characteristic lives', (shape, lives) => {
    expect(byEquation(shape, lives)).toBeCloseTo(bySeries(shape, lives), 3);
  });

  it('are the mean count of drawn futures', () => {
    const life = { scale: 40, shape: 2 };
    const part = { life, run: 0, pace: 1, patch: false, another: null };
    const { value, error } = meanOf(
      drawn(9, 8192, (luck) => failureTimes(part, [], MONTHS, luck).length),
      SCRAMBLES,
    );
    expect(Math.abs(value - bySeries(2, 1.5))).toBeLessThan(4 * error);
  });
});
