/** What is said of a thing, words aside: numbers, choices, and lists of them, comparable with another's. */
export type Content = string | number | boolean | null | readonly Content[];

const RANK = ['object', 'boolean', 'number', 'string'];

/**
 * An order of contents that no list's order, no unit and no currency changes: numbers by size, what is like it entry by
 * entry.
 */
export const inOrder = (a: Content, b: Content): number => {
  if (Array.isArray(a) && Array.isArray(b)) {
    for (let i = 0; i < Math.min(a.length, b.length); i++) {
      const order = inOrder(a[i] as Content, b[i] as Content);
      if (order !== 0) return order;
    }
    return a.length - b.length;
  }
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  const [x, y] = [RANK.indexOf(typeof a), RANK.indexOf(typeof b)];
  if (x !== y) return x - y;
  if (a === null || b === null || typeof a === 'object') return Number(a !== null) - Number(b !== null);
  return a < b ? -1 : a > b ? 1 : 0;
};

/** Which words a thing is called by: nothing may hang on them. */
const CALLED = new Set(['name', 'what', 'why']);

/**
 * The content of a part of the inputs: its fields by name, its lists without their order.
 *
 * @param path dotted, where it stands
 * @param beside what else is said of the number at a path: its range, what it goes together with
 * @param pointed what a list of positions at a path points at; null: it is no such list
 */
export const contentOf = (
  value: unknown,
  path: string,
  beside: (path: string) => Content,
  pointed: (path: string, positions: readonly number[]) => readonly Content[] | null,
): Content => {
  const of = (inner: unknown, at: string): Content => {
    if (Array.isArray(inner))
      return (pointed(at, inner) ?? inner.map((one, i) => of(one, `${at}.${i}`))).toSorted(inOrder);
    if (typeof inner === 'number') return [inner, beside(at)];
    if (typeof inner !== 'object' || inner === null) return inner as Content;
    return Object.entries(inner)
      .filter(([key, held]) => !(CALLED.has(key) && typeof held === 'string'))
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, held]) => of(held, `${at}.${key}`));
  };
  return of(value, path);
};
