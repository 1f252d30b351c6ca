import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, HATCH, INK, type Look, REPLACE, yearTicks } from './look.ts';

export interface BalanceRow {
  readonly month: number;
  /** Currency units. */
  readonly owed: number;
  readonly value: number;
}

/** What is owed against what the vehicle would bring; hatched while selling would mean paying in. */
export const balanceChart = (
  rows: readonly BalanceRow[],
  words: { readonly under: string },
  look: Look,
): Plot.PlotOptions => {
  const under = rows.filter((r) => r.owed > r.value);
  const third = rows.slice(Math.floor(rows.length / 3)).slice(0, 1);
  const owedAbove = third.every((r) => r.owed >= r.value);
  const middle = under.slice(Math.floor(under.length / 3)).slice(0, 1);
  const label = { x: 'month', textAnchor: 'start', fontWeight: 600, ...HALO } as const;
  return {
    ...frame(look, [Math.max(...rows.map((r) => Math.max(r.owed, r.value)))]),
    height: look.width < 400 ? 230 : 260,
    x: { domain: [0, rows.at(-1)?.month ?? 1], label: null },
    y: { zero: true, nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(rows.at(-1)?.month ?? 12) }),
      Plot.areaY(under, { x: 'month', y1: 'value', y2: 'owed', fill: HATCH }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(rows, { x: 'month', y: 'owed', stroke: REPLACE, strokeWidth: 2.5, strokeDasharray: DASH }),
      Plot.lineY(rows, { x: 'month', y: 'value', stroke: INK, strokeWidth: 1.5 }),
      Plot.text(third, {
        ...label,
        y: 'owed',
        text: () => 'still owed',
        fill: REPLACE,
        dy: owedAbove ? -14 : 18,
        dx: owedAbove ? 4 : -60,
      }),
      Plot.text(third, {
        ...label,
        y: 'value',
        text: () => 'what it would bring',
        fill: INK,
        dy: owedAbove ? 18 : -14,
        dx: owedAbove ? -50 : 4,
      }),
      Plot.text(middle, {
        x: 'month',
        y: (r: BalanceRow) => r.owed,
        text: () => words.under,
        textAnchor: 'start',
        dx: 14,
        dy: -26,
        fill: INK,
        ...HALO,
      }),
    ],
  };
};
