/** Money and rates for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */
import * as money from '../engine/quantity/money.ts';
import * as rate from '../engine/quantity/rate.ts';
import { guarded } from './guarded.ts';
import { all, choice, holds, number, optional, row, type Want, whole } from './wants.ts';

export type { Cents } from '../engine/quantity/money.ts';
export type { Rate } from '../engine/quantity/rate.ts';

/** Cents are exact up to 90 trillion currency units. */
const MOST = 90e12;

/** Whole cents, cost or receipt. */
const cents: Want = number({ whole: true, from: -100 * MOST, to: 100 * MOST });

/** A rate of growth or interest per period, as a fraction: at -100 % nothing is left. */
export const growth: Want = number({ above: -1 });

const effectiveRate = row({ perYear: growth });
const nominalRate = all(
  row({ perYear: number(), periods: whole(1) }),
  holds<{ perYear: number; periods: number }>(
    'a nominal rate takes less than everything in a period: perYear above -periods is wanted',
    ({ perYear, periods }) => perYear > -periods,
  ),
);

/** A rate with its compounding. */
export const rated: Want = (value, at) => {
  row({ kind: choice('effective', 'nominal') })(value, at);
  ((value as rate.Rate).kind === 'effective' ? effectiveRate : nominalRate)(value, at);
};

/**
 * Rounds an amount in currency units to whole cents, half away from zero, as a person does with the decimal in front of
 * them: 1.005 is 1.01. Throws TypeError for what is no number, RangeError for NaN and beyond 90 trillion.
 */
export const toCents = guarded('toCents', { amount: number({ from: -MOST, to: MOST }) }, money.toCents);

/** The amount in currency units as a floating-point number. Throws TypeError or RangeError unless it is whole cents. */
export const inUnits = guarded('inUnits', { cents }, money.inUnits);

/** A decimal string with two places, "-1234.05". Throws TypeError or RangeError unless it is whole cents. */
export const centsText = guarded('centsText', { cents }, money.centsText);

/** An annual effective rate; `perYear` is a fraction, RangeError at -1 and below. */
export const effective = guarded('effective', { perYear: growth }, rate.effective);

/**
 * A nominal annual rate (fraction) compounded `periods` times a year, a whole number from 1, 12 unless told. RangeError
 * where a period would take everything (perYear at -periods and below).
 */
export const nominal = (perYear: number, periods = 12): rate.Rate => {
  number()(perYear, 'nominal, perYear');
  const made = rate.nominal(perYear, periods);
  rated(made, 'nominal');
  return made;
};

const perYearPeriods = optional(whole(1));

/** The annual effective rate equivalent to `rate`, as a fraction. Throws TypeError or RangeError for what is no rate. */
export const effectivePerYear = guarded('effectivePerYear', { rate: rated }, rate.effectivePerYear);

/** What one of `periods` (whole, from 1) periods of the year adds to 1, as a fraction. Throws as `effectivePerYear`. */
export const perPeriod = guarded('perPeriod', { rate: rated, periods: perYearPeriods }, rate.perPeriod);

/** The equivalent nominal annual rate, compounded `periods` (whole, from 1) times a year. Throws as `effectivePerYear`. */
export const nominalPerYear = guarded(
  'nominalPerYear',
  { rate: rated, periods: perYearPeriods },
  rate.nominalPerYear,
);

/**
 * What 1, due in `months`, is worth today: (1 + r)^(-months/12). Months need not be whole here; RangeError below 0.
 */
export const discountFactor = guarded(
  'discountFactor',
  { rate: rated, months: number({ from: 0 }) },
  rate.discountFactor,
);

/** The real rate under `inflation`, by Fisher; fractions a year, RangeError at -1 and below. */
export const realRate = guarded('realRate', { nominalRate: growth, inflation: growth }, rate.realRate);
