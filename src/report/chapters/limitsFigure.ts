import type { ComponentLimit, WalkAway } from '../../engine/analysis/repairLimitView.ts';
import { limitsChart } from '../charts/limits.ts';
import type { Html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import { capital } from '../words/sentence.ts';
import {
  ALL_THE_SAME,
  dearestFirst,
  letGoToday,
  limitSaid,
  limitWords,
  partName,
  usualSentence,
  WHAT_COUNTS,
} from '../words/walk.ts';
import type { Page } from './page.ts';

/** At most so many parts are drawn; the table beneath and the card have them all. */
const DRAWN = 4;

const nameOf = (c: ComponentLimit, w: WalkAway): string => partName(c, w).replace(/^the /, '');

/** The limit of the parts with the dearest bills, month by month, beside what such a bill usually comes to. */
export const limitsFigure = ({ d, format, figure }: Page, w: WalkAway): Html | null => {
  const drawn = dearestFirst(w).slice(0, DRAWN);
  const ends = (c: ComponentLimit): readonly [string, string] => [
    limitWords(c, 0, format),
    limitSaid(c.byMonth.at(-1)?.limit ?? 0, format),
  ];
  const upTo = (limit: string): string => (limit === 'none' ? 'no bill' : `up to ${limit}`);
  const usual = usualSentence(drawn, w);
  const finding = letGoToday(d)
    ? `${ALL_THE_SAME}: ${usual.charAt(0).toLowerCase()}${usual.slice(1)}`
    : usual;
  if (drawn.length === 0) return null;
  return figure({
    id: 'limits',
    finding,
    shows: `The biggest bill worth paying, by the month in which it comes. A bill below the line is worth paying, one above it is not; dotted, what such a bill usually comes to today. ${WHAT_COUNTS}`,
    told: drawn
      .map(
        (c) =>
          `${capital(partName(c, w))}: ${ends(c)[0]} today, ${ends(c)[1]} in two years; the usual bill is ${format.round(c.usualBill)}.`,
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
            today: upTo(ends(c)[0]),
            last: upTo(ends(c)[1]),
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
          ...dearestFirst(w).map((c) => limitWords(c, p.month, format)),
        ]),
    }),
  });
};
