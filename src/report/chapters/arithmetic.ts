import type { OptionResult } from '../../engine/answer/decision.ts';
import { counted, ledgerCents, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { ledgerByMonth, ledgerByYear, ledgerLines } from '../tables/ledger.ts';
import { folded } from '../tables/table.ts';
import { sunkSentence } from '../words/facts.ts';
import { block, type Chapter, key, notes, type Page, paragraphs, pick } from './page.ts';

const way = ({ d }: Page, option: OptionResult): Html => html`<h3>${key(option.side)}${option.label}</h3>
${ledgerByYear(option, d.horizon)}
${folded('The lines behind these totals, with their reasons', ledgerLines(option))}${folded(`Every cost, line by line: ${counted(option.ledger.length, 'posting')}`, ledgerByMonth(option))}`;

/** Every cost of the two best ways, by year and category, each total traceable to its postings. */
export const arithmeticChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const ways = [d.bestKeep, d.bestReplace].filter((o) => o !== null);
  const totals = ways.map((o) => ledgerCents(o.netPresentCost.counted));
  const apart = d.difference && ledgerCents(Math.abs(d.difference.counted) as typeof d.difference.counted);
  const sunk = sunkSentence(d, format);
  return {
    id: 'arithmetic',
    question: 'How do the numbers add up?',
    body: html`${block(
      html`<p>${
        apart
          ? `To the cent: ${totals.join(' and ')}, which is ${apart} apart.`
          : 'To the cent, every cost of the ways that are open.'
      } Amounts are in ${d.facts.currency}, own time counted; what comes in stands with a minus sign. The last column brings each amount back to today.</p>`,
      notes(
        pick(d, 'household.moneyEarns', 'household.pricesRise.general', 'household.priceOfOwnHour'),
        format,
      ),
      sunk === null ? null : paragraphs([sunk]),
    )}<div class="full">${ways.map((o) => way(page, o))}</div>
${block(html`<p>Every total over ${span(d.horizon)} is the sum of the lines above it, and every line the sum of its postings.</p>`)}`,
  };
};
