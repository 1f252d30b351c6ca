/** What is posted of a vehicle's bills while it is held: each as it is, or as it changes on dates known beforehand. */
import { monthly, yearly } from '../../cashflow/contracts/recurring.ts';
import { monthlyStepped, settledMidway, yearlyStepped } from '../../cashflow/contracts/stepped.ts';
import type { Levels } from '../../cashflow/levels.ts';
import type { LineOf } from '../../cashflow/lines.ts';
import type { Category, Contract, Line } from '../../cashflow/posting.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import { type BillStep, changedWords, parkingSteps } from './billSteps.ts';
import type { YearlyBill } from './paidAhead.ts';
import type { Span } from './span.ts';

/** A bill's line, as it is or as a change makes it: with that one's reason, and its place in the file. */
const lineFor =
  (line: LineOf, category: Category, what: string, at: string, when: string) =>
  (step?: BillStep): Line =>
    step === undefined
      ? line(category, what, at, when)
      : line(category, what, `changes[${step.nth}].${at}`, `${when}; ${changedWords(step)}`);

/** A yearly bill over the months of a span. */
export const yearlyBillOf = (bill: YearlyBill, span: Span, lines: LineOf): Contract[] => {
  const { category, what, at, aYear, nextDue, levels, steps, comesBack } = bill;
  const { bought, start } = span;
  const firstDue = bought ? start : start + nextDue;
  const to = bought ? span.lastYearlyBill : span.end;
  const when = bought ? 'yearly, from the day it is bought' : 'yearly, when it falls due';
  const line = lineFor(lines, category, what, at, when);
  if (steps.length === 0) return [yearly(line(), aYear, levels, firstDue, to)];
  const paid = yearlyStepped(line, bill, firstDue, to);
  if (bought || !comesBack) return [paid];
  const midway = lineFor(lines, category, what, at, 'for what is left of the bill in force today');
  return [paid, settledMidway(midway, bill, firstDue, to)];
};

/** Parking over the months of a span. */
export const parkingOf = (
  { parkingAMonth: amount, changes }: Pick<RunningCosts, 'parkingAMonth' | 'changes'>,
  { start, end }: Span,
  levels: Levels,
  lines: LineOf,
): Contract => {
  const line = lineFor(lines, 'parking', 'parking', 'parking_a_month', 'every month');
  const steps = parkingSteps(changes);
  return steps.length === 0
    ? monthly(line(), amount, levels, start + 1, end)
    : monthlyStepped(line, { amount, steps }, levels, start + 1, end);
};
