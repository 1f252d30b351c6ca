import type { Decision } from '../../engine/answer/decision.ts';
import type { Quantity } from '../../engine/scenario/inputs/scenario.ts';
import type { Figure } from '../figure.ts';
import type { Formats } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { markWords } from '../words/marks.ts';
import { bare } from '../words/tipping.ts';

/** What every chapter is given. */
export interface Page {
  readonly d: Decision;
  readonly format: Formats;
  readonly figure: (f: Figure) => Html;
}

export interface Chapter {
  readonly id: string;
  /** The question people ask. */
  readonly question: string;
  readonly body: Html;
}

/** The stroke of a way beside its name: solid keeps, dashed replaces. */
export const key = (side: string): Html => html`<i class="key ${side}" aria-hidden="true"></i>`;

/** Numbers whose keys match, in the order asked for; `#` stands for any position. */
export const pick = (d: Decision, ...keys: readonly string[]): readonly Quantity[] =>
  keys.flatMap((wanted) => {
    const like = new RegExp(`^${wanted.replaceAll('.', '\\.').replaceAll('#', '\\d+')}$`);
    return d.quantities.filter((q) => like.test(q.key));
  });

/** The position of the replacement the page is about, for keys such as `replacement.0.price`. */
export const theReplacement = (d: Decision): string => `replacement.${d.bestReplace?.replacement ?? 0}`;

const note = (q: Quantity, format: Formats): Html =>
  html`<li><b>${format.quantity(q)}</b> ${q.label} <span class="mark ${q.mark}">${markWords[q.mark]}${q.isDefault && ', filled in'}</span>${q.source !== '' && html` <small>${q.source}</small>`}${q.range && html` <small>likely ${bare(q, q.range.likely, format)}, 1 in 10 below ${bare(q, q.range.low, format)}, 1 in 10 above ${bare(q, q.range.high, format)}</small>`}</li>`;

/** Assumptions for the margin: value, what it is, whose it is, where it comes from. */
export const notes = (quantities: readonly Quantity[], format: Formats, atMost = 5): Html =>
  quantities.length === 0
    ? html``
    : html`<ul class="note" aria-label="Assumed here">${quantities.slice(0, atMost).map((q) => note(q, format))}</ul>`;

/** A paragraph with its margin beside it, and what follows in the same column. */
export const block = (...inside: readonly (Html | null)[]): Html =>
  html`<div class="block">${inside}</div>\n`;

export const paragraphs = (texts: readonly string[], kind = ''): Html =>
  html`${texts.map((t) => (kind === '' ? html`<p>${t}</p>` : html`<p class="${kind}">${t}</p>`))}`;

export const chapter = ({
  id,
  question,
  body,
}: Chapter): Html => html`<section id="${id}" aria-labelledby="q-${id}">
<h2 id="q-${id}">${question}</h2>
${body}</section>
`;
