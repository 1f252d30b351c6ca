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

const STRIP = 132;

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
  const at = (s: LimitStrip, where: 'today' | 'last'): number => limitAt(s, where === 'today' ? 0 : last);
  // The name of the usual bill keeps clear of the line, and of the axis.
  const under = (s: LimitStrip): boolean =>
    s.usual > most * 0.25 && limitAt(s, Math.round(last / 2)) >= s.usual;
  // A figure stands above its end of the line, or below it where the line runs through there.
  const end = (where: 'today' | 'last', above: boolean): Plot.Markish =>
    Plot.text(
      strips.filter((s) => at(s, where) >= at(s, where === 'today' ? 'last' : 'today') === above),
      {
        fy: 'component',
        x: where === 'today' ? 0 : last,
        y: (s: LimitStrip) => at(s, where),
        text: (s: LimitStrip) => s.words[where],
        textAnchor: where === 'today' ? 'start' : 'end',
        dx: where === 'today' ? 6 : -2,
        dy: above ? -11 : 14,
        fill: KEEP,
        fontWeight: 600,
        ...HALO,
      },
    );
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
    height: 50 + STRIP * strips.length,
    marginTop: 30,
    x: { domain: [0, last], label: null },
    y: { domain: [0, most * 1.3], label: null },
    fy: { domain: strips.map((s) => s.component), axis: null, padding: 0.3 },
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
        dy: -15,
        fontStyle: 'italic',
        fill: INK,
      }),
      usual(false),
      usual(true),
      ...(['today', 'last'] as const).flatMap((where) => [end(where, true), end(where, false)]),
    ],
  };
};
