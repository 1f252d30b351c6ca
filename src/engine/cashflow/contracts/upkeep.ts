import type { Contract, Line } from '../posting.ts';
import { postWork, type WorkOnce, type WorkPrices } from './work.ts';

/** When a scheduled item falls due: every so many months or so much distance, whichever comes first. */
export interface Schedule {
  readonly everyMonths: number | null;
  readonly everyDistance: number | null;
  /** Run since it was last done. */
  readonly sinceMonths: number;
  readonly sinceDistance: number;
}

/**
 * The months, from 1 to `to`, in which a scheduled item falls due; what is overdue falls in month 1.
 *
 * @param distanceAMonth how fast the vehicle is driven; 0 leaves only the calendar
 */
export const dueMonths = (schedule: Schedule, distanceAMonth: number, to: number): number[] => {
  const byDistance =
    schedule.everyDistance !== null && distanceAMonth > 0
      ? schedule.everyDistance / distanceAMonth
      : Infinity;
  const interval = Math.min(schedule.everyMonths ?? Infinity, byDistance);
  if (!(interval > 0) || interval === Infinity) return [];
  const leftByMonths = (schedule.everyMonths ?? Infinity) - schedule.sinceMonths;
  const leftByDistance =
    byDistance === Infinity ? Infinity : byDistance - schedule.sinceDistance / distanceAMonth;
  const months: number[] = [];
  // Each one is done at a month's end, and the next is counted from there. A hair's breadth keeps 12.000000001 in 12.
  let due = Math.max(1, Math.ceil(Math.min(leftByMonths, leftByDistance) - 1e-9));
  while (due <= to) {
    months.push(due);
    due = Math.max(due + 1, Math.ceil(due + interval - 1e-9));
  }
  return months;
};

/** A scheduled item over months 1..to of a vehicle bought or kept at month `start`. */
export const scheduledUpkeep =
  (
    line: Line,
    schedule: Schedule,
    work: WorkOnce,
    prices: WorkPrices,
    distanceAMonth: number,
    start: number,
    to: number,
  ): Contract =>
  (sink) => {
    for (const m of dueMonths(schedule, distanceAMonth, to - start))
      postWork(sink, line, start + m, work, prices);
  };
