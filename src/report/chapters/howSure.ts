import type { Chances, PairChances } from '../../engine/analysis/chances.ts';
import { giveOrTake, number, ofHundred, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { keeping, replacing } from '../words/optionWords.ts';
import {
  apartWords,
  averageSentence,
  cases,
  exactSentence,
  moreOften,
  sideWords,
  waysOf,
} from '../words/sure.ts';
import { doubtFigure } from './doubt.ts';
import { densityFigure, hundredFigure } from './futures.ts';
import { block, type Chapter, key, notes, type Page, paragraphs } from './page.ts';

const answerSentence = ({ d }: Page, pair: PairChances): string => {
  const { side, chance } = moreOften(pair);
  const what = side === 'keep' ? keeping(d) : replacing(d);
  const told = giveOrTake(chance);
  const ways = waysOf(chance);
  const about = /^\d/.test(ways) ? 'about ' : '';
  if (pair.likelier === 'cannot tell')
    return `Cannot tell: in ${about}${ways}, ${what} comes out cheaper${told && `, ${told}`}.`;
  const yet =
    side === pair.likelier
      ? ''
      : ` On average it is ${sideWords(pair.likelier)} that costs less: when it does, it is by more.`;
  return `In ${about}${ways}, ${what} comes out cheaper.${yet}`;
};

const casesSentence = ({ format }: Page, pair: PairChances): string => {
  const { from, good, bad } = cases(pair);
  return `On average ${apartWords(pair.mean, format)}; in a good case for ${sideWords(from)} (1 in 10 is better) ${apartWords(good, format)}, in a bad case (1 in 10 is worse) ${apartWords(bad, format)}.`;
};

const drawnSentence = ({ d }: Page, c: Chances): string => {
  const told = c.pair ? giveOrTake(c.pair.keepCheaper) : '';
  return `${number(c.futures)} futures of ${span(d.horizon)} were drawn, every way meeting the same ones${told && `; counts are good to ${told}`}.`;
};

const waysTable = ({ d, format }: Page, c: Chances): Html =>
  table({
    caption: 'What each way costs over all futures, cheapest on average first',
    kind: 'ways',
    stacks: true,
    head: ['Way', 'Good case', 'Middle', 'Bad case', 'Cheapest in', 'A wrong choice would cost'],
    rows: c.ways
      .toSorted((a, b) => a.cost.mean.value - b.cost.mean.value || (a.id < b.id ? -1 : 1))
      .map((w) => [
        html`${key(d.options.find((o) => o.id === w.id)?.side ?? 'later')}${w.label}`,
        format.known(w.cost.good),
        format.known(w.cost.middle),
        format.known(w.cost.bad),
        ofHundred(w.cheapest),
        format.known(w.regret),
      ]),
  });

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
      pair && doubtFigure(page, c),
    )}${
      best
        ? html`<div class="full"><h3>What could each way cost?</h3>${waysTable(page, c)}</div>${block(
            html`<p>In today's money over ${span(page.d.horizon)}. In a good case 1 in 10 is better, in a bad case 1 in 10 is worse. Cheapest on average: ${best.label}. Being wrong with it would cost about ${page.format.about(best.regret)}, averaged over all ways it could go, those in which it is right counting as nothing.</p>`,
          )}`
        : ''
    }`,
  };
};
