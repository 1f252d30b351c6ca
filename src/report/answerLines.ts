import type { Decision, OptionResult } from '../engine/answer/decision.ts';
import { cheapest } from '../engine/evaluation/results.ts';
import { type Formats, formatsFor, span } from './format.ts';
import { plain } from './markup/html.ts';
import { withoutPrivate } from './privacy.ts';
import { changesSentence } from './words/changes.ts';
import { claimLine } from './words/claim/courses.ts';
import {
  decidingSentence,
  notMoneySentence,
  safetyFirst,
  savingsSentence,
  tipSentence,
} from './words/facts.ts';
import { fitSentences } from './words/fit.ts';
import { lastsSentence } from './words/lasting.ts';
import { lumpyLine } from './words/lumpy.ts';
import { aheadSentence } from './words/sure.ts';
import { cheaperOtherwise, costOf, disagreement, monthlyOf, verdictText } from './words/verdict.ts';
import { payUpToSentence, WHAT_COUNTS, whyThatMuch } from './words/walk.ts';

const wayLine = (d: Decision, option: OptionResult, format: Formats): string =>
  // Over a few months what is owned at the end can outweigh all that is paid.
  option.netPresentCost.counted < 0
    ? `${option.label}: what is owned after ${span(d.horizon)} outweighs what is paid by about ${format.round(-option.netPresentCost.counted / 100)}, in today's money.`
    : `${option.label}: about ${costOf(d, option, format)} over ${span(d.horizon)}, in today's money; works out at ${monthlyOf(d, option, format)} a month.`;

/**
 * The answer in a few plain lines, safety first: the verdict, what each of the two best ways costs, what tips it, what
 * is left of the savings, and what was not counted. Nothing marked private is in them.
 */
export const answerLines = (decision: Decision): string[] => {
  const d = withoutPrivate(decision);
  const format = formatsFor(d.facts);
  const payUpTo = payUpToSentence(d, format);
  const lines: (string | null)[] = [
    ...safetyFirst(d),
    cheaperOtherwise(d, format),
    disagreement(d),
    verdictText(d, format),
    ...fitSentences(d, format),
    lastsSentence(d),
    aheadSentence(d),
    claimLine(d, format),
    d.bestKeep && wayLine(d, d.bestKeep, format),
    d.bestReplace && wayLine(d, d.bestReplace, format),
    ...(['like', 'without'] as const).map((side) => {
      const best = cheapest(d.options, side);
      return best && wayLine(d, best, format);
    }),
    changesSentence(d, format),
    ...(d.verdict.kind === 'none' ? d.closed.map((c) => `${c.label}: not open, because ${c.why}.`) : []),
    tipSentence(d, format),
    d.difference && decidingSentence(d),
    lumpyLine(d, format),
    payUpTo === null ? null : [payUpTo, whyThatMuch(d, format), WHAT_COUNTS].filter((s) => s).join(' '),
    savingsSentence(d, format),
    notMoneySentence(d),
  ];
  return lines.filter((line) => line !== null).map((line) => plain(line).replace(/\s+/g, ' '));
};
