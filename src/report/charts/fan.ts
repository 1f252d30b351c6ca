import * as Plot from '@observablehq/plot';
import { DASH, frame, HAIR, HALO, INK, isNarrow, KEEP, type Look, REPLACE, yearTicks } from './look.ts';

export interface FanRow {
  readonly side: 'keep' | 'replace';
  readonly month: number;
  /** Cash paid out by then; one in ten futures takes less than `good`, one in ten more than `bad`. */
  readonly good: number;
  readonly middle: number;
  readonly bad: number;
}

/** What stands at the end of a way's line; null where the way is not open. */
export type FanWords = Readonly<
  Record<FanRow['side'], { readonly name: string; readonly middle: string; readonly bad: string } | null>
>;

const HEIGHT = 320;
/** Two names of three lines need this many pixels between them. */
const APART = 62;

/** Cash paid out, month by month: the middle of each way as a line, from its good case to its bad case as a band. */
export const fanChart = (rows: readonly FanRow[], words: FanWords, look: Look): Plot.PlotOptions => {
  const narrow = isNarrow(look);
  const of = (side: FanRow['side']): readonly FanRow[] => rows.filter((r) => r.side === side);
  const end = (side: FanRow['side']): FanRow | undefined => of(side).at(-1);
  const horizon = Math.max(1, ...rows.map((r) => r.month));
  const [least, most] = [Math.min(0, ...rows.map((r) => r.good)), Math.max(1, ...rows.map((r) => r.bad))];
  const gap = ((HEIGHT - 46) * ((end('replace')?.middle ?? 0) - (end('keep')?.middle ?? 0))) / (most - least);
  const push = end('keep') && end('replace') ? Math.max(0, APART - Math.abs(gap)) / 2 : 0;
  const name = (side: FanRow['side'], fill: string): Plot.Markish => {
    const said = words[side];
    const lower = (side === 'keep') === gap >= 0;
    const style = { fill, fontWeight: 600, ...HALO } as const;
    return narrow
      ? // A phone has no room beside the lines: the names stand in the empty corner, each with its own stroke's colour.
        Plot.text(said ? [said] : [], {
          ...style,
          frameAnchor: 'top-left',
          text: (s: typeof said) => `${s?.name}: ${s?.middle}, bad case ${s?.bad}`,
          dx: 8,
          dy: lower ? 22 : 2,
        })
      : Plot.text(of(side).slice(-1), {
          ...style,
          x: 'month',
          y: 'middle',
          text: () => `${said?.name}\n${said?.middle}\nbad case ${said?.bad}`,
          textAnchor: 'start',
          lineHeight: 1.25,
          dx: 8,
          dy: (lower ? 1 : -1) * push,
        });
  };
  const band = { x: 'month', y1: 'good', y2: 'bad' } as const;
  return {
    ...frame(look, [least, most]),
    height: narrow ? 290 : HEIGHT,
    marginRight: narrow ? 14 : 142,
    x: { domain: [0, horizon], label: null },
    y: { domain: [least, most], nice: true, label: null },
    marks: [
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 5 }),
      Plot.axisY({ tickSize: 0, ticks: 5, tickFormat: look.format.tick }),
      Plot.axisX({ tickSize: 4, ...yearTicks(horizon) }),
      Plot.areaY(of('replace'), { ...band, fill: REPLACE, fillOpacity: 0.22 }),
      Plot.areaY(of('keep'), { ...band, fill: KEEP, fillOpacity: 0.2 }),
      Plot.ruleX([0], { stroke: INK }),
      Plot.lineY(of('replace'), {
        x: 'month',
        y: 'middle',
        stroke: REPLACE,
        strokeWidth: 2.5,
        strokeDasharray: DASH,
      }),
      Plot.lineY(of('keep'), { x: 'month', y: 'middle', stroke: KEEP, strokeWidth: 2.5 }),
      name('replace', REPLACE),
      name('keep', KEEP),
    ],
  };
};
