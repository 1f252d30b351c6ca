import { describe } from 'vitest';
import { annuityFactor } from '../../src/engine/cashflow/contracts/amortisation.ts';
import {
  discountFactor,
  effective,
  effectivePerYear,
  nominal,
  nominalPerYear,
  realRate,
} from '../../src/engine/quantity/rate.ts';
import { futureValue } from '../../src/engine/valuation/annuity.ts';
import { breakEvenPeriod, cumulative, paybackTime } from '../../src/engine/valuation/breakEvenPeriod.ts';
import { equivalentCost, presentCost } from '../../src/engine/valuation/present.ts';
import { publishedCases } from './cases.ts';

/** Compound-interest factors by their usual names; the gradient starts at 0 in period 1. */
const factor = (name: string, rate: number, n: number): number => {
  const gradient = presentCost(
    Array.from({ length: n }, (_, k) => ({ month: 12 * (k + 1), amount: k })),
    effective(rate),
  );
  const grown = (present: number, payment: number): number =>
    -futureValue({ rate, periods: n, present, payment, due: 'end' });
  const factors: Record<string, () => number> = {
    PF: () => discountFactor(effective(rate), 12 * n),
    FP: () => grown(1, 0),
    PA: () => annuityFactor(rate, n),
    AP: () => equivalentCost(1, rate, n),
    FA: () => grown(0, 1),
    AF: () => 1 / grown(0, 1),
    PG: () => gradient,
    AG: () => equivalentCost(gradient, rate, n),
  };
  const compute = factors[name];
  if (!compute) throw new Error(`no factor named ${name}`);
  return compute();
};

const periodOf = (found: ReturnType<typeof paybackTime>): number | null =>
  found.status === 'from' ? found.period : null;

describe('factors, real money and break-even periods', () => {
  publishedCases('finance-costs.json', {
    factors: (given, expected) =>
      Object.fromEntries(
        Object.keys(expected).map((name) => [
          name,
          given.nums('n').map((n) => factor(name, given.num('rate'), n)),
        ]),
      ),
    deflated: (given) => ({
      value: given.num('amount') * discountFactor(effective(given.num('inflation')), 12 * given.num('year')),
    }),
    realGrowth: (given) => ({
      value:
        given.num('pv') /
        discountFactor(
          effective(realRate(given.num('nominal'), given.num('inflation'))),
          12 * given.num('years'),
        ),
    }),
    // The real flow at the real rate: the same as the nominal flow at the nominal rate.
    realAtReal: (given) => {
      const month = 12 * given.num('year');
      const real = given.num('nominalFlow') * discountFactor(effective(given.num('inflation')), month);
      const rate = effective(realRate(given.num('nominal'), given.num('inflation')));
      return { value: presentCost([{ month, amount: real }], rate) };
    },
    realRate: (given) => ({ realPct: 100 * realRate(given.num('nominal'), given.num('inflation')) }),
    nominalTo: (given) => ({
      value: nominalPerYear(nominal(given.num('nominal'), given.num('periods')), given.num('to')),
    }),
    yield: (given) => {
      const periods = 365 / given.num('days');
      const rate = nominal((given.num('interest') / given.num('principal')) * periods, periods);
      return { apyPct: 100 * effectivePerYear(rate) };
    },
    breakEvenPeriod: (given) => {
      const discounted = given
        .nums('cashflows')
        .map((amount, year) => presentCost([{ month: 12 * year, amount }], effective(given.num('rate'))));
      return { period: periodOf(breakEvenPeriod(cumulative(discounted))) };
    },
    payback: (given) => {
      const discounted = given
        .nums('cashflows')
        .map((amount, year) => presentCost([{ month: 12 * year, amount }], effective(0.1)));
      return {
        payback: periodOf(paybackTime(cumulative(given.nums('cashflows')))),
        discountedAt10: periodOf(paybackTime(cumulative(discounted))),
      };
    },
  });
});
