import type { Decision, LoanView } from '../../engine/answer/decision.ts';
import { balanceChart } from '../charts/balance.ts';
import { calendar, counted, ledgerCents, percent, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { noticesAt } from '../words/facts.ts';
import { listed } from '../words/sentence.ts';
import { block, type Chapter, notes, type Page, paragraphs, pick } from './page.ts';

const rates = (loan: LoanView): string =>
  loan.apr === null
    ? `Its note rate is ${percent(loan.noteRate)}; a yearly cost with fees included (APR) can't be worked out for it.`
    : percent(loan.apr) === percent(loan.noteRate)
      ? `Its yearly cost, fees included (APR), is ${percent(loan.apr)}, the same as its note rate.`
      : `Its yearly cost, fees included (APR), is ${percent(loan.apr)} beside a note rate of ${percent(loan.noteRate)}.`;

/** A value is never known better than this part of it. */
const CLOSE = 0.05;

const closeToIt = ({ balance }: LoanView): string => {
  const close = balance.some(({ owed, value }) => owed > 0 && value - owed < CLOSE * value);
  return close ? ', by our guess of its worth, but for a time there is little between the two' : '';
};

const underWater = (loan: LoanView): string =>
  loan.monthsUnderWater === 0
    ? `At no time is more owed than it would bring${closeToIt(loan)}.`
    : `For ${counted(loan.monthsUnderWater, 'month')} more is owed than it would bring: to sell, you'd pay in.`;

const balanceFigure = ({ format, figure }: Page, loan: LoanView): Html => {
  const rows = loan.balance.map((b) => ({ month: b.month, owed: b.owed / 100, value: b.value / 100 }));
  return figure({
    id: `balance-${loan.replacement}`,
    finding: underWater(loan),
    shows: `What is still owed on the ${loan.name}, and what it would bring, month by month.`,
    told: `Two falling lines over ${counted(loan.months, 'month')}, from ${format.round(rows[0]?.owed ?? 0)} owed and a value of ${format.round(rows[0]?.value ?? 0)}. ${underWater(loan)}`,
    chart: (look) => balanceChart(rows, { under: "to sell, you'd pay in" }, look),
    table: table({
      caption: `Owed and worth: ${loan.name}`,
      head: ['After month', 'Still owed', 'Would bring'],
      rows: loan.balance
        .filter((b) => b.month % 12 === 0 || b.month === loan.months)
        .map((b) => [b.month, ledgerCents(b.owed), ledgerCents(b.value)]),
    }),
  });
};

const one = (page: Page, loan: LoanView): Html => {
  const { d, format } = page;
  const r = `replacement.${loan.replacement}`;
  const exact = (cents: number): string => format.money(cents / 100);
  const longer = loan.longer;
  const last = calendar(d.facts.date, loan.months);
  const choice = loan.lowRateOrRebate;
  return html`${block(
    html`<p>The ${loan.name} takes ${exact(loan.payment)} a month for ${counted(loan.months, 'month')}${last && `, until ${last}`}: ${exact(loan.totalOfPayments)} in all, ${exact(loan.interest)} of it interest. ${rates(loan)}</p>`,
    notes(
      pick(
        d,
        `${r}.price`,
        `${r}.payment.downPayment`,
        `${r}.payment.apr`,
        `${r}.payment.months`,
        `${r}.value.perYear`,
      ),
      format,
    ),
    balanceFigure(page, loan),
    html`<p>A year longer would make it ${exact(longer.payment)} a month for ${counted(longer.months, 'month')}, and ${exact(longer.totalOfPayments)} in all: ${exact(longer.totalOfPayments - loan.totalOfPayments)} more. ${
      loan.owedAtHorizon > 0
        ? `On the last day of ${span(d.horizon)}, ${exact(loan.owedAtHorizon)} is still owed.`
        : ''
    } Paid off early, it is settled by what is still owed that month.</p>`,
    choice
      ? html`<p>The maker's low rate comes to ${exact(choice.lowRate)} in today's money, the rebate with this loan to ${exact(choice.rebate)}: ${choice.lowRate < choice.rebate ? 'the low rate costs less' : 'the rebate costs less'}.</p>`
      : null,
    folded(
      `Every payment on the ${loan.name}`,
      table({
        caption: `Payment by payment: ${loan.name}`,
        kind: 'ledger',
        head: ['Month', 'Payment', 'Interest', 'Paid off', 'Still owed'],
        rows: loan.schedule.map((s) => [
          s.month,
          ledgerCents(s.payment),
          ledgerCents(s.interest),
          ledgerCents(s.principal),
          ledgerCents(s.balance),
        ]),
      }),
    ),
  )}`;
};

const leased = ({ d, format }: Page, lease: Decision['leases'][number]): Html => {
  const exact = (cents: number): string => format.money(cents / 100);
  const parts = [
    `${exact(lease.dueAtSigning)} due at signing`,
    `${counted(lease.months, 'payment')} of ${exact(lease.payment)}`,
    ...(lease.fees > 0 ? [`${exact(lease.fees)} in fees`] : []),
    ...(lease.overDistance > 0 ? [`${exact(lease.overDistance)} for distance over the allowance`] : []),
  ];
  const r = `replacement.${lease.replacement}`;
  return html`${block(
    html`<p>The leased ${lease.name} takes ${exact(lease.payment)} a month for ${counted(lease.months, 'month')}, and ${exact(lease.total)} in all: ${listed(parts)}. Its lease interest is like a loan at ${percent(lease.rate)} a year. At the end nothing is owned unless it is bought.</p>`,
    notes(
      pick(
        d,
        `${r}.payment.startsFrom`,
        `${r}.payment.residual`,
        `${r}.payment.moneyFactor`,
        `${r}.payment.distanceAYear`,
      ),
      format,
    ),
  )}`;
};

/** The payment: what it is, what it adds up to, and when one could not sell without paying in. */
export const paymentChapter = (page: Page): Chapter => {
  const { d } = page;
  const best = d.bestReplace?.replacement;
  const loans = d.payments.toSorted(
    (a, b) => Number(b.replacement === best) - Number(a.replacement === best),
  );
  return {
    id: 'payment',
    question: 'What does the payment really cost?',
    body:
      loans.length + d.leases.length === 0
        ? html`${block(html`<p>None of the ways brings a loan or a lease, so there is no payment to look into.</p>`, paragraphs(noticesAt(d, 'payment')))}`
        : html`${loans.map((loan) => one(page, loan))}${d.leases.map((lease) => leased(page, lease))}${block(paragraphs(noticesAt(d, 'payment')))}`,
  };
};
