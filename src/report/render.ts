import type { Decision } from '../engine/answer/decision.ts';
import { answerChapter } from './chapters/answer.ts';
import { insurersMoneyChapter } from './chapters/claim/courses.ts';
import { findOutChapter } from './chapters/findOut.ts';
import { howSureChapter } from './chapters/howSure.ts';
import { lumpyChapter } from './chapters/lumpy.ts';
import { methodChapter } from './chapters/method.ts';
import { monthsChapter } from './chapters/months.ts';
import { chapter } from './chapters/page.ts';
import { walkAwayChapter } from './chapters/walkAway.ts';
import type { DrawingDocument } from './charts/dom.ts';
import { type Draft, draftOf, pageOf } from './draft.ts';
import { generator } from './embed.ts';
import { html, raw } from './markup/html.ts';
import { withoutPrivate } from './privacy.ts';
import { styleSheet } from './style/sheet.ts';

export { draftReport } from './draft.ts';

export interface ReportContext {
  /** Where charts are drawn: linkedom's document, or a browser's. */
  readonly document: DrawingDocument;
  /** Kept inside the report so that it can be run again; words marked private are already out of it. */
  readonly scenarioText: string;
}

/** Nothing is fetched and nothing runs; only the page's own style and pictures inside it are let through. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/**
 * One self-contained HTML file: the answer first, then the questions people ask, each with its figure, its table one
 * tap below, and its assumptions in the margin. The same decision gives the same bytes.
 *
 * @param draft of the same decision at average inputs; null: nothing was written beforehand
 */
export const renderReport = (
  decision: Decision,
  { document, scenarioText }: ReportContext,
  draft: Draft | null = null,
): string => {
  const d = withoutPrivate(decision);
  const page = pageOf(d, document);
  const drafted = draft ?? draftOf(page);
  // A chapter about futures is left out where none were drawn.
  const chapters = [
    insurersMoneyChapter(page),
    drafted.offer,
    drafted.beforeSigning,
    drafted.assumed,
    monthsChapter(page, drafted.yearly),
    drafted.payment,
    howSureChapter(page),
    lumpyChapter(page),
    drafted.change,
    findOutChapter(page),
    drafted.when,
    walkAwayChapter(page),
    drafted.compared,
    drafted.cover,
    drafted.work,
    drafted.arithmetic,
    methodChapter(page, scenarioText),
  ].filter((c) => c !== null);
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${raw(POLICY)}">
<meta name="generator" content="${generator(d.version)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${d.facts.title}</title>
<style>${raw(styleSheet)}</style>
</head>
<body>
<header><p>Stillworth</p></header>
<main>
${answerChapter(page)}<nav aria-label="Questions"><ol>${chapters.map((c) => html`<li><a href="#${c.id}">${c.question}</a></li>`)}</ol></nav>
${chapters.map(chapter)}</main>
<footer><p>Made by Stillworth ${d.version}. Information, not advice.</p></footer>
</body>
</html>
`.markup;
};
