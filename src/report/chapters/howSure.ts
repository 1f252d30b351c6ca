import type { Chances, Estimate, PairChances, VarianceShare } from '../../engine/decision/chance/chances.ts';
import { densityChart } from '../charts/density.ts';
import { hundredChart } from '../charts/hundred.ts';
import { type ShareRow, sharesChart } from '../charts/shares.ts';
import {
  giveOrTake,
  inWords,
  knownNumber,
  number,
  ofHundred,
  percent,
  roundTo,
  span,
  stepKnown,
} from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import {
  apartWords,
  averageSentence,
  chanceOf,
  exactSentence,
  moreOften,
  sideWords,
  waysOf,
} from '../words/sure.ts';
import { keeping, replacing } from '../words/ways.ts';
import { block, type Chapter, notes, type Page, paragraphs } from './page.ts';

/** Of what carries the doubt, so many are shown by name; the rest goes together. */
const SHOWN = 8;

const answerSentence = ({ d }: Page, pair: PairChances): string => {
  const { side, chance } = moreOften(pair);
  const what = side === 'keep' ? keeping(d) : replacing(d);
  const told = giveOrTake(chance);
  if (pair.likelier === 'cannot tell')
    return `Cannot tell: in ${waysOf(chance)} it could go, ${what} comes out cheaper${told && `, ${told}`}.`;
  const yet =
    side === pair.likelier
      ? ''
      : ` On average it is ${sideWords(pair.likelier)} that costs less: when it does, it is by more.`;
  return `In ${waysOf(chance)} it could go, ${what} comes out cheaper.${yet}`;
};

/** Good and bad as seen from the side that is cheaper on average. */
const cases = (pair: PairChances) => {
  const from = pair.mean.value >= 0 ? ('keep' as const) : ('replace' as const);
  return from === 'keep'
    ? { from, good: pair.high, bad: pair.low }
    : { from, good: pair.low, bad: pair.high };
};

const casesSentence = ({ format }: Page, pair: PairChances): string => {
  const { from, good, bad } = cases(pair);
  return `On average ${apartWords(pair.mean, format)}. Seen from ${sideWords(from)}: in the middle ${apartWords(pair.middle, format)}; in a good case (1 in 10 is better) ${apartWords(good, format)}; in a bad case (1 in 10 is worse) ${apartWords(bad, format)}.`;
};

const drawnSentence = ({ d }: Page, c: Chances): string => {
  const told = c.pair ? giveOrTake(c.pair.keepCheaper) : '';
  return `${number(c.futures)} futures of ${span(d.horizon)} were drawn, every way meeting the same ones${told && `; counts are good to ${told}`}.`;
};

const hundredFigure = ({ figure }: Page, pair: PairChances): Html => {
  const [keep, replace] = [chanceOf(pair, 'keep'), chanceOf(pair, 'replace')];
  // A mark is never taken from a side that some future went to.
  const some = keep.value > 0 && keep.value < 1;
  const count = Math.round(100 * keep.value);
  const words = (e: Estimate, side: 'keep' | 'replace'): string =>
    `${ofHundred(e)}: ${sideWords(side)} comes out cheaper`;
  return figure({
    id: 'hundred',
    finding: `Of 100 ways it could go: ${ofHundred(keep)} for keeping, ${ofHundred(replace)} for replacing.`,
    shows:
      'Each mark is one future in a hundred. Full discs: keeping comes out cheaper. Hatched squares: replacing does.',
    told: `A hundred marks in ten rows. ${capital(words(keep, 'keep'))}; ${words(replace, 'replace')}.`,
    chart: (look) =>
      hundredChart(
        {
          keep: some ? Math.max(1, Math.min(99, count)) : count,
          keepWords: words(keep, 'keep'),
          replaceWords: words(replace, 'replace'),
        },
        look,
      ),
    table: table({
      caption: 'Of 100 ways it could go',
      head: ['Comes out cheaper', 'In'],
      rows: [
        ['keeping', ofHundred(keep)],
        ['replacing', ofHundred(replace)],
      ],
    }),
  });
};

const densityFigure = ({ figure, format }: Page, pair: PairChances): Html | null => {
  if (pair.bars.length === 0) return null;
  const { from, good, bad } = cases(pair);
  const short = ({ value, error }: Estimate): string =>
    `${format.about({ value: Math.abs(value), error })} ${value > 0 ? 'for keeping' : 'for replacing'}`;
  const marks = [
    { at: bad.value, words: `bad case: ${short(bad)}` },
    { at: pair.middle.value, words: `middle: ${short(pair.middle)}` },
    { at: good.value, words: `good case: ${short(good)}` },
  ].toSorted((a, b) => a.at - b.at);
  const edge = (units: number): string => {
    const side = units === 0 ? '' : units > 0 ? ' for keeping' : ' for replacing';
    return units === 0 ? 'even' : `${format.round(Math.abs(units))}${side}`;
  };
  return figure({
    id: 'density',
    finding: `In the middle ${apartWords(pair.middle, format)}; 8 of 10 futures lie between ${short(pair.low)} and ${short(pair.high)}.`,
    shows: `How the futures are spread over how much less the cheaper way costs. Filled: keeping is cheaper. Hatched: replacing is. Good and bad as seen from ${sideWords(from)}: 1 in 10 lies beyond each.`,
    told: `A hill of bars with its middle at ${short(pair.middle)}; ${marks.map((m) => m.words).join('; ')}. ${capital(ofHundred(pair.keepCheaper))} lie where keeping is cheaper.`,
    chart: (look) =>
      densityChart(pair.bars, marks, { keep: 'keeping cheaper', replace: 'replacing cheaper' }, look),
    table: table({
      caption: 'How the futures are spread',
      head: ['From', 'To', 'Of 1,000 futures'],
      words: 2,
      rows: pair.bars.map((b) => [edge(b.from), edge(b.to), number(1000 * b.share)]),
    }),
  });
};

