/**
 * Time in whole months. Month 0 is the day of the decision; a recurring cost of month m falls at its end.
 */

/** The longest horizon a scenario may ask for, in months. */
export const LONGEST_HORIZON = 240;

/** The index of the year a month belongs to: months 0 to 12 are year 0, 13 to 24 year 1. */
export const yearOf = (month: number): number => Math.max(0, Math.floor((month - 1) / 12));

/** The price level of month m, re-priced once a year: (1 + growth)^floor((m - 1)/12); 1 in months 0 to 12. */
export const yearlyLevel = (growth: number, month: number): number => (1 + growth) ** yearOf(month);

/** The level of a value or a one-off that grows smoothly: (1 + growth)^(m/12). */
export const smoothLevel = (growth: number, month: number): number => (1 + growth) ** (month / 12);

/** The 1-based year a month is printed under: month 0 stands in year 0 ("the day itself"), 1 to 12 in year 1. */
export const ledgerYear = (month: number): number => Math.ceil(month / 12);
