import type { ClaimBreakEven, ClaimView } from '../../../engine/decision/claim/view.ts';
import type { Tips } from '../../../engine/valuation/cover.ts';
import { type Formats, number, percent, weekends } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { table } from '../../tables/table.ts';
import { capital } from '../../words/sentence.ts';

/** An amount in the unit of what tips; hours as hours and weekends. */
const amount = (unit: ClaimBreakEven['unit'], value: number, format: Formats): string => {
  if (unit === 'hours') return `${number(value)} hours (${weekends(value)})`;
  if (unit === 'share') return percent(value, 1);
  return unit.startsWith('money') ? format.round(value) : number(value, 1);
};

/** Where it tips, or that it does nowhere and why. */
export const tipsWords = (tips: Tips, say: (at: number) => string): string =>
  tips.status === 'at' ? `about ${say(tips.at)}` : `${tips.status}: ${tips.reason}`;

/** Break-evens in the claim's own terms. */
export const claimTips = ({ breakEvens }: ClaimView, format: Formats): Html | null =>
  breakEvens.length === 0
    ? null
    : html`<h3>Where does it tip?</h3>${table({
        caption: 'Where the claim tips, in its own terms',
        kind: 'wordy',
        words: 3,
        head: ['What', 'Today', 'Tips at'],
        rows: breakEvens.map(({ what, unit, today, tips }) => [
          capital(what),
          today === null ? '' : amount(unit, today, format),
          tipsWords(tips, (at) => amount(unit, at, format)),
        ]),
      })}`;
