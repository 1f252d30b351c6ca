import type { Estimate, LumpyWay } from '../../engine/analysis/chances.ts';
import type { LoanView } from '../../engine/answer/decision.ts';
import { counted, inWords, knownNumber, number, ofHundred } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { each, fundShown, lumpyWays, optionOf, wayOut, wayOutWords, worstBillWords } from '../words/lumpy.ts';
import { capital } from '../words/sentence.ts';
import { byWay } from './lumpyTables.ts';
import { block, type Page } from './page.ts';

/** No finer than its error, nor than anyone cares for. */
const to = ({ value, error }: Estimate, finest: number): string =>
  knownNumber({ value, error: Math.max(error, finest) });

/** Being stranded stands beside the money: how likely, how often, and what nobody prices. */
export const stranded = (page: Page): Html => {
  const { d, format } = page;
  const ways = lumpyWays(d);
  const stuck = d.work.some(({ mayBeDriven }) => mayBeDriven === 'no');
  return block(
    html`<h3>Would it leave us at the roadside?</h3>`,
    html`<p>Within a year there is at least one roadside stop in ${each(ways, (w) => ofHundred(w.stopWithinAYear)).join(', ')}. This stands beside the money and isn't netted against it: to a young driver or on a long way home at night, not being stranded, and how well it protects in a crash, can matter more than any sum here.</p>`,
    byWay(page, 'Being without it', 'Trouble', [
      ['A roadside stop within a year', (w) => ofHundred(w.stopWithinAYear)],
      ['Tows a year, on average', (w) => to(w.towsAYear, 0.01)],
      ['Days without it a year, on average', (w) => to(w.daysWithoutAYear, 0.1)],
      ['Dearest repair bill in two years, bad case', (w) => format.round(w.worstBill.bad)],
      ways.keep?.worstBill.payments == null && ways.replace?.worstBill.payments == null
        ? null
        : [
            'The same in payments not made',
            (w) =>
              w.worstBill.payments === null
                ? ''
                : number(w.worstBill.payments, w.worstBill.payments < 2 ? 1 : 0),
          ],
    ]),
    stuck
      ? html`<p>It stands until it is mended. Storage and rides run from the first day on, as far as the file gives days and prices; a tow counts where it is in the shop's price; and it can't be driven on while the money is saved.</p>`
      : null,
  );
};

const overThree = (w: LumpyWay | null): string | null =>
  w?.worstBill.overThreePayments && w.worstBill.payments !== null
    ? `Kept, a repair bill of more than three payments comes within two years in ${ofHundred(w.worstBill.overThreePayments)}.`
    : null;

const loanOut = ({ d, format }: Page, loan: LoanView): Html => {
  const out = wayOut(loan);
  const whole = (units: number): string => format.money(Math.round(units));
  const worst = out.reduce((a, b) => (b.toPay > a.toPay ? b : a), out[0] ?? { month: 0, toPay: 0 });
  const free = out.find((p) => p.month >= worst.month && p.toPay <= 0);
  const when = worst.month === 0 ? 'on the first day' : `after month ${worst.month}`;
  const said =
    worst.toPay <= 0
      ? `Selling the ${loan.name} would settle its loan in any month.`
      : `Getting out of the loan on the ${loan.name} costs most ${when}: ${wayOutWords(worst.toPay, format.round)} on top of what it brings.${free ? ` From month ${free.month} on, selling it settles the loan.` : ''}`;
  return html`<p>${said}</p>${folded(
    `Getting out of the loan on the ${loan.name}, month by month`,
    table({
      caption: `Getting out of the loan: ${loan.name}`,
      head: ['After month', 'Still owed', 'Would bring', 'To be out of it'],
      rows: loan.balance
        .filter((b) => b.month <= d.horizon)
        .map((b, i) => [
          b.month,
          whole(b.owed / 100),
          whole(b.value / 100),
          wayOutWords(out[i]?.toPay ?? 0, whole),
        ]),
    }),
  )}`;
};

/** What the bad case means: a bill in payments, months without income, and the way out of a loan. */
export const badCase = (page: Page): Html => {
  const { d, format } = page;
  const ways = lumpyWays(d);
  const { keep, replace } = ways;
  const months = keep?.withoutIncome.months ?? replace?.withoutIncome.months ?? 0;
  const known = (w: LumpyWay | null): LumpyWay | null => (w?.withoutIncome.dry && fundShown(d, w) ? w : null);
  const dry = each({ keep: known(keep), replace: known(replace) }, (w) =>
    w.withoutIncome.dry ? ofHundred(w.withoutIncome.dry) : '',
  );
  const bills = [
    keep && worstBillWords(keep, format, 'if kept'),
    replace && worstBillWords(replace, format, 'if handed on'),
  ].filter((b) => b !== null);
  const loan = d.payments.find((p) => p.replacement === optionOf(d, replace?.id)?.replacement);
  const span = counted(months, 'month').replace(/^\d+/, inWords(months));
  return block(
    html`<h3>What would the bad case mean?</h3>`,
    html`<p>The bad-case bill within two years is ${bills.join(', ')}. ${overThree(keep)}${(replace?.worstBill.payments ?? null) !== null && " A payment can't be put off; many repairs can, save those that make it unsafe."}</p>`,
    months === 0
      ? null
      : html`<p>${capital(span)} without income would still take ${each(ways, (w) => format.round(w.withoutIncome.mustPay)).join(', ')}: payments, insurance, energy, parking. ${dry.length > 0 && `Should they come after the first year, the fund doesn't last through them in ${dry.join(', ')}.`}</p>`,
    loan ? loanOut(page, loan) : null,
  );
};
