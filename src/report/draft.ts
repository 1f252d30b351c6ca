import type { Certain, Decision } from '../engine/answer/decision.ts';
import { arithmeticChapter } from './chapters/arithmetic.ts';
import { assumedChapter } from './chapters/assumed.ts';
import { changeChapter } from './chapters/change.ts';
import { beforeSigningChapter } from './chapters/claim/beforeSigning.ts';
import { coverChapter } from './chapters/claim/cover.ts';
import { offerChapter } from './chapters/claim/offer.ts';
import { comparedChapter } from './chapters/compared.ts';
import { yearlyFigure } from './chapters/months.ts';
import type { CertainPage, Page } from './chapters/page.ts';
import { paymentChapter } from './chapters/payment.ts';
import { whenChapter } from './chapters/when.ts';
import { workChapter } from './chapters/work.ts';
import type { DrawingDocument } from './charts/dom.ts';
import { figure } from './figure.ts';
import { formatsFor } from './format.ts';
import { withoutPrivate } from './privacy.ts';

/** A decision as a page, drawn in this document. */
export const pageOf = <D extends Certain>(d: D, document: DrawingDocument): Page<D> => {
  const format = formatsFor(d.facts);
  return { d, format, figure: figure(document, format) };
};

/** The chapters that no drawn future touches, and the picture of another. */
export const draftOf = (page: CertainPage) => ({
  offer: offerChapter(page),
  beforeSigning: beforeSigningChapter(page),
  assumed: assumedChapter(page),
  yearly: yearlyFigure(page),
  payment: paymentChapter(page),
  change: changeChapter(page),
  when: whenChapter(page),
  compared: comparedChapter(page),
  cover: coverChapter(page),
  work: workChapter(page),
  arithmetic: arithmeticChapter(page),
});

export type Draft = ReturnType<typeof draftOf>;

/** What of a report can be written before its futures are drawn: half of it and more. */
export const draftReport = (atAverage: Decision, document: DrawingDocument): Draft =>
  draftOf(pageOf(withoutPrivate(atAverage), document));
