import * as Plot from '@observablehq/plot';
import {
  fitting,
  frame,
  HAIR,
  HALO,
  HATCH,
  INK,
  isNarrow,
  KEEP,
  type Look,
  REPLACE,
  SOFT,
  short,
} from './look.ts';

export interface SwingRow {
  readonly label: string;
  /** The difference with the number moved down and up; above zero keeping costs less. Currency units. */
  readonly low: number;
  readonly high: number;
  /** The number's own two values, in words. */
  readonly lowWords: string;
  readonly highWords: string;
}

/** Pixels the words over a side of the picture need. */
const SIDE_WORDS = 150;

/** The part of each bar on either side of the tipping line: hatched where replacing costs less, filled where keeping does. */
const parts = (rows: readonly SwingRow[], side: 'keep' | 'replace') =>
  rows
    .map((r) => ({ label: r.label, from: Math.min(r.low, r.high), to: Math.max(r.low, r.high) }))
    .map((r) => (side === 'keep' ? { ...r, from: Math.max(r.from, 0) } : { ...r, to: Math.min(r.to, 0) }))
    .filter((r) => r.to > r.from);

/**
 * How far each number moves the answer. A bar that crosses the heavy line tips it: left of the line replacing costs
 * less, right of it keeping does.
 */
export const swingsChart = (rows: readonly SwingRow[], today: number, look: Look): Plot.PlotOptions => {
  const ends = rows.flatMap((r) => [
    { label: r.label, x: r.low, words: r.lowWords, left: r.low < r.high },
    { label: r.label, x: r.high, words: r.highWords, left: r.high <= r.low },
  ]);
  const all = [0, today, ...ends.map((e) => e.x)];
  const reach = Math.max(...all) - Math.min(...all) || 1;
  const room = reach * (isNarrow(look) ? 0.34 : 0.16);
  const [from, to] = [Math.min(...all) - room, Math.max(...all) + room];
  const left = 18 + ((0 - from) / (to - from)) * (look.width - 36);
  const bar = { y: 'label', x1: 'from', x2: 'to' } as const;
  const end = { y: 'label', x: 'x', text: 'words', fill: INK, ...HALO } as const;
  const side = (text: string, anchor: 'start' | 'end', fill: string): Plot.Markish =>
    Plot.text([text], {
      x: [0],
      frameAnchor: 'top',
      textAnchor: anchor,
      dx: anchor === 'end' ? -8 : 8,
      dy: -22,
      fill,
      fontWeight: 600,
    });
  return {
    ...frame(look),
    marginTop: 54,
    marginLeft: 4,
    marginRight: 4,
    height: rows.length * 50 + 84,
    x: { domain: [from, to], label: null, inset: 18 },
    y: { domain: rows.map((r) => r.label), axis: null, paddingInner: 0.68, paddingOuter: 0.56 },
    marks: [
      Plot.gridX({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisX({
        tickSize: 0,
        ticks: 4,
        tickFormat: (x: number) => (x === 0 ? 'even' : look.format.tick(Math.abs(x))),
      }),
      Plot.ruleX([today], { stroke: SOFT, strokeDasharray: '2 3' }),
      Plot.barX(parts(rows, 'keep'), { ...bar, fill: KEEP }),
      Plot.barX(parts(rows, 'replace'), { ...bar, fill: HATCH, stroke: REPLACE }),
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
        dy: -20,
        fill: INK,
        ...HALO,
      }),
      left > SIDE_WORDS ? side('replacing costs less by', 'end', REPLACE) : null,
      look.width - left > SIDE_WORDS ? side('keeping costs less by', 'start', KEEP) : null,
      Plot.text(['today'], { x: [today], frameAnchor: 'top', dy: -6, fill: INK, ...HALO }),
    ],
  };
};
