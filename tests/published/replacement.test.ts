import { describe, expect, it } from 'vitest';
import { effective } from '../../src/engine/quantity/rate.ts';
import { breakEvenPeriod } from '../../src/engine/valuation/breakEvenPeriod.ts';
import { averageCostOfOwning, economicLife, marginalCost } from '../../src/engine/valuation/economicLife.ts';
import { equivalentCost, presentCost } from '../../src/engine/valuation/present.ts';
import {
  type ReplacementAnswer,
  replacementProgramme,
} from '../../src/engine/valuation/replacementProgramme.ts';
import { type Inputs, publishedCases } from './cases.ts';

/** The equivalent cost a year of yearly amounts, the first at time 0. */
const yearly = (amounts: readonly number[], rate: number): number =>
  equivalentCost(
    presentCost(
      amounts.map((amount, year) => ({ month: 12 * year, amount })),
      effective(rate),
    ),
    rate,
    amounts.length - 1,
  );

const plus = (amounts: readonly number[], last: number): number[] =>
  amounts.map((amount, k) => (k === amounts.length - 1 ? amount + last : amount));

const solve = (given: Inputs): ReplacementAnswer =>
  replacementProgramme({
    horizon: given.num('horizon'),
    maxAge: given.num('maxAge'),
    startAge: given.get<number | null>('startAge'),
    price: given.num('price'),
    costAtAge: (age) => given.nums('costAtAge')[age] as number,
    tradeIn: (age) => given.nums('tradeIn')[age] as number,
    ratePerPeriod: 0,
  });

describe('economic life, defender and challenger, replacement programmes', () => {
  publishedCases('replacement.json', {
    economicLife: (given, expected) => {
      const owned = {
        values: given.nums('values'),
        costs: given.nums('costs'),
        ratePerPeriod: given.num('rate'),
      };
      const life = economicLife(owned);
      const all = {
        economicLife: life.periods,
        minimumEuac: life.averageCost,
        euac: life.byPeriods,
        marginalCost: marginalCost(owned),
      };
      return Object.fromEntries(Object.entries(all).filter(([name]) => name in expected));
    },
    defenderByYears: (given) => {
      const costs = [0, ...given.nums('defenderMarginalCost')];
      const owned = { values: costs.map(() => 0), costs, ratePerPeriod: given.num('rate') };
      return { defenderEuac: averageCostOfOwning(owned) };
    },
    keepThenReplace: (given) => {
      const [defender, challenger] = [given.nums('defenderMarginalCost'), given.num('challengerAnnualCost')];
      const plans = Array.from({ length: given.num('studyYears') + 1 }, (_, keep) =>
        yearly([0, ...defender.map((cost, k) => (k < keep ? cost : challenger))], given.num('rate')),
      );
      return {
        bestYearsToKeepDefender: plans.indexOf(Math.min(...plans)),
        replaceNowEuac: plans[0] as number,
        keepAllFiveEuac: plans[5] as number,
      };
    },
    keepWhileCheaper: (given) => {
      const excess = given.nums('defenderMarginalCost').map((cost) => cost - given.num('challengerMinEuac'));
      const dearer = breakEvenPeriod(excess);
      return { keepYears: dearer.status === 'from' ? dearer.period : null };
    },
    incremental: (given) => {
      const defender = plus(
        [given.num('defenderMarketNow'), ...given.nums('defenderOm')],
        -given.num('defenderSalvage'),
      );
      const challenger = plus(
        [given.num('challengerCost'), ...given.nums('challengerOm')],
        -given.num('challengerSalvage'),
      );
      return { incrementalEuac: yearly(challenger, given.num('rate')) - yearly(defender, given.num('rate')) };
    },
    // The source charges all fifteen years of the candidate to the eight-year study.
    studyPeriod: (given) => {
      const { marketNow, salvage8, annualCost } = given.get<Record<string, number>>('current');
      const candidate = given.get<Record<string, number>>('candidate');
      const [rate, years] = [given.num('rate'), given.num('studyYears')];
      const current = plus(
        [marketNow as number, ...Array<number>(years).fill(annualCost as number)],
        -(salvage8 as number),
      );
      const life = candidate.life as number;
      const flows = plus(
        [candidate.cost as number, ...Array<number>(life).fill(candidate.annualCost as number)],
        -(candidate.salvage15 as number),
      );
      const present = presentCost(
        flows.map((amount, year) => ({ month: 12 * year, amount })),
        effective(rate),
      );
      return {
        currentEuac: yearly(current, rate),
        candidatePw15: present,
        candidateEuac8: equivalentCost(present, rate, years),
      };
    },
    programme: (given, expected) => {
      const { cost, purchases } = solve(given);
      return 'purchases' in expected ? { cost, purchases } : { cost };
    },
    programmeIncludes: (given) => {
      const { cost, purchases } = solve(given);
      const plan = JSON.stringify(given.nums('plan'));
      return {
        cost,
        planIsOptimal: purchases.some((p) => JSON.stringify(p) === plan),
        plans: purchases.length,
      };
    },
  });

  it('a discounted programme is the cheapest of all ways to choose its purchases', () => {
    const programme = {
      horizon: 6,
      maxAge: 4,
      startAge: null,
      price: 9000,
      costAtAge: (age: number) => 500 + 700 * age,
      tradeIn: (age: number) => 9000 * 0.7 ** age,
      ratePerPeriod: 0.08,
    };
    const costOf = (purchases: readonly number[]): number => {
      const flows = purchases.flatMap((bought, k) => {
        const sold = purchases[k + 1] ?? programme.horizon;
        if (sold - bought > programme.maxAge) return [{ month: 0, amount: Number.POSITIVE_INFINITY }];
        const running = Array.from({ length: sold - bought }, (_, age) => ({
          month: 12 * (bought + age),
          amount: programme.costAtAge(age),
        }));
        return [
          { month: 12 * bought, amount: programme.price },
          { month: 12 * sold, amount: -programme.tradeIn(sold - bought) },
          ...running,
        ];
      });
      return presentCost(flows, effective(programme.ratePerPeriod));
    };
    const choices = Array.from({ length: 32 }, (_, bits) => [
      0,
      ...[1, 2, 3, 4, 5].filter((t) => bits & (1 << (t - 1))),
    ]);
    const answer = replacementProgramme(programme);
    expect(answer.cost).toBeCloseTo(Math.min(...choices.map(costOf)), 6);
    expect(costOf(answer.purchases[0] as number[])).toBeCloseTo(answer.cost, 6);
  });
});
