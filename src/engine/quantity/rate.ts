/**
 * Rates of interest and growth. A rate carries its compounding, so that nobody has to ask "monthly or yearly?".
 */
export type Rate =
  /** An annual effective rate: 0.05 turns 1 into 1.05 after a year. */
  | { readonly kind: 'effective'; readonly perYear: number }
  /** A nominal annual rate compounded `periods` times a year: a loan's note rate has `periods` 12. */
  | { readonly kind: 'nominal'; readonly perYear: number; readonly periods: number };

/** An annual effective rate; `perYear` is a fraction (0.05 for 5 %), above -1. */
export const effective = (perYear: number): Rate => ({ kind: 'effective', perYear });

/** A nominal annual rate (fraction) compounded `periods` times a year. */
export const nominal = (perYear: number, periods = 12): Rate => ({ kind: 'nominal', perYear, periods });

/** The annual effective rate equivalent to `rate`, as a fraction. */
export const effectivePerYear = (rate: Rate): number =>
  rate.kind === 'effective' ? rate.perYear : (1 + rate.perYear / rate.periods) ** rate.periods - 1;

/** The rate per period when the year has `periods` periods, as a fraction: what one period adds to 1. */
export const perPeriod = (rate: Rate, periods = 12): number =>
  rate.kind === 'nominal' && rate.periods === periods
    ? rate.perYear / periods
    : (1 + effectivePerYear(rate)) ** (1 / periods) - 1;

/** The nominal annual rate, compounded `periods` times a year, equivalent to `rate`. */
export const nominalPerYear = (rate: Rate, periods = 12): number => perPeriod(rate, periods) * periods;

/** What 1, due in `months`, is worth today: (1 + r)^(-months/12). */
export const discountFactor = (rate: Rate, months: number): number =>
  (1 + effectivePerYear(rate)) ** (-months / 12);

/** The real rate under `inflation` by the Fisher relation (1 + nominal)/(1 + inflation) - 1; fractions a year. */
export const realRate = (nominalRate: number, inflation: number): number =>
  (1 + nominalRate) / (1 + inflation) - 1;
