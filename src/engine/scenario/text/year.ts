/** The first number in a text that could be a model year, 1900 to 2199; null where there is none. */
export const yearOf = (text: string): number | null => {
  const found = /(?<!\d)(?:19|20|21)\d{2}(?!\d)/.exec(text);
  return found ? Number(found[0]) : null;
};
