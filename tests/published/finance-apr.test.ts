import { describe, expect, it } from 'vitest';
import { payDownUnrounded } from '../../src/engine/cashflow/contracts/amortisation.ts';
import { addMonths, type CivilDate, parseCivilDate } from '../../src/engine/quantity/civilDate.ts';
import {
  type Apr,
  annualPercentageRate,
  aprOfDates,
  aprOfLoan,
  type DatedAmount,
} from '../../src/engine/valuation/apr.ts';
import { unitPeriodOf, unitPeriodsBetween } from '../../src/engine/valuation/unitPeriod.ts';
import { type Inputs, publishedCases } from './cases.ts';

const percent = (apr: Apr): number => {
  if (apr.status !== 'one') throw new Error(`no single rate: ${JSON.stringify(apr)}`);
  return 100 * apr.apr;
};

const date = (text: string): CivilDate => {
  const parsed = parseCivilDate(text);
  if (!parsed) throw new Error(`not a date: ${text}`);
  return parsed;
};

type Run = {
  readonly amount: number;
  readonly count: number;
  readonly first: string;
  readonly stepMonths: number;
};
const datedAmounts = (given: Inputs, name: string): DatedAmount[] =>
  given
    .get<readonly Run[]>(name)
    .flatMap(({ amount, count, first, stepMonths }) =>
      Array.from({ length: count }, (_, k) => ({ amount, date: addMonths(date(first), k * stepMonths) })),
    )
    .sort((a, b) => dateKey(a.date) - dateKey(b.date));
const dateKey = ({ year, month, day }: CivilDate): number => year * 10_000 + month * 100 + day;

type Flows = Parameters<typeof annualPercentageRate>[0]['payments'];
const level = (payment: number, payments: number) =>
  Array.from({ length: payments }, (_, k) => ({ month: k + 1, amount: payment }));

describe('annual percentage rate', () => {
  publishedCases('finance-apr.json', {
    generalEquation: (given) => ({
      aprPct: percent(
        annualPercentageRate({
          advances: given.get<Flows & []>('advances'),
          payments: given.get<Flows & []>('payments'),
          unitPeriodsPerYear: given.num('unitPeriodsPerYear'),
        }),
      ),
    }),
    fromDates: (given) => ({
      aprPct: percent(
        aprOfDates({ advances: datedAmounts(given, 'advances'), payments: datedAmounts(given, 'payments') }),
      ),
    }),
    monthlyLoan: (given) => ({
      aprPct: percent(
        aprOfLoan({
          amountFinanced: given.num('amountFinanced'),
          payments: level(given.num('payment'), given.num('payments')),
        }),
      ),
    }),
    // The totals come from paying the loan down at the rate found, so that rate and schedule check each other.
    disclosure: (given) => {
      const [amountFinanced, payment] = [given.num('amountFinanced'), given.num('payment')];
      const apr = percent(aprOfLoan({ amountFinanced, payments: level(payment, given.num('payments')) }));
      const loan = { owed: amountFinanced, notePerYear: apr / 100, payment };
      const paid = payDownUnrounded(loan);
      if (paid.status !== 'repaid') throw new Error(paid.reason);
      const totalOfPayments = paid.schedule.rows.reduce((sum, row) => sum + row.payment, 0);
      return { financeCharge: totalOfPayments - amountFinanced, totalOfPayments, aprPct: apr };
    },
    unitPeriods: (given) => {
      const unit = { every: given.get<'week' | 'month' | 'semimonth'>('every'), count: given.num('count') };
      return { ...unitPeriodsBetween(date(given.get('from')), date(given.get('to')), unit) };
    },
  });
});

