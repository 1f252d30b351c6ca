import { type Html, html } from '../markup/html.ts';

export type Cell = Html | string | number;

export interface TableSpec {
  /** Names the table for those who hear it; unique within the page. */
  readonly caption: string;
  readonly head: readonly Cell[];
  readonly rows: readonly (readonly Cell[])[];
  /** Totals, ruled off as in a ledger. */
  readonly foot?: readonly (readonly Cell[])[];
  /** How many columns, from the left, hold words; the rest are figures set to the right. */
  readonly words?: number;
  readonly kind?: string;
  /** On a phone each row becomes a block of its own, its figures under each other with their headings. */
  readonly stacks?: boolean;
}

/** A table in a box of its own: what is too wide for a phone scrolls inside it, not with the page. */
export const table = ({
  caption,
  head,
  rows,
  foot = [],
  words = 1,
  kind = '',
  stacks = false,
}: TableSpec): Html => {
  const heading = (column: number): string => String(head[column] ?? '');
  const cell = (value: Cell, column: number): Html =>
    column === 0
      ? html`<th scope="row">${value}</th>`
      : column < words
        ? html`<td class="t">${value}</td>`
        : html`<td${stacks && html` data-h="${heading(column)}"`}>${value}</td>`;
  const line = (cells: readonly Cell[]): Html => html`<tr>${cells.map(cell)}</tr>\n`;
  return html`<div class="box" role="group" aria-label="${caption}" tabindex="0"><table${kind === '' ? '' : html` class="${kind}${stacks && ' stacks'}"`}>
<thead><tr>${head.map((h, i) => html`<th scope="col"${i < words ? html` class="t"` : ''}>${h}</th>`)}</tr></thead>
<tbody>
${rows.map(line)}</tbody>
${foot.length === 0 ? '' : html`<tfoot>${foot.map(line)}</tfoot>`}</table></div>`;
};

export const folded = (summary: string, ...inside: readonly Html[]): Html =>
  html`<details><summary>${summary}</summary>${inside}</details>\n`;
