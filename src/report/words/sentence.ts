/** A sentence whose weighty part is marked: a page sets it bold, a terminal leaves it as it is. */
export type Sentence = readonly (string | { readonly strong: string })[];

export const strong = (text: string): { readonly strong: string } => ({ strong: text });

export const plainText = (sentence: Sentence): string =>
  sentence.map((piece) => (typeof piece === 'string' ? piece : piece.strong)).join('');

/** "a, b and c". */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;

/** With a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