describe('the unit period follows from the dates (Regulation Z, Appendix J, (b)(4), (b)(5) [from memory])', () => {
  const every = (first: string, step: number, count: number): CivilDate[] =>
    Array.from({ length: count }, (_, k) => addMonths(date(first), k * step));
  const cases: [string, CivilDate[], CivilDate[], ReturnType<typeof unitPeriodOf>][] = [
    [
      'monthly after a long first period',
      [date('1978-02-10')],
      every('1978-04-01', 1, 36),
      { every: 'month', count: 1 },
    ],
    ['month ends', [date('2023-12-31')], every('2024-01-31', 1, 12), { every: 'month', count: 1 }],
    [
      'the 1st and 15th',
      [date('2023-01-01')],
      [...every('2023-01-15', 1, 6), ...every('2023-02-01', 1, 6)].sort((a, b) => dateKey(a) - dateKey(b)),
      { every: 'semimonth', count: 1 },
    ],
    [
      'fortnights',
      [date('2023-01-02')],
      ['2023-01-16', '2023-01-30', '2023-02-13', '2023-02-27'].map(date),
      { every: 'week', count: 2 },
    ],
    [
      'a single payment in 255 days',
      [date('1978-01-01')],
      [date('1978-09-13')],
      { every: 'day', count: 255 },
    ],
    [
      'a single payment in six months',
      [date('1978-07-15')],
      [date('1979-01-15')],
      { every: 'month', count: 6 },
    ],
    [
      'a single payment in 18 months',
      [date('1978-01-01')],
      [date('1979-07-01')],
      { every: 'month', count: 12 },
    ],
    [
      'equally common intervals: the shorter',
      [date('2023-01-10')],
      ['2023-02-10', '2023-03-10', '2023-05-10', '2023-07-10'].map(date),
      { every: 'month', count: 1 },
    ],
    [
      'no common interval: the average, rounded',
      [date('2023-01-10')],
      ['2023-02-10', '2023-05-10'].map(date),
      { every: 'month', count: 2 },
    ],
  ];
  for (const [name, advances, payments, unit] of cases) {
    it(name, () => {
      expect(unitPeriodOf(advances, payments)).toEqual(unit);
    });
  }

  it('a month reaches from the last day to the last day, and to February for the 29th and 30th', () => {
    const between = (from: string, to: string) =>
      unitPeriodsBetween(date(from), date(to), { every: 'month', count: 1 });
    expect(between('2023-12-31', '2024-02-29')).toEqual({ t: 2, f: 0 });
    expect(between('2023-01-30', '2023-02-28')).toEqual({ t: 1, f: 0 });
    expect(between('2023-02-28', '2023-04-30')).toEqual({ t: 2, f: 0 });
    expect(between('2023-01-31', '2023-03-01')).toEqual({ t: 1, f: 1 / 30 });
  });

  it('single payments by their dates agree with examples (c)(5)(i) to (iii) [retrieved]', () => {
    const single = (from: string, to: string, amount: number): number =>
      percent(
        aprOfDates({
          advances: [{ amount: 1000, date: date(from) }],
          payments: [{ amount, date: date(to) }],
        }),
      );
    expect(Math.abs(single('1978-01-01', '1978-09-13', 1080) - 11.45)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(single('1978-07-15', '1979-01-15', 1044) - 8.8)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(single('1978-01-01', '1979-07-01', 1135.19) - 8.76)).toBeLessThanOrEqual(0.005);
  });
});

describe('a rate that is not there is said to be missing', () => {
  it('has no APR when nothing is paid, and several only when an advance follows a payment', () => {
    expect(aprOfLoan({ amountFinanced: 1000, payments: [] })).toMatchObject({ status: 'none' });
    const swap = annualPercentageRate({
      advances: [
        { amount: 100, t: 0, f: 0 },
        { amount: 132, t: 2, f: 0 },
      ],
      payments: [{ amount: 230, t: 1, f: 0 }],
      unitPeriodsPerYear: 1,
    });
    if (swap.status !== 'several') throw new Error('expected both 10 % and 20 %');
    expect(swap.aprs[0]).toBeCloseTo(0.1, 9);
    expect(swap.aprs[1]).toBeCloseTo(0.2, 9);
    expect(swap.nearestZero).toBeCloseTo(0.1, 9);
  });
});
