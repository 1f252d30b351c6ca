import type { LumpyWay } from '../../engine/analysis/chances.ts';
import { fanChart } from '../charts/fan.ts';
import { runsDryChart } from '../charts/runsDry.ts';
import { ofHundred, span, stepOf } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { savingsShown } from '../words/facts.ts';
import { fitSentences } from '../words/fit.ts';
import {
  drySentence,
  each,
  everDry,
  fundShown,
  holdBackSentence,
  levelWords,
  lumpyWays,
  setAsideShown,
} from '../words/lumpy.ts';
import { badCase, stranded } from './badCase.ts';
import { byMonth, byWay, columns } from './lumpyTables.ts';
import { block, type Chapter, notes, type Page, paragraphs, pick } from './page.ts';

const fanFigure = (page: Page): Html | null => {
  const { d, format, figure } = page;
  const { keep, replace } = lumpyWays(d);
  const of = [keep && ('keep' as const), replace && ('replace' as const)].filter((s) => s !== null);
  const way = (side: 'keep' | 'replace') => (side === 'keep' ? keep : replace);
  const rows = of.flatMap((side) => (way(side)?.fan ?? []).map((p) => ({ side, ...p })));
  const end = (w: LumpyWay) => w.fan.at(-1) ?? { month: 0, good: 0, middle: 0, bad: 0 };
  const apart = (w: LumpyWay): number => end(w).bad - end(w).good;
  const words = (w: LumpyWay | null, name: string) =>
    w && { name, middle: format.round(end(w).middle), bad: format.round(end(w).bad) };
  const finding =
    keep && replace
      ? `What goes out differs by ${format.round(apart(keep))} between the good case and the bad if kept, by ${format.round(apart(replace))} if handed on.`
      : `Between the good case and the bad, what goes out differs by ${each({ keep, replace }, (w) => format.round(apart(w))).join('')}.`;
  return figure({
    id: 'fan',
    finding,
    shows: `Cash paid out so far, nothing credited for what is owned. The line is the middle; the band runs from the good case (1 in 10 is less) to the bad (1 in 10 is more).`,
    told: `${each({ keep, replace }, (w) => `After ${span(d.horizon)}, ${format.round(end(w).good)} in the good case, ${format.round(end(w).middle)} in the middle and ${format.round(end(w).bad)} in the bad`).join('. ')}.`,
    chart: (look) =>
      fanChart(rows, { keep: words(keep, 'kept'), replace: words(replace, 'handed on') }, look),
    table: byMonth(
      page,
      'Cash paid out so far: good case, middle, bad case',
      (keep ?? replace)?.fan.map((p) => p.month) ?? [],
      (w, month) => {
        const p = w.fan.find((f) => f.month === month);
        const three = (units: number): string => format.round(units, stepOf(units) / 10);
        return p ? `${three(p.good)}, ${three(p.middle)}, ${three(p.bad)}` : '';
      },
    ),
  });
};

/** Whole years up to the last month, and that month. */
const yearly = (horizon: number): readonly number[] => [
  ...Array.from({ length: Math.ceil(horizon / 12) }, (_, year) => 12 * year),
  horizon,
];

const dryFigure = (page: Page): Html | null => {
  const { d, figure } = page;
  const ways = lumpyWays(d);
  const shown = (w: LumpyWay | null): LumpyWay | null => (w && fundShown(d, w) ? w : null);
  const [keep, replace] = [shown(ways.keep), shown(ways.replace)];
  if (!keep && !replace) return null;
  const chance = (value: number): string => ofHundred({ value, error: 0 });
  const at = (w: LumpyWay, month: number): number => w.fund.dry.find((p) => p.month === month)?.chance ?? 0;
  const rows = [
    ...(keep?.fund.dry ?? []).map((p) => ({ side: 'keep' as const, month: p.month, of100: p.chance * 100 })),
    ...(replace?.fund.dry ?? []).map((p) => ({
      side: 'replace' as const,
      month: p.month,
      of100: p.chance * 100,
    })),
  ];
  const both = each({ keep, replace }, (w) => chance(everDry(w))).join(', ');
  const soon = each({ keep, replace }, (w) => chance(at(w, Math.min(12, d.horizon)))).join(', ');
  return figure({
    id: 'runs-dry',
    finding: `Within a year the fund has run dry in ${soon}; within ${span(d.horizon)} in ${both}.`,
    shows: `Of 100 ways it could go, in how many the fund has run dry by then, with what is put by today.`,
    told: `Rising lines. Within a year ${soon}; within ${span(d.horizon)} ${both}. The level asked for is ${levelWords(d)}.`,
    chart: (look) =>
      runsDryChart(
        rows,
        {
          names: {
            keep: keep ? `kept: ${chance(everDry(keep))}` : '',
            replace: replace ? `handed on: ${chance(everDry(replace))}` : '',
          },
          level: { of100: d.facts.chance.mayRunDry * 100, words: `level to hold: ${levelWords(d)}` },
        },
        look,
      ),
    table: byMonth(page, 'The fund has run dry, of 100 ways it could go', yearly(d.horizon), (w, month) =>
      chance(at(w, month)),
    ),
  });
};

