import type { BreakEven } from '../../engine/decision/decision.ts';
import { swingsChart } from '../charts/swings.ts';
import { tippingLineChart } from '../charts/tippingLine.ts';
import { inWords } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { decidingSentence, differenceWords, noticesAt, ownHoursSentence } from '../words/facts.ts';
import { markWords } from '../words/marks.ts';
import { howFar, tipAt, tipsNearestFirst, tipWords } from '../words/tipping.ts';
import { block, type Chapter, notes, type Page, paragraphs } from './page.ts';

const SHOWN = 8;

const swingsFigure = ({ d, format, figure }: Page): Html | null => {
  if (!d.difference || d.swings.length === 0) return null;
  const width = (s: (typeof d.swings)[number]): number => Math.abs(s.high.difference - s.low.difference);
  const most = d.swings
    .filter((s) => width(s) >= 0.5)
    .toSorted((a, b) => width(b) - width(a) || (a.quantity.key < b.quantity.key ? -1 : 1))
    .slice(0, SHOWN);
  const [first] = most;
  if (!first) return null;
  const rows = most.map((s) => ({
    label: s.quantity.label,
    low: s.low.difference,
    high: s.high.difference,
    lowWords: tipAt(s.quantity, s.low.value, format).replace(/ a (year|month|day)$/, ''),
    highWords: tipAt(s.quantity, s.high.value, format).replace(/ a (year|month|day)$/, ''),
  }));
  const tipping = rows.filter((r) => Math.min(r.low, r.high) < 0 && Math.max(r.low, r.high) > 0).length;
  const cents = (units: number) => Math.round(units * 100) as typeof d.difference.counted;
  return figure({
    id: 'swings',
    finding: `What matters most: ${first.quantity.label}.`,
    shows: `How much less the cheaper way costs when one number alone moves as far as shown; ${tipping === 0 ? 'none of these tips the answer' : `${inWords(tipping)} of these ${tipping === 1 ? 'tips' : 'tip'} the answer, crossing the heavy line`}.`,
    told: rows
      .map(
        (r) =>
          `${r.label}: at ${r.lowWords}, ${differenceWords(cents(r.low), format)}; at ${r.highWords}, ${differenceWords(cents(r.high), format)}`,
      )
      .join('. '),
    chart: (look) => swingsChart(rows, (d.difference?.counted ?? 0) / 100, look),
    table: table({
      caption: 'What matters most',
      kind: 'wordy',
      words: 5,
      head: ['Number', 'Down to', 'Then', 'Up to', 'Then'],
      rows: most.map((s) => [
        s.quantity.label,
        tipAt(s.quantity, s.low.value, format),
        differenceWords(cents(s.low.difference), format),
        tipAt(s.quantity, s.high.value, format),
        differenceWords(cents(s.high.difference), format),
      ]),
    }),
  });
};

const lineFigure = ({ d, format, figure }: Page): Html | null => {
  const line = d.breakEvenLine;
  if (!line) return null;
  const points = line.points.flatMap((p) => (p.y === null ? [] : [{ x: p.x, y: p.y }]));
  if (points.length < 2) return null;
  const short1 = (text: string): string => text.replace(/ a (year|month|day)$/, '');
  const sampled = points.filter((_, i) => i % Math.ceil(points.length / 12) === 0);
  return figure({
    id: 'two-way',
    finding: `Two numbers together: ${line.x.label}, and ${line.y.label}.`,
    shows: `Across: ${line.x.label}. Upwards: ${line.y.label}. On the line both ways cost the same.`,
    told: `A line between two areas; ${line.keepIs} it keeping costs less. Today's pair is ${format.quantity(line.x, line.today.x)} and ${format.quantity(line.y, line.today.y)}.`,
    chart: (look) =>
      tippingLineChart(
        points,
        {
          x: (v) => short1(format.quantity(line.x, v)),
          y: (v) => short1(format.quantity(line.y, v)),
          today: line.today,
          keepIs: line.keepIs,
        },
        look,
      ),
    table: table({
      caption: 'Where two numbers together tip it',
      head: [line.x.label, `It tips at this ${line.y.label}`],
      rows: sampled.map((p) => [tipAt(line.x, p.x, format), tipAt(line.y, p.y, format)]),
    }),
  });
};

const tipCells = ({ format }: Page, b: BreakEven): string[] => {
  const q = b.quantity;
  const where =
    b.status === 'always'
      ? 'makes no difference anywhere'
      : b.roots.length === 0
        ? `nowhere from ${format.quantity(q, q.min)} to ${format.quantity(q, q.max)}`
        : b.roots
            .map(
              (r) =>
                `${r.kind === 'jump' ? 'jumps at ' : r.kind === 'touch' ? 'touches at ' : ''}${tipAt(q, r.at, format)}`,
            )
            .join('; ');
  return [
    q.label,
    format.quantity(q),
    where,
    b.roots[0] ? howFar(b.roots[0].distance) : '',
    markWords[q.mark],
  ];
};

const tipTable = (page: Page, caption: string, of: readonly BreakEven[]): Html =>
  table({
    caption,
    kind: 'wordy',
    words: 5,
    head: ['Number', 'Today', 'Tips at', 'That is', 'Whose'],
    rows: of.map((b) => tipCells(page, b)),
  });

/** What would tip the answer: one number at a time, two together, and what one's own hands are worth. */
export const changeChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const tips = tipsNearestFirst(d);
  const near = tips.slice(0, 6);
  const rest = d.breakEvens.filter((b) => !near.includes(b));
  const [nearest] = near;
  const said = [
    d.doubleHours !== null && `At double the own hours, ${differenceWords(d.doubleHours, format)}.`,
    ownHoursSentence(d, format),
    ...noticesAt(d, 'change'),
  ].filter((s) => typeof s === "string");
  return {
    id: 'change',
    question: 'What would change the answer?',
    body: d.difference
      ? html`${block(
          html`<p>${nearest ? `Nearest to tipping it is ${tipWords(nearest, format)}.` : 'No single number tips it anywhere in its range.'} ${decidingSentence(d)}</p>`,
          notes(
            near.slice(0, 3).map((b) => b.quantity),
            format,
          ),
          swingsFigure(page),
          paragraphs(said),
          near.length === 0
            ? null
            : html`<h3>Where it tips</h3>${tipTable(page, 'Where it tips, nearest first', near)}`,
          rest.length === 0
            ? null
            : folded('All other numbers', tipTable(page, 'Where it tips, all other numbers', rest)),
          lineFigure(page),
        )}`
      : block(html`<p>With only one side open there is no answer to tip.</p>`, paragraphs(said)),
  };
};
