import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LoanTerms,
  levelPayment,
  loanSchedule,
  loanScheduleUnrounded,
  payDown,
  payDownUnrounded,
  payoffAt,
} from '../../src/engine/cashflow/contracts/amortisation.ts';
import { addCents, type Cents, inUnits } from '../../src/engine/quantity/money.ts';
import { nominal } from '../../src/engine/quantity/rate.ts';
import { futureValue } from '../../src/engine/valuation/annuity.ts';
import { aprOfLoan } from '../../src/engine/valuation/apr.ts';
import { presentCost } from '../../src/engine/valuation/present.ts';
import { payoffByRuleOf78 } from '../../src/engine/valuation/ruleOf78.ts';

const terms = (smallest: number): fc.Arbitrary<LoanTerms> =>
  fc.record({
    principal: fc.integer({ min: smallest, max: 15_000_000 }).map((cents) => cents as Cents),
    notePerYear: fc.oneof(
      fc.constant(0),
      fc.integer({ min: 1, max: 36_00 }).map((n) => n / 10_000),
    ),
    payments: fc.integer({ min: 1, max: 120 }),
    firstPaymentMonth: fc.oneof(fc.constant(1), fc.integer({ min: 2, max: 12 })),
    delayInterest: fc.constantFrom('charged', 'free'),
  });

/** Equal whole periods: the first payment a month after the advance. */
const regular = (smallest: number): fc.Arbitrary<LoanTerms> =>
  terms(smallest).map((loan) => ({ ...loan, firstPaymentMonth: 1 }));

const aprPoints = (amountFinanced: number, loan: LoanTerms): number => {
  const payments = loanSchedule(loan).rows.map(({ month, payment }) => ({ month, amount: inUnits(payment) }));
  const found = aprOfLoan({ amountFinanced, payments });
  if (found.status !== 'one') throw new Error(`no single rate: ${JSON.stringify(found)}`);
  return 100 * found.apr;
};

describe('a loan to the cent', () => {
  it('ends at exactly 0.00, and every payment is its interest and principal', () => {
    fc.assert(
      fc.property(terms(1), (loan) => {
        const { rows, owed } = loanSchedule(loan);
        expect(rows.at(-1)?.balance).toBe(0);
        expect(owed.at(-1)).toBe(0);
        expect(addCents(...rows.map((row) => row.principal))).toBe(loan.principal);
        for (const row of rows) {
          expect(Number.isInteger(row.interest) && Number.isInteger(row.payment)).toBe(true);
          expect(row.interest + row.principal).toBe(row.payment);
          expect(row.balance).toBe(owed[row.month]);
        }
      }),
    );
  });

  it('pays the same every month until the last, which differs by less than a cent a payment and its growth', () => {
    fc.assert(
      fc.property(terms(100_000), (loan) => {
        const { payment, rows } = loanSchedule(loan);
        expect(rows.slice(0, -1).every((row) => row.payment === payment)).toBe(true);
        const growth = (1 + loan.notePerYear / 12) ** loan.payments;
        const last = rows.at(-1)?.payment ?? 0;
        expect(Math.abs(last - payment)).toBeLessThanOrEqual((loan.payments + 1) * growth);
      }),
    );
  });

  it('has an APR within 0.01 point of its note rate, from 1,000 up, when nothing else is charged', () => {
    fc.assert(
      fc.property(regular(100_000), (loan) => {
        expect(
          Math.abs(aprPoints(inUnits(loan.principal), loan) - 100 * loan.notePerYear),
        ).toBeLessThanOrEqual(0.01);
      }),
    );
  });

  it('has an APR no lower than its note rate when a finance charge is paid beforehand', () => {
    fc.assert(
      fc.property(regular(100_000), fc.integer({ min: 0, max: 50_000 }), (loan, prepaid) => {
        const apr = aprPoints(inUnits((loan.principal - prepaid) as Cents), loan);
        expect(apr).toBeGreaterThanOrEqual(100 * loan.notePerYear - 0.01);
      }),
    );
  });

  it('owes the principal on the first day, and no more interest than the delay has run up before it is paid', () => {
    fc.assert(
      fc.property(terms(100_000), fc.nat(140), (loan, month) => {
        const schedule = loanSchedule(loan);
        const charged = loan.delayInterest === 'charged' ? loan.firstPaymentMonth : 0;
        const most = loan.principal * (1 + (charged * loan.notePerYear) / 12) + 1;
        expect(payoffAt(schedule, 0)).toBe(loan.principal);
        expect(payoffAt(schedule, month)).toBeGreaterThanOrEqual(0);
        expect(payoffAt(schedule, month)).toBeLessThanOrEqual(most);
        expect(payoffAt(schedule, loan.firstPaymentMonth + loan.payments)).toBe(0);
      }),
    );
  });

  it('a free delay costs what no delay costs, a charged one more', () => {
    fc.assert(
      fc.property(terms(100_000), fc.integer({ min: 2, max: 6 }), (loan, firstPaymentMonth) => {
        const at = (month: number, delayInterest: 'charged' | 'free'): Cents =>
          loanSchedule({ ...loan, firstPaymentMonth: month, delayInterest }).payment;
        expect(at(firstPaymentMonth, 'free')).toBe(at(1, 'free'));
        expect(at(1, 'charged')).toBe(at(1, 'free'));
        expect(at(firstPaymentMonth, 'charged')).toBeGreaterThanOrEqual(at(1, 'free'));
      }),
    );
  });
});

