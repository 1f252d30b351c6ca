import type { CoverPartView } from '../../../engine/analysis/collisionViews.ts';
import { number } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { type Cell, table } from '../../tables/table.ts';
import { NOT_ADVICE } from '../../words/claim/claimCautions.ts';
import { capital } from '../../words/sentence.ts';
import { block, type Chapter, notes, type Page, pick } from '../page.ts';
import { tipsWords } from './tips.ts';

/** Which is cheaper on average, and what one loss can take: the second is what the household has to bear. */
const pays = ({ format }: Page, { kind, withIt, without, worst }: CoverPartView): string =>
  `${capital(kind)} cover costs about ${format.round(Math.abs(without - withIt))} a year ${without > withIt ? 'less' : 'more'} than going without, on average; without it one loss can take ${format.round(worst.without)}, with it ${format.round(worst.withIt)}.`;

/** What a total loss leaves of the savings, never with a bare minus. */
const bearing = ({ format }: Page, { kind, savingsAfter }: CoverPartView): string => {
  if (savingsAfter === null) return '';
  const left = (units: number): string =>
    units >= 0 ? `${format.round(units)} of the savings` : `${format.round(-units)} less than nothing`;
  return ` The day after a total loss (${kind}) that leaves ${left(savingsAfter.withIt)} with it, ${left(savingsAfter.without)} without.`;
};

const row = ({ format }: Page, c: CoverPartView): readonly Cell[] => [
  capital(c.kind),
  format.money(c.premium),
  format.round(c.withIt),
  format.round(c.without),
  format.round(c.worst.withIt),
  format.round(c.worst.without),
];

const often = (claims: number): string => `${number(100 * claims, 1)} losses in a hundred years`;

const tips = ({ format }: Page, { kind, claimsTip, valueTip, other }: CoverPartView): Html =>
  html`<li><b>${capital(kind)}</b> pays for itself from this many losses on: ${tipsWords(claimsTip, often)}. From this value of the vehicle on: ${tipsWords(valueTip, (at) => `about ${format.round(at)}`)}.${other && ` With your share at ${format.money(other.deductible)} for ${format.money(other.aYear)} a year it comes to about ${format.round(Math.abs(other.gain))} a year ${other.gain >= 0 ? 'less' : 'more'} on average, and to ${format.round(Math.abs(other.worst))} ${other.worst >= 0 ? 'more' : 'less'} in the worst loss; it tips at: ${tipsWords(other.claimsTip, often)}.`}</li>`;

/** Keep, drop or change the cover for the vehicle itself: by average, and by what can be borne. */
export const coverChapter = (page: Page): Chapter | null => {
  const view = page.d.cover;
  if (view === null || view.parts.length === 0) return null;
  return {
    id: 'cover',
    question: 'Is cover for the vehicle itself worth its price?',
    body: block(
      html`<p><strong>${view.parts.map((c) => pays(page, c)).join(' ')}</strong>${view.parts.map((c) => bearing(page, c)).join('')}${view.mustKeep && ` Going without is closed to you: ${view.mustKeep}.`}</p>`,
      notes(
        pick(
          page.d,
          ...view.parts.flatMap(({ kind }) =>
            ['aYear', 'chanceAYear', 'meanLoss', 'totalShare'].map((of) => `vehicle.ownDamage.${kind}.${of}`),
          ),
        ),
        page.format,
      ),
      table({
        caption: 'Cover for the vehicle itself, a year on average',
        kind: 'ways',
        stacks: true,
        head: ['Cover', 'Premium', 'With it', 'Without it', 'Worst loss with it', 'Worst loss without it'],
        rows: view.parts.map((c) => row(page, c)),
      }),
      html`<ul class="plain">${view.parts.map((c) => tips(page, c))}</ul>`,
      html`<p>Damage paid for and not repaired comes off the next claim. ${NOT_ADVICE}</p>`,
    ),
  };
};
