import type { OptionResult } from '../../engine/answer/decision.ts';
import { CATEGORIES, type Category } from '../../engine/cashflow/posting.ts';
import type { Cents } from '../../engine/quantity/money.ts';
import { cumulativeChart } from '../charts/cumulative.ts';
import { short } from '../charts/look.ts';
import { yearlyChart } from '../charts/yearly.ts';
import { calendar, ledgerCents, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { byCategoryAndYear, type CategoryRow } from '../tables/rollup.ts';
import { table } from '../tables/table.ts';
import { changesSentence } from '../words/changes.ts';
import { keeping, replacementName, replacing, shortSide } from '../words/optionWords.ts';
import { capital } from '../words/sentence.ts';
import { costOf, howMuchLess } from '../words/verdict.ts';
import { block, type Chapter, notes, type Page, pick, theReplacement } from './page.ts';

/** What comes in stands on a scale of its own and would flatten everything that is paid. */
const RECEIPTS: readonly Category[] = ['selling the old one', "what we'd own at the end"];

type Pair = readonly [keep: OptionResult, replace: OptionResult];

/** When one way has paid for itself, in a sentence, with the month's own name. */
const crossingSentence = ({ d }: Page, [keep, replace]: Pair): string => {
  if (d.crossing) {
    const { month, cheaper } = d.crossing;
    const named = calendar(d.facts.date, month);
    return `${capital(cheaper === 'keep' ? keeping(d) : replacing(d))} has paid for itself by month ${month}${named && ` (${named})`}: from then on it stays the cheaper way.`;
  }
  const ahead = keep.cumulative.map((k, m) => Math.sign((replace.cumulative[m] ?? k) - k));
  if (ahead.every((s) => s > 0)) return `${capital(keeping(d))} is the cheaper way from the first day on.`;
  if (ahead.every((s) => s < 0)) return `${capital(replacing(d))} is the cheaper way from the first day on.`;
  return 'Neither way stays ahead of the other for good.';
};

const aheadWords = ({ d, format }: Page): string => {
  const side = d.verdict.cheaper === 'keep' ? 'Keeping' : 'Handing on';
  const end = `about ${howMuchLess(d, format)} ahead after ${span(d.horizon)}`;
  if (d.verdict.cheaper === 'same') return 'Both end at the same cost.';
  return d.crossing
    ? `${side} is ahead from month ${d.crossing.month} on, and ends ${end}.`
    : `${side} ends ${end}.`;
};

const cumulativeFigure = (page: Page, pair: Pair): Html => {
  const { d, format, figure } = page;
  const [keep, replace] = pair;
  const rows = keep.cumulative.map((k, month) => ({
    month,
    keep: k,
    replace: replace.cumulative[month] ?? k,
  }));
  const yearly = rows.filter(
    (r) => r.month % 12 === 0 || r.month === d.horizon || r.month === d.crossing?.month,
  );
  const said = (option: OptionResult, side: 'keep' | 'replace', length: number): string =>
    `${short(shortSide(d, side), length)}: ${costOf(d, option, format)}`;
  const label = (option: OptionResult, side: 'keep' | 'replace') => ({
    name: short(side === 'keep' ? d.facts.vehicleName : replacementName(d), 19),
    cost: costOf(d, option, format),
  });
  return figure({
    id: 'cumulative',
    finding: aheadWords(page),
    shows:
      "What each would have cost by then, in today's money, were it to stop there: what it is still worth, less what is owed, is taken off.",
    told: `Two rising lines over ${span(d.horizon)}. ${said(keep, 'keep', 60)}; ${said(replace, 'replace', 60)}. ${crossingSentence(page, pair)}`,
    chart: (look) =>
      cumulativeChart(
        rows,
        {
          keep: label(keep, 'keep'),
          replace: label(replace, 'replace'),
          crossing: d.crossing && {
            month: d.crossing.month,
            words: `month ${d.crossing.month}: paid for itself`,
          },
        },
        look,
      ),
    table: table({
      caption: 'What both ways have cost, year by year',
      head: [
        'By month',
        capital(short(shortSide(d, 'keep'), 40)),
        capital(short(shortSide(d, 'replace'), 40)),
        'Cash paid out, kept',
        'Cash paid out, handed on',
      ],
      rows: yearly.map((r) => [
        r.month,
        format.money(Math.round(r.keep)),
        format.money(Math.round(r.replace)),
        format.money(Math.round(keep.paidOut[r.month] ?? 0)),
        format.money(Math.round(replace.paidOut[r.month] ?? 0)),
      ]),
    }),
  });
};

/** Where the money goes year by year. */
const yearlyFigure = ({ d, format, figure }: Page, [keep, replace]: Pair): Html => {
  const sides = {
    keep: byCategoryAndYear(keep.ledger, d.horizon),
    replace: byCategoryAndYear(replace.ledger, d.horizon),
  };
  const find = (side: 'keep' | 'replace', category: Category): CategoryRow | undefined =>
    sides[side].find((r) => r.category === category);
  const categories = CATEGORIES.filter((c) => find('keep', c) ?? find('replace', c));
  const total = (side: 'keep' | 'replace', category: Category): Cents =>
    find(side, category)?.amount ?? (0 as Cents);
  const words = (cents: Cents): string =>
    cents === 0 ? 'nothing' : cents < 0 ? `${format.round(-cents / 100)} back` : format.round(cents / 100);
  const drawn = categories.filter((c) => !RECEIPTS.includes(c));
  const received = categories
    .filter((c) => RECEIPTS.includes(c))
    .map((c) => `${c} (${words(total('keep', c))} if kept, ${words(total('replace', c))} if handed on)`);
  const widest = drawn.reduce((a, c) =>
    Math.abs(total('replace', c) - total('keep', c)) > Math.abs(total('replace', a) - total('keep', a))
      ? c
      : a,
  );
  return figure({
    id: 'yearly',
    finding: `The two differ most in ${widest}: ${words(total('keep', widest))} if kept, ${words(total('replace', widest))} if handed on.`,
    shows: `Paid each year from today on, in the money of that year, all panels on one scale; under each name its sum over ${span(d.horizon)}.${received.length === 0 ? '' : ` Not drawn: ${received.join('; ')}.`}`,
    told: categories
      .map((c) => `${c}: ${words(total('keep', c))} if kept, ${words(total('replace', c))} if handed on`)
      .join('; '),
    chart: (look) =>
      yearlyChart(
        (['keep', 'replace'] as const).flatMap((side) =>
          sides[side]
            .filter((r) => drawn.includes(r.category))
            .flatMap((r) =>
              r.years.map((cents, year) => ({ category: r.category, year, side, amount: cents / 100 })),
            ),
        ),
        drawn.map((category) => ({
          category,
          words: `${words(total('keep', category))} kept, ${words(total('replace', category))} handed on`,
        })),
        look,
      ),
    table: table({
      caption: 'Both ways by category',
      head: ['For', 'Kept', 'Handed on'],
      rows: categories.map((c) => [c, ledgerCents(total('keep', c)), ledgerCents(total('replace', c))]),
    }),
  });
};

/** Both courses month by month, and by category year by year. */
export const monthsChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const { bestKeep, bestReplace } = d;
  const r = theReplacement(d);
  const changes = changesSentence(d, format);
  return {
    id: 'months',
    question: 'Where does the money go, month by month?',
    body:
      bestKeep && bestReplace
        ? html`${block(
            html`<p>${crossingSentence(page, [bestKeep, bestReplace])} Over ${span(d.horizon)} it comes to about ${costOf(d, bestKeep, format)} if kept and ${costOf(d, bestReplace, format)} if handed on, in today's money.</p>`,
            changes === null ? null : html`<p>${changes}</p>`,
            notes(
              pick(
                d,
                'vehicle.cover.aYear',
                `${r}.cover.aYear`,
                'vehicle.averageRepairs.statedAYear',
                'vehicle.energy.economy',
                'vehicle.energy.price',
                'household.pricesRise.repairs',
              ),
              format,
              6,
            ),
            cumulativeFigure(page, [bestKeep, bestReplace]),
            yearlyFigure(page, [bestKeep, bestReplace]),
          )}`
        : block(
            html`<p>There are not two open ways to set beside each other; what the open ones cost is said below.</p>`,
          ),
  };
};
