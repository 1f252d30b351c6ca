import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, short, yearTicks } from './look.ts';

export interface LimitRow {
  readonly component: string;
  /** 0 (today) to 24. */
  readonly month: number;
  /** Biggest bill worth paying in that month, currency units. */
  readonly limit: number;
}

/** One strip of the chart: its part, what its bill usually comes to, and the words at both ends of its line. */
export interface LimitStrip {
  readonly component: string;
  readonly usual: number;
  readonly words: { readonly usual: string; readonly today: string; readonly last: string };
}

const STRIP = 118;

/**
 * The biggest bill worth paying, month by month: a strip for each part, one scale for all. Below the line a bill is
 * worth paying; the broken line is what such a bill usually comes to.
 */
export const limitsChart = (
  rows: readonly LimitRow[],
  strips: readonly LimitStrip[],
  look: Look,
): Plot.PlotOptions => {
  const most = Math.max(1, ...rows.map((r) => r.limit), ...strips.map((s) => s.usual));
  const last = Math.max(1, ...rows.map((r) => r.month));
  const limitAt = (s: LimitStrip, month: number): number =>
    rows.find((r) => r.component === s.component && r.month === month)?.limit ?? 0;
  // The name of the usual bill keeps clear of the line: on the side where there is more room.
  const under = (s: LimitStrip): boolean => {
    const here = limitAt(s, Math.round(last / 2));
    return s.usual > most * 0.25 && (here >= s.usual || here < s.usual - most * 0.25);
  };
  const end = (at: 'today' | 'last'): Plot.Markish =>
    Plot.text(strips, {
      fy: 'component',
      x: at === 'today' ? 0 : last,
      y: (s: LimitStrip) => limitAt(s, at === 'today' ? 0 : last),
      text: (s: LimitStrip) => s.words[at],
      textAnchor: at === 'today' ? 'start' : 'end',
      dx: at === 'today' ? 6 : -2,
      dy: -11,
      fill: KEEP,
      fontWeight: 600,
      ...HALO,
    });
  const usual = (below: boolean): Plot.Markish =>
    Plot.text(
      strips.filter((s) => under(s) === below),
      {
        fy: 'component',
        x: last / 2,
        y: 'usual',
        text: (s: LimitStrip) => s.words.usual,
        textAnchor: 'middle',
        dy: below ? 11 : -10,
        fill: INK,
        ...HALO,
      },
    );
  return {
    ...frame(look, [most]),
    height: 46 + STRIP * strips.length,
    marginTop: 26,
    x: { domain: [0, last], label: null },
    y: { domain: [0, most * 1.12], label: null },
    fy: { domain: strips.map((s) => s.component), axis: null, padding: 0.32 },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 3 }),
      Plot.axisY({ tickSize: 0, ticks: 3, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(last) }),
      Plot.areaY(rows, { fy: 'component', x: 'month', y: 'limit', fill: KEEP, fillOpacity: 0.13 }),
      Plot.ruleY(strips, {
        fy: 'component',
        y: 'usual',
        stroke: INK,
        strokeWidth: 1.5,
        strokeDasharray: '2 4',
      }),
      Plot.lineY(rows, { fy: 'component', x: 'month', y: 'limit', stroke: KEEP, strokeWidth: 2.5 }),
      Plot.text(strips, {
        fy: 'component',
        frameAnchor: 'top-left',
        text: (s: LimitStrip) => short(s.component, isNarrow(look) ? 36 : 60),
        textAnchor: 'start',
        dy: -14,
        fontStyle: 'italic',
        fill: INK,
      }),
      usual(false),
      usual(true),
      end('today'),
      end('last'),
    ],
  };
};
