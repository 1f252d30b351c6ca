import { parseCivilDate } from '../../quantity/civilDate.ts';
import { asYesNo } from '../schema/fields.ts';
import type { Finding, Path } from '../text/problems.ts';
import type { Raw } from './rawView.ts';

const DAY = 86_400_000;
/** Beyond so many days a date is asked about: the year is where a slip is made. */
const NEAR = 366;

/** Days from one ISO date to another; undefined where one of them is none. */
const daysBetween = (from: string, to: string): number | undefined =>
  parseCivilDate(from) && parseCivilDate(to) ? (Date.parse(to) - Date.parse(from)) / DAY : undefined;

const isFar = (days: number): boolean => Math.abs(days) > NEAR;

/** Every day a file may name besides the day of the decision. */
const named = (raw: Raw): { readonly path: Path; readonly date: string }[] =>
  [
    ...raw.each(['work_needed']).map((at) => [...at, 'quote_ends']),
    ...raw.replacements.map((at) => [...at, 'offer_ends']),
    ['vehicle', 'must_pass_inspection_by'],
    ['claim', 'happened'],
    ['claim', 'storage', 'paid_until'],
    ...raw.each(['claim', 'answer_by']).map((at) => [...at, 'date']),
  ].flatMap((path) => {
    const date = raw.at(path);
    return typeof date === 'string' && parseCivilDate(date) ? [{ path, date }] : [];
  });

const far = (path: Path, message: string, remedy: string): Finding => ({
  kind: 'caution',
  path,
  message,
  remedy,
});

/**
 * Dates of another year than the decision's. A file's own `date:` is the day that all others are measured from, so an
 * old report is quiet about them. That date itself is measured from today; one that is past is right where another date
 * of the file lies near it, and any in a file that says it is invented.
 */
export const datesFar = (raw: Raw): Finding[] => {
  const dates = named(raw).flatMap(({ path, date }) => {
    const days = daysBetween(raw.date, date);
    return days === undefined ? [] : [{ path, date, days }];
  });
  const others = dates
    .filter(({ days }) => isFar(days))
    .map(({ path, date, days }) =>
      far(
        path,
        `${date} is more than a year ${days > 0 ? 'after' : 'before'} the day of the decision, ${raw.date}.`,
        path.at(-1) === 'must_pass_inspection_by' && days > 0
          ? 'Look at the year again; if it is right, the months from now may stand here instead.'
          : 'Look at the year again; "date:" says another day of the decision.',
      ),
    );
  const off = daysBetween(raw.today, raw.date);
  if (off === undefined || !isFar(off) || asYesNo(raw.at(['invented'])) === true) return others;
  if (off < 0 && dates.some(({ days }) => !isFar(days))) return others;
  return [
    far(
      ['date'],
      `The day of the decision, ${raw.date}, is more than a year ${off > 0 ? 'after' : 'before'} today, ${raw.today}.`,
      off > 0
        ? 'Look at the year again, or leave it out for today.'
        : 'In an old report that is right; else mend it, or leave it out for today.',
    ),
    ...others,
  ];
};
