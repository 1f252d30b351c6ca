import type { ClaimView, CourseView } from '../../../engine/analysis/collisionViews.ts';
import { PLACES_STATEMENT } from '../../../engine/scenario/places/places.ts';
import { ledgerCents } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { fallsWords, lenderWords, sourceWords, taxWords, testWords } from '../../words/claim/rule.ts';
import { block, type Chapter, notes, type Page, paragraphs, pick } from '../page.ts';
import { comparablesTable, estimateTable, newerSentence, statementTable } from './offerTables.ts';

/** What is settled, without what follows on it. */
const settledWords = ({ label }: CourseView): string =>
  label.replace(/, and (?:keep it|get the .*|do without)$/, '');

/** One statement for each different payment: courses that are settled alike share theirs. */
const statements = (courses: readonly CourseView[]): readonly (readonly [CourseView, string])[] => {
  const seen = new Map<string, CourseView[]>();
  for (const course of courses) {
    if (course.statement === null) continue;
    const alike = JSON.stringify([course.statement, course.split, course.atMost]);
    seen.set(alike, [...(seen.get(alike) ?? []), course]);
  }
  return [...seen.values()].flatMap((alike) =>
    alike[0] ? [[alike[0], [...new Set(alike.map(settledWords))].join('; ')] as const] : [],
  );
};

const thresholdPart = (page: Page, { threshold: test, value }: ClaimView): Html | null => {
  const place = page.d.facts.claim?.place;
  if (!place) return null;
  const line =
    test.from === null
      ? ''
      : ` A repair of ${ledgerCents(test.from)} or more would surely be one${test.left === null ? '' : `: up to ${ledgerCents(test.left)} more may be found, before tax, and it still is none`}.`;
  return html`<h3>Is it a total loss?</h3><p>${place.name}: ${testWords(place)} The repair that counts comes to ${ledgerCents(test.tested)}, what it was worth to ${ledgerCents(value)}${test.salvage !== null && `, the bid for the wreck to ${ledgerCents(test.salvage)}`}. <strong>${fallsWords(test.result)}</strong>${line}</p>
<p><small>Test: ${sourceWords(place.totalLoss)}. ${place.settlement && `Tax: ${taxWords(place)}; ${sourceWords(place.settlement)}.`} ${place.fault && `Fault: ${sourceWords(place.fault)}.`}</small></p>`;
};

/** The arithmetic of the offer, to the cent, as one would send it to an adjuster. */
export const offerChapter = (page: Page): Chapter | null => {
  const { d, format } = page;
  const view = d.claim;
  const facts = d.facts.claim;
  if (view === null || facts === null) return null;
  const newer = newerSentence(view);
  const compared = comparablesTable(page);
  return {
    id: 'offer',
    question: 'Does the offer add up?',
    body: html`${block(
      html`<p>To the cent, in ${d.facts.currency}: it was worth ${ledgerCents(view.value)} that day, the repair is put at ${ledgerCents(view.estimate.totals.total)}. Every line below can be disputed; ask for theirs beside it.</p>`,
      notes(
        pick(
          d,
          'claim.salesTax',
          'claim.salvage',
          'claim.estimate.supplement.chance',
          'claim.estimate.supplement.amount',
        ),
        format,
      ),
    )}${compared && html`<div class="full"><h3>What was it worth?</h3>${compared}</div>`}${block(
      html`<h3>What does the repair come to?</h3>`,
      estimateTable(view),
      newer === null ? null : html`<p>${newer}</p>`,
      thresholdPart(page, view),
    )}${block(
      html`<h3>What do they pay, and who gets it?</h3>`,
      facts.lender && html`<p>${lenderWords(facts.lender)}</p>`,
      ...statements(view.courses).map(
        ([course, what]) => html`<p><b>${what}</b></p>${statementTable(course, what)}`,
      ),
      paragraphs([
        ...facts.place.notes.map((note) => `${note.words} ${sourceWords(note)}.`),
        PLACES_STATEMENT,
      ]),
    )}`,
  };
};
