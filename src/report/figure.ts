import type { DrawingDocument } from './charts/dom.ts';
import { type Drawing, draw } from './charts/draw.ts';
import type { Look } from './charts/look.ts';
import type { Formats } from './format.ts';
import { type Html, html, raw } from './markup/html.ts';

/** The two widths a chart is drawn at: the reading column, and a phone. */
const WIDE = 540;
const NARROW = 324;

export interface Figure {
  /** Unique within the page; a later script finds the figure by it. */
  readonly id: string;
  /** The finding, in a sentence. */
  readonly finding: string;
  /** What is shown and in which units. */
  readonly shows: string;
  /** Told in place of the picture. */
  readonly told: string;
  readonly chart: (look: Look) => Drawing;
  /** The figures behind the picture, one tap below; null where they stand openly beneath. */
  readonly table: Html | null;
}

/** A figure with its finding above, drawn for the column and again for a phone, its table folded beneath. */
export const figure =
  (document: DrawingDocument, format: Formats) =>
  (f: Figure): Html => {
    const drawn = (width: number, suffix: string): Html =>
      raw(
        draw(f.chart({ width, format }), {
          document,
          id: `${f.id}-${suffix}`,
          title: f.finding,
          description: f.told,
        }),
      );
    return html`<figure id="fig-${f.id}" data-q="${f.id}">
<figcaption><b>${f.finding}</b> <span>${f.shows}</span></figcaption>
<div class="wide">${drawn(WIDE, 'w')}</div>
<div class="narrow">${drawn(NARROW, 'n')}</div>
${f.table && html`<details><summary>As a table</summary>${f.table}</details>`}
</figure>
`;
  };
