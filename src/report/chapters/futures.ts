import type { Estimate, PairChances } from '../../engine/analysis/chances.ts';
import { densityChart } from '../charts/density.ts';
import { hundredChart } from '../charts/hundred.ts';
import { number, ofHundred, stepOf } from '../format.ts';
import type { Html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import { apartWords, cases, chanceOf, sideWords } from '../words/sure.ts';
import type { Page } from './page.ts';

/** A hundred marks: in how many of a hundred futures which side comes out cheaper. */
export const hundredFigure = ({ figure }: Page, pair: PairChances): Html => {
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
      'Each mark stands for 1 in 100 of the futures drawn. Full discs: keeping comes out cheaper. Hatched squares: replacing does.',
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

/** How the futures are spread over the difference, with even, middle, good and bad case marked. */
export const densityFigure = ({ figure, format }: Page, pair: PairChances): Html | null => {
  if (pair.bars.length === 0) return null;
  const { from, good, bad } = cases(pair);
  const short = ({ value, error }: Estimate): string =>
    `${format.about({ value: Math.abs(value), error })} ${value > 0 ? 'for keeping' : 'for replacing'}`;
  const marks = [
    { name: 'bad case', of: bad },
    { name: 'middle', of: pair.middle },
    { name: 'good case', of: good },
  ].toSorted((a, b) => a.of.value - b.of.value);
  const placed = marks.map(({ name, of: { value, error } }) => ({
    at: value,
    words: `${name} ${format.about({ value: Math.abs(value), error })}`,
  }));
  const step = stepOf(Math.min(...pair.bars.map((b) => b.to - b.from)));
  const edge = (units: number): string =>
    units === 0
      ? 'even'
      : `${format.round(Math.abs(units), step)} ${units > 0 ? 'for keeping' : 'for replacing'}`;
  return figure({
    id: 'density',
    finding: `In the middle ${apartWords(pair.middle, format)}; 8 of 10 futures lie between ${short(pair.low)} and ${short(pair.high)}.`,
    shows: `How the futures are spread over how much less the cheaper way costs. Filled: keeping is cheaper. Hatched: replacing is. Good and bad as seen from ${sideWords(from)}: 1 in 10 lies beyond each.`,
    told: `A hill of bars with its middle at ${short(pair.middle)}; ${marks.map((m) => `${m.name} ${short(m.of)}`).join('; ')}. ${capital(ofHundred(pair.keepCheaper))} lie where keeping is cheaper.`,
    chart: (look) =>
      densityChart(pair.bars, placed, { keep: 'keeping cheaper', replace: 'replacing cheaper' }, look),
    table: table({
      caption: 'How the futures are spread',
      head: ['From', 'To', 'Of 1,000 futures'],
      words: 2,
      rows: pair.bars.map((b) => [edge(b.from), edge(b.to), number(1000 * b.share)]),
    }),
  });
};
