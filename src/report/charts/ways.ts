import * as Plot from '@observablehq/plot';
import type { Side } from '../../engine/answer/decision.ts';
import { fitting, frame, HALO, HATCH, INK, KEEP, type Look, REPLACE, short } from './look.ts';

export interface WayRow {
  readonly id: string;
  readonly label: string;
  readonly side: Side;
  /** What it costs over the whole time, in today's money; currency units. */
  readonly cost: number;
  readonly words: string;
}

/** What each way costs, cheapest first: filled keeps, hatched replaces, an empty bar is neither. */
export const waysChart = (rows: readonly WayRow[], look: Look): Plot.PlotOptions => {
  const most = Math.max(...rows.map((r) => r.cost), 1);
  const bar = { y: 'id', x1: 0, x2: 'cost' } as const;
  return {
    ...frame(look),
    marginTop: 6,
    marginBottom: 6,
    marginLeft: 4,
    marginRight: 4,
    height: rows.length * 42 + 14,
    x: {
      domain: [Math.min(0, ...rows.map((r) => r.cost)), most * (look.width < 400 ? 1.26 : 1.16)],
      axis: null,
    },
    y: { domain: rows.map((r) => r.id), axis: null, paddingInner: 0.62, paddingOuter: 0.4 },
    marks: [
      Plot.barX(
        rows.filter((r) => r.side === 'keep'),
        { ...bar, fill: KEEP },
      ),
      Plot.barX(
        rows.filter((r) => r.side === 'replace'),
        { ...bar, fill: HATCH, stroke: REPLACE },
      ),
      Plot.barX(
        rows.filter((r) => r.side !== 'keep' && r.side !== 'replace'),
        { ...bar, fill: 'none', stroke: INK, strokeDasharray: '3 2' },
      ),
      Plot.ruleX([0], { stroke: INK, strokeWidth: 1.5 }),
      Plot.text(rows, {
        y: 'id',
        x: 0,
        text: (r: WayRow) => short(r.label, fitting(look)),
        textAnchor: 'start',
        dx: 4,
        dy: -18,
        fill: INK,
        ...HALO,
      }),
      Plot.text(rows, {
        y: 'id',
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
