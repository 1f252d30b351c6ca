import type { ClaimView, CourseView } from '../../../engine/analysis/collisionViews.ts';
import type { Quantity } from '../../../engine/scenario/inputs/scenario.ts';
import { coursesChart } from '../../charts/courses.ts';
import { ofHundred, span, stepOf, weekends } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { type Cell, folded, table } from '../../tables/table.ts';
import { aroundTheClaim } from '../../words/claim/around.ts';
import { AFTER_A_COLLISION } from '../../words/claim/claimCautions.ts';
import {
  bestOfEach,
  closedByReason,
  closedCount,
  coursesCheapestFirst,
  handAgainstCost,
  happenedSentence,
  inHandWords,
  moneySentence,
  payerSentence,
} from '../../words/claim/courses.ts';
import { lenderWords } from '../../words/claim/rule.ts';
import { emptyWords } from '../../words/optionWords.ts';
import { capital } from '../../words/sentence.ts';
import { block, type Chapter, key, notes, type Page, pick } from '../page.ts';
import { claimTips } from './tips.ts';

const IN_PICTURE = 10;

/** To three digits, so that ways near each other can be told apart. */
const costWords = ({ format }: Page, { cost }: CourseView): string =>
  format.round(cost.counted / 100, Math.max(1, stepOf(cost.counted / 100) / 10));

const coursesFigure = (page: Page, courses: readonly CourseView[]): Html => {
  const rows = courses.slice(0, IN_PICTURE).map((course) => ({
    id: course.id,
    label: course.label,
    side: course.side,
    inHand: course.inHand / 100,
    inHandWords: inHandWords(course.inHand, page.format),
    cost: course.cost.counted / 100,
    costWords: costWords(page, course),
  }));
  const years = `over ${span(page.d.horizon)}`;
  return page.figure({
    id: 'courses',
    finding: handAgainstCost(courses),
    shows: `At the left what is in hand the day it is settled, at the right what it costs ${years}, in today's money${courses.length > IN_PICTURE ? `; the ${IN_PICTURE} cheapest of ${courses.length}` : ''}. Filled: kept. Hatched: handed on now.${emptyWords(courses)}`,
    told: rows.map((r) => `${r.label}: ${r.inHandWords} in hand, ${r.costWords} in all`).join('; '),
    chart: (look) => coursesChart(rows, { inHand: 'in hand that day', cost: years }, look),
    table: null,
  });
};

const closedList = ({ closed }: ClaimView): Html | null =>
  closed.length === 0
    ? null
    : html`<h3>Which are closed to you, and why?</h3><ul class="closed">${closedByReason(closed).map(({ why, labels }) => html`<li><b>${capital(labels.map((label) => label.charAt(0).toLowerCase() + label.slice(1)).join('; '))}.</b> ${capital(why)}.</li>`)}</ul>`;

/** In how many of the futures drawn a way is the cheapest; '' where it was not followed through them. */
const cheapestIn = ({ d }: Page, { id }: CourseView): string => {
  const followed = d.chances?.ways.find((way) => way.id === id);
  return followed ? ofHundred(followed.cheapest) : '';
};

const coursesTable = (page: Page, courses: readonly CourseView[], caption: string): Html => {
  const drawn = courses.some((course) => cheapestIn(page, course) !== '');
  return table({
    caption,
    kind: 'ways',
    stacks: true,
    head: [
      'Way',
      'In hand that day',
      'Own work in all',
      `Over ${span(page.d.horizon)}, in today's money`,
      ...(drawn ? ['Cheapest in'] : []),
    ],
    rows: courses.map((course): Cell[] => [
      html`${key(course.side)}${course.label}`,
      inHandWords(course.inHand, page.format),
      weekends(course.hours),
      costWords(page, course),
      ...(drawn ? [cheapestIn(page, course)] : []),
    ]),
  });
};

/** Which ways share it: by name where they are few. */
const whose = (labels: readonly string[], of: number): string =>
  labels.length === of
    ? 'Every way.'
    : labels.length > 3
      ? `${labels.length} of the ${of} ways.`
      : `${labels.join('; ')}.`;

/** What each way rules out, and what may still go against it: said once where several share it. */
const shared = (courses: readonly CourseView[], of: (course: CourseView) => readonly string[]): Html => {
  const said = new Map<string, string[]>();
  for (const course of courses)
    for (const text of of(course)) said.set(text, [...(said.get(text) ?? []), course.label]);
  return html`<ul class="plain">${[...said].map(([text, labels]) => html`<li>${capital(text)}${text.endsWith('.') ? '' : '.'} <small>${whose(labels, courses.length)}</small></li>`)}</ul>`;
};

const section = (
  heading: string,
  courses: readonly CourseView[],
  of: (course: CourseView) => readonly string[],
): Html | null =>
  courses.some((course) => of(course).length > 0) ? html`<h3>${heading}</h3>${shared(courses, of)}` : null;

/** What somebody told; a nil filled in says nothing. */
const told = (quantities: readonly Quantity[]): readonly Quantity[] =>
  quantities.filter((q) => !(q.isDefault && q.value === 0));

/** Money around the settlement, where the choice is made: what comes with it, and what stays with the household. */
const around = ({ d, format }: Page): Html | null => {
  const lines = aroundTheClaim(d, format);
  const lender = d.facts.claim?.lender;
  return lines.length === 0 && !lender
    ? null
    : html`<h3>What comes with it, and what stays with you?</h3><ul class="plain">${lender && html`<li><b>The lender.</b> ${lenderWords(lender)}</li>`}${lines.map(({ what, words }) => html`<li><b>${what}.</b> ${words}</li>`)}</ul>`;
};

/** The ways with the insurer's money, side by side: what is had today, what it costs, what is closed and why. */
export const insurersMoneyChapter = (page: Page): Chapter | null => {
  const { d, format } = page;
  const view = d.claim;
  const facts = d.facts.claim;
  if (view === null || facts === null) return null;
  const courses = coursesCheapestFirst(d);
  const { best, others } = bestOfEach(courses);
  return {
    id: 'insurers-money',
    question: "What can the insurer's money do?",
    body: html`${block(
      html`<p>${happenedSentence(facts)} ${payerSentence(facts)} <strong>${moneySentence(d, format) ?? 'No way with it is open.'}</strong>${closedCount(d)}</p>`,
      notes(told(pick(d, 'claim.value', 'claim.deductible', 'claim.salvage', 'claim.fault')), format),
      closedList(view),
      best.length === 0 ? null : coursesFigure(page, best),
    )}${courses.length === 0 ? '' : html`<div class="full">${coursesTable(page, best, 'What the money can do, cheapest first')}${others.length > 0 && folded('The same with what else may follow', coursesTable(page, others, 'What else may follow'))}${d.options.some(({ side }) => side === 'keep') && !d.options.some(({ side }) => side === 'later') && html`<p>Getting another later is no way of its own here: no date looked at is cheaper than keeping it.</p>`}</div>`}${block(
      html`<ul class="note care" aria-label="Take care: after a collision"><li><b>Look first</b> ${AFTER_A_COLLISION.inspect}</li><li><b>Airbags, belts</b> ${AFTER_A_COLLISION.airbags}</li><li><b>Paint</b> ${AFTER_A_COLLISION.paint}</li><li><b>Welding</b> ${AFTER_A_COLLISION.welding}</li></ul>`,
      around(page),
      section('What does each way rule out?', best, (course) => course.forecloses),
      section('What may still go against it?', best, (course) => course.risks),
      claimTips(view, format),
    )}`,
  };
};
