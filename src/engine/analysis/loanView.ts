import { type LoanTerms, loanSchedule } from '../cashflow/contracts/amortisation.ts';
import { marketValue } from '../cashflow/contracts/marketValue.ts';
import { purchaseFigures } from '../cashflow/contracts/purchase.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { addCents, type Cents, inUnits, lessCents, NIL, toCents } from '../quantity/money.ts';
import { aprOfLoan } from '../valuation/apr.ts';

export interface LoanView {
  readonly replacement: number;
  readonly name: string;
  readonly amountFinanced: Cents;
  readonly payment: Cents;
  readonly months: number;
  readonly noteRate: number;
  /** By Regulation Z, Appendix J; null with the reason when it has none. */
  readonly apr: number | null;
  readonly totalOfPayments: Cents;
  readonly interest: Cents;
  /** Balance and what the vehicle would bring, month 0..months. */
  readonly balance: readonly { readonly month: number; readonly owed: Cents; readonly value: Cents }[];
  readonly monthsUnderWater: number;
  readonly owedAtHorizon: Cents;
  /** A year longer: the payment falls, the total rises. */
  readonly longer: { readonly months: number; readonly payment: Cents; readonly totalOfPayments: Cents };
  /** The low rate instead of the rebate: present cost of each, same term; null when there is no such choice. */
  readonly lowRateOrRebate: { readonly lowRate: Cents; readonly rebate: Cents } | null;
  readonly schedule: readonly {
    readonly month: number;
    readonly payment: Cents;
    readonly interest: Cents;
    readonly principal: Cents;
    readonly balance: Cents;
  }[];
}

const scheduleOf = (loan: LoanTerms<number>, extraMonths = 0) =>
  loanSchedule({
    ...loan,
    principal: toCents(loan.principal),
    payments: loan.payments + extraMonths,
  });

/** The loan behind the cheapest way of getting one replacement; null where it is not bought with one. */
export const loanView = (plan: Plan, results: readonly OptionResult[], ctx: Context): LoanView | null => {
  const index = plan.replacement;
  const deal = index === null ? undefined : ctx.inputs.replacement[index];
  const loan = plan.purchase?.loan(ctx);
  if (index === null || !deal || !plan.purchase || !loan || loan.principal === 0) return null;
  const figures = purchaseFigures(plan.purchase.terms(ctx));
  const schedule = scheduleOf(loan);
  const longer = scheduleOf(loan, 12);
  const total = (of: 'payment' | 'interest', rows = schedule.rows): Cents =>
    rows.reduce((sum, row) => addCents(sum, row[of]), NIL);
  const apr = aprOfLoan({
    amountFinanced: figures.advance - figures.prepaidFinanceCharge,
    payments: schedule.rows.map((row) => ({ month: row.month, amount: inUnits(row.payment) })),
  });
  const value = {
    now: deal.worthDayAfter,
    law: deal.value,
    floor: deal.floor,
    brandFactor: deal.brandFactor,
  };
  const balance = schedule.owed.map((owed, month) => ({
    month,
    owed,
    value: toCents(marketValue(value, month, month * ctx.distanceAMonth)),
  }));
  const alternative = (low: boolean): OptionResult | undefined => {
    const base = plan.id.replace(/\/low-rate$/, '');
    return results.find((result) => result.id === (low ? `${base}/low-rate` : base));
  };
  const [withLow, withRebate] = [alternative(true), alternative(false)];
  return {
    replacement: index,
    name: ctx.facts.replacementNames[index] as string,
    amountFinanced: toCents(figures.advance - figures.prepaidFinanceCharge),
    payment: schedule.payment,
    months: loan.payments,
    noteRate: loan.notePerYear,
    apr: apr.status === 'one' ? apr.apr : apr.status === 'several' ? apr.nearestZero : null,
    totalOfPayments: total('payment'),
    interest: total('interest'),
    balance,
    monthsUnderWater: balance.filter(({ owed, value: worth }) => lessCents(owed, worth) > 0).length,
    owedAtHorizon: schedule.owed[ctx.horizon] ?? NIL,
    longer: {
      months: loan.payments + 12,
      payment: longer.payment,
      totalOfPayments: total('payment', longer.rows),
    },
    lowRateOrRebate:
      withLow && withRebate
        ? { lowRate: withLow.netPresentCost.counted, rebate: withRebate.netPresentCost.counted }
        : null,
    schedule: schedule.rows,
  };
};
