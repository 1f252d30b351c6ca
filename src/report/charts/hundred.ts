import * as Plot from '@observablehq/plot';
import { frame, HALO, HATCH, INK, isNarrow, KEEP, type Look, REPLACE } from './look.ts';

/** How many of a hundred futures go which way, and what stands beside each. */
export interface HundredWords {
  /** Of 100, those in which keeping comes out cheaper. */
  readonly keep: number;
  /** "82: keeping comes out cheaper". */
  readonly keepWords: string;
  readonly replaceWords: string;
}

const SIDE = 10;
const CELL = 25;

const marks = (keep: number) =>
  Array.from({ length: SIDE * SIDE }, (_, i) => ({
    x: i % SIDE,
    y: Math.floor(i / SIDE),
    side: i < keep ? ('keep' as const) : ('replace' as const),
  }));

/**
 * A hundred marks to be counted, ten to a row: full discs are futures in which keeping comes out cheaper, hatched
 * squares those in which replacing does. The words stand above the first and below the last.
 */
export const hundredChart = (
  { keep, keepWords, replaceWords }: HundredWords,
  look: Look,
): Plot.PlotOptions => {
  const cell = isNarrow(look) ? CELL + 3 : CELL;
  const all = marks(Math.max(0, Math.min(SIDE * SIDE, keep)));
  const said = (text: string, at: 'top' | 'bottom', fill: string): Plot.Markish =>
    Plot.text([text], {
      frameAnchor: `${at}-left`,
      textAnchor: 'start',
      dx: 2,
      dy: at === 'top' ? -16 : 18,
      fill,
      fontWeight: 600,
      ...HALO,
    });
  const at = { x: 'x', y: 'y' } as const;
  return {
    ...frame(look),
    marginTop: 30,
    marginBottom: 32,
    marginLeft: 4,
    marginRight: look.width - 4 - SIDE * cell,
    height: SIDE * cell + 62,
    x: { domain: [-0.5, SIDE - 0.5], axis: null },
    y: { domain: [SIDE - 0.5, -0.5], axis: null },
    marks: [
      Plot.dot(
        all.filter((m) => m.side === 'keep'),
        { ...at, r: cell * 0.34, fill: KEEP },
      ),
      Plot.dot(
        all.filter((m) => m.side === 'replace'),
        {
          ...at,
          symbol: 'square',
          r: cell * 0.34,
          fill: HATCH,
          stroke: REPLACE,
          strokeWidth: 1.5,
        },
      ),
      keep > 0 ? said(keepWords, 'top', KEEP) : null,
      keep < SIDE * SIDE ? said(replaceWords, 'bottom', REPLACE) : null,
      // Halves, so that fives can be counted without a finger on the page.
      Plot.ruleX([SIDE / 2 - 0.5], { stroke: INK, strokeOpacity: 0.25 }),
      Plot.ruleY([SIDE / 2 - 0.5], { stroke: INK, strokeOpacity: 0.25 }),
    ],
  };
};
