import type { ComponentLimit, WalkAway } from '../../engine/decision/chance/walkAway.ts';
import { limitsChart } from '../charts/limits.ts';
import type { Html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import { dearestFirst, limitStep, partName, usualSentence } from '../words/walk.ts';
import type { Page } from './page.ts';

/** At most so many parts are drawn; the table beneath and the card have them all. */
const DRAWN = 4;

const nameOf = (c: ComponentLimit, w: WalkAway): string => partName(c, w).replace(/^the /, '');

/** The limit of the parts with the dearest bills, month by month, beside what such a bill usually comes to. */
export const limitsFigure = ({ format, figure }: Page, w: WalkAway): Html | null => {
  const drawn = dearestFirst(w).slice(0, DRAWN);
  const round = (units: number): string => format.round(units, limitStep(units));
  const ends = (c: ComponentLimit): readonly [number, number] => [
    c.byMonth[0]?.limit ?? 0,
    c.byMonth.at(-1)?.limit ?? 0,
  ];
  const finding = usualSentence(drawn, w);
  if (drawn.length === 0) return null;
  return figure({
    id: 'limits',
    finding,
    shows:
      'The biggest bill worth paying, by the month in which it comes. A bill below the line is worth paying, one above it is not; dotted, what such a bill usually comes to today.',
    told: drawn
      .map(
        (c) =>
          `${capital(partName(c, w))}: ${round(ends(c)[0])} today, ${round(ends(c)[1])} in two years; the usual bill is ${format.round(c.usualBill)}.`,
      )
      .join(' '),
    chart: (look) =>
      limitsChart(
        drawn.flatMap((c) =>
          c.byMonth.map(({ month, limit }) => ({ component: nameOf(c, w), month, limit })),
        ),
        drawn.map((c) => ({
          component: nameOf(c, w),
          usual: c.usualBill,
          words: {
            usual: `usual bill ${format.round(c.usualBill)}`,
            today: `up to ${round(ends(c)[0])}`,
            last: `up to ${round(ends(c)[1])}`,
          },
        })),
        look,
      ),
    table: table({
      caption: 'Biggest bill worth paying, by month',
      head: ['In month', ...dearestFirst(w).map((c) => nameOf(c, w))],
      rows: (drawn[0]?.byMonth ?? [])
        .filter((p) => p.month % 3 === 0)
        .map((p) => [
          p.month === 0 ? 'today' : p.month,
          ...dearestFirst(w).map((c) => round(c.byMonth.find((q) => q.month === p.month)?.limit ?? 0)),
        ]),
    }),
  });
};