/** A share of the doubt to the digit its error supports; never below nothing. */
const shareWords = ({ value, error }: Estimate): string => {
  if (value <= 2 * error)
    return `under ${percent(Math.max(0.01, roundTo(Math.max(0, value) + 2 * error, 0.01)), 0)}`;
  return percent(roundTo(value, Math.max(0.01, stepKnown(error))), 0);
};

const shareRow = ({ what, first, total }: VarianceShare): ShareRow => {
  const [alone, together] = [shareWords(first), shareWords(total)];
  return {
    label: what,
    alone: first.value,
    together: total.value,
    words: alone === together || total.value < first.value ? alone : `${alone}, ${together} with others`,
  };
};

const sharesFigure = ({ figure }: Page, c: Chances): Html | null => {
  const all = c.shares.toSorted((a, b) => b.total.value - a.total.value || (a.what < b.what ? -1 : 1));
  const [most] = all;
  if (!most || most.total.value <= 2 * most.total.error) return null;
  const rest = all.slice(SHOWN);
  const lumped: Estimate = {
    value: rest.reduce((s, r) => s + Math.max(0, r.first.value), 0),
    error: Math.sqrt(rest.reduce((s, r) => s + r.first.error ** 2, 0)),
  };
  const rows: readonly ShareRow[] = [
    ...all.slice(0, SHOWN).map(shareRow),
    ...(rest.length === 0
      ? []
      : [
          {
            label: `all ${rest.length === 1 ? 'else' : `${inWords(rest.length)} others`}, by ${rest.length === 1 ? 'itself' : 'themselves'}`,
            alone: lumped.value,
            together: null,
            words: shareWords(lumped),
          },
        ]),
  ];
  return figure({
    id: 'doubt',
    finding: `What carries the doubt: ${most.what}, about ${shareWords(most.first.value > 2 * most.first.error ? most.first : most.total)} of it.`,
    shows:
      'How much of the spread each unknown makes. Filled: by itself. Outlined: with all it does together with others, so these may come to more than the whole.',
    told: rows.map((r) => `${r.label}: ${r.words}`).join('; '),
    chart: (look) => sharesChart(rows, look),
    table: table({
      caption: 'What carries the doubt',
      head: ['Unknown', 'Kind', 'By itself', 'With others'],
      words: 2,
      rows: all.map((r) => [
        r.what,
        r.kind === 'luck' ? 'luck' : 'a number nobody knows',
        shareWords(r.first),
        shareWords(r.total),
      ]),
    }),
  });
};

const waysTable = ({ format }: Page, c: Chances): Html =>
  table({
    caption: 'What each way costs over all futures, cheapest on average first',
    kind: 'ways',
    stacks: true,
    head: ['Way', 'Good case', 'Middle', 'Bad case', 'Cheapest in', 'A wrong choice would cost'],
    rows: c.ways
      .toSorted((a, b) => a.cost.mean.value - b.cost.mean.value || (a.id < b.id ? -1 : 1))
      .map((w) => [
        w.label,
        format.known(w.cost.good),
        format.known(w.cost.middle),
        format.known(w.cost.bad),
        ofHundred(w.cheapest),
        format.known(w.regret),
      ]),
  });

/** Drawn against expected, where each could be wrong without the other. */
const failuresTable = (c: Chances): Html | null =>
  c.failures.length === 0
    ? null
    : folded(
        'Were the failures drawn as often as they should be?',
        table({
          caption: 'Failures expected and counted',
          kind: 'wordy',
          words: 2,
          head: ['Part', 'Of', 'Expected', 'Counted', 'Agree'],
          rows: c.failures.map((f) => [
            f.component,
            f.vehicle,
            knownNumber({ value: f.expected, error: f.drawn.error }),
            knownNumber(f.drawn),
            Math.abs(f.expected - f.drawn.value) <= 3 * f.drawn.error ? 'yes' : 'no',
          ]),
        }),
        html`<p>Expected: how often it fails over the whole time, worked out from its law of life alone. Counted: failures in the futures, on average.</p>`,
      );

/** In how many of the ways it could go which side comes out cheaper, and what the doubt is made of. */
export const howSureChapter = (page: Page): Chapter | null => {
  const c = page.d.chances;
  if (!c) return null;
  const { pair } = c;
  const [best] = c.ways.toSorted((a, b) => a.cost.mean.value - b.cost.mean.value);
  return {
    id: 'how-sure',
    question: 'How sure is it?',
    body: html`${block(
      html`<p>${pair ? answerSentence(page, pair) : 'There are not two sides to compare, so nothing can come out ahead; what each way may cost is below.'} ${pair && casesSentence(page, pair)}</p>`,
      notes(c.ranged, page.format, 8),
      paragraphs([[drawnSentence(page, c), exactSentence(c)].filter((s) => s !== '').join(' ')]),
      pair && hundredFigure(page, pair),
      pair && densityFigure(page, pair),
      pair && html`<p>${averageSentence(pair, page.format)}</p>`,
      pair && sharesFigure(page, c),
    )}${
      best
        ? html`<div class="full"><h3>What could each way cost?</h3>${waysTable(page, c)}</div>${block(
            html`<p>In today's money over ${span(page.d.horizon)}. In a good case 1 in 10 is better, in a bad case 1 in 10 is worse. ${best.label} costs least on average; should it turn out the wrong choice, that would cost about ${page.format.about(best.regret)} taken over all ways it could go.</p>`,
            failuresTable(c),
          )}`
        : block(failuresTable(c))
    }`,
  };
};
