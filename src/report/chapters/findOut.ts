import type { Chances, LookWorth } from '../../engine/analysis/chances.ts';
import { type ShareRow, sharesChart } from '../charts/shares.ts';
import { number, ofHundred, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import { knowing, littleToFind, measurable } from '../words/sure.ts';
import { block, type Chapter, type Page } from './page.ts';

const IN_PICTURE = 8;
const UNMEASURED = 'nothing we can measure';

/** What nobody gave a chance of is not among it. */
const unasked = (d: Page['d']): string =>
  d.notices.some(({ kind }) => kind === 'not-cured')
    ? ' Whether the work cures it, and what shows once it is opened, is not in that: nobody gave a chance of it.'
    : '';

const answerSentence = ({ d, format }: Page, c: Chances): string => {
  if (littleToFind(c))
    return 'Nothing here is worth paying to find out: no answer would change the choice by enough to matter.';
  const all = `Knowing beforehand how everything turns out would be worth up to ${format.about(c.perfect)}; no inspection, quote or question is worth more than that.${unasked(d)}`;
  const [most] = measurable(c);
  return most
    ? `Most of all ${knowing(most)}: worth up to ${format.about(most.worth)}. ${all}`
    : `No one thing alone is worth anything we can measure. ${all}`;
};

const worthFigure = ({ format, figure }: Page, c: Chances): Html | null => {
  const found = measurable(c);
  const [most] = found;
  if (!most || littleToFind(c)) return null;
  const rows: ShareRow[] = found.slice(0, IN_PICTURE).map((w) => ({
    label: knowing(w),
    alone: w.worth.value,
    together: null,
    words: `up to ${format.about(w.worth)}`,
  }));
  const others = c.worthKnowing.length - found.length;
  return figure({
    id: 'worth-knowing',
    finding: `Worth up to ${format.about(most.worth)} to know ${knowing(most)}.`,
    shows: `What knowing one thing for certain before choosing is worth. They do not add up: one known makes the next worth less.${others > 0 ? ` Not drawn: ${number(others)} worth ${UNMEASURED}.` : ''}`,
    told: rows.map((r) => `${r.label}: ${r.words}`).join('; '),
    chart: (look) => sharesChart(rows, look),
    table: table({
      caption: 'Worth finding out first',
      head: ['To know', 'Worth'],
      rows: c.worthKnowing
        .toSorted((a, b) => b.worth.value - a.worth.value || (a.what < b.what ? -1 : 1))
        .map((w) => [capital(knowing(w)), w.measurable ? `up to ${format.known(w.worth)}` : UNMEASURED]),
    }),
  });
};

const PAYS: Readonly<Record<LookWorth['pays'], string>> = {
  yes: 'worth it',
  no: 'not worth it',
  'cannot tell': 'cannot tell whether it is worth it',
};

const lookWords = ({ format }: Page, l: LookWorth): string => {
  const within = span(l.within);
  const seen = `It shows whether the ${l.component} fails within ${within} (it does in ${ofHundred(l.event)} ways), right ${number(100 * l.sees)} times in 100 when it will and ${number(100 * l.clears)} when it will not.`;
  const worth =
    l.worth.value > 2 * l.worth.error ? `Worth up to ${format.about(l.worth)}` : `Worth ${UNMEASURED}`;
  const never =
    l.perfect.value > 2 * l.perfect.error ? ` Were it never wrong: up to ${format.about(l.perfect)}.` : '';
  return `${worth}; it costs ${format.money(l.costs)}: ${PAYS[l.pays]}. ${seen}${never}`;
};

/** What each thing not known would be worth to know before choosing, and whether a look at it pays. */
export const findOutChapter = (page: Page): Chapter | null => {
  const c = page.d.chances;
  if (!c) return null;
  return {
    id: 'find-out',
    question: 'What is worth finding out first?',
    body: block(
      html`<p>${answerSentence(page, c)}</p>`,
      worthFigure(page, c),
      c.looks.length === 0
        ? null
        : html`<h3>Does a look pay?</h3><ul class="plain">${c.looks.map((l) => html`<li><b>${capital(l.what)}:</b> ${lookWords(page, l)}</li>`)}</ul>`,
    ),
  };
};
