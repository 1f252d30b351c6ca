import type { Decision } from '../../engine/answer/decision.ts';
import { counted, inWords, span } from '../format.ts';
import { replacementName } from './optionWords.ts';
import { ofHundred } from './survival.ts';

const months = (count: number): string =>
  count === 1 ? 'one month' : count <= 12 ? `${inWords(count)} months` : counted(count, 'month');

/** "Mending it pays if it then lasts seven months." Null where there is nothing to hold it against. */
export const lastsSentence = (d: Decision): string | null => {
  if (!d.lasting || !d.bestKeep || !d.bestReplace) return null;
  const what = d.facts.jobs.length > 0 ? 'Mending it' : 'Keeping it';
  const then = d.facts.jobs.length > 0 ? 'then ' : '';
  if (d.lasting.months === null) return `${what} would not pay even if it ${then}lasted ${span(d.horizon)}.`;
  if (d.lasting.months === 0) return `${what} pays even if it ${then}breaks down for good within a month.`;
  // It has lasted so long where it was not lost by the end of the month before.
  const chance = d.survival?.byMonth[d.lasting.months - 1];
  const lasts = chance === undefined ? '' : `; ${ofHundred(chance)} of 100 do`;
  return `${what} pays if it ${then}lasts ${months(d.lasting.months)}, the ${replacementName(d)} after that${lasts}.`;
};
