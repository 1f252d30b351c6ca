import * as Plot from '@observablehq/plot';
import type { Side } from '../../engine/answer/decision.ts';
import { fitting, frame, HALO, HATCH, INK, isNarrow, KEEP, type Look, REPLACE, SOFT } from './look.ts';

export interface CourseRow {
  readonly id: string;
  readonly label: string;
  readonly side: Side;
  /** Cash in hand the day it is settled; negative: to be paid in. Currency units, as is the cost. */
  readonly inHand: number;
  readonly inHandWords: string;
  /** What it costs over the whole time, in today's money. */
  readonly cost: number;
  readonly costWords: string;
}

/** Pixels at the end of a bar for the longest of its words. */
const room = (words: readonly string[]): number => 16 + 6.8 * Math.max(0, ...words.map((w) => w.length));

interface Panel {
  readonly at: (amount: number) => number;
}

/** Amounts to pixels between two edges, zero included, with room for words at the right. */
const panel = (from: number, to: number, amounts: readonly number[], words: readonly string[]): Panel => {
  const [least, most] = [Math.min(0, ...amounts), Math.max(0, ...amounts)];
  const scale = Math.max(8, to - from - room(words)) / Math.max(1, most - least);
  return { at: (amount) => from + (amount - least) * scale };
};

/** A bar from its panel's nil, in the stroke of its side. */
const bars = (
  rows: readonly CourseRow[],
  { at }: Panel,
  value: (row: CourseRow) => number,
): Plot.Markish[] => {
  const of = (...sides: readonly CourseRow['side'][]): CourseRow[] =>
    rows.filter((row) => sides.includes(row.side));
  const bar = { y: 'id', x1: at(0), x2: (row: CourseRow) => at(value(row)) } as const;
  return [
    Plot.barX(of('keep'), { ...bar, fill: KEEP }),
    Plot.barX(of('replace'), { ...bar, fill: HATCH, stroke: REPLACE }),
    Plot.barX(of('later', 'without', 'like'), { ...bar, fill: 'none', stroke: INK, strokeDasharray: '3 2' }),
    Plot.tickX(rows, { x: at(0), y: 'id', stroke: INK, strokeWidth: 1.5 }),
  ];
};

/** Cash in hand on the day at the left, cost to the end at the right: what is had today is not what it costs. */
export const coursesChart = (
  rows: readonly CourseRow[],
  heads: { readonly inHand: string; readonly cost: string },
  look: Look,
): Plot.PlotOptions => {
  // A long name takes two lines above its bars: cut off, it would be told from another by nothing.
  const wraps = rows.some(({ label }) => label.length > fitting(look));
  const edge = Math.round(look.width * (isNarrow(look) ? 0.5 : 0.42));
  const left = panel(
    4,
    edge,
    rows.map((row) => row.inHand),
    rows.map((row) => row.inHandWords),
  );
  const right = panel(
    edge + 12,
    look.width - 4,
    rows.map((row) => row.cost),
    rows.map((row) => row.costWords),
  );
  const words = (at: (row: CourseRow) => number, text: keyof CourseRow): Plot.Markish =>
    Plot.text(rows, {
      y: 'id',
      x: at,
      text,
      textAnchor: 'start',
      dx: 6,
      fontWeight: 600,
      fill: INK,
      ...HALO,
    });
  const head = (x: number, text: string): Plot.Markish =>
    Plot.text([text], { x, frameAnchor: 'top', text: [text], textAnchor: 'start', dy: -22, fill: SOFT });
  return {
    ...frame(look),
    marginTop: 28,
    marginBottom: 6,
    marginLeft: 0,
    marginRight: 0,
    height: rows.length * (wraps ? 64 : 44) + 36,
    x: { type: 'identity', axis: null },
    y: {
      domain: rows.map((row) => row.id),
      axis: null,
      paddingInner: wraps ? 0.75 : 0.64,
      paddingOuter: wraps ? 0.55 : 0.4,
    },
    marks: [
      ...bars(rows, left, (row) => row.inHand),
      ...bars(rows, right, (row) => row.cost),
      head(left.at(0), heads.inHand),
      head(right.at(0), heads.cost),
      Plot.text(rows, {
        y: 'id',
        x: 4,
        text: 'label',
        textAnchor: 'start',
        lineAnchor: 'bottom',
        lineWidth: (look.width - 8) / 13,
        dy: -15,
        fill: INK,
        ...HALO,
      }),
      words((row) => left.at(Math.max(0, row.inHand)), 'inHandWords'),
      words((row) => right.at(Math.max(0, row.cost)), 'costWords'),
    ],
  };
};
