import type { CoverChoice } from '../../../engine/decision/claim/view.ts';
import { number } from '../../format.ts';
import { type Html, html } from '../../markup/html.ts';
import { type Cell, table } from '../../tables/table.ts';
import { NOT_ADVICE } from '../../words/claim/cautions.ts';
import { capital } from '../../words/sentence.ts';
import { block, type Chapter, notes, type Page, pick } from '../page.ts';
import { tipsWords } from './tips.ts';

/** Which is cheaper on average; that it can be borne is another question. */
const pays = ({ format }: Page, choice: CoverChoice): string => {
  const less = choice.withoutIt - choice.withIt;
  return `${capital(choice.what)} cover costs about ${format.round(Math.abs(less))} a year ${less > 0 ? 'less' : 'more'} than going without, on average; without it one loss can take ${format.round(choice.worstWithout)}, with it ${format.round(choice.worstWith)}.`;
};

const rows = ({ format }: Page, c: CoverChoice): readonly Cell[][] => [
  [
    capital(c.what),
    format.money(c.premium),
    format.round(c.withIt),
    format.round(c.withoutIt),
    format.round(c.worstWith),
    format.round(c.worstWithout),
  ],
];

const tips = ({ format }: Page, c: CoverChoice): Html =>
  html`<li><b>${capital(c.what)}</b> pays for itself, by the number of losses a year, ${tipsWords(c.claimsToPay, (at) => `from ${number(100 * at, 1)} in a hundred years on`)}; by what the vehicle is worth, ${tipsWords(c.valueToPay, (at) => `from ${format.round(at)} on`)}.${c.other && html` Your share raised or lowered to ${format.money(c.other.deductible)}, at ${format.money(c.other.premium)} a year: about ${format.round(Math.abs(c.other.gain))} a year ${c.other.gain >= 0 ? 'less' : 'more'} on average; it tips, by losses a year, at ${tipsWords(c.other.tips, (at) => `${number(100 * at, 1)} in a hundred years`)}.`}</li>`;

/** Keep, drop or change the cover for the vehicle itself: by average, and by what can be borne. */
export const coverChapter = (page: Page): Chapter | null => {
  const view = page.d.cover;
  if (view === null || view.choices.length === 0) return null;
  const borne =
    view.savings === null
      ? ''
      : view.choices.every((c) => c.worstWithout <= (view.savings ?? 0))
        ? ' Savings as told would bear such a loss.'
        : ' Savings as told would not bear such a loss.';
  return {
    id: 'cover',
    question: 'Is cover for the vehicle itself worth its price?',
    body: block(
      html`<p><strong>${view.choices.map((c) => pays(page, c)).join(' ')}</strong>${borne}${view.lenderRequires && ' The lender requires it until the loan is paid: dropping it is closed to you.'}</p>`,
      notes(
        pick(
          page.d,
          'vehicle.ownDamage.collision.aYear',
          'vehicle.ownDamage.collision.chanceAYear',
          'vehicle.ownDamage.comprehensive.aYear',
          'vehicle.ownDamage.comprehensive.chanceAYear',
        ),
        page.format,
      ),
      table({
        caption: 'Cover for the vehicle itself, a year on average',
        kind: 'ways',
        stacks: true,
        head: ['Cover', 'Premium', 'With it', 'Without it', 'Worst loss with it', 'Worst loss without it'],
        rows: view.choices.flatMap((c) => rows(page, c)),
      }),
      html`<ul class="plain">${view.choices.map((c) => tips(page, c))}</ul>`,
      html`<p>Damage paid for and not repaired comes off the next claim. ${NOT_ADVICE}</p>`,
    ),
  };
};
