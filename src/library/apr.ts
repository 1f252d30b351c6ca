/** The annual percentage rate, for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */
import { type CivilDate, daysBetween, isoDate, parseCivilDate } from '../engine/quantity/civilDate.ts';
import * as apr from '../engine/valuation/apr.ts';
import { guarded } from './guarded.ts';
import { all, holds, list, number, optional, row, terms, type Want, whole } from './wants.ts';

export type { Apr } from '../engine/valuation/apr.ts';

const paid = number({ from: 0 });

const unitFlow = row({
  amount: paid,
  t: whole(0),
  f: number({ from: 0, below: 1 }),
  count: optional(whole(1, 12_000)),
});

/**
 * The APR of any pattern of advances and payments, amounts from 0, counted in unit periods from the first advance: a
 * nominal annual fraction. Several are possible only when an advance follows a payment; none has a reason. RangeError
 * for a fraction where a whole number of unit periods is wanted, for f outside 0 ≤ f < 1 and for negative amounts.
 */
export const annualPercentageRate = guarded(
  'annualPercentageRate',
  {
    loan: terms({
      advances: list(unitFlow),
      payments: list(unitFlow),
      unitPeriodsPerYear: number({ above: 0 }),
    }),
  },
  apr.annualPercentageRate,
);

/**
 * The APR of a loan advanced in month 0 and paid in whole months, payments from 0 in currency units. `amountFinanced` is
 * what the borrower has the use of: the principal less any prepaid finance charge. RangeError for fractions of a month,
 * months before 0, negative amounts, and a single payment in month 0, which has no term.
 */
export const aprOfLoan = guarded(
  'aprOfLoan',
  {
    loan: all(
      terms({ amountFinanced: paid, payments: list(row({ month: whole(0), amount: paid })) }),
      holds<Parameters<typeof apr.aprOfLoan>[0]>(
        'a single payment falls in month 1 or later',
        ({ payments }) => payments.length !== 1 || payments[0]?.month !== 0,
      ),
    ),
  },
  apr.aprOfLoan,
);

const date: Want = all(
  row({ year: whole(1, 9999), month: whole(1, 12), day: whole(1, 31) }),
  holds<CivilDate>('a date that the calendar has is wanted', (day) => parseCivilDate(isoDate(day)) !== null),
);

const rising: Want = holds<readonly apr.DatedAmount[]>(
  'dates in rising order are wanted, each once',
  (amounts) =>
    amounts.every(({ date }, k) => {
      const before = amounts[k - 1];
      return before === undefined || daysBetween(before.date, date) > 0;
    }),
);

const dated = all(list(row({ amount: paid, date })), rising);

/**
 * The APR of a loan given by its dates, advances and payments each in rising order; the unit period follows from them.
 * None, with its reason, where nothing is advanced or nothing paid. RangeError for dates out of order or that no
 * calendar has, payments before the first advance, and where all is over on the day of the first advance.
 */
export const aprOfDates = guarded(
  'aprOfDates',
  {
    loan: all(
      terms({ advances: dated, payments: dated }),
      holds<Parameters<typeof apr.aprOfDates>[0]>(
        'payments from the first advance on are wanted, the last after it',
        ({ advances, payments }) => {
          const [start, first, last] = [advances[0], payments[0], payments.at(-1)];
          if (!start || !first || !last) return true;
          return daysBetween(start.date, first.date) >= 0 && daysBetween(start.date, last.date) > 0;
        },
      ),
    ),
  },
  apr.aprOfDates,
);