describe('a charged delay', () => {
  it('runs up simple interest until the first payment, and then stays level', () => {
    const loan = {
      principal: 1_000_000 as Cents,
      notePerYear: 0.12,
      payments: 24,
      firstPaymentMonth: 3,
      delayInterest: 'charged',
    } as const;
    const { owed, rows, payment } = loanSchedule(loan);
    expect(owed.slice(0, 3)).toEqual([1_000_000, 1_010_000, 1_020_000]);
    expect(rows[0]).toMatchObject({ month: 3, payment, interest: 30_000 });
    expect(Math.abs((rows.at(-1)?.payment ?? 0) - payment)).toBeLessThanOrEqual(24);
    expect(loanSchedule({ ...loan, delayInterest: 'free' }).owed.slice(0, 3)).toEqual([
      1_000_000, 1_000_000, 1_000_000,
    ]);
  });
});

describe('a loan by two routes', () => {
  it('at its own note rate, its payments are worth what was borrowed', () => {
    fc.assert(
      fc.property(regular(100), (loan) => {
        const principal = inUnits(loan.principal);
        const { rows } = loanScheduleUnrounded({ ...loan, principal });
        const payments = rows.map(({ month, payment }) => ({ month, amount: payment }));
        expect(presentCost(payments, nominal(loan.notePerYear)) / principal).toBeCloseTo(1, 9);
      }),
    );
  });

  it('the rule of 78 never settles for less than the actuarial method', () => {
    fc.assert(
      fc.property(regular(100_000), fc.nat(120), (loan, month) => {
        const principal = inUnits(loan.principal);
        const schedule = loanScheduleUnrounded({ ...loan, principal });
        const paid = Math.min(month, loan.payments);
        const level = { amountFinanced: principal, payment: schedule.payment, payments: loan.payments };
        expect(payoffByRuleOf78(level, paid)).toBeGreaterThanOrEqual(payoffAt(schedule, paid) - 1e-6);
      }),
    );
  });

  it('floating point and decimal differ by no more than a cent a month grown at the note rate', () => {
    fc.assert(
      fc.property(terms(100), (loan) => {
        const exact = loanSchedule(loan);
        const smooth = loanScheduleUnrounded({ ...loan, principal: inUnits(loan.principal) });
        expect(smooth.owed.at(-1)).toBe(0);
        expect(Math.abs(exact.payment - 100 * smooth.payment)).toBeLessThanOrEqual(0.5 + 1e-6);
        // Each month's payment and interest are each off by half a cent at most, and that bears interest.
        const i = loan.notePerYear / 12;
        exact.owed.forEach((cents, month) => {
          const allowed =
            -futureValue({ rate: i, periods: month, payment: 1, present: 1, due: 'end' }) + 1e-3;
          expect(Math.abs(cents - 100 * payoffAt(smooth, month))).toBeLessThanOrEqual(allowed);
        });
      }),
    );
  });

  it('without a delay the level payment is the annuity formula', () => {
    fc.assert(
      fc.property(regular(100), (loan) => {
        const principal = inUnits(loan.principal);
        const { payment } = loanScheduleUnrounded({ ...loan, principal });
        expect(payment).toBeCloseTo(levelPayment(principal, loan.notePerYear / 12, loan.payments), 6);
      }),
    );
  });

  it('known by its payment, it runs as the schedule that payment came from', () => {
    fc.assert(
      fc.property(regular(100_000), (loan) => {
        const principal = inUnits(loan.principal);
        const whole = loanScheduleUnrounded({ ...loan, principal });
        const found = payDownUnrounded({
          owed: principal,
          notePerYear: loan.notePerYear,
          payment: whole.payment,
        });
        if (found.status !== 'repaid') throw new Error(found.reason);
        const paid = found.schedule.rows.reduce((sum, { payment }) => sum + payment, 0);
        expect(paid).toBeCloseTo(
          whole.rows.reduce((sum, { payment }) => sum + payment, 0),
          4,
        );
      }),
    );
  });
});

describe('a loan that is never repaid says so', () => {
  const owed = 1_000_000 as Cents;
  it('when the payment only covers the interest', () => {
    expect(payDown({ owed, notePerYear: 0.12, payment: 10_000 as Cents })).toEqual({
      status: 'never',
      reason: 'interest not covered',
    });
    expect(payDown({ owed, notePerYear: 0.12, payment: 10_001 as Cents })).toEqual({
      status: 'never',
      reason: 'longer than 600 months',
    });
  });
  it('and a nil balance needs no payment', () => {
    const nil = payDown({ owed: 0 as Cents, notePerYear: 0.12, payment: 0 as Cents });
    expect(nil.status === 'repaid' && nil.schedule.rows).toEqual([]);
  });
  it('and half a payment is refused', () => {
    const loan = { principal: owed, notePerYear: 0.1, firstPaymentMonth: 1, delayInterest: 'free' } as const;
    expect(() => loanSchedule({ ...loan, payments: 1.5 })).toThrow(RangeError);
  });
});
