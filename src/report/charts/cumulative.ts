import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface CumulativeRow {
  readonly month: number;
  /** What each way has cost by then, were it to stop there; currency units in today's money. */
  readonly keep: number;
  readonly replace: number;
}

export interface CumulativeWords {
  readonly keep: { readonly name: string; readonly cost: string };
  readonly replace: { readonly name: string; readonly cost: string };
  /** From this month on one way stays cheaper; null when it is so from the start or never. */
  readonly crossing: { readonly month: number; readonly words: string } | null;
}

const HEIGHT = 320;
/** Two lines of words need this many pixels. */
const APART = 40;

/** What both ways have cost, month by month: two lines, named at their ends, with the crossing marked. */
export const cumulativeChart = (
  rows: readonly CumulativeRow[],
  words: CumulativeWords,
  look: Look,
): Plot.PlotOptions => {
  const narrow = isNarrow(look);
  const last = rows.slice(-1);
  const [end] = last;
  const all = rows.flatMap((r) => [r.keep, r.replace]);
  const [least, most] = [Math.min(0, ...all), Math.max(1, ...all)];
  const gap = ((HEIGHT - 46) * ((end?.replace ?? 0) - (end?.keep ?? 0))) / (most - least);
  const push = Math.max(0, APART - Math.abs(gap)) / 2;
  const down = gap >= 0 ? 1 : -1;
  const at = rows.filter((r) => r.month === words.crossing?.month);
  const late = (at[0]?.month ?? 0) > (end?.month ?? 0) / 2;
  // A phone has no room beside the lines: there the upper name stands over its end, the lower one further down.
  const low = rows.slice(Math.floor(rows.length * 0.55)).slice(0, 1);
  const name = (side: 'keep' | 'replace', fill: string): Plot.Markish => {
    const { name: who, cost } = words[side];
    const isLower = (side === 'keep') === down > 0;
    const style = { y: side, fill, fontWeight: 600, ...HALO } as const;
    return narrow
      ? Plot.text(last, {
          ...style,
          x: 'month',
          y: isLower ? () => low[0]?.[side] ?? 0 : side,
          text: () => `${who}: ${cost}`,
          textAnchor: 'end',
          dy: isLower ? 4 : -14,
        })
      : Plot.text(last, {
          ...style,
          x: 'month',
          text: () => `${who}\n${cost}`,
          textAnchor: 'start',
          lineHeight: 1.25,
          dx: 8,
          dy: (isLower ? 1 : -1) * push,
        });
  };
  return {
    ...frame(look, [least, most]),
    height: narrow ? 280 : HEIGHT,
    marginRight: narrow ? 14 : 132,
    marginTop: narrow ? 30 : 20,
    x: { domain: [0, end?.month ?? 1], label: null },
    y: { domain: [least, most], nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 5 }),
      Plot.axisY({ tickSize: 0, ticks: 5, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(end?.month ?? 12) }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(rows, {
        x: 'month',
        y: 'replace',
        stroke: REPLACE,
        strokeWidth: 2.5,
        strokeDasharray: DASH,
      }),
      Plot.lineY(rows, { x: 'month', y: 'keep', stroke: KEEP, strokeWidth: 2.5 }),
      name('keep', KEEP),
      name('replace', REPLACE),
      Plot.dot(at, { x: 'month', y: 'keep', r: 4.5, fill: 'var(--paper)', stroke: INK, strokeWidth: 2 }),
      Plot.text(at, {
        x: 'month',
        y: 'keep',
        text: () => words.crossing?.words ?? '',
        textAnchor: late ? 'end' : 'start',
        dx: late ? -10 : 9,
        dy: late ? -14 : 17,
        fill: INK,
        ...HALO,
      }),
    ],
  };
};
