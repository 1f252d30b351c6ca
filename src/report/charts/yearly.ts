import * as Plot from '@observablehq/plot';
import type { Category } from '../../engine/cashflow/posting.ts';
import { frame, HAIR, HALO, HATCH, INK, isNarrow, KEEP, type Look, REPLACE, short } from './look.ts';

export interface YearlyRow {
  readonly category: Category;
  /** 0 is the day itself, 1 the first year. */
  readonly year: number;
  readonly side: 'keep' | 'replace';
  /** Currency units of that year; below zero is money that comes in. */
  readonly amount: number;
}

export interface YearlyTotals {
  readonly category: Category;
  readonly words: string;
}

const STRIP = 98;

/** A small panel for each category, all on one scale: each year's filled bar is keeping, its hatched bar replacing. */
export const yearlyChart = (
  rows: readonly YearlyRow[],
  totals: readonly YearlyTotals[],
  look: Look,
): Plot.PlotOptions => {
  const across = isNarrow(look) ? 1 : 2;
  const place = (category: Category): { fx: number; fy: number } => {
    const index = totals.findIndex((t) => t.category === category);
    return { fx: index % across, fy: Math.floor(index / across) };
  };
  const panels = totals.map((t) => ({ ...t, ...place(t.category) }));
  const down = Math.ceil(totals.length / across);
  const years = Math.max(...rows.map((r) => r.year), 1);
  const every = Math.ceil(years / 6);
  const most = Math.max(1, ...rows.map((r) => r.amount));
  const least = Math.min(0, ...rows.map((r) => r.amount));
  const bars = (side: YearlyRow['side'], from: number, to: number, style: Plot.RectYOptions): Plot.Markish =>
    Plot.rectY(
      rows
        .filter((r) => r.side === side && r.amount !== 0)
        .map((r) => ({ ...place(r.category), x1: r.year + from, x2: r.year + to, y2: r.amount })),
      { fx: 'fx', fy: 'fy', x1: 'x1', x2: 'x2', y1: 0, y2: 'y2', ...style },
    );
  const label = { fx: 'fx', fy: 'fy', textAnchor: 'start', fill: INK, ...HALO } as const;
  const letters = across === 1 ? 42 : 36;
  return {
    ...frame(look),
    marginTop: 40,
    marginLeft: 2,
    marginRight: 2,
    marginBottom: 22,
    height: down * STRIP + 44,
    x: { domain: [-0.5, years + 0.5], label: null },
    y: { axis: null, domain: [least, most] },
    fx: { axis: null, padding: 0.09, domain: Array.from({ length: across }, (_, i) => i) },
    fy: { axis: null, padding: 0.48, domain: Array.from({ length: down }, (_, i) => i) },
    marks: [
      Plot.ruleY(panels, { fx: 'fx', fy: 'fy', y: 0, stroke: HAIR }),
      bars('keep', -0.36, -0.03, { fill: KEEP }),
      bars('replace', 0.03, 0.36, { fill: HATCH, stroke: REPLACE }),
      Plot.text(panels, {
        ...label,
        text: (t: YearlyTotals) => short(t.category, letters),
        frameAnchor: 'top-left',
        dy: -36,
        fontWeight: 600,
      }),
      Plot.text(panels, { ...label, text: 'words', frameAnchor: 'top-left', dy: -19 }),
      Plot.axisX({
        tickSize: 0,
        ticks: Array.from({ length: Math.floor(years / every) + 1 }, (_, i) => i * every),
        tickFormat: (y: number) => (y === 0 ? 'today' : `${y}`),
      }),
    ],
  };
};
