/** Bills whose figure is another one from a month on, known beforehand. */
import { type Levels, levelAt } from '../levels.ts';
import { type Contract, type Line, postMoney, postMoneySeries } from '../posting.ts';

/** From month `from` on a yearly or monthly amount is this one, in money of the day of the decision. */
export interface Step {
  readonly from: number;
  readonly amount: number;
}

/** Nothing changes. */
export const STEADY: readonly never[] = [];

/** The latest of the steps, which are in the order of their months, that holds in a month; undefined before the first. */
const latest = <S extends Step>(steps: readonly S[], month: number): S | undefined => {
  let found: S | undefined;
  for (const step of steps) if (step.from <= month) found = step;
  return found;
};

/** The amount that holds in a month. */
export const inForce = (amount: number, steps: readonly Step[], month: number): number =>
  latest(steps, month)?.amount ?? amount;

/**
 * What steps add to a yearly amount that is paid for the months after `after` up to `until`: a twelfth of their difference
 * for each of these months in which they hold. Nothing, exactly, for a step to the same amount.
 */
export const addedBy = (aYear: number, steps: readonly Step[], after: number, until: number): number => {
  let added = 0;
  let before = aYear;
  for (const { from, amount } of steps) {
    added += ((amount - before) * Math.max(0, until - Math.max(after, from - 1))) / 12;
    before = amount;
  }
  return added;
};

/** A yearly bill that changes. */
export interface SteppedBill<S extends Step> {
  readonly aYear: number;
  readonly steps: readonly S[];
  readonly levels: Levels;
  /** It is paid for the twelve months to come, each at its own amount; else it is paid for what is done that day. */
  readonly ahead: boolean;
}

/**
 * A bill that falls once a year, first in month `firstDue`, last no later than `to`, at that month's prices.
 *
 * @param lineFor the line of a bill whose year such a step reaches into, or none
 */
export const yearlyStepped =
  <S extends Step>(
    lineFor: (step: S | undefined) => Line,
    { aYear, steps, levels, ahead }: SteppedBill<S>,
    firstDue: number,
    to: number,
  ): Contract =>
  (sink) => {
    for (let m = firstDue; m <= to; m += 12) {
      const amount = ahead ? aYear + addedBy(aYear, steps, m, m + 12) : inForce(aYear, steps, m);
      const line = lineFor(latest(steps, ahead ? m + 12 : m));
      if (amount !== 0) postMoney(sink, line, m, amount * levelAt(levels, m));
    }
  };

/**
 * What a change asks for, or gives back, of the bill that is in force on the day of the decision: that was paid up to
 * `firstDue` at the amount of that day, and the months that are left of it are settled in the first one that is otherwise.
 */
export const settledMidway =
  <S extends Step>(
    lineFor: (step: S) => Line,
    { aYear, steps }: Pick<SteppedBill<S>, 'aYear' | 'steps'>,
    firstDue: number,
    to: number,
  ): Contract =>
  (sink) => {
    let before = aYear;
    for (const step of steps) {
      const { from, amount } = step;
      const owed = ((amount - before) * (firstDue - from + 1)) / 12;
      if (from <= Math.min(firstDue, to) && owed !== 0) postMoney(sink, lineFor(step), from, owed);
      before = amount;
    }
  };

/** A cost that falls every month from `from` to `to`, both included, at month-m prices, whatever it is by then. */
export const monthlyStepped =
  <S extends Step>(
    lineFor: (step: S | undefined) => Line,
    { amount, steps }: { readonly amount: number; readonly steps: readonly S[] },
    levels: Levels,
    from: number,
    to: number,
  ): Contract =>
  (sink) => {
    let since = from;
    let now: S | undefined;
    for (const step of steps) {
      const next = Math.max(since, step.from);
      postMoneySeries(sink, lineFor(now), since, Math.min(next - 1, to), levels, now?.amount ?? amount);
      since = next;
      now = step;
    }
    postMoneySeries(sink, lineFor(now), since, to, levels, now?.amount ?? amount);
  };
