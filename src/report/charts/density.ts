import * as Plot from '@observablehq/plot';
import { frame, HALO, HATCH, INK, isNarrow, KEEP, type Look, REPLACE } from './look.ts';

export interface DensityBar {
  /** Of how much less keeping costs; below zero replacing costs less. Currency units. */
  readonly from: number;
  readonly to: number;
  /** Share of the futures that fall between the two. */
  readonly share: number;
}

/** A place marked on the axis: "middle: $4,000". */
export interface DensityMark {
  readonly at: number;
  readonly words: string;
}

/** Pixels a line of words over the bars takes. */
const LINE = 19;

/**
 * How the futures are spread over the difference: left of the heavy line replacing is cheaper, right of it keeping.
 * Heights are shares for equal width, so that areas can be compared.
 */
export const densityChart = (
  bars: readonly DensityBar[],
  marks: readonly DensityMark[],
  sides: { readonly keep: string; readonly replace: string },
  look: Look,
): Plot.PlotOptions => {
  const edges = [0, ...bars.flatMap((b) => [b.from, b.to]), ...marks.map((m) => m.at)];
  const [from, to] = [Math.min(...edges), Math.max(...edges)];
  const heights = bars.map((b) => ({ ...b, height: b.to > b.from ? b.share / (b.to - b.from) : 0 }));
  const top = Math.max(...heights.map((b) => b.height), Number.MIN_VALUE);
  const words = LINE * (marks.length + 2);
  const height = (isNarrow(look) ? 150 : 170) + words + 26;
  const bar = { x1: 'from', x2: 'to', y1: 0, y2: 'height', inset: 0.5 } as const;
  /** Words lean away from the nearer edge. */
  const anchor = (x: number): 'start' | 'middle' | 'end' => {
    const share = (x - from) / (to - from || 1);
    return share < 0.33 ? 'start' : share > 0.67 ? 'end' : 'middle';
  };
  const middle = from < 0 && to > 0 ? 0 : null;
  const side = (text: string, towards: 'left' | 'right', fill: string): Plot.Markish =>
    Plot.text([text], {
      frameAnchor: `top-${towards}`,
      textAnchor: towards === 'left' ? 'start' : 'end',
      dy: -words + 2,
      dx: towards === 'left' ? 2 : -2,
      fill,
      fontWeight: 600,
    });
  return {
    ...frame(look),
    marginTop: words,
    marginLeft: 8,
    marginRight: 8,
    height,
    x: { domain: [from, to], label: null },
    y: { domain: [0, top], axis: null },
    marks: [
      Plot.axisX({
        tickSize: 0,
        ticks: isNarrow(look) ? 4 : 6,
        tickFormat: (x: number) => (x === 0 ? 'even' : look.format.tick(Math.abs(x))),
      }),
      Plot.rectY(
        heights.filter((b) => b.from >= 0),
        { ...bar, fill: KEEP },
      ),
      Plot.rectY(
        heights.filter((b) => b.from < 0),
        { ...bar, fill: HATCH, stroke: REPLACE, strokeWidth: 0.75 },
      ),
      Plot.ruleY([0], { stroke: INK }),
      middle === null ? null : Plot.ruleX([middle], { stroke: INK, strokeWidth: 2 }),
      marks.map((m, i) => [
        Plot.ruleX([m.at], {
          stroke: INK,
          strokeDasharray: '2 3',
          insetTop: -LINE * (marks.length - i) + 6,
        }),
        Plot.text([m.words], {
          x: [m.at],
          frameAnchor: 'top',
          textAnchor: anchor(m.at),
          dx: anchor(m.at) === 'start' ? -2 : anchor(m.at) === 'end' ? 2 : 0,
          dy: -LINE * (marks.length - i) + 2,
          fill: INK,
          ...HALO,
        }),
      ]),
      from < 0 ? side(sides.replace, 'left', REPLACE) : null,
      to > 0 ? side(sides.keep, 'right', KEEP) : null,
    ],
  };
};
