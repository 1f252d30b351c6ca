import type { Chances, Estimate, PairChances, WorthKnowing } from '../../engine/analysis/chances.ts';
import { isFelt } from '../../engine/analysis/swings.ts';
import type { Decision } from '../../engine/answer/decision.ts';
import { type Formats, number, ofHundred, stepKnown } from '../format.ts';
import { capital } from './sentence.ts';

/** Of what one can pay for, anything below this share of what the cheapest way costs is not worth a thought. */
const SMALL = 0.001;

/** A gap below this share of the mean changes nobody's mind. */
const SMALL_GAP = 0.05;

/** The chance that the other side comes out cheaper. */
const complement = ({ value, error }: Estimate): Estimate => ({ value: 1 - value, error });

/** "82 of 100 ways it could go", "nearly all ways it could go". */
export const waysOf = (e: Estimate): string => `${ofHundred(e)} ways it could go`;

export const sideWords = (side: 'keep' | 'replace'): string => (side === 'keep' ? 'keeping' : 'replacing');

/** The side that comes out cheaper in more than half of the futures, and in how many of them. */
export const moreOften = ({
  keepCheaper,
}: PairChances): { readonly side: 'keep' | 'replace'; readonly chance: Estimate } =>
  keepCheaper.value >= 0.5
    ? { side: 'keep', chance: keepCheaper }
    : { side: 'replace', chance: complement(keepCheaper) };

export const chanceOf = ({ keepCheaper }: PairChances, side: 'keep' | 'replace'): Estimate =>
  side === 'keep' ? keepCheaper : complement(keepCheaper);

/** Good and bad as seen from the side that is cheaper on average. */
export const cases = (pair: PairChances) => {
  const from = pair.mean.value >= 0 ? ('keep' as const) : ('replace' as const);
  return from === 'keep'
    ? { from, good: pair.high, bad: pair.low }
    : { from, good: pair.low, bad: pair.high };
};

/** The futures do not say which of the two is cheaper. */
export const cannotTell = (d: Decision): boolean => d.chances?.pair?.likelier === 'cannot tell';

/**
 * "Keeping is ahead in 82 of 100 ways it could go."
 * Null where no futures were drawn or there are not two sides.
 */
export const aheadSentence = (d: Decision): string | null => {
  const pair = d.chances?.pair ?? null;
  if (!pair) return null;
  const { cheaper, kind } = d.verdict;
  if (cheaper === 'same' || kind === 'close' || pair.likelier === 'cannot tell') {
    const { side, chance } = moreOften(pair);
    return `Of the two, ${sideWords(side)} is ahead in ${waysOf(chance)}.`;
  }
  const chance = chanceOf(pair, cheaper);
  return chance.value < 0.5
    ? `Yet ${sideWords(cheaper)} is ahead in ${chance.value > 0 ? 'only ' : ''}${waysOf(chance)}.`
    : `${capital(sideWords(cheaper))} is ahead in ${waysOf(chance)}${guessing(d)}.`;
};

/** Said where more than half of the numbers that move the answer are guesses: luck varies, and they mostly don't. */
const guessing = (d: Decision): string => {
  const felt = d.swings.filter((swing) => isFelt(swing, d.grain));
  const guesses = felt.filter(({ quantity }) => quantity.mark === 'guess');
  return 2 * guesses.length > felt.length ? ', if our guesses are about right' : '';
};

/** "keeping costs about $4,000 less", for a drawn difference; above zero keeping is the cheaper one. */
export const apartWords = ({ value, error }: Estimate, format: Formats): string => {
  if (Math.abs(value) <= error) return 'there is nothing between them';
  return `${sideWords(value > 0 ? 'keep' : 'replace')} costs about ${format.about({ value: Math.abs(value), error })} less`;
};

/** What knowing everything is worth is too little to be paid for, or lies within its error. */
export const littleToFind = ({ perfect, ways }: Chances): boolean => {
  const least = Math.min(...ways.map((w) => Math.abs(w.cost.mean.value)));
  return perfect.value <= 2 * perfect.error || perfect.value < (ways.length === 0 ? 1 : SMALL * least);
};

/** What would be known: a part's name for itself, or the true figure of a number. */
export const knowing = ({ what, kind }: WorthKnowing): string =>
  kind === 'part' ? what : `the true figure for ${what}`;

/** What can be measured to be worth knowing, the most first. */
export const measurable = ({ worthKnowing }: Chances): readonly WorthKnowing[] =>
  worthKnowing
    .filter((w) => w.measurable && w.worth.value > 0)
    .toSorted((a, b) => b.worth.value - a.worth.value || (a.what < b.what ? -1 : 1));

/**
 * What to find out first: the cheapest look that pays, else what is worth most to know; '' where there is nothing to
 * say. Begins with a space.
 */
export const findOutFirst = (d: Decision, format: Formats): string => {
  if (!d.chances || littleToFind(d.chances)) return '';
  const [look] = d.chances.looks.filter((l) => l.pays === 'yes').toSorted((a, b) => a.costs - b.costs);
  if (look)
    return ` Cheapest to find out first: ${look.what}, for ${format.money(look.costs)}; worth up to ${format.about(look.worth)}.`;
  const [most] = measurable(d.chances);
  return most ? ` Worth finding out first: ${knowing(most)}, up to ${format.about(most.worth)}.` : '';
};

/** "6 guesses and table figures that weigh … are taken as exact: …"; '' where none is. */
export const exactSentence = ({ exactGuesses: n }: Chances): string => {
  const weigh = 'at least a tenth as far as the number that moves it most';
  if (n === 0) return '';
  return n === 1
    ? `1 guess or table figure that moves the answer ${weigh} is taken as exact: give it as low, likely, high if you doubt it.`
    : `${number(n)} guesses and table figures that each move the answer ${weigh} are taken as exact: give them as low, likely, high if you doubt them.`;
};

/**
 * The answer at average inputs beside the mean of the futures, both to the digit the mean's error supports, and
 * whether the gap between them is more than the drawing's own error.
 */
export const averageSentence = (pair: PairChances, format: Formats): string => {
  const { mean, atAverageInputs: at } = pair;
  const step = Math.max(1, stepKnown(mean.error));
  const said = (units: number): string =>
    units === 0
      ? 'no difference'
      : `${format.round(Math.abs(units), step)} in favour of ${sideWords(units > 0 ? 'keep' : 'replace')}`;
  const both = `At average inputs the difference is ${said(at)}; the mean of the futures is ${said(mean.value)}.`;
  const small = Math.abs(at - mean.value) < SMALL_GAP * Math.abs(mean.value);
  return pair.gapMatters
    ? `${both} That gap is more than chance${small ? ', though small' : ''}: what happens on average is not what would happen at average inputs. Where they differ, trust the mean of the futures.`
    : `${both} The drawing's own error leaves that much open, so the gap says nothing.`;
};
