import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMonths, daysBetween, isoDate, parseCivilDate } from '../../../src/engine/quantity/civilDate.ts';

const DAY = 86_400_000;
const days = fc.integer({ min: -100 * 365, max: 200 * 365 });
const iso = (day: number): string => new Date(day * DAY).toISOString().slice(0, 10);
const parse = (text: string) => {
  const date = parseCivilDate(text);
  if (!date) throw new Error(text);
  return date;
};

describe('calendar dates', () => {
  it('count days as the proleptic calendar of the platform does', () => {
    fc.assert(
      fc.property(days, days, (a, b) => {
        expect(daysBetween(parse(iso(a)), parse(iso(b)))).toBe(b - a);
        expect(isoDate(parse(iso(a)))).toBe(iso(a));
      }),
    );
  });
  it('add months on the same day, or the last one there is', () => {
    const plus = (from: string, months: number): string => isoDate(addMonths(parse(from), months));
    expect(plus('2023-01-31', 1)).toBe('2023-02-28');
    expect(plus('2024-01-31', 1)).toBe('2024-02-29');
    expect(plus('2024-03-31', -1)).toBe('2024-02-29');
    expect(plus('2023-11-15', 14)).toBe('2025-01-15');
    expect(plus('2024-02-15', -26)).toBe('2021-12-15');
  });
  it('refuse what is no day', () => {
    for (const text of ['2023-02-29', '1900-02-29', '2023-13-01', '2023-04-31', '2023-4-1', '']) {
      expect(parseCivilDate(text)).toBeNull();
    }
    expect(parseCivilDate('2000-02-29')).not.toBeNull();
  });
});
