/** Sources write receipts positive; the functions balance flows of either sign, so arguments carry over unchanged. */
import { describe } from 'vitest';
import { loanScheduleUnrounded } from '../../src/engine/cashflow/contracts/amortisation.ts';
import { effective, effectivePerYear, nominal, nominalPerYear } from '../../src/engine/quantity/rate.ts';
import * as annuity from '../../src/engine/valuation/annuity.ts';
import { type Check, type Inputs, publishedCases } from './cases.ts';

type Question = annuity.Annuity & { readonly from: number; readonly to: number; readonly k: number };

/** The questions of a case: one for each entry of the inputs that are lists, in step. */
const questions = (given: Inputs): Question[] => {
  const names = ['rate', 'periods', 'payment', 'present', 'future', 'from', 'to', 'k'] as const;
  const lists = names.filter((name) => given.has(name) && Array.isArray(given.get(name)));
  const length = Math.max(1, ...lists.map((name) => given.nums(name).length));
  const value = (name: (typeof names)[number], k: number): number => {
    if (!given.has(name)) return 0;
    return lists.includes(name) ? (given.nums(name)[k] as number) : given.num(name);
  };
  return Array.from({ length }, (_, k) => ({
    due: given.get<'start' | 'end'>('due'),
    ...(Object.fromEntries(names.map((name) => [name, value(name, k)])) as Omit<Question, 'due'>),
  }));
};

const each =
  (answer: (q: Question) => number | null): Check =>
  (given, expected) => {
    const answers = questions(given).map(answer);
    return { value: Array.isArray(expected.value) ? answers : (answers[0] as number | null) };
  };

describe('time value of money', () => {
  publishedCases('finance-annuity.json', {
    presentValue: each(annuity.presentValue),
    futureValue: each(annuity.futureValue),
    paymentFor: each(annuity.paymentFor),
    periodsFor: each((q) => {
      const found = annuity.periodsFor(q);
      return found.status === 'one' ? found.periods : null;
    }),
    rateFor: each((q) => {
      const found = annuity.rateFor(q);
      return found.status === 'one' ? found.rate : null;
    }),
    interestPart: each((q) => annuity.interestPart(q, q.k)),
    principalPart: each((q) => annuity.principalPart(q, q.k)),
    interestBetween: each((q) => annuity.interestBetween(q, q.from, q.to)),
    principalBetween: each((q) => annuity.principalBetween(q, q.from, q.to)),
    effective: (given) => ({ value: effectivePerYear(nominal(given.num('nominal'), given.num('periods'))) }),
    nominal: (given) => ({ value: nominalPerYear(effective(given.num('effective')), given.num('periods')) }),
    scheduleRows: (given) => {
      const { rows } = loanScheduleUnrounded({
        principal: given.num('principal'),
        notePerYear: given.num('notePerYear'),
        payments: given.num('payments'),
        firstPaymentMonth: 1,
        delayInterest: 'free',
      });
      const column = (name: 'principal' | 'interest' | 'balance'): number[] =>
        given.nums('rows').map((k) => rows[k - 1]?.[name] ?? Number.NaN);
      return { principal: column('principal'), interest: column('interest'), balance: column('balance') };
    },
  });
});
