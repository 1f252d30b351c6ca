/**
 * Calendar dates as a contract writes them. No clock and no time zone: the language's own Date has both, and moves
 * a day when it is read on the other side of midnight.
 */
export type CivilDate = { readonly year: number; readonly month: number; readonly day: number };

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** The number of days in a month (1 to 12) of a year. */
const monthLength = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** Reads an ISO 8601 calendar date (2024-02-29); null when it is not one or there is no such day. */
export const parseCivilDate = (text: string): CivilDate | null => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return null;
  const date = { year: Number(parts[1]), month: Number(parts[2]), day: Number(parts[3]) };
  const exists =
    date.month >= 1 && date.month <= 12 && date.day >= 1 && date.day <= monthLength(date.year, date.month);
  return exists ? date : null;
};

/** The date in ISO 8601: 2024-02-29. */
export const isoDate = ({ year, month, day }: CivilDate): string =>
  [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');

/** Days since 1 March of the year 0 (Gregorian): counting the year from March puts the leap day at its end. */
const dayNumber = ({ year, month, day }: CivilDate): number => {
  const y = month > 2 ? year : year - 1;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + dayOfYear;
};

/** Days from one date to another; negative when the second is earlier. */
export const daysBetween = (from: CivilDate, to: CivilDate): number => dayNumber(to) - dayNumber(from);

/** The same day so many months later (earlier when negative), or the last day of a month that is too short. */
export const addMonths = ({ year, month, day }: CivilDate, months: number): CivilDate => {
  const index = year * 12 + (month - 1) + months;
  const to = { year: Math.floor(index / 12), month: (((index % 12) + 12) % 12) + 1 };
  return { ...to, day: Math.min(day, monthLength(to.year, to.month)) };
};

/** Reads a day or a month as the day it begins on: 2027-04-15, or 2027-04 for the first of it; null when it is neither. */
export const parseFrom = (text: string): CivilDate | null =>
  parseCivilDate(text) ?? parseCivilDate(`${text}-01`);

/** The first month counted from a day of decision that ends after a date not before it: 1 at the earliest. */
export const monthAfter = (decision: CivilDate, date: CivilDate): number => {
  const months = (date.year - decision.year) * 12 + date.month - decision.month;
  return daysBetween(date, addMonths(decision, months)) > 0 ? months : months + 1;
};

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** A month of the calendar, 1 to 12, by its name. */
export const monthName = (month: number): string => MONTHS[month - 1] ?? '';

/** A day or a month as it is said: "15 April 2027", "April 2027". */
export const saidFrom = (text: string): string => {
  const date = parseFrom(text);
  if (!date) return text;
  const month = `${monthName(date.month)} ${date.year}`;
  return parseCivilDate(text) ? `${date.day} ${month}` : month;
};
