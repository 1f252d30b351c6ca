import type { Weights } from './part.ts';

/**
 * What keeping something costs besides its parts' failures, and what stopping costs, by month 0..until. Money of the
 * month it stands at; costs positive. Stopping is replacing it; at `until` it is selling it, and the look ends.
 */
export interface Course {
  readonly until: number;
  readonly weights: Weights;
  /** Falls in month m while it is kept, whatever is decided at the month's end. */
  readonly running: Float64Array;
  /** Falls at the end of month m only if it is kept beyond. */
  readonly ifKeptOn: Float64Array;
  /** Chance, having got there, that month m ends it for good. */
  readonly ends: Float64Array;
  /** What then follows costs from the end of month m on; read only where month m may end it. */
  readonly ended: Float64Array;
  /** R: from the end of month m on, replacing it then while it runs. Infinity where that is not open. */
  readonly stopping: Float64Array;
  /** Rb: the same once it has broken down. */
  readonly stoppingBroken: Float64Array;
}

/** Weights from discount factors by month and the chance of an end in each. */
export const weightsOf = (discount: ArrayLike<number>, ends: ArrayLike<number>): Weights => {
  const n = discount.length;
  const falling = new Float64Array(n);
  const standing = new Float64Array(n);
  let left = 1;
  for (let m = 0; m < n; m++) {
    falling[m] = left * (discount[m] as number);
    left *= 1 - (ends[m] ?? 0);
    standing[m] = left * (discount[m] as number);
  }
  return { falling, standing };
};

/**
 * K without the parts: keeping from the end of month t, whatever comes, to the end of month k and then stopping; at index
 * k - t for k = t..until, in the money of month t.
 */
export const keepingFrom = (course: Course, month: number): Float64Array => {
  const { falling, standing } = course.weights;
  const row = new Float64Array(course.until - month + 1);
  // Sure to have ended by then: going on from there is not open.
  if (standing[month] === 0) return row.fill(Number.POSITIVE_INFINITY);
  const scale = 1 / (standing[month] as number);
  let sum = 0;
  for (let k = month; k <= course.until; k++) {
    if (k > month) {
      const ends = course.ends[k] as number;
      const ended = ends > 0 ? ends * (course.ended[k] as number) : 0;
      sum += (falling[k] as number) * ((course.running[k] as number) + ended);
    }
    const stands = standing[k] as number;
    row[k - month] = (sum + (stands > 0 ? stands * (course.stopping[k] as number) : 0)) * scale;
    sum += (standing[k] as number) * (course.ifKeptOn[k] as number);
  }
  return row;
};
