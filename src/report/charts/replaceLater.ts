import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, INK, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

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
  const at = { x: 'month', y: 'cost', ...HALO } as const;
  return {
    ...frame(look),
    height: look.width < 400 ? 230 : 260,
    marginTop: 30,
    x: { domain: [0, horizon], label: null },
    y: { nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(horizon) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(rows, { x: 'month', y: 'cost', stroke: INK, strokeWidth: 2 }),
      Plot.dot(first, { ...at, r: 5, fill: 'var(--paper)', stroke: REPLACE, strokeWidth: 2.5 }),
      Plot.dot(last, { ...at, r: 5, fill: KEEP }),
      Plot.text(first, {
        ...at,
        text: () => words.now,
        textAnchor: 'start',
        dx: 10,
        dy: -8,
        fill: REPLACE,
        fontWeight: 600,
      }),
      Plot.text(last, {
        ...at,
        text: () => words.never,
        textAnchor: 'end',
        dx: -2,
        dy: -18,
        fill: KEEP,
        fontWeight: 600,
      }),
      Plot.dot(inside ? [best] : [], { ...at, r: 5, fill: INK }),
      Plot.text(inside ? [best] : [], {
        ...at,
        text: () => words.best,
        dy: 18,
        textAnchor: best.month > horizon / 2 ? 'end' : 'start',
        fill: INK,
        fontWeight: 600,
      }),
    ],
  };
};
