/** Sources write receipts positive; ours are negative, so every cash flow is turned round on the way in. */
import { describe, expect, it } from 'vitest';
import { effective, effectivePerYear, nominal } from '../../src/engine/quantity/rate.ts';
import { type Flow, presentCost, presentCostOfSeries } from '../../src/engine/valuation/present.ts';
import { modifiedRateOfReturn, rateOfReturn } from '../../src/engine/valuation/rateOfReturn.ts';
import { type Inputs, publishedCases } from './cases.ts';

const cashflows = (given: Inputs): readonly number[] => {
  if (given.has('cashflows')) return given.nums('cashflows');
  const once = given
    .get<[number, number][]>('runs')
    .flatMap(([amount, times]) => Array<number>(times).fill(amount));
  return Array<readonly number[]>(given.num('repeat')).fill(once).flat();
};

const asCosts = (amounts: readonly number[]): Flow[] =>
  amounts.map((amount, month) => ({ month, amount: -amount }));

/** The published present value of yearly flows, the first after `first` years. */
const presentValue = (given: Inputs, amounts: readonly number[], first: number): number =>
  -presentCost(
    amounts.map((amount, k) => ({ month: 12 * (k + first), amount: -amount })),
    effective(given.num('rate')),
  );

describe('rates of return and present values', () => {
  publishedCases('finance-returns.json', {
    rateNearestZero: (given) => {
      const found = rateOfReturn(asCosts(cashflows(given)));
      if (found.status === 'none') return { rate: null };
      return { rate: found.status === 'one' ? found.rate : found.nearestZero };
    },
    oneOfTheRates: (given, expected) => {
      const found = rateOfReturn(asCosts(cashflows(given)));
      if (found.status !== 'several') throw new Error(`expected several rates, got ${found.status}`);
      const rate = found.rates.find((r) => Math.abs(r - given.num('near')) < 0.001) ?? null;
      return { [Object.keys(expected)[0] as string]: rate };
    },
    annualRateOfMonthly: (given) => {
      const found = rateOfReturn(asCosts(cashflows(given)));
      return { rate: found.status === 'one' ? effectivePerYear(nominal(12 * found.rate)) : null };
    },
    modifiedRate: (given) => {
      const found = modifiedRateOfReturn(
        asCosts(cashflows(given)),
        given.num('financeRate'),
        given.num('reinvestRate'),
      );
      return { rate: found.status === 'one' ? found.rate : null };
    },
    presentFromTime0: (given) => ({ value: presentValue(given, cashflows(given), 0) }),
    presentFromTime1: (given) => ({ value: presentValue(given, cashflows(given), 1) }),
    presentAt: (given) => ({
      value: presentValue(given, cashflows(given), given.nums('times')[0] as number),
    }),
    presentAtEach: (given) => ({
      values: cashflows(given).map((_, k) => presentValue(given, cashflows(given).slice(k), 1)),
    }),
    refusedRate: (given) => {
      expect(() => presentValue(given, cashflows(given), 0)).toThrow(RangeError);
      return { presentValue: null };
    },
  });

  it('a series by month and the same flows one by one cost the same', () => {
    const amounts = [-900, 120, 0, 75.5, -20];
    const flows = amounts.map((amount, month) => ({ month, amount }));
    expect(presentCostOfSeries(amounts, effective(0.07))).toBeCloseTo(
      presentCost(flows, effective(0.07)),
      12,
    );
  });
});
