import type { WalkAway } from '../../engine/analysis/repairLimitView.ts';
import { calendar, day } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import {
  ALL_THE_SAME,
  dearestFirst,
  LET_GO,
  letGoToday,
  limitWords,
  partName,
  SAID_AT,
  SHOP_QUESTIONS,
  WHAT_COUNTS,
} from '../words/walk.ts';
import type { Page } from './page.ts';

/**
 * To cut out and keep in the glovebox: the biggest bill worth paying for each part, this year and next, and what to
 * ask before saying yes. No person is named on it, and no money but the limits.
 */
export const gloveboxCard = ({ d, format }: Page, w: WalkAway): Html => {
  const at = (months: number): string => {
    const named = calendar(d.facts.date, months);
    return named && ` (${named})`;
  };
  // A shop's bill does not say what the days cost.
  const days = ({ daysCost }: WalkAway['components'][number]): string | false =>
    daysCost >= 0.5 && `add ${format.money(Math.round(daysCost))} for the days without it`;
  return html`<div class="card" role="group" aria-labelledby="card-title">
<p class="cut" aria-hidden="true">cut here, keep in the glovebox</p>
<h3 id="card-title">${capital(d.facts.vehicleName)}: biggest bill worth paying</h3>
${letGoToday(d) && html`<p>${LET_GO} ${ALL_THE_SAME}:</p>`}
${table({
  caption: 'Biggest bill worth paying',
  kind: 'wordy',
  head: ['Repair', 'Today', `In a year${at(12)}`, `In two years${at(24)}`],
  rows: dearestFirst(w).map((c) => [
    html`${capital(partName(c, w).replace(/^the /, ''))}${c.unsafe && html` <small>unsafe once it fails: not driven until mended</small>`}${days(c) && html` <small>${days(c)}</small>`}`,
    ...SAID_AT.map((month) => limitWords(c, month, format)),
  ]),
})}
<p>${WHAT_COUNTS} Above the figure, changing over at that moment costs less.</p>
<p class="ask">Ask first:</p>
<ul>${SHOP_QUESTIONS.map((q) => html`<li>${q}</li>`)}</ul>
<p><small>Reckoned on ${day(d.facts.date)} for the two years after it. Information, not advice.</small></p>
</div>
`;
};
