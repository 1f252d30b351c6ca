declare const brand: unique symbol;
/** Whole cents (hundredths of the currency's unit), as an exact integer. Positive: a cost. Negative: a receipt. */
export type Cents = number & { readonly [brand]: 'cents' };

/** No money. */
export const NIL = 0 as Cents;

/**
 * Rounds an amount in currency units to whole cents, half away from zero, as a contract would and as a person does with
 * the figure in front of them: 1.005 is 1.01, although the nearest binary fraction lies a shade below. The figure is the
 * shortest decimal that the number is read back from.
 */
export const toCents = (amount: number): Cents => {
  const size = Math.abs(amount);
  const hundredfold = size * 100;
  const fraction = hundredfold - Math.floor(hundredfold);
  // Only where binary fractions may have moved it across a half is the decimal looked at: nearly never.
  const inDoubt =
    Math.abs(fraction - 0.5) <= hundredfold * HALF_IN_DOUBT && hundredfold < Number.MAX_SAFE_INTEGER;
  const cents = Math.sign(amount) * (inDoubt ? centsAsWritten(size) : Math.round(hundredfold));
  return (cents === 0 ? 0 : cents) as Cents;
};

/** How far, of itself, an amount times 100 may be off: half a last place each for the amount and for the product. */
const HALF_IN_DOUBT = 2 ** -51;

/** Whole cents of an amount from half a cent up, by its decimals: the third one decides. */
const centsAsWritten = (size: number): number => {
  const [whole = '', part = ''] = String(size).split('.');
  return Number(whole + part.slice(0, 2).padEnd(2, '0')) + ((part[2] ?? '0') >= '5' ? 1 : 0);
};

/** The exact sum; cents stay integers up to 90 trillion currency units. */
export const addCents = (...amounts: readonly Cents[]): Cents =>
  amounts.reduce((sum, c) => sum + c, 0) as Cents;

/** a - b, exactly. */
export const lessCents = (a: Cents, b: Cents): Cents => (a - b) as Cents;

/** The amount in currency units as a floating-point number. */
export const inUnits = (cents: Cents): number => cents / 100;

/** The amount as a decimal string with two places, such as "-1234.05": how money stands in JSON and CSV. */
export const centsText = (cents: Cents): string => {
  const whole = Math.trunc(Math.abs(cents) / 100);
  const rest = String(Math.abs(cents) % 100).padStart(2, '0');
  return `${cents < 0 ? '-' : ''}${whole}.${rest}`;
};
