import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface LastingRow {
  /** Kept until it is lost at the end of this month. */
  readonly month: number;
  readonly cost: number;
}

/** What it costs if it is lost in month k, beside replacing it now: where the falling line goes below the level one. */
export const lastingChart = (
  rows: readonly LastingRow[],
  level: number,
  words: {
    readonly lost: string;
    readonly now: string;
    readonly from: string | null;
    readonly month: number;
  },
  look: Look,
): Plot.PlotOptions => {
  const last = rows.at(-1)?.month ?? 12;
  const from = rows.filter(({ month }) => month === words.month);
  const late = words.month > last * 0.3;
  const at = { x: 'month', y: 'cost', ...HALO } as const;
  return {
    ...frame(look, [...rows.map((r) => r.cost), level]),
    height: isNarrow(look) ? 240 : 260,
    marginTop: 26,
    marginRight: 18,
    x: { domain: [0, last + 1], label: null },
    y: { nice: true, label: null, inset: 14 },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(last + 1) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.ruleY([level], { stroke: REPLACE, strokeWidth: 2, strokeDasharray: DASH }),
      Plot.lineY(rows, { x: 'month', y: 'cost', stroke: KEEP, strokeWidth: 2.5 }),
      Plot.text([{ month: last + 1, cost: level }], {
        ...at,
        text: () => words.now,
        textAnchor: 'end',
        dy: -12,
        fill: REPLACE,
        fontWeight: 600,
      }),
      Plot.text(rows.slice(-1), {
        ...at,
        text: () => words.lost,
        textAnchor: 'end',
        dy: 16,
        fill: KEEP,
        fontWeight: 600,
      }),
      Plot.dot(from, { ...at, r: 5, fill: INK }),
      Plot.text(from, {
        ...at,
        text: () => words.from ?? '',
        // Where the line is not: below it at the left, or above the level one where there is no room.
        textAnchor: late ? 'end' : 'start',
        dx: late ? -10 : 10,
        dy: late ? 16 : -14,
        fill: INK,
        fontWeight: 600,
      }),
    ],
  };
};
