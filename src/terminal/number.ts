/** A whole number as it is typed, with or without commas between thousands; null: it is none. */
export const wholeNumber = (typed: string): number | null =>
  /^(\d{1,15}|\d{1,3}(,\d{3}){1,4})$/.test(typed) ? Number(typed.replaceAll(',', '')) : null;

/** "16,384". */
export const grouped = (whole: number): string => new Intl.NumberFormat('en').format(whole);
