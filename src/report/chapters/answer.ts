import type { OptionResult, Reading } from '../../engine/answer/decision.ts';
import { short } from '../charts/look.ts';
import { type ReadingRow, readingsChart } from '../charts/readings.ts';
import { day, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { type Cell, table } from '../tables/table.ts';
import {
  cashWords,
  decidingSentence,
  differenceWords,
  noticesAt,
  notMoneySentence,
  ownHoursSentence,
  safetyFirst,
  savingsLeftWords,
  savingsShown,
  tipSentence,
} from '../words/facts.ts';
import { fitSentences } from '../words/fit.ts';
import { lastsSentence } from '../words/lasting.ts';
import { READINGS, readingWords } from '../words/optionWords.ts';
import { capital, type Sentence } from '../words/sentence.ts';
import { aheadSentence } from '../words/sure.ts';
import {
  cheaperOtherwise,
  costOf,
  disagreement,
  howMuchLess,
  lessAMonth,
  verdictSentence,
} from '../words/verdict.ts';
import { block, key, notes, type Page, paragraphs, pick } from './page.ts';

const sentence = (s: Sentence): Html =>
  html`${s.map((piece) => (typeof piece === 'string' ? piece : html`<strong>${piece.strong}</strong>`))}`;

/** The three numbers a tired person looks for: how much less, a month, what is left of the savings. */
const threeNumbers = ({ d, format }: Page): Html => {
  const each = (words: (o: OptionResult) => string): readonly (Html | null)[] => [
    d.bestKeep && html`<dd>${key('keep')}${words(d.bestKeep)} <span>kept</span></dd>`,
    d.bestReplace && html`<dd>${key('replace')}${words(d.bestReplace)} <span>handed on</span></dd>`,
  ];
  const left = savingsShown(d)
    ? html`<div><dt>Savings left the day after</dt>${each((o) => savingsLeftWords(o, format))}</div>`
    : html`<div><dt>Cash on the day</dt>${each((o) => cashWords(o.cashOnTheDay, format))}</div>`;
  if (!d.bestKeep && !d.bestReplace) return html``;
  const who = d.verdict.cheaper === 'keep' ? 'if kept' : 'if handed on';
  const less = d.difference
    ? html`<div><dt>How much less</dt><dd class="big">${howMuchLess(d, format)}</dd><dd><span>${who}, over ${span(d.horizon)}</span></dd></div>
<div><dt>A month</dt><dd class="big">${lessAMonth(d, format)}</dd><dd><span>less, ${who}</span></dd></div>`
    : '';
  return html`<dl class="three">${less}${left}</dl>\n`;
};

const readingsFigure = ({ d, format, figure }: Page): Html | null => {
  const { bestKeep, bestReplace, difference } = d;
  if (!bestKeep || !bestReplace || !difference) return null;
  const bestOf = (reading: Reading) => {
    const { keep, replace } = d.bestIn[reading];
    return [keep ?? bestKeep, replace ?? bestReplace] as const;
  };
  const rows: ReadingRow[] = READINGS.flatMap((reading) =>
    bestOf(reading).map((option) => ({
      reading: capital(readingWords[reading]),
      side: option.side === 'keep' ? ('keep' as const) : ('replace' as const),
      cost: option.netPresentCost[reading] / 100,
      words: `${costOf(d, option, format, reading)} ${option.side === 'keep' ? 'kept' : 'handed on'}`,
    })),
  );
  /** What it costs, and by which way where that is not the one named above the column. */
  const cell = (option: OptionResult, usual: OptionResult, reading: Reading): Cell => {
    const cost = format.money(option.netPresentCost[reading] / 100);
    return option.id === usual.id ? cost : html`${cost} <small>${short(option.label, 60)}</small>`;
  };
  const apart = READINGS.map((r) => `${readingWords[r]}, ${differenceWords(difference[r], format)}`);
  return figure({
    id: 'readings',
    finding: d.verdict.readingsDisagree
      ? 'The three ways of counting do not agree.'
      : 'The three ways of counting agree.',
    shows: `What each costs over ${span(d.horizon)}, in today's money.`,
    told: `Pairs of bars. ${capital(apart.join('; '))}.`,
    chart: (look) => readingsChart(rows, look),
    table: table({
      caption: 'The two best ways, counted three ways',
      head: ['Counted', short(bestKeep.label, 60), short(bestReplace.label, 60), 'Apart'],
      rows: READINGS.map((r) => {
        const [keep, replace] = bestOf(r);
        return [
          capital(readingWords[r]),
          cell(keep, bestKeep, r),
          cell(replace, bestReplace, r),
          differenceWords(difference[r], format),
        ];
      }),
    }),
  });
};

/** What stands first: the title, what is unsafe, the verdict, three numbers, and how few numbers decide. */
export const answerChapter = (page: Page): Html => {
  const { d, format } = page;
  const first = safetyFirst(d);
  const otherwise = cheaperOtherwise(d, format);
  const disagree = disagreement(d);
  const ahead = aheadSentence(d);
  return html`<section id="answer" aria-labelledby="title">
<p class="dateline">${d.facts.invented && html`<span>An invented household</span> `}<span>${day(d.facts.date)}, looking ${span(d.horizon)} ahead</span></p>
<h1 id="title">${d.facts.title}</h1>
${block(
  first.length === 0 ? null : html`<div class="first">${paragraphs(first)}</div>`,
  otherwise === null ? null : html`<p class="lead"><strong>${otherwise}</strong></p>`,
  disagree === null ? null : html`<p class="disagree">${disagree}</p>`,
  html`<p class="lead">${sentence(verdictSentence(d, format))}</p>`,
  threeNumbers(page),
  paragraphs(
    [fitSentences(d, format).join(' '), lastsSentence(d)].filter((s) => s !== null && s !== '') as string[],
  ),
  html`<p>${[ahead, d.difference && decidingSentence(d), tipSentence(d, format), notMoneySentence(d)].filter((s) => s).join(' ')}</p>`,
  notes(
    pick(
      d,
      'household.priceOfOwnHour',
      'household.lookAhead',
      'household.moneyEarns',
      'household.distanceAYear',
    ),
    format,
  ),
  readingsFigure(page),
  paragraphs([...noticesAt(d, 'answer'), ...[ownHoursSentence(d, format)].filter((s) => s !== null)]),
)}</section>
`;
};
