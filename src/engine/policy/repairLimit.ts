/**
 * Pay the bill or walk away, by what going on is worth. The idea is Drinkwater and Hastings (1967) and Hastings (1969);
 * the state here is the month and every part's clock, for after a repair the risk falls, and a rule that forgets it can
 * cost more than either keeping or replacing.
 */
import { type Course, keepingFrom } from './course.ts';
import { costAhead, NEVER, type Part, stateOf } from './part.ts';

/** A bill for something that has no clock. */
export const UNNAMED = -1;

/**
 * The rule of the repair limit, fixed before anything happens. It is asked at the end of a month, of what has happened
 * by then: `mended[j]` is the month in which part j last failed and was mended, NEVER (-1) for the part that was in.
 */
export interface Rule {
  /** With no bill to pay: stopping at the end of this month is no dearer than keeping on. Never in the last month. */
  readonly walksAt: (month: number, mended: Int16Array) => boolean;
  /** The largest bill worth paying for part j (UNNAMED: for something without a clock); never below nil. */
  readonly limit: (month: number, part: number, mended: Int16Array) => number;
  /** Whether a bill for part j is within its limit: what is asked in every future, and sooner known than the limit. */
  readonly pays: (bill: number, month: number, part: number, mended: Int16Array) => boolean;
}

const leastFrom = (row: ArrayLike<number>, first: number): number => {
  let least = first;
  for (let i = first + 1; i < row.length; i++) if ((row[i] as number) < (row[least] as number)) least = i;
  return least;
};

/** max(0, Rb - least K): at most this much may be paid before walking away is cheaper; nil where going on is not open. */
export const limitOver = (walkingAway: number, leastGoingOn: number): number =>
  leastGoingOn === Number.POSITIVE_INFINITY ? 0 : Math.max(0, walkingAway - leastGoingOn);

/** All that the rule needs of one month: K with nothing mended, and what it says of every state. */
interface Month {
  readonly untouched: Float64Array;
  /** State of each part that was never mended. */
  readonly states: Int16Array;
  /** What each would cost ahead in that state. */
  readonly rows: readonly Float64Array[];
  /** Index of the cheapest month to stop in, later than this one, with nothing mended. */
  readonly later: number;
  /** Whatever has been mended, keeping on to that month costs at most this. */
  readonly most: number;
}

/**
 * Re-planned each month: pay if the bill and the cheapest way of going on come to no more than walking away, and without
 * a bill walk when that is no dearer than the cheapest month to stop later. Nothing but sums over the parts is looked up,
 * and what is looked up is kept, so many futures can be followed.
 */
export const repairLimitRule = (course: Course, parts: readonly Part[]): Rule => {
  const { until, weights } = course;
  const months: (Month | undefined)[] = new Array(until + 1);
  // By part, month and state; made at full length, for a list with gaps is looked up slowly.
  const kept = parts.map(() =>
    Array.from({ length: until + 1 }, (_, month) => new Array<Float64Array | undefined>(month + 2)),
  );
  const scratch = new Float64Array(until + 1);

  const rowOf = (j: number, month: number, state: number): Float64Array =>
    costAhead(parts[j] as Part, month, state, weights, until);

  /** What a part costs ahead in a state, above what it would cost never mended. */
  const aboveUntouched = (j: number, month: number, state: number, untouched: Float64Array): Float64Array => {
    const rows = kept[j]?.[month] as (Float64Array | undefined)[];
    const known = rows[state + 1];
    if (known) return known;
    const row = rowOf(j, month, state).map((cost, i) => cost - (untouched[i] as number));
    rows[state + 1] = row;
    return row;
  };

  /** The most that any state of a part adds to keeping on to one later month. */
  const mostAbove = (part: Part, month: number, never: number, later: number): number => {
    const cost = (state: number): number =>
      costAhead(part, month, state, weights, month + later)[later] as number;
    const untouched = cost(never);
    let [most, last] = [untouched, never];
    for (let mended = 0; mended <= month; mended++) {
      const state = stateOf(part, month, mended);
      if (state !== last) most = Math.max(most, cost(state));
      last = state;
    }
    return most - untouched;
  };

  const monthOf = (month: number): Month => {
    const known = months[month];
    if (known) return known;
    const states = Int16Array.from(parts, (part) => stateOf(part, month, NEVER));
    const rows = parts.map((_, j) => rowOf(j, month, states[j] as number));
    const untouched = keepingFrom(course, month).map((cost, i) =>
      rows.reduce((sum, row) => sum + (row[i] as number), cost),
    );
    const later = leastFrom(untouched, Math.min(1, until - month));
    const most = parts.reduce(
      (sum, part, j) => sum + mostAbove(part, month, states[j] as number, later),
      untouched[later] as number,
    );
    const one = { untouched, states, rows, later, most };
    months[month] = one;
    return one;
  };

  /** K in the present state into the scratch row; `renewing` is the part being mended now. */
  const goingOn = (month: number, renewing: number, mended: Int16Array): number => {
    const { untouched, states, rows } = monthOf(month);
    const n = untouched.length;
    scratch.set(untouched);
    for (let j = 0; j < parts.length; j++) {
      const state = stateOf(parts[j] as Part, month, j === renewing ? month : (mended[j] as number));
      if (state === states[j]) continue;
      const above = aboveUntouched(j, month, state, rows[j] as Float64Array);
      for (let i = 0; i < n; i++) scratch[i] = (scratch[i] as number) + (above[i] as number);
    }
    return n;
  };

  /** K in the present state at the later month that is cheapest with nothing mended, and so most likely now. */
  const likelyLeast = (month: number, renewing: number, mended: Int16Array): number => {
    const { untouched, states, rows, later } = monthOf(month);
    let cost = untouched[later] as number;
    for (let j = 0; j < parts.length; j++) {
      const state = stateOf(parts[j] as Part, month, j === renewing ? month : (mended[j] as number));
      if (state !== states[j])
        cost += aboveUntouched(j, month, state, rows[j] as Float64Array)[later] as number;
    }
    return cost;
  };

  const limit: Rule['limit'] = (month, part, mended) => {
    const n = goingOn(month, part, mended);
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < n; i++) if ((scratch[i] as number) < least) least = scratch[i] as number;
    return limitOver(course.stoppingBroken[month] as number, least);
  };

  return {
    walksAt(month, mended) {
      if (month >= until) return false;
      const stop = course.stopping[month] as number;
      if (monthOf(month).most < stop) return false;
      // One month that is cheaper to stop in settles it.
      if (likelyLeast(month, UNNAMED, mended) < stop) return false;
      const n = goingOn(month, UNNAMED, mended);
      for (let i = 1; i < n; i++) if ((scratch[i] as number) < stop) return false;
      return true;
    },
    limit,
    pays: (bill, month, part, mended) => {
      const stop = course.stoppingBroken[month] as number;
      // So does one month that it can be kept to, the bill paid, for less than walking away: whatever has been mended, or
      // as things are.
      return (
        bill + monthOf(month).most < stop ||
        bill + likelyLeast(month, part, mended) < stop ||
        bill <= limit(month, part, mended)
      );
    },
  };
};
