/** Does it fit: a regular month of each way beside today's, by hand. */
import { describe, expect, it } from 'vitest';
import { firstAnswer } from '../../../src/engine/answer/decide.ts';
import type { MonthlyFit } from '../../../src/engine/answer/decision.ts';
import { formatsFor } from '../../../src/report/format.ts';
import { fitSentences } from '../../../src/report/words/fit.ts';
import { type File, scenarioOf } from '../../support/file.ts';

const decisionOf = (change: (file: File) => void) => firstAnswer(scenarioOf(change), 'test');
const fitOf = (change: (file: File) => void, side: string): MonthlyFit => {
  const d = decisionOf(change);
  const best = side === 'keep' ? d.bestKeep : d.bestReplace;
  const fit = d.fits.find(({ id }) => id === best?.id);
  if (!fit) throw new Error(`no ${side} way`);
  return fit;
};

/** Nothing rises, nothing is borrowed, nothing but insurance and the loan is paid every month. */
const plain = (file: File, more: object = {}): void => {
  const still = {
    insurance_a_year: 600,
    upkeep_a_mile: 0,
    repairs_a_year: 0,
    fuel: { economy: '25 mpg', price: 3 },
  };
  Object.assign(file, {
    miles_a_year: 10_000,
    savings_for_this: 30_000,
    household: { prices_rise: { general: 0 }, look_ahead: 96 },
    ...more,
  });
  Object.assign(file.vehicle, still);
  Object.assign(file.replacement, {
    ...still,
    insurance_a_year: 1500,
    fuel: { economy: '40 mpg', price: 3 },
  });
};

/** Level payment of the loan: P i / (1 - (1 + i)^-n); the formula of any annuity table. */
const payment = (15_800 * (0.089 / 12)) / (1 - (1 + 0.089 / 12) ** -66);

describe('a regular month', () => {
  it("is today's where ours is kept, and nothing is borrowed for the work", () => {
    const fit = fitOf(plain, 'keep');
    expect(fit.regular).toBeCloseTo(600 / 12 + (10_000 / 25 / 12) * 3, 6);
    expect(fit).toMatchObject({ payment: 0, short: 0, months: 0, savingsLast: null });
    expect(Math.abs(fit.more)).toBeLessThan(1e-9);
  });

  it('has the payment, the other insurance and the other fuel in it where it is handed on', () => {
    const fit = fitOf(plain, 'replace');
    expect(fit.payment).toBeCloseTo(payment, 1);
    expect(fit.more).toBeCloseTo(payment + 900 / 12 - ((10_000 / 25 - 10_000 / 40) / 12) * 3, 1);
  });

  it('is short by what it takes above spare money, for as long as the payment runs', () => {
    const fit = fitOf((file) => plain(file, { spare_each_month: 200, savings_for_this: 9000 }), 'replace');
    const short = payment + 75 - 37.5 - 200;
    expect(fit.short).toBeCloseTo(short, 1);
    expect(fit.months).toBe(66);
    // By the ledger: the first day, and what comes once: the old one's price, and what a used one wants in its first year.
    const rows =
      decisionOf((file) => plain(file, { spare_each_month: 200, savings_for_this: 9000 })).options.find(
        ({ id }) => id === fit.id,
      )?.ledger ?? [];
    const paid = rows
      .filter(
        ({ month, category }) => month === 0 || category === 'selling the old one' || category === 'buying',
      )
      .reduce((sum, { amount }) => sum + amount.cash, 0);
    const left = 9_000 * 100 - paid;
    expect(fit.savingsLast).toBe(Math.floor(left / 100 / (fit.short as number)));
  });

  it('fits where spare money covers it, and nobody says so where nobody said what is spare', () => {
    expect(fitOf((file) => plain(file, { spare_each_month: 400 }), 'replace').short).toBe(0);
    const unsaid = fitOf((file) => {
      plain(file);
      Reflect.deleteProperty(file, 'spare_each_month');
    }, 'replace');
    expect(unsaid).toMatchObject({ short: null, months: 0, savingsLast: null });
  });

  it('has what the work put on the card takes for two years', () => {
    const fit = fitOf((file) => plain(file, { savings_for_this: 0, spare_each_month: 10 }), 'keep');
    expect(fit.more).toBeGreaterThan(20);
    expect(fit.months).toBe(24);
  });

  it('is said in words', () => {
    const d = decisionOf((file) => plain(file, { spare_each_month: 200 }));
    expect(fitSentences(d, formatsFor(d.facts))).toEqual([
      'Kept, a regular month takes about $150, as today, so it fits.',
      expect.stringMatching(
        /^Handed on, a regular month takes about \$490, \$30\d of it the payment: \$340 more than today\. It doesn't fit: \$140 a month short of what is spare, for 66 months; savings carry that\.$/,
      ),
    ]);
  });
});
