declare const brand: unique symbol;
/** Whole cents (hundredths of the currency's unit), as an exact integer. Positive: a cost. Negative: a receipt. */
export type Cents = number & { readonly [brand]: 'cents' };

/** No money. */
export const NIL = 0 as Cents;

/** Rounds an amount in currency units to whole cents, half away from zero, as a contract would. */
export const toCents = (amount: number): Cents => {
  const cents = Math.sign(amount) * Math.round(Math.abs(amount) * 100);
  return (cents === 0 ? 0 : cents) as Cents;
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
