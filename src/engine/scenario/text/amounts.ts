import type { DistanceUnit } from '../../quantity/distance.ts';

const LOCALE = 'en';

/** "$3,400", "€0.50": an amount inside a sentence about the file. A code that is none stands behind its figure. */
export const moneyText = (amount: number, currency: string): string => {
  const digits = Number.isInteger(amount) ? 0 : 2;
  const shape = { minimumFractionDigits: digits, maximumFractionDigits: digits };
  if (!/^[A-Z]{3}$/.test(currency))
    return `${new Intl.NumberFormat(LOCALE, shape).format(amount)} ${currency}`;
  const style = { style: 'currency', currency, currencyDisplay: 'narrowSymbol' } as const;
  return new Intl.NumberFormat(LOCALE, { ...style, ...shape }).format(amount);
};

/** "171,000 miles": a distance inside a sentence about the file, to the whole unit. */
export const distanceText = (distance: number, unit: DistanceUnit): string =>
  `${new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 0 }).format(distance)} ${unit}`;
