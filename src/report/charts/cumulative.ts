import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, INK, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface CumulativeRow {
  readonly month: number;
  /** What each way has cost by then, were it to stop there; currency units in today's money. */
  readonly keep: number;
  readonly replace: number;
}

export interface CumulativeWords {
  readonly keep: string;
  readonly replace: string;
  /** From this month on one way stays cheaper; null when it is so from the start or never. */
  readonly crossing: { readonly month: number; readonly words: string } | null;
}

/** What both ways have cost, month by month: two lines, named at their ends, with the crossing marked. */
export const cumulativeChart = (
  rows: readonly CumulativeRow[],
  words: CumulativeWords,
  look: Look,
): Plot.PlotOptions => {
  const last = rows.slice(-1);
  const keepBelow = last.every((r) => r.keep <= r.replace);
  const at = rows.filter((r) => r.month === words.crossing?.month);
  const end = { x: 'month', textAnchor: 'end', fontWeight: 600, ...HALO } as const;
  return {
    ...frame(look),
    height: look.width < 400 ? 260 : 300,
    x: { domain: [0, last[0]?.month ?? 1], label: null },
    y: { nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 5 }),
      Plot.axisY({ tickSize: 0, ticks: 5, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(last[0]?.month ?? 12) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(rows, {
        x: 'month',
        y: 'replace',
        stroke: REPLACE,
        strokeWidth: 2.5,
        strokeDasharray: DASH,
      }),
      Plot.lineY(rows, { x: 'month', y: 'keep', stroke: KEEP, strokeWidth: 2.5 }),
      Plot.text(last, { ...end, y: 'keep', text: () => words.keep, fill: KEEP, dy: keepBelow ? 20 : -16 }),
      Plot.text(last, {
        ...end,
        y: 'replace',
        text: () => words.replace,
        fill: REPLACE,
        dy: keepBelow ? -16 : 20,
      }),
      Plot.dot(at, { x: 'month', y: 'keep', r: 4.5, fill: 'var(--paper)', stroke: INK, strokeWidth: 2 }),
      Plot.text(at, {
        x: 'month',
        y: 'keep',
        text: () => words.crossing?.words ?? '',
        textAnchor: (at[0]?.month ?? 0) > (last[0]?.month ?? 0) / 2 ? 'end' : 'start',
        dx: (at[0]?.month ?? 0) > (last[0]?.month ?? 0) / 2 ? -10 : 8,
        dy: (at[0]?.month ?? 0) > (last[0]?.month ?? 0) / 2 ? -12 : 16,
        ...HALO,
        fill: INK,
      }),
    ],
  };
};