const cushionTable = (page: Page): Html => {
  const { d, format } = page;
  const funded = columns(page).every(({ way }) => fundShown(d, way));
  const intoFund = (aMonth: number): string =>
    aMonth <= -0.5 ? `${format.round(-aMonth)} out` : aMonth < 0.5 ? 'nothing' : format.round(aMonth);
  const left = (start: number): string =>
    start >= 0 ? format.round(start) : `${format.round(-start)} short`;
  const lowest = ({ id }: LumpyWay): string => {
    const option = d.options.find((o) => o.id === id);
    return option ? left(option.savingsLowest / 100) : '';
  };
  return byWay(page, 'Regular money, lumpy money, and the fund for it', 'Money', [
    ['Every month, besides lumps', (w) => format.round(w.regularAMonth)],
    ['Dearest month, middle', (w) => format.round(w.worstMonth.middle)],
    ['Dearest month, bad case', (w) => format.round(w.worstMonth.bad)],
    ['Dearest twelve months, middle', (w) => format.round(w.worstYear.middle)],
    ['Dearest twelve months, bad case', (w) => format.round(w.worstYear.bad)],
    setAsideShown(d) ? ['Into the fund each month', (w) => intoFund(w.fund.aMonth)] : null,
    funded ? ['In the fund after the first day', (w) => left(w.fund.start ?? 0)] : null,
    savingsShown(d) ? ['Savings at their lowest in the first three months, nothing borrowed', lowest] : null,
    [
      `Fund needed to run dry in at most ${levelWords(d)}`,
      (w) => html`<b>${w.fund.needed.value < 0.5 ? 'nothing' : format.about(w.fund.needed)}</b>`,
    ],
  ]);
};

/** What comes in lumps: repairs in any case; beside them a payment, where there is one. */
const lumpsWords = (replace: LumpyWay | null): string =>
  replace && replace.worstBill.payments !== null
    ? "A payment is certain and repairs are not. Kept, the money goes out in lumps; handed on, most of it goes out evenly and can't be put off."
    : 'Repairs come in lumps, and nobody knows when.';

/** A payment is certain and repairs are not: what to hold back, being stranded, and what the bad case means. */
export const lumpyChapter = (page: Page): Chapter | null => {
  const { d, format } = page;
  const { keep, replace } = lumpyWays(d);
  if (!d.chances || (!keep && !replace)) return null;
  const dry = drySentence(d);
  return {
    id: 'lumpy',
    question: 'Could we stand a big bill at a bad time?',
    body: html`${block(
      paragraphs([fitSentences(d, format).join(' ')]),
      html`<p>${dry === null ? "How much is put by for this isn't said here. " : html`${dry} `}<strong>${holdBackSentence(d, format)}</strong></p>`,
      html`<p>${lumpsWords(replace)} The fund is what carries the lumps: repairs and upkeep come out of it, and what is set aside goes in.</p>`,
      notes(
        pick(
          d,
          'household.savings',
          'household.spareEachMonth',
          'household.dayWithout',
          'vehicle.storageADay',
        ),
        format,
      ),
      fanFigure(page),
      dryFigure(page),
      cushionTable(page),
    )}${stranded(page)}${badCase(page)}`,
  };
};
