import type { Outlook } from './outlook.ts';

/** A part as a decision to go on or to stop sees it. Money in currency units, costs positive. */
export interface Part {
  readonly repairIs: 'renewal' | 'patch';
  readonly outlook: Outlook;
  /** Months in which work fits a new part whatever happens, rising; 0 for the first day. */
  readonly restarts: readonly number[];
  /** What a failure costs in month m when it is met, by month. */
  readonly costs: ArrayLike<number>;
}

/** What 1 is worth on the day of the decision, by month, times the chance that there is still something to pay it for. */
export interface Weights {
  /** Of what falls in the month: nothing has ended it before. */
  readonly falling: Float64Array;
  /** Of what is decided at the month's end: nothing has ended it by then. */
  readonly standing: Float64Array;
}

/** Never mended since the start. */
export const NEVER = -1;

const lastAtMost = (restarts: readonly number[], month: number): number => {
  let last = NEVER;
  for (const restart of restarts) if (restart <= month) last = restart;
  return last;
};

/**
 * The state of a part at the end of a month as one number: with renewals the month it was last new, with patches whether
 * it has been patched; NEVER for the part that was in at the start.
 *
 * @param mended month of the last failure that was mended; NEVER for none
 */
export const stateOf = (part: Part, month: number, mended: number): number => {
  if (part.repairIs === 'renewal') {
    const restart = part.restarts.length > 0 ? lastAtMost(part.restarts, month) : NEVER;
    return Math.max(mended, restart);
  }
  return mended === NEVER || part.outlook.patched === part.outlook.installed ? NEVER : 0;
};

const expectedFrom = (part: Part, month: number, state: number): Float64Array => {
  const { outlook } = part;
  if (part.repairIs === 'renewal')
    return (state === NEVER ? outlook.installed[month] : outlook.fresh[month - state]) as Float64Array;
  const restart = lastAtMost(part.restarts, month);
  if (restart !== NEVER) return outlook.fresh[month - restart] as Float64Array;
  return (state === NEVER ? outlook.installed[month] : outlook.patched[month]) as Float64Array;
};

/**
 * What a part's failures are expected to cost from the end of month t on, if whatever comes is mended until the end of
 * month k: at index k - t, for k = t..until; in the money of month t.
 */
export const costAhead = (
  part: Part,
  month: number,
  state: number,
  weights: Weights,
  until: number,
): Float64Array => {
  const row = new Float64Array(until - month + 1);
  if (weights.standing[month] === 0) return row;
  const scale = 1 / (weights.standing[month] as number);
  let expected = expectedFrom(part, month, state);
  let from = month;
  let next = part.restarts.findIndex((restart) => restart > month);
  let sum = 0;
  for (let m = month + 1; m <= until; m++) {
    if (next >= 0 && part.restarts[next] === m - 1) {
      expected = part.outlook.fresh[0] as Float64Array;
      from = m - 1;
      next = next + 1 < part.restarts.length ? next + 1 : -1;
    }
    const failures = expected[m - from - 1] as number;
    sum += failures * (part.costs[m] ?? 0) * (weights.falling[m] as number) * scale;
    row[m - month] = sum;
  }
  return row;
};
