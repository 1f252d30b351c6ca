import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface DryRow {
  readonly side: 'keep' | 'replace';
  readonly month: number;
  /** Of 100 futures, in how many the fund has run dry by then. */
  readonly of100: number;
}

export interface DryWords {
  readonly names: Readonly<Record<DryRow['side'], string>>;
  /** The level asked for, of 100, and its name. */
  readonly level: { readonly of100: number; readonly words: string };
}

const HEIGHT = 240;
const APART = 20;

/** In how many of 100 futures the fund has run dry by each month, and the level that was asked for. */
export const runsDryChart = (rows: readonly DryRow[], words: DryWords, look: Look): Plot.PlotOptions => {
  const of = (side: DryRow['side']): readonly DryRow[] => rows.filter((r) => r.side === side);
  const end = (side: DryRow['side']): DryRow | undefined => of(side).at(-1);
  const horizon = Math.max(1, ...rows.map((r) => r.month));
  const most = Math.min(100, Math.max(10, words.level.of100 * 2, ...rows.map((r) => r.of100 * 1.15)));
  const gap = ((HEIGHT - 46) * ((end('replace')?.of100 ?? 0) - (end('keep')?.of100 ?? 0))) / most;
  const push = end('keep') && end('replace') ? Math.max(0, APART - Math.abs(gap)) / 2 : 0;
  // The names stand above their line's end; where the two lines end together, one stands below.
  const name = (side: DryRow['side'], fill: string): Plot.Markish => {
    const lower = (side === 'keep') === gap >= 0;
    return Plot.text(of(side).slice(-1), {
      x: 'month',
      y: 'of100',
      text: () => words.names[side],
      textAnchor: 'end',
      fontWeight: 600,
      fill,
      dx: -2,
      dy: lower && push > 0 ? 14 : -13,
      ...HALO,
    });
  };
  return {
    ...frame(look),
    height: isNarrow(look) ? 220 : HEIGHT,
    marginLeft: 34,
    x: { domain: [0, horizon], label: null },
    y: { domain: [0, most], nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: (n: number) => String(n) }),
      Plot.axisX({ tickSize: 4, ...yearTicks(horizon) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.ruleY([words.level.of100], { stroke: INK, strokeDasharray: '1 3', strokeWidth: 1.5 }),
      Plot.lineY(of('replace'), {
        x: 'month',
        y: 'of100',
        stroke: REPLACE,
        strokeWidth: 2.5,
        strokeDasharray: DASH,
      }),
      Plot.lineY(of('keep'), { x: 'month', y: 'of100', stroke: KEEP, strokeWidth: 2.5 }),
      Plot.text([words.level], {
        x: 0,
        y: 'of100',
        text: 'words',
        textAnchor: 'start',
        dx: 8,
        dy: -9,
        fill: INK,
        fontStyle: 'italic',
        ...HALO,
      }),
      name('replace', REPLACE),
      name('keep', KEEP),
    ],
  };
};
