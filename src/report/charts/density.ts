import * as Plot from '@observablehq/plot';
import { frame, HALO, HATCH, INK, isNarrow, KEEP, type Look, REPLACE } from './look.ts';

export interface DensityBar {
  /** Of how much less keeping costs; below zero replacing costs less. Currency units. */
  readonly from: number;
  readonly to: number;
  /** Share of the futures that fall between the two. */
  readonly share: number;
}

/** A place marked on the axis: "middle $4,000". */
export interface DensityMark {
  readonly at: number;
  readonly words: string;
}

/** Pixels a line of words over the bars takes. */
const LINE = 19;
/** And a letter of them, about. */
const LETTER = 6.6;
const BOLD = 7;
/** Room at both ends for half a tick's words. */
const EDGE = 24;

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
  const pixels = (x: number): number => EDGE + ((x - from) / (to - from || 1)) * (look.width - 2 * EDGE);
  /** The lowest mark's words lean left and the highest's right, so that they keep apart, where the page has room. */
  const anchor = (i: number): 'start' | 'middle' | 'end' => {
    const mark = marks[i];
    if (!mark) return 'middle';
    const [x, room] = [pixels(mark.at), mark.words.length * LETTER];
    const half = room / 2;
    const wanted = i === 0 ? 'end' : i === marks.length - 1 ? 'start' : 'middle';
    // The words of the middle keep off the heavy line.
    const free = Math.abs(x - pixels(0)) > half && x > half && x + half < look.width;
    if (wanted === 'middle') return free ? 'middle' : mark.at < 0 && x > room ? 'end' : 'start';
    if (wanted === 'end' ? x > room : x + room > look.width) return 'end';
    return 'start';
  };
  const even = from <= 0 && to >= 0;
  const side = (text: string, towards: 'left' | 'right', fill: string): Plot.Markish => {
    const left = towards === 'left';
    const beside = even && (left ? pixels(0) : look.width - pixels(0)) > text.length * BOLD + 10;
    // Where it finds no room beside the line it goes to the page's edge, one line lower, clear of the other side's.
    return Plot.text([text], {
      ...(beside ? { x: [0], frameAnchor: 'top' } : { frameAnchor: left ? 'top-left' : 'top-right' }),
      textAnchor: left === beside ? 'end' : 'start',
      dy: -words + (beside || !even ? 4 : 4 + LINE),
      dx: (beside ? 8 : EDGE - 2) * (left ? -1 : 1),
      fill,
      fontWeight: 600,
      ...HALO,
    });
  };
  return {
    ...frame(look),
    marginTop: words,
    marginLeft: EDGE,
    marginRight: EDGE,
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
      even ? Plot.ruleX([0], { stroke: INK, strokeWidth: 2, insetTop: -words - 4 }) : null,
      marks.map((m, i) => [
        Plot.ruleX([m.at], {
          stroke: INK,
          strokeDasharray: '2 3',
          insetTop: -LINE * (marks.length - i) + (anchor(i) === 'middle' ? 10 : -4),
        }),
        Plot.text([m.words], {
          x: [m.at],
          frameAnchor: 'top',
          textAnchor: anchor(i),
          dx: { start: 4, middle: 0, end: -4 }[anchor(i)],
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
