/** An amount of money as it was typed. */
export interface Amount {
  readonly value: number;
  /** The currency's sign or code, if one was typed: "$", "EUR"; ''. */
  readonly sign: string;
}

const MARK = String.raw`(?:[A-Z]{0,3}\p{Sc}|[A-Z]{3})`;
const TYPED = new RegExp(
  String.raw`^(${MARK}?)\s*(\d{1,9}|\d{1,3}(?:[, ]\d{3}){1,2})(\.\d{1,2})?\s*(${MARK}?)$`,
  'iu',
);

/** Reads "1850", "1,850", "$1850", "1850.50 EUR"; null for anything else, such as "1,85" or "1.850". */
export const readAmount = (typed: string): Amount | null => {
  const [, before = '', whole, part = '', after = ''] = TYPED.exec(typed.trim()) ?? [];
  if (whole === undefined || (before !== '' && after !== '')) return null;
  return { value: Number(whole.replaceAll(/[, ]/g, '') + part), sign: before + after };
};

/** Whether a sign that was typed is the currency's: its code or one of its symbols, in any letters. */
export const isSignOf = (sign: string, currency: string): boolean => {
  const shown = (['symbol', 'narrowSymbol'] as const).map((currencyDisplay) =>
    new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay })
      .formatToParts(0)
      .find(({ type }) => type === 'currency'),
  );
  const signs = [currency, ...shown.map((part) => part?.value), currency === 'USD' ? 'US$' : undefined];
  return signs.some((one) => one?.toUpperCase() === sign.toUpperCase());
};
