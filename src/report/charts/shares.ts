import * as Plot from '@observablehq/plot';
import { fitting, frame, HALO, INK, isNarrow, type Look, short } from './look.ts';

export interface ShareRow {
  readonly label: string;
  /** By itself. */
  readonly alone: number;
  /** With all it does together with others; null where that is not known or not asked. */
  readonly together: number | null;
  readonly words: string;
}

/** Bars from zero, the largest first: filled is a thing by itself, outlined what it does together with others. */
export const sharesChart = (rows: readonly ShareRow[], look: Look): Plot.PlotOptions => {
  const most = Math.max(...rows.map((r) => Math.max(r.alone, r.together ?? 0)), Number.MIN_VALUE);
  const ends = rows.map((r) => ({ ...r, end: Math.max(r.alone, r.together ?? 0, 0) }));
  const ids = rows.map((_, i) => i);
  const y = (r: ShareRow): number => rows.findIndex((row) => row.label === r.label);
  return {
    ...frame(look),
    marginTop: 6,
    marginBottom: 6,
    marginLeft: 4,
    marginRight: 4,
    height: rows.length * 42 + 14,
    x: { domain: [0, most * (isNarrow(look) ? 1.75 : 1.42)], axis: null },
    y: { type: 'band', domain: ids, axis: null, paddingInner: 0.62, paddingOuter: 0.4 },
    marks: [
      Plot.barX(
        ends.filter((r) => r.end > Math.max(0, r.alone)),
        { y, x1: 0, x2: 'end', fill: 'none', stroke: INK },
      ),
      Plot.barX(rows, { y, x1: 0, x2: (r: ShareRow) => Math.max(0, r.alone), fill: INK }),
      Plot.ruleX([0], { stroke: INK, strokeWidth: 1.5 }),
      Plot.text(rows, {
        y,
        x: 0,
        text: (r: ShareRow) => short(r.label, fitting(look)),
        textAnchor: 'start',
        dx: 4,
        dy: -18,
        fill: INK,
        ...HALO,
      }),
      Plot.text(ends, {
        y,
        x: 'end',
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
