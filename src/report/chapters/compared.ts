import type { OptionResult } from '../../engine/answer/decision.ts';
import { waysChart } from '../charts/ways.ts';
import { span, weekends } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { type Cell, folded, table } from '../tables/table.ts';
import { cashWords, savingsShown, savingsWords } from '../words/facts.ts';
import { cheapestFirst, emptyWords } from '../words/optionWords.ts';
import { capital } from '../words/sentence.ts';
import { costOf, monthlyOf } from '../words/verdict.ts';
import { block, type Chapter, key, notes, type Page, pick } from './page.ts';

const IN_PICTURE = 10;

const endWords = ({ format }: Page, o: OptionResult): string => {
  const owns = format.round(o.valueAtEnd / 100);
  return o.owedAtEnd > 0 ? `${owns}, with ${format.round(o.owedAtEnd / 100)} owed` : owns;
};

const waysTable = (page: Page, options: readonly OptionResult[], caption: string): Html => {
  const { d, format } = page;
  const savings = savingsShown(d);
  const head = [
    'Way',
    "In today's money",
    'A month',
    'Cash on the day',
    ...(savings ? ['Savings the day after', 'Savings at their lowest'] : []),
    'Own work on the day',
    'Own work in all',
    "What we'd own at the end",
  ];
  return table({
    caption,
    kind: 'ways',
    stacks: true,
    head,
    rows: options.map((o): Cell[] => [
      html`${key(o.side)}${o.label}`,
      costOf(d, o, format),
      monthlyOf(d, o, format),
      cashWords(o.cashOnTheDay, format),
      ...(savings ? [savingsWords(o.savingsAfter, format), savingsWords(o.savingsLowest, format)] : []),
      weekends(o.hours.onTheDay),
      weekends(o.hours.total),
      endWords(page, o),
    ]),
  });
};

const waysFigure = (page: Page, options: readonly OptionResult[]): Html => {
  const { d, format, figure } = page;
  const shown = options.slice(0, IN_PICTURE);
  const rows = shown.map((o) => ({
    id: o.id,
    label: o.label,
    side: o.side,
    cost: o.netPresentCost.counted / 100,
    words: costOf(d, o, format),
  }));
  return figure({
    id: 'ways',
    finding: `${shown[0]?.label ?? 'Nothing'} costs least.`,
    shows: `What each open way costs over ${span(d.horizon)}, in today's money${options.length > IN_PICTURE ? `; the ten cheapest of ${options.length}` : ''}. Filled: kept. Hatched: handed on now.${emptyWords(shown)}`,
    told: rows.map((r) => `${r.label}: ${r.words}`).join('; '),
    chart: (look) => waysChart(rows, look),
    table: null,
  });
};

/** The cheapest way of handing on now for each way of letting the old one go. */
const lettingGo = ({ d, format }: Page, options: readonly OptionResult[]): Html | null => {
  const seen = new Map<string, OptionResult>();
  for (const o of options)
    if (o.side === 'replace' && o.letGo !== null && !seen.has(o.letGo)) seen.set(o.letGo, o);
  if (seen.size < 2) return null;
  const names = {
    private: 'private sale',
    'trade-in': 'traded in',
    'as it stands': 'sold as it stands',
    scrap: 'scrapped',
    'to the insurer': 'given up to the insurer',
  };
  return html`<h3>How would the old one go?</h3><p>Cheapest first: ${[...seen.values()]
    .map((o) => `${names[o.letGo ?? 'scrap']}, about ${costOf(d, o, format)} in all`)
    .join('; ')}.</p>`;
};

/** All ways side by side, the closed ones with what closes them. */
export const comparedChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const options = cheapestFirst(d.options);
  const [best] = options;
  return {
    id: 'ways',
    question: 'What are all the ways?',
    body: html`${block(
      html`<p>${
        best
          ? `${best.label} costs least of ${options.length === 1 ? 'the one way' : `the ${options.length} ways`} open: about ${costOf(d, best, format)} over ${span(d.horizon)}, ${cashWords(best.cashOnTheDay, format)} on the day itself.`
          : 'No way is open as things stand.'
      }</p>`,
      notes(
        pick(
          d,
          'vehicle.sellsFor.running',
          'vehicle.sellsFor.asItStands',
          'vehicle.sellsFor.tradeIn',
          'household.savings',
          'household.cardRate',
        ),
        format,
      ),
      best ? waysFigure(page, options) : null,
    )}${best ? html`<div class="full">${waysTable(page, options, 'All open ways, cheapest first')}</div>` : ''}${block(
      best ? html`<p>A weekend is twelve own hours.</p>` : null,
      lettingGo(page, options),
      d.closed.length === 0
        ? null
        : html`<h3>Which are closed, and why?</h3><ul class="closed">${d.closed.slice(0, 8).map((c) => html`<li><b>${c.label}:</b> ${c.why}</li>`)}</ul>${
            d.closed.length > 8
              ? folded(
                  `${d.closed.length - 8} more`,
                  html`<ul class="closed">${d.closed.slice(8).map((c) => html`<li><b>${capital(c.label)}:</b> ${c.why}</li>`)}</ul>`,
                )
              : ''
          }`,
    )}`,
  };
};
