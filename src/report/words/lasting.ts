import type { Decision } from '../../engine/answer/decision.ts';
import { counted, inWords, span } from '../format.ts';

const months = (count: number): string =>
  count === 1 ? 'one month' : count <= 12 ? `${inWords(count)} months` : counted(count, 'month');

/** "Mending it pays if it then lasts seven months." Null where there is nothing to hold it against. */
export const lastsSentence = (d: Decision): string | null => {
  if (!d.lasting || !d.bestKeep || !d.bestReplace) return null;
  const what = d.facts.jobs.length > 0 ? 'Mending it' : 'Keeping it';
  const then = d.facts.jobs.length > 0 ? 'then ' : '';
  if (d.lasting.months === null) return `${what} would not pay even if it ${then}lasted ${span(d.horizon)}.`;
  return d.lasting.months === 0
    ? `${what} pays even if it ${then}breaks down for good within a month.`
    : `${what} pays if it ${then}lasts ${months(d.lasting.months)}.`;
};
