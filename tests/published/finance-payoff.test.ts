import { describe, expect, it } from 'vitest';
import {
  loanSchedule,
  loanScheduleUnrounded,
  payDownUnrounded,
  payoffAt,
} from '../../src/engine/cashflow/contracts/amortisation.ts';
import { addCents, inUnits, toCents } from '../../src/engine/quantity/money.ts';
import { effective } from '../../src/engine/quantity/rate.ts';
import { aprOfLoan } from '../../src/engine/valuation/apr.ts';
import { presentCostOfSeries } from '../../src/engine/valuation/present.ts';
import { payoffByRuleOf78, unearnedByRuleOf78 } from '../../src/engine/valuation/ruleOf78.ts';
import { publishedCases } from './cases.ts';

const upTo = (n: number): number[] => Array.from({ length: n + 1 }, (_, k) => k);

describe('early payoff', () => {
  publishedCases('finance-payoff.json', {
    interestPaid: (given) => {
      const { rows } = loanScheduleUnrounded({
        principal: given.num('pv'),
        notePerYear: given.num('annualRate'),
        payments: given.num('months'),
        firstPaymentMonth: 1,
        delayInterest: 'free',
      });
      return {
        interestPaid: rows.slice(0, given.num('paid')).reduce((sum, { interest }) => sum + interest, 0),
      };
    },
    unearned: (given) => ({
      unearned: unearnedByRuleOf78(given.num('financeCharge'), given.num('n'), given.num('remaining')),
    }),
    earnedShares: (given) => {
      const earned = (month: number): number =>
        100 - unearnedByRuleOf78(100, given.num('n'), given.num('n') - month);
      return { month1EarnedPct: earned(1), after2EarnedPct: earned(2) };
    },
    monthlyEarned: (given) => {
      const unearned = (paid: number): number =>
        unearnedByRuleOf78(given.num('financeCharge'), given.num('n'), given.num('n') - paid);
      return { interest: given.nums('months').map((month) => unearned(month - 1) - unearned(month)) };
    },
    payoffs: (given) => {
      const loan = {
        amountFinanced: given.num('amount'),
        payment: given.num('payment'),
        payments: given.num('n'),
      };
      return { balances: upTo(given.num('n')).map((paid) => payoffByRuleOf78(loan, paid)) };
    },
    bothPayoffs: (given) => {
      const [amountFinanced, payment, n] = [
        given.num('amountFinanced'),
        given.num('payment'),
        given.num('n'),
      ];
      const rate = aprOfLoan({
        amountFinanced,
        payments: upTo(n)
          .slice(1)
          .map((month) => ({ month, amount: payment })),
      });
      if (rate.status !== 'one') throw new Error('no rate');
      const paid = payDownUnrounded({ owed: amountFinanced, notePerYear: rate.apr, payment });
      if (paid.status !== 'repaid') throw new Error(paid.reason);
      return {
        rule78Payoff: payoffByRuleOf78({ amountFinanced, payment, payments: n }, given.num('paid')),
        actuarialPayoff: payoffAt(paid.schedule, given.num('paid')),
      };
    },
    presentOfTerms: (given) => {
      const { down, monthly, months } = given.get<{ down: number; monthly: number; months: number }>(
        'freeCredit',
      );
      const rate = effective((1 + given.num('monthlyRate')) ** 12 - 1);
      const series = [down, ...Array<number>(months).fill(monthly)];
      return { freeCreditPv: presentCostOfSeries(series, rate) };
    },
  });

  it('cfpb-amortize-425 to the cent: rounding moves sixty months of interest by less than 61 cents', () => {
    const { rows } = loanSchedule({
      principal: toCents(180_000),
      notePerYear: 0.0425,
      payments: 360,
      firstPaymentMonth: 1,
      delayInterest: 'free',
    });
    const interest = inUnits(addCents(...rows.slice(0, 60).map((row) => row.interest)));
    expect(Math.abs(interest - 36_583.36)).toBeLessThanOrEqual(0.61);
  });
});
