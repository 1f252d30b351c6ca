import { type Levels, levelAt } from '../levels.ts';
import { type Contract, type Line, postMoney, postMoneySeries } from '../posting.ts';
import { addedBy, inForce, STEADY, type Step } from './stepped.ts';

/** A cost that falls every month from `from` to `to`, both included, at month-m prices. */
export const monthly =
  (line: Line, amount: number, levels: Levels, from: number, to: number): Contract =>
  (sink) =>
    postMoneySeries(sink, line, from, to, levels, amount);

/**
 * A bill that falls once a year, first in month `firstDue`, last no later than `to`.
 * A kept vehicle's bills fall at their own date; one just bought pays at its start, so `firstDue` is the month bought.
 */
export const yearly =
  (line: Line, amount: number, levels: Levels, firstDue: number, to: number): Contract =>
  (sink) => {
    if (amount === 0) return;
    for (let m = firstDue; m <= to; m += 12) postMoney(sink, line, m, amount * levelAt(levels, m));
  };

/**
 * What is unearned at the end of `month`, that day's bill counted as paid, of a bill paid ahead for twelve months from
 * each due month: its months to come over twelve of what was paid for them. Before `firstDue` a bill is in force that
 * was paid up to it, at the price of the day of the decision. A positive amount.
 *
 * @param steps months from which the amount is another one; what a change of the bill in force asks for is paid in its month
 */
export const unearnedOf = (
  aYear: number,
  levels: Levels,
  firstDue: number,
  month: number,
  steps: readonly Step[] = STEADY,
): number => {
  if (month < firstDue) return (inForce(aYear, steps, month) * (firstDue - month)) / 12;
  const since = (month - firstDue) % 12;
  const level = levelAt(levels, month - since);
  const steady = (aYear * level * (12 - since)) / 12;
  return steps.length === 0 ? steady : steady + level * addedBy(aYear, steps, month, month - since + 12);
};

/** One amount in one month, already at that month's prices; a receipt is negative. */
export const oneOff =
  (line: Line, month: number, amount: number): Contract =>
  (sink) => {
    if (amount !== 0) postMoney(sink, line, month, amount);
  };
