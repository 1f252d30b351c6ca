import { isFelt } from '../../engine/analysis/swings.ts';
import type { BreakEven, BreakEvenLine } from '../../engine/answer/decision.ts';
import { swingsChart } from '../charts/swings.ts';
import { tippingLineChart } from '../charts/tippingLine.ts';
import { type Formats, inWords, percent } from '../format.ts';
import { type Html, html, join } from '../markup/html.ts';
import { type Cell, folded, table } from '../tables/table.ts';
import { decidingSentence, differenceWords, noticesAt, ownHoursSentence } from '../words/facts.ts';
import { markWords } from '../words/marks.ts';
import { bare, bareUnit, timesToday, tipAt, tipsNearestFirst, tipWords } from '../words/tipping.ts';
import { block, type Chapter, notes, type Page, paragraphs } from './page.ts';

const SHOWN = 8;

const swingsFigure = ({ d, format, figure }: Page): Html | null => {
  if (!d.difference || d.swings.length === 0) return null;
  const most = d.swings.filter((s) => isFelt(s, d.grain)).slice(0, SHOWN);
  const [first] = most;
  if (!first) return null;
  const rows = most.map((s) => ({
    label: s.quantity.label,
    low: s.low.difference,
    high: s.high.difference,
    lowWords: bare(s.quantity, s.low.value, format),
    highWords: bare(s.quantity, s.high.value, format),
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

/**
 * Where it tips today: of the places where y alone tips it, the one the line runs through at today's x, so that picture and
 * table say one number.
 */
const tippingFinding = (
  { x, y, today, points }: BreakEvenLine,
  breakEvens: readonly BreakEven[],
  format: Formats,
): string => {
  const after = points.findIndex((p) => p.x >= today.x);
  const [a, b] = [points[Math.max(0, after - 1)], points[after]];
  if (!a || !b || a.x > today.x || a.y === null || b.y === null)
    return `Two numbers together: ${x.label}, and ${y.label}.`;
  const share = b.x === a.x ? 0 : (today.x - a.x) / (b.x - a.x);
  const read = a.y + share * (b.y - a.y);
  const alone = breakEvens.find(({ quantity }) => quantity.key === y.key)?.roots ?? [];
  const { at } = alone.toSorted((m, n) => Math.abs(m.at - read) - Math.abs(n.at - read))[0] ?? { at: read };
  return `At today's ${x.label}, it tips when ${y.label} is ${tipAt(y, at, format)}.`;
};

const lineFigure = ({ d, format, figure }: Page): Html | null => {
  const line = d.breakEvenLine;
  if (!line) return null;
  const points = line.points.flatMap((p) => (p.y === null ? [] : [{ x: p.x, y: p.y }]));
  if (points.length < 2) return null;
  const sampled = points.filter((_, i) => i % Math.ceil(points.length / 12) === 0);
  return figure({
    id: 'two-way',
    finding: tippingFinding(line, d.breakEvens, format),
    shows: `Across: ${line.x.label}${bareUnit(line.x, format)}. Upwards: ${line.y.label}${bareUnit(line.y, format)}. On the line both ways cost the same.`,
    told: `A line between two areas; ${line.keepIs} it keeping costs less. Today's pair is ${format.quantity(line.x, line.today.x)} and ${format.quantity(line.y, line.today.y)}.`,
    chart: (look) =>
      tippingLineChart(
        points,
        {
          x: (v) => bare(line.x, v, format),
          y: (v) => bare(line.y, v, format),
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

const rootWords = (q: BreakEven['quantity'], root: BreakEven['roots'][number], format: Formats): Html => {
  const kind = { root: '', jump: 'a jump at ', touch: 'touches at ' }[root.kind];
  return html`${kind}${tipAt(q, root.at, format)} <small>${timesToday(q, root)}</small>`;
};

const tipCells = ({ format }: Page, b: BreakEven): Cell[] => {
  const q = b.quantity;
  const where =
    b.status === 'always'
      ? 'makes no difference anywhere'
      : b.roots.length === 0
        ? html`<small>nowhere from ${format.quantity(q, q.min)} to ${format.quantity(q, q.max)}</small>`
        : join(
            b.roots.map((root) => rootWords(q, root, format)),
            html`<br>`,
          );
  return [
    html`${q.label} <span class="mark ${q.mark}">${markWords[q.mark]}</span>`,
    format.quantity(q),
    where,
  ];
};

const tipTable = (page: Page, caption: string, of: readonly BreakEven[]): Html =>
  table({
    caption,
    kind: 'wordy',
    words: 3,
    head: ['Number', 'Today', 'Tips at'],
    rows: of.map((b) => tipCells(page, b)),
  });

/** With a shop taking over: one sentence where the answer stays the same, else month by month. */
const shopTakesOver = ({ d, format }: Pick<Page, 'd' | 'format'>): string | null => {
  const [first] = d.shopFrom;
  if (!first) return null;
  if (d.shopFrom.every((s) => Math.sign(s.difference) === Math.sign(first.difference)))
    return `With a shop doing all the work from the start, ${differenceWords(first.difference, format)}; whenever it takes over, that way stays the cheaper one.`;
  const from = d.shopFrom.map(
    (s) =>
      `${s.month === 0 ? 'from the start' : `from month ${s.month}`}, ${differenceWords(s.difference, format)}`,
  );
  return `If a shop took over all the work ${from.join('; ')}.`;
};

/** Where both ways mend it first, a second attempt is owed in either. */
const ifNotCured = ({ d, format }: Pick<Page, 'd' | 'format'>): string | null => {
  if (d.ifNotCured === null || !d.difference) return null;
  const then = differenceWords(d.ifNotCured, format);
  return then === differenceWords(d.difference.counted, format)
    ? 'If the work does not cure it the first time, both ways pay for it again: what is between them stays as it is.'
    : `If the work does not cure it the first time, ${then}.`;
};

/** The same answer asked again with one thing otherwise: slower hands, no cure, a shop from some month on. */
const whatIf = ({ d, format }: Page): readonly string[] => {
  return [
    d.doubleHours !== null && `At double the own hours, ${differenceWords(d.doubleHours, format)}.`,
    ownHoursSentence(d, format),
    shopTakesOver({ d, format }),
    ifNotCured({ d, format }),
    d.atLoanRate !== null &&
      `The money is taken to earn more than the loan costs, so borrowing looks like profit. Reckoned at the loan's ${percent(d.atLoanRate.rate)}, ${differenceWords(d.atLoanRate.difference, format)}.`,
  ].filter((s) => typeof s === 'string');
};

/** What would tip the answer: one number at a time, two together, and what one's own hands are worth. */
export const changeChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const tips = tipsNearestFirst(d);
  const near = tips.slice(0, 6);
  const rest = d.breakEvens.filter((b) => !near.includes(b));
  const [nearest] = near;
  const said = [...whatIf(page), ...noticesAt(d, 'change')];
  return {
    id: 'change',
    question: 'What would change the answer?',
    body: d.difference
      ? html`${block(
          html`<p>${nearest ? `Nearest to tipping it is ${tipWords(nearest, format)}.` : 'No single number tips it anywhere in its range.'} ${decidingSentence(d)}${d.verdict.deciding.count > 0 && ' A number decides if less than a factor of 1.5 either way tips the answer.'}</p>`,
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
