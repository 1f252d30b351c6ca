import * as Plot from '@observablehq/plot';
import { frame, HAIR, HALO, HATCH, INK, KEEP, type Look } from './look.ts';

export interface TippingPoint {
  readonly x: number;
  readonly y: number;
}

export interface TippingWords {
  /** Short: the caption names the unit. */
  readonly x: (value: number) => string;
  readonly y: (value: number) => string;
  readonly today: TippingPoint;
  readonly keepIs: 'above' | 'below';
}

/** Where two numbers together tip the answer: a line, the two sides named, today's pair as a point. */
export const tippingLineChart = (
  points: readonly TippingPoint[],
  words: TippingWords,
  look: Look,
): Plot.PlotOptions => {
  const ys = [...points.map((p) => p.y), words.today.y];
  const spread = Math.max(...ys) - Math.min(...ys) || Math.abs(words.today.y) || 1;
  const bottom = Math.max(Math.min(0, ...ys), Math.min(...ys) - spread * 0.25);
  const top = Math.max(...ys) + spread * 0.25;
  const keepUp = words.keepIs === 'above';
  const side = { fontWeight: 600, fill: INK, ...HALO } as const;
  return {
    ...frame(look),
    marginLeft: 14 + 7 * Math.max(words.y(bottom).length, words.y(top).length),
    height: look.width < 400 ? 270 : 300,
    x: { label: null },
    y: { domain: [bottom, top], label: null },
    marks: [
      Plot.areaY(points, { x: 'x', y1: 'y', y2: keepUp ? bottom : top, fill: HATCH, fillOpacity: 0.35 }),
      Plot.areaY(points, { x: 'x', y1: 'y', y2: keepUp ? top : bottom, fill: KEEP, fillOpacity: 0.12 }),
      Plot.gridY({ stroke: HAIR, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({ tickSize: 0, ticks: 4, tickFormat: words.y }),
      Plot.axisX({ tickSize: 4, ticks: look.width < 400 ? 3 : 5, tickFormat: words.x }),
      Plot.lineY(points, { x: 'x', y: 'y', stroke: INK, strokeWidth: 2 }),
      Plot.text(['keeping costs less'], {
        ...side,
        frameAnchor: keepUp ? 'top-left' : 'bottom-right',
        dx: keepUp ? 10 : -10,
        dy: keepUp ? 12 : -12,
      }),
      Plot.text(['replacing costs less'], {
        ...side,
        frameAnchor: keepUp ? 'bottom-right' : 'top-left',
        dx: keepUp ? -10 : 10,
        dy: keepUp ? -12 : 12,
      }),
      Plot.dot([words.today], { x: 'x', y: 'y', r: 5, fill: INK, stroke: 'var(--paper)', strokeWidth: 2 }),
      Plot.text([words.today], {
        x: 'x',
        y: 'y',
        text: () => 'today',
        dx: 10,
        textAnchor: 'start',
        fill: INK,
        ...HALO,
      }),
    ],
  };
};
