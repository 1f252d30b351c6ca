import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, INK, KEEP, type Look, yearTicks } from './look.ts';

export interface LifeRow {
  readonly months: number;
  /** Average monthly cost of owning over that many months, currency units. */
  readonly averageCost: number;
}

/** The average monthly cost of owning one vehicle, by how long it is kept; its least is marked. */
export const economicLifeChart = (
  rows: readonly LifeRow[],
  words: { readonly best: string },
  look: Look,
): Plot.PlotOptions => {
  const best = rows.reduce(
    (a, b) => (b.averageCost < a.averageCost ? b : a),
    rows[0] ?? { months: 1, averageCost: 0 },
  );
  const last = rows.at(-1)?.months ?? 12;
  // The first months carry the whole repair alone; a scale that showed them would flatten everything after.
  const ceiling = Math.min(Math.max(...rows.map((r) => r.averageCost)), best.averageCost * 2.2);
  const shown = rows.filter((r) => r.averageCost <= ceiling);
  return {
    ...frame(look, [ceiling]),
    height: look.width < 400 ? 210 : 230,
    x: { domain: [0, last], label: null },
    y: { domain: [0, ceiling * 1.05], label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(last) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(shown, { x: 'months', y: 'averageCost', stroke: KEEP, strokeWidth: 2.5 }),
      Plot.dot([best], { x: 'months', y: 'averageCost', r: 5, fill: INK }),
      Plot.text([best], {
        x: 'months',
        y: 'averageCost',
        text: () => words.best,
        dy: 20,
        textAnchor: best.months > last / 2 ? 'end' : 'start',
        fill: INK,
        fontWeight: 600,
        ...HALO,
      }),
    ],
  };
};
