import type { ClockLaw } from './clock.ts';

/** Expected failures of the next months, from every state a part can be in: index 0 is the month that follows. */
export interface Outlook {
  /** The part that was in at the start has lasted so many months. */
  readonly installed: readonly Float64Array[];
  /** Fitted new so many months ago. */
  readonly fresh: readonly Float64Array[];
  /** Mended with a patch by now, so many months from the start, its clock never restarted. */
  readonly patched: readonly Float64Array[];
}

/** A patch leaves the clock running: what is to be expected is the clock's own course. */
const running = (numbers: ArrayLike<number>, months: number): Float64Array[] => {
  const all = Float64Array.from({ length: months }, (_, m) => numbers[m] ?? 0);
  return Array.from({ length: months + 1 }, (_, m) => all.subarray(m));
};

/**
 * One month on it has failed, and `after` says what then, or it has not and is a month older. So the expected failures of
 * every state follow from those a month later: the delayed renewal equation, solved backwards for all ages at once.
 */
const backwards = (
  chances: ArrayLike<number>,
  after: (month: number) => Float64Array,
  months: number,
): Float64Array[] => {
  const lists: Float64Array[] = new Array(months + 1);
  lists[months] = new Float64Array(0);
  for (let m = months - 1; m >= 0; m--) {
    const q = chances[m] ?? 0;
    const older = lists[m + 1] as Float64Array;
    const failed = after(m + 1);
    const list = new Float64Array(months - m);
    list[0] = q;
    for (let n = 1; n < list.length; n++)
      list[n] = q * (failed[n - 1] as number) + (1 - q) * (older[n - 1] as number);
    lists[m] = list;
  }
  return lists;
};

/** Expected failures of a new part by month: the renewal equation in whole months. */
const renewals = (fresh: ArrayLike<number>, months: number): Float64Array => {
  // Chance that it first fails in month n, at index n - 1.
  const first = new Float64Array(months);
  let lasting = 1;
  for (let n = 0; n < months; n++) {
    first[n] = lasting * (fresh[n] ?? 0);
    lasting -= first[n] as number;
  }
  const expected = new Float64Array(months);
  for (let n = 0; n < months; n++) {
    let sum = first[n] as number;
    for (let s = 0; s < n; s++) sum += (first[s] as number) * (expected[n - 1 - s] as number);
    expected[n] = sum;
  }
  return expected;
};

/** The outlook of a part over `months` months from the start. */
export const outlookOf = (law: ClockLaw, months: number): Outlook => {
  if (law.repairIs === 'patch') {
    const fresh = running(law.fresh, months);
    if (law.patched === null) {
      const installed = running(law.installed, months);
      return { installed, fresh, patched: installed };
    }
    const patched = running(law.patched, months);
    const installed = backwards(law.installed, (m) => patched[m] as Float64Array, months);
    return { installed, fresh, patched };
  }
  const newPart = renewals(law.fresh, months);
  const installed = backwards(law.installed, () => newPart, months);
  const fresh = backwards(law.fresh, () => newPart, months);
  return { installed, fresh, patched: installed };
};
