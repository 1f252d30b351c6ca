import type { Decision } from '../engine/answer/decision.ts';
import { answerChapter } from './chapters/answer.ts';
import { arithmeticChapter } from './chapters/arithmetic.ts';
import { assumedChapter } from './chapters/assumed.ts';
import { changeChapter } from './chapters/change.ts';
import { beforeSigningChapter } from './chapters/claim/beforeSigning.ts';
import { insurersMoneyChapter } from './chapters/claim/courses.ts';
import { coverChapter } from './chapters/claim/cover.ts';
import { offerChapter } from './chapters/claim/offer.ts';
import { comparedChapter } from './chapters/compared.ts';
import { findOutChapter } from './chapters/findOut.ts';
import { howSureChapter } from './chapters/howSure.ts';
import { lumpyChapter } from './chapters/lumpy.ts';
import { methodChapter } from './chapters/method.ts';
import { monthsChapter } from './chapters/months.ts';
import { chapter, type Page } from './chapters/page.ts';
import { paymentChapter } from './chapters/payment.ts';
import { walkAwayChapter } from './chapters/walkAway.ts';
import { whenChapter } from './chapters/when.ts';
import { workChapter } from './chapters/work.ts';
import type { DrawingDocument } from './charts/dom.ts';
import { generator } from './embed.ts';
import { figure } from './figure.ts';
import { formatsFor } from './format.ts';
import { html, raw } from './markup/html.ts';
import { withoutPrivate } from './privacy.ts';
import { styleSheet } from './style/sheet.ts';

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
 */
export const renderReport = (decision: Decision, { document, scenarioText }: ReportContext): string => {
  const d = withoutPrivate(decision);
  const format = formatsFor(d.facts);
  const page: Page = { d, format, figure: figure(document, format) };
  // A chapter about futures is left out where none were drawn.
  const chapters = [
    insurersMoneyChapter(page),
    offerChapter(page),
    beforeSigningChapter(page),
    assumedChapter(page),
    monthsChapter(page),
    paymentChapter(page),
    howSureChapter(page),
    lumpyChapter(page),
    changeChapter(page),
    findOutChapter(page),
    whenChapter(page),
    walkAwayChapter(page),
    comparedChapter(page),
    coverChapter(page),
    workChapter(page),
    arithmeticChapter(page),
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
