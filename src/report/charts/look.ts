import type * as Plot from '@observablehq/plot';
import type { Formats } from '../format.ts';

/** What every chart is told: how wide it is drawn, and how numbers are written. */
export interface Look {
  /** Pixels; a phone's chart is drawn narrow, not shrunk, so that its words stay legible. */
  readonly width: number;
  readonly format: Formats;
}

export const isNarrow = (look: Look): boolean => look.width < 400;

/** Two courses, two colours and two strokes: solid and filled, dashed and hatched. */
export const KEEP = 'var(--keep)';
export const REPLACE = 'var(--replace)';
export const INK = 'currentColor';
export const SOFT = 'var(--soft)';
export const HAIR = 'var(--hair)';
/** Becomes the chart's own hatching when it is drawn. */
export const HATCH = 'url(#hatch)';
export const DASH = '7 4';
/** A halo in the page's colour keeps words legible where they cross a line. */
export const HALO = { stroke: 'var(--paper)', strokeWidth: 5, paintOrder: 'stroke' } as const;

/** At most `length` characters, the rest shown as an ellipsis; the table below has the whole. */
export const short = (text: string, length: number): string => {
  const letters = [...text];
  return letters.length <= length
    ? text
    : `${letters
        .slice(0, length - 1)
        .join('')
        .trimEnd()}…`;
};

/** How many characters fit across a chart at its text size. */
export const fitting = (look: Look): number => Math.floor((look.width - 16) / 6.6);

/** Month ticks at whole years, at most about six of them, the first one "today". */
export const yearTicks = (horizon: number): { ticks: number[]; tickFormat: (month: number) => string } => {
  const years = Math.max(1, Math.floor(horizon / 12));
  const every = Math.ceil(years / 6);
  const ticks = Array.from({ length: Math.floor(years / every) + 1 }, (_, i) => i * every * 12);
  return { ticks, tickFormat: (month) => (month === 0 ? 'today' : `${month / 12} yr`) };
};

/** Room at the left for the longest money tick, which may be of the least or of the most. */
const roomForTicks = (look: Look, amounts: readonly number[]): number =>
  14 + 7 * Math.max(0, ...amounts.map((a) => look.format.tick(Math.round(a)).length));

/** What all charts share; `amounts` are the extremes of a money axis at the left. Heights are theirs to say. */
export const frame = (look: Look, amounts: readonly number[] = []): Plot.PlotOptions => ({
  width: look.width,
  marginTop: 20,
  marginRight: 14,
  marginBottom: 26,
  marginLeft: roomForTicks(look, amounts),
});
