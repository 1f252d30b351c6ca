import type { ClaimTip, ClaimView } from '../../../engine/analysis/collisionViews.ts';
import type { Tips } from '../../../engine/valuation/cover.ts';
import { type Formats, number, weekends } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';

/** Where it tips, or that it does nowhere and why. */
export const tipsWords = (tips: Tips, say: (at: number) => string): string =>
  tips.status === 'at' ? say(tips.at) : `${tips.status}: ${tips.reason}`;

const at = ({ what, at: where }: ClaimTip, format: Formats): string | null => {
  if (where === null) return null;
  return what === 'hours' ? `${number(where)} hours (${weekends(where)})` : format.round(where);
};

const ABOUT: Readonly<Record<ClaimTip['what'], string>> = {
  payout: 'The payout',
  hours: 'Own hours',
  salvage: 'The bid for the wreck',
  estimate: 'The repair cost',
};

/** Break-evens in the claim's own terms. */
export const claimTips = ({ tips }: ClaimView, format: Formats): Html | null =>
  tips.length === 0
    ? null
    : html`<h3>Where does it tip?</h3><ul class="plain">${tips.map((tip) => {
        const where = at(tip, format);
        return html`<li><b>${ABOUT[tip.what]}${where && `, about ${where}`}:</b> ${tip.words}</li>`;
      })}</ul>`;
