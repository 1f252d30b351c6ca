import type { ClaimFacts } from '../../../engine/scenario/inputs/claim.ts';
import { day } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { type Asked, whatToAsk } from '../../words/claim/ask.ts';
import { NOT_ADVICE, STRAIGHT, whatCouldBeLost } from '../../words/claim/claimCautions.ts';
import { block, type Chapter, type Page } from '../page.ts';

/** What is known already of the three things that cannot be undone. */
const known = (facts: ClaimFacts): string =>
  [
    facts.signingCloses === true
      ? 'By what was told, signing closes the claim: what is found later is then yours to pay.'
      : facts.signingCloses === false
        ? 'By what was told, signing leaves the claim open; have that in writing.'
        : 'Nobody has said yet whether signing closes the claim: ask that first.',
    facts.injured === true
      ? 'Somebody was hurt: sign no release that reaches beyond the vehicle before a doctor and somebody who knows the law have looked at it.'
      : facts.injured === null
        ? 'A release for the vehicle must not give up a claim for an injury that shows later.'
        : '',
  ]
    .filter((s) => s !== '')
    .join(' ');

const dates = ({ answerBy, storagePaidUntil }: ClaimFacts): Html | null => {
  const all = [
    ...answerBy,
    ...(storagePaidUntil === ''
      ? []
      : [{ what: 'the last day of storage that the insurer pays', date: storagePaidUntil, past: false }]),
  ].toSorted((a, b) => (a.date < b.date ? -1 : 1));
  return all.length === 0
    ? html`<p>No date to answer by was told: ask for one, and for what happens after it.</p>`
    : html`<h3>By when?</h3><ul class="plain">${all.map(({ what, date, past }) => html`<li><b>${day(date)}</b>: ${what}${past && ' (past)'}</li>`)}</ul>`;
};

const question = ({ ask, why }: Asked): Html => html`<li><b>${ask}</b> ${why}</li>`;

/** What to have in writing before anything is signed or cashed. */
export const beforeSigningChapter = ({ d }: Page): Chapter | null => {
  const facts = d.facts.claim;
  if (facts === null || facts.pays === 'nobody') return null;
  const [first = [], rest = []] = whatToAsk(facts);
  return {
    id: 'before-signing',
    question: 'What should be asked before signing?',
    body: block(
      html`<p><strong>Get it in writing before you sign or pay in a cheque.</strong> ${known(facts)}</p>`,
      html`<ul class="note care" aria-label="Take care: the insurer's papers"><li><b>Straight</b> ${STRAIGHT.truth}</li><li><b>Your share</b> ${STRAIGHT.waive}</li><li><b>Papers</b> ${STRAIGHT.brand}</li></ul>`,
      html`<ul class="plain">${first.map(question)}</ul>`,
      html`<h3>What could be lost by signing?</h3><ul class="plain">${whatCouldBeLost(facts).map((words) => html`<li>${words}</li>`)}</ul>`,
      dates(facts),
      html`<h3>What else should be asked of ${facts.insurer === '' ? 'the insurer' : facts.insurer}?</h3><ul class="plain">${rest.map(question)}</ul>`,
      html`<p>${NOT_ADVICE}</p>`,
    ),
  };
};
