import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface LaterRow {
  /** The month of replacing; 0 is today, the last is never. */
  readonly month: number;
  readonly cost: number;
}

/** What it costs to keep it until month k and then replace it, for every k; the cheapest month is marked. */
export const replaceLaterChart = (
  rows: readonly LaterRow[],
  words: { readonly now: string; readonly never: string; readonly best: string },
  look: Look,
): Plot.PlotOptions => {
  const [first, last] = [rows.slice(0, 1), rows.slice(-1)];
  const best = rows.reduce((a, b) => (b.cost < a.cost ? b : a), rows[0] ?? { month: 0, cost: 0 });
  const horizon = last[0]?.month ?? 12;
  const inside = best.month > 0 && best.month < horizon;
  const quarter = Math.max(1, Math.floor(rows.length / 4));
  const [early, late] = [rows.slice(0, quarter), rows.slice(-quarter)];
  // Each name stands where the line is not: beside a line that rises from today, above one that falls; and on the
  // free side of the last quarter.
  const overEarly = early.reduce((a, b) => (b.cost > a.cost ? b : a), early[0] ?? best);
  const rising = (early.at(-1)?.cost ?? 0) > (first[0]?.cost ?? 0);
  const falling = (late[0]?.cost ?? 0) > (last[0]?.cost ?? 0);
  const at = { x: 'month', y: 'cost', ...HALO } as const;
  return {
    ...frame(
      look,
      rows.map((r) => r.cost),
    ),
    height: isNarrow(look) ? 250 : 270,
    marginTop: 30,
    marginRight: 18,
    x: { domain: [0, horizon], label: null },
    y: { nice: true, label: null, inset: 14 },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(horizon) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(rows, { x: 'month', y: 'cost', stroke: INK, strokeWidth: 2 }),
      Plot.dot(first, {
        ...at,
        r: 5,
        fill: 'var(--paper)',
        stroke: REPLACE,
        strokeWidth: 2.5,
        paintOrder: 'normal',
      }),
      Plot.dot(last, { ...at, r: 5, fill: KEEP }),
      Plot.text(first, {
        ...at,
        y: () => (rising ? first[0]?.cost : overEarly.cost) ?? 0,
        text: () => words.now,
        textAnchor: 'start',
        dx: rising ? 14 : 8,
        dy: rising ? 0 : -14,
        fill: REPLACE,
        fontWeight: 600,
      }),
      Plot.text(last, {
        ...at,
        text: () => words.never,
        textAnchor: 'end',
        dx: 2,
        dy: falling ? 18 : -18,
        fill: KEEP,
        fontWeight: 600,
      }),
      Plot.dot(inside ? [best] : [], { ...at, r: 5, fill: INK }),
      Plot.text(inside ? [best] : [], {
        ...at,
        text: () => words.best,
        dy: 18,
        textAnchor: best.month > horizon / 2 ? 'end' : best.month > horizon / 6 ? 'middle' : 'start',
        fill: INK,
        fontWeight: 600,
      }),
    ],
  };
};
