import * as Plot from '@observablehq/plot';
import { frame, HALO, HATCH, INK, KEEP, type Look, REPLACE } from './look.ts';

export interface ReadingRow {
  /** "Own time counted", "Cash alone", "A shop doing everything". */
  readonly reading: string;
  readonly side: 'keep' | 'replace';
  readonly cost: number;
  readonly words: string;
}

/** The two best ways, counted three ways: pairs of bars from zero. */
export const readingsChart = (rows: readonly ReadingRow[], look: Look): Plot.PlotOptions => {
  const most = Math.max(...rows.map((r) => r.cost), 1);
  const narrow = look.width < 400;
  const readings = [...new Set(rows.map((r) => r.reading))];
  const bar = { fy: 'reading', y: 'side', x1: 0, x2: 'cost' } as const;
  return {
    ...frame(look),
    marginTop: 4,
    marginBottom: 4,
    marginLeft: 4,
    marginRight: 4,
    height: readings.length * 70 + 8,
    x: { domain: [Math.min(0, ...rows.map((r) => r.cost)), most * (narrow ? 1.56 : 1.3)], axis: null },
    y: { domain: ['keep', 'replace'], axis: null, padding: 0.14 },
    fy: { domain: readings, axis: null, paddingInner: 0.38, paddingOuter: 0.3 },
    marks: [
      Plot.barX(
        rows.filter((r) => r.side === 'keep'),
        { ...bar, fill: KEEP },
      ),
      Plot.barX(
        rows.filter((r) => r.side === 'replace'),
        { ...bar, fill: HATCH, stroke: REPLACE },
      ),
      Plot.ruleX([0], { stroke: INK, strokeWidth: 1.5 }),
      Plot.text(readings, {
        fy: (r: string) => r,
        text: (r: string) => r,
        frameAnchor: 'top-left',
        dx: 4,
        dy: -15,
        fill: INK,
        ...HALO,
      }),
      Plot.text(rows, {
        fy: 'reading',
        y: 'side',
        x: 'cost',
        text: 'words',
        textAnchor: 'start',
        dx: 6,
        fontWeight: 600,
        fill: INK,
        ...HALO,
      }),
    ],
  };
};
