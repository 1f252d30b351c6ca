import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, HATCH, INK, KEEP, type Look, REPLACE } from './look.ts';

export interface YearlyRow {
  readonly category: string;
  /** 0 is the day itself, 1 the first year. */
  readonly year: number;
  readonly side: 'keep' | 'replace';
  /** Currency units of that year; below zero is money that comes in. */
  readonly amount: number;
}

export interface YearlyTotals {
  readonly category: string;
  readonly words: string;
}

/** One strip a category, all on one scale: each year's filled bar is keeping, its hatched bar replacing. */
export const yearlyChart = (
  rows: readonly YearlyRow[],
  totals: readonly YearlyTotals[],
  look: Look,
): Plot.PlotOptions => {
  const years = Math.max(...rows.map((r) => r.year), 1);
  const every = Math.ceil(years / 6);
  const bars = (side: YearlyRow['side'], from: number, to: number, style: Plot.RectYOptions): Plot.Markish =>
    Plot.rectY(
      rows.filter((r) => r.side === side && r.amount !== 0),
      {
        fy: 'category',
        x1: (r: YearlyRow) => r.year + from,
        x2: (r: YearlyRow) => r.year + to,
        y1: 0,
        y2: 'amount',
        ...style,
      },
    );
  return {
    ...frame(look),
    marginTop: 4,
    marginLeft: 4,
    marginRight: 4,
    height: totals.length * 58 + 30,
    x: { domain: [-0.5, years + 0.5], label: null },
    y: { axis: null },
    fy: { domain: totals.map((t) => t.category), axis: null, padding: 0.42 },
    marks: [
      Plot.ruleY([0], { stroke: HAIR }),
      bars('keep', -0.36, -0.03, { fill: KEEP }),
      bars('replace', 0.03, 0.36, { fill: HATCH, stroke: REPLACE, strokeWidth: 1 }),
      Plot.text(totals, {
        fy: 'category',
        text: 'category',
        frameAnchor: 'top-left',
        dy: -14,
        fontWeight: 600,
        fill: INK,
        ...HALO,
      }),
      Plot.text(totals, {
        fy: 'category',
        text: 'words',
        frameAnchor: 'top-right',
        dy: -14,
        fill: INK,
        ...HALO,
      }),
      Plot.axisX({
        tickSize: 0,
        ticks: Array.from({ length: Math.floor(years / every) + 1 }, (_, i) => i * every),
        tickFormat: (y: number) => (y === 0 ? 'today' : `year ${y}`.slice(look.width < 400 ? 5 : 0)),
      }),
    ],
  };
};
