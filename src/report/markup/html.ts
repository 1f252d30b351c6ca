/** Markup that is already safe. Only `html`, `raw` and `join` make it. */
export interface Html {
  readonly markup: string;
}

type Value = Html | string | number | null | undefined | false | readonly Value[];

/** Controls, and the marks that turn the direction of the text that follows: nothing a name needs. */
const UNSEEN = /(?![\t\n\r])\p{Cc}|[\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu;

/** Text as a person should see it: without control characters and without marks that reverse what follows. */
export const plain = (text: string): string => text.replace(UNSEEN, '');

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe for an element's content and for a quoted attribute. */
const escapeText = (text: string): string => plain(text).replace(/[&<>"']/g, (c) => ENTITIES[c] as string);

const render = (value: Value): string => {
  if (value === null || value === undefined || value === false) return '';
  if (typeof value === 'string') return escapeText(value);
  if (typeof value === 'number') return String(value);
  if ('markup' in value) return value.markup;
  return value.map(render).join('');
};

/** Markup with everything put into it escaped, unless it is markup itself. `null`, `undefined` and `false` print nothing. */
export const html = (strings: TemplateStringsArray, ...values: readonly Value[]): Html => ({
  markup: strings.reduce((out, s, i) => out + s + (i < values.length ? render(values[i]) : ''), ''),
});

/** Markup made elsewhere (a chart, a style sheet) and known to be safe. */
export const raw = (markup: string): Html => ({ markup });

/** Pieces with something between them. */
export const join = (pieces: readonly Value[], between: Value = ''): Html => ({
  markup: pieces.map(render).join(render(between)),
});
