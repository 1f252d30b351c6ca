import * as Plot from '@observablehq/plot';
import { fitting, frame, HAIR, HALO, HATCH, INK, KEEP, type Look, REPLACE, SOFT, short } from './look.ts';

export interface SwingRow {
  readonly label: string;
  /** The difference with the number moved down and up; above zero keeping costs less. Currency units. */
  readonly low: number;
  readonly high: number;
  /** The number's own two values, in words. */
  readonly lowWords: string;
  readonly highWords: string;
}

/**
 * How far each number moves the answer. Left of the heavy line replacing costs less, and the bar is hatched there;
 * right of it keeping does. A bar that stays on one side can't tip the answer.
 */
export const swingsChart = (rows: readonly SwingRow[], today: number, look: Look): Plot.PlotOptions => {
  const parts = rows.flatMap((r) => {
    const [from, to] = [Math.min(r.low, r.high), Math.max(r.low, r.high)];
    return [
      { label: r.label, side: 'replace', from, to: Math.min(to, 0) },
      { label: r.label, side: 'keep', from: Math.max(from, 0), to },
    ].filter((p) => p.to > p.from);
  });
  const ends = rows.flatMap((r) => [
    { label: r.label, x: r.low, words: r.lowWords, left: r.low < r.high },
    { label: r.label, x: r.high, words: r.highWords, left: r.high <= r.low },
  ]);
  const all = [0, today, ...ends.map((e) => e.x)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const room = (most - least) * (look.width < 400 ? 0.3 : 0.2) || 1;
  const bar = { y: 'label', x1: 'from', x2: 'to', insetTop: 2, insetBottom: 2 } as const;
  const end = { y: 'label', x: 'x', text: 'words', fill: INK, ...HALO } as const;
  return {
    ...frame(look),
    marginTop: 44,
    marginLeft: 6,
    marginRight: 6,
    height: rows.length * 44 + 74,
    x: { domain: [least - room, most + room], label: null },
    y: { domain: rows.map((r) => r.label), axis: null, paddingInner: 0.62, paddingOuter: 0.5 },
    marks: [
      Plot.gridX({ stroke: HAIR, strokeOpacity: 1, ticks: 5 }),
      Plot.axisX({
        tickSize: 0,
        ticks: look.width < 400 ? 4 : 5,
        tickFormat: (x: number) => look.format.tick(Math.abs(x)),
      }),
      Plot.ruleX([today], { stroke: SOFT, strokeDasharray: '2 3' }),
      Plot.barX(
        parts.filter((p) => p.side === 'keep'),
        { ...bar, fill: KEEP },
      ),
      Plot.barX(
        parts.filter((p) => p.side === 'replace'),
        { ...bar, fill: HATCH, stroke: REPLACE },
      ),
      Plot.ruleX([0], { stroke: INK, strokeWidth: 2 }),
      Plot.text(
        ends.filter((e) => e.left),
        { ...end, textAnchor: 'end', dx: -5 },
      ),
      Plot.text(
        ends.filter((e) => !e.left),
        { ...end, textAnchor: 'start', dx: 5 },
      ),
      Plot.text(rows, {
        y: 'label',
        frameAnchor: 'left',
        text: (r: SwingRow) => short(r.label, fitting(look)),
        textAnchor: 'start',
        dy: -19,
        fontWeight: 600,
        fill: INK,
        ...HALO,
      }),
      Plot.text([0], {
        x: [0],
        frameAnchor: 'top',
        text: ['replacing costs less by'],
        textAnchor: 'end',
        dx: -8,
        dy: -18,
        fill: REPLACE,
      }),
      Plot.text([0], {
        x: [0],
        frameAnchor: 'top',
        text: ['keeping costs less by'],
        textAnchor: 'start',
        dx: 8,
        dy: -18,
        fill: KEEP,
      }),
      Plot.text([0], { x: [today], frameAnchor: 'top', text: ['today'], dy: -34, fill: INK }),
    ],
  };
};
