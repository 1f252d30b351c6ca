import { toCents } from '../../engine/quantity/money.ts';
import type { Mark, Quantity } from '../../engine/scenario/inputs/scenario.ts';
import { counted, inWords } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { differenceWords, noticesAt } from '../words/facts.ts';
import { markWords } from '../words/marks.ts';
import { capital, listed } from '../words/sentence.ts';
import { bare, weightiest } from '../words/tipping.ts';
import { block, type Chapter, type Page, paragraphs } from './page.ts';

const MARKS: readonly Mark[] = ['quoted', 'measured', 'guess', 'table', 'choice'];
const said: Readonly<Record<Mark, string>> = {
  quoted: 'quoted',
  measured: 'measured',
  guess: 'our own guess',
  table: 'from a table',
  choice: 'our choice',
};

const assumptions = ({ format }: Page, caption: string, of: readonly Quantity[]) =>
  table({
    caption,
    kind: 'wordy',
    words: 3,
    head: ['What', 'Value', 'Whose number, and from where'],
    rows: of.map((q) => [
      q.label,
      format.quantity(q),
      html`<span class="mark ${q.mark}">${markWords[q.mark]}${q.isDefault && ', filled in'}</span>${q.source !== '' && html`<br>${q.source}`}${q.note !== '' && html`<br><small>${q.note}</small>`}`,
    ]),
  });

/** What is filled in and moves the answer by this part of it or more is listed. */
const FELT = 0.1;

/** Defaults that move the answer by a tenth or more, and to what: each as far either way as its swing goes. */
const fillersFelt = ({ d, format }: Page): Html | null => {
  const { difference } = d;
  if (!difference || difference.counted === 0) return null;
  const today = difference.counted / 100;
  const moved = d.swings.filter(
    ({ quantity, low, high }) =>
      quantity.isDefault &&
      Math.max(Math.abs(low.difference - today), Math.abs(high.difference - today)) >= FELT * Math.abs(today),
  );
  if (moved.length === 0)
    return html`<p>Nothing that was filled in moves the answer by a tenth, moved by a fifth or over its range.</p>`;
  const then = (q: Quantity, end: (typeof moved)[number]['low']): string =>
    `${bare(q, end.value, format)}: ${differenceWords(toCents(end.difference), format)}`;
  return html`<div class="onscreen"><h3>Filled in, and worth a tenth of the answer</h3>${table({
    caption: 'Filled in, and worth a tenth of the answer: moved by a fifth, or over its range',
    kind: 'wordy',
    words: 4,
    head: ['What', 'Value', 'Lower', 'Higher'],
    rows: moved.map(({ quantity, low, high }) => [
      quantity.label,
      format.quantity(quantity),
      then(quantity, low),
      then(quantity, high),
    ]),
  })}</div>`;
};

const groups: readonly (readonly [string, RegExp])[] = [
  ['The household and its prices', /^household\./],
  ['The vehicle we have', /^vehicle\./],
  ['The work it needs', /^workNeeded\./],
  ['What would replace it', /^replacement\./],
  ['Doing without', /^doingWithout\./],
  ['Another like ours', /^anotherLikeOurs\./],
];

/** Whose numbers the answer rests on; every one of them, with its source. */
export const assumedChapter = (page: Page): Chapter => {
  const { d } = page;
  const counts = MARKS.map(
    (mark) => [d.quantities.filter((q) => q.mark === mark).length, said[mark]] as const,
  );
  const filled = d.quantities.filter((q) => q.isDefault).length;
  const deciding = weightiest(d, 6);
  return {
    id: 'assumed',
    question: 'What did we take for granted?',
    body: html`${block(
      html`<p>Of ${counted(d.quantities.length, 'number')}, ${listed(
        counts.filter(([n]) => n > 0).map(([n, words]) => `${inWords(n)} ${n === 1 ? 'is' : 'are'} ${words}`),
      )}. ${filled === 0 ? 'None was filled in for us.' : `${capital(inWords(filled))} ${filled === 1 ? 'was' : 'were'} filled in because nobody gave a figure.`}</p>`,
      d.difference && d.verdict.deciding.of < d.quantities.length
        ? html`<p>${capital(inWords(d.verdict.deciding.of))} of them move the answer at all.</p>`
        : null,
      paragraphs(noticesAt(d, 'assumptions')),
      deciding.length === 0
        ? null
        : html`<div class="onscreen"><h3>The ones that weigh most</h3>${assumptions(page, 'The numbers that weigh most', deciding)}</div>`,
      fillersFelt(page),
      folded(
        `All ${counted(d.quantities.length, 'number')}, and where each comes from`,
        ...groups
          .map(([name, like]) => [name, d.quantities.filter((q) => like.test(q.key))] as const)
          .filter(([, of]) => of.length > 0)
          .map(([name, of]) => html`<h3>${name}</h3>${assumptions(page, name, of)}`),
      ),
    )}`,
  };
};
