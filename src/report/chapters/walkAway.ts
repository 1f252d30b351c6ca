import type { RuleChances } from '../../engine/analysis/chances.ts';
import type { WalkAway } from '../../engine/analysis/repairLimitView.ts';
import { calendar, counted, number, ofHundred, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { optionOf } from '../words/lumpy.ts';
import { capital, listed } from '../words/sentence.ts';
import {
  dearestFirst,
  LET_GO,
  letGoToday,
  lookingTwice,
  mainComponent,
  partName,
  payUpToSentence,
  savesWords,
  todaySentence,
  unsafeSentence,
  WHAT_COUNTS,
  whyThatMuch,
} from '../words/walk.ts';
import { gloveboxCard } from './gloveboxCard.ts';
import { limitsFigure } from './limitsFigure.ts';
import { block, type Chapter, notes, type Page, pick } from './page.ts';

/** What the figure is and is not, for whoever meets it for the first time. */
const meaning = (w: WalkAway): Html => html`<h3>What does that figure mean?</h3>
<p>It is the most a repair bill may be before handing it on and taking ${w.likeOurs ? w.replacement : `the ${w.replacement}`} at that moment costs less, counted over the ${span(w.horizon)} that follow. It isn't what the vehicle is worth, and it isn't a sum set aside to be spent: the smaller the bill, the better. ${WHAT_COUNTS} Nor does what was spent before.</p>`;

const safetyWords = (w: WalkAway): Html | null => {
  const unsafe = w.components.filter((c) => c.unsafe);
  return unsafe.length === 0
    ? null
    : html`<p><strong>${unsafeSentence(unsafe.map((c) => partName(c, w)))}</strong></p>`;
};

/** Where the figure hangs on how far ahead one looks, that and the figure for twice as far. */
const horizonWords = ({ d, format }: Page, w: WalkAway): string | null => {
  const twice = lookingTwice(w, format);
  return (
    twice &&
    `It hangs on how far ahead we look: looking ${span(2 * d.horizon)} ahead instead of ${span(d.horizon)}, it would be ${twice} today.`
  );
};

const bestDate = ({ d }: Page, w: WalkAway): string => {
  if (w.bestMonth === 0) return `If nothing else breaks, today is already the cheapest day to change over.`;
  if (w.bestMonth >= w.horizon)
    return `If nothing else breaks, not changing over at all within ${span(w.horizon)} costs least.`;
  const named = calendar(d.facts.date, w.bestMonth);
  return `If nothing else breaks, changing over after ${counted(w.bestMonth, 'month')}${named && ` (${named})`} costs least.`;
};

/** What the rule is weighed against, in words. */
const rivalWords = ({ d }: Page, id: string, label: string): string => {
  if (id === 'fixed') return 'the best date fixed today';
  const side = optionOf(d, id)?.side;
  if (side === 'like') return `getting another ${d.facts.vehicleName} now`;
  return side === 'keep' ? 'keeping it whatever comes' : side === 'replace' ? 'handing it on now' : label;
};

/** In how many ways it could go one has walked away by when. */
const walkedWords = (rule: RuleChances): string => {
  if (rule.today) return 'The rule lets it go today.';
  if (rule.walkedBy.every(({ chance }) => chance.value === 0)) return 'No bill that came was too big.';
  const by = rule.walkedBy.map(
    ({ month, chance }) =>
      `${ofHundred(chance)} within ${month % 12 === 0 ? span(month) : counted(month, 'month')}`,
  );
  return `Besides what ends it for good in any case, one walks away in ${listed(by)}.`;
};

/** The rule followed through every future drawn: what the right to walk away saves, and how often it is used. */
const ruleFollowed = (page: Page, w: WalkAway, rule: RuleChances): Html => {
  const { d, format } = page;
  const said = rule.against.map((a) => ({
    what: rivalWords(page, a.id, a.label),
    words: savesWords(a.saves, format),
    error: a.saves.error,
  }));
  const told = said.flatMap(({ what, words }) =>
    words === null ? [] : [words === 'the same' ? `the same as ${what}` : `${words} than ${what}`],
  );
  const untold = said.flatMap(({ what, words }) => (words === null ? [what] : []));
  return html`<h3>Does it pay to be free to walk away?</h3>
<p>Paying up to the limit and walking away above it, followed through ${number(d.chances?.futures ?? 0)} ways it could go, ${told.length > 0 ? `costs on average ${listed(told)}` : 'can be told from no other way'}. ${untold.length > 0 && told.length > 0 && `Against ${listed(untold)} we cannot tell.`} ${walkedWords(rule)} ${bestDate(page, w)}</p>
${folded(
  'With how sure that is',
  table({
    caption: 'Free to walk away, beside the other ways',
    kind: 'wordy',
    words: 3,
    head: ['Beside', 'Being free to walk away costs', 'Give or take'],
    rows: said.map(({ what, words, error }) => [
      capital(what),
      words ?? 'cannot tell',
      error < 0.5 ? '' : format.round(2 * error),
    ]),
  }),
)}`;
};

/** Which bill is worth paying and which is not, part by part, and the card for the glovebox. */
export const walkAwayChapter = (page: Page): Chapter | null => {
  const { d, format } = page;
  const w = d.walkAway;
  const main = w && mainComponent(w);
  if (!w || !main) return null;
  const others = dearestFirst(w).filter((c) => c !== main);
  const hangs = horizonWords(page, w);
  return {
    id: 'walk-away',
    question: 'When is a bill too big, and time to walk away?',
    body: html`${block(
      html`<p>${letGoToday(d) && `${LET_GO} `}<strong>${payUpToSentence(d, format)}</strong> ${whyThatMuch(d, format)} ${todaySentence(others, w, format)} ${WHAT_COUNTS} ${hangs}</p>`,
      notes(
        pick(
          d,
          'household.lookAhead',
          'vehicle.inAHurry.adds',
          'vehicle.sellsFor.scrap',
          'vehicle.components.#.shopPrice',
        ),
        format,
      ),
      safetyWords(w),
      limitsFigure(page, w),
      meaning(w),
      d.chances?.rule ? ruleFollowed(page, w, d.chances.rule) : html`<p>${bestDate(page, w)}</p>`,
    )}${gloveboxCard(page, w)}`,
  };
};
