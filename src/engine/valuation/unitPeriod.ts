/**
 * Unit periods of the annual percentage rate: how time is counted between a loan's dates.
 * Source: 12 CFR part 1026 (Regulation Z), Appendix J, (b)(2) to (b)(5), the paragraphs from memory; the tests hold
 * them against the dated examples of (c). All months count as equal.
 */
import { addMonths, type CivilDate, daysBetween, isoDate } from '../quantity/civilDate.ts';

/** A day, a week, half a month or a month, or a multiple of one; a year is 12 months. */
export type UnitPeriod = { readonly every: 'day' | 'week' | 'semimonth' | 'month'; readonly count: number };

/** Full unit periods `t` and the fraction `f` of one (0 ≤ f < 1) that is left. */
export type UnitTime = { readonly t: number; readonly f: number };

const YEAR: UnitPeriod = { every: 'month', count: 12 };
const DAYS = { day: 1, week: 7, semimonth: 15, month: 30 } as const;
const PER_YEAR = { day: 365, week: 52, semimonth: 24, month: 12 } as const;

/** How many unit periods the year has; the APR is the rate per unit period times this. */
export const unitPeriodsPerYear = ({ every, count }: UnitPeriod): number => PER_YEAR[every] / count;

const same = (a: CivilDate, b: CivilDate): boolean => isoDate(a) === isoDate(b);

/**
 * Full months counted back from the later date, and the days left before the first of them. Months end on the same
 * day, or on the last day of a month too short for it, seen from either end: 31 January to 28 February is one.
 */
const monthsBack = (from: CivilDate, to: CivilDate): { months: number; days: number } => {
  const apart = (to.year - from.year) * 12 + to.month - from.month;
  if (same(addMonths(from, apart), to)) return { months: apart, days: 0 };
  const months = daysBetween(from, addMonths(to, -apart)) >= 0 ? apart : apart - 1;
  return { months, days: daysBetween(from, addMonths(to, -months)) };
};

/**
 * The unit periods from one date to a later one: full ones counted back from the later date, what is left in days.
 * Months: days over 30. Half months and several months: 30 days to a month. Days and weeks: actual days. Years: what
 * is left in whole months over 12, else in days over 365. (b)(5)(ii) to (v).
 */
export const unitPeriodsBetween = (from: CivilDate, to: CivilDate, unit: UnitPeriod): UnitTime => {
  if (unit.every === 'day' || unit.every === 'week')
    return divide(daysBetween(from, to), DAYS[unit.every] * unit.count);
  const { months, days } = monthsBack(from, to);
  if (unit.every === 'month' && unit.count === 12) {
    const t = Math.floor(months / 12);
    if (days === 0) return { t, f: (months % 12) / 12 };
    return { t, f: daysBetween(from, addMonths(to, -12 * t)) / 365 };
  }
  return divide(30 * months + days, DAYS[unit.every] * unit.count);
};

const divide = (days: number, unitDays: number): UnitTime => ({
  t: Math.floor(days / unitDays),
  f: (days % unitDays) / unitDays,
});

/**
 * The unit period of a loan with these advance and payment dates (each in order): the commonest interval, the
 * shorter of equally common ones; if none occurs twice, the average rounded to the nearest standard interval. At most
 * a year. With one advance and one payment it is the term itself. (b)(4), (b)(5)(vi), (vii).
 */
export const unitPeriodOf = (advances: readonly CivilDate[], payments: readonly CivilDate[]): UnitPeriod => {
  const [start] = advances;
  const end = payments.at(-1);
  if (!start || !end) throw new RangeError('a loan has at least one advance and one payment');
  if (advances.length === 1 && payments.length === 1) return term(start, end);
  const gaps = [...intervals(advances), ...intervals([start, ...payments])];
  return commonest(gaps) ?? average(gaps);
};

const lengthInDays = ({ every, count }: UnitPeriod): number => DAYS[every] * count;

/** The time to a single payment, in whole months or in days, at most a year. */
const term = (from: CivilDate, to: CivilDate): UnitPeriod => {
  const { months, days } = monthsBack(from, to);
  const unit: UnitPeriod =
    days === 0 ? { every: 'month', count: months } : { every: 'day', count: daysBetween(from, to) };
  return unitPeriodsPerYear(unit) < 1 ? YEAR : unit;
};

/** The interval between two dates as whole months, else whole weeks, else days. */
const wholeUnit = (from: CivilDate, to: CivilDate): UnitPeriod => {
  const { months, days } = monthsBack(from, to);
  if (days === 0 && months > 0) return { every: 'month', count: months };
  const apart = daysBetween(from, to);
  return apart % 7 === 0 ? { every: 'week', count: apart / 7 } : { every: 'day', count: apart };
};

/** The intervals between dates in order; two that make up one month and differ by few days are half months. */
const intervals = (dates: readonly CivilDate[]): UnitPeriod[] => {
  const aMonth = (from: CivilDate | undefined, to: CivilDate | undefined): boolean =>
    from !== undefined && to !== undefined && same(addMonths(from, 1), to);
  return dates.slice(1).map((to, k): UnitPeriod => {
    const from = dates[k] as CivilDate;
    const days = daysBetween(from, to);
    const half = days >= 13 && days <= 18 && (aMonth(dates[k - 1], to) || aMonth(from, dates[k + 2]));
    return half ? { every: 'semimonth', count: 1 } : wholeUnit(from, to);
  });
};

const commonest = (gaps: readonly UnitPeriod[]): UnitPeriod | null => {
  const counts = new Map<string, { unit: UnitPeriod; times: number }>();
  for (const unit of gaps) {
    const key = `${unit.count} ${unit.every}`;
    counts.set(key, { unit, times: (counts.get(key)?.times ?? 0) + 1 });
  }
  const ranked = [...counts.values()]
    .filter(({ unit, times }) => times > 1 && unitPeriodsPerYear(unit) >= 1)
    .sort((a, b) => b.times - a.times || lengthInDays(a.unit) - lengthInDays(b.unit));
  return ranked[0]?.unit ?? null;
};

/** The standard interval nearest to the average one, the shorter of two equally near. */
const average = (gaps: readonly UnitPeriod[]): UnitPeriod => {
  const mean = gaps.reduce((sum, unit) => sum + lengthInDays(unit), 0) / gaps.length;
  const upTo = (every: 'week' | 'month', most: number): UnitPeriod[] =>
    Array.from({ length: most }, (_, k) => ({ every, count: k + 1 }));
  const standard: UnitPeriod[] = [
    { every: 'day', count: 1 },
    { every: 'semimonth', count: 1 },
    ...upTo('week', 52),
    ...upTo('month', 12),
  ];
  const off = (unit: UnitPeriod): number => Math.abs(lengthInDays(unit) - mean);
  return standard.reduce((best, unit) =>
    off(unit) < off(best) || (off(unit) === off(best) && lengthInDays(unit) < lengthInDays(best))
      ? unit
      : best,
  );
};
