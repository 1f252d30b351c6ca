/** Does it fit: what leaves the house in a regular month, beside today's and what is spare. */

import { levelAt } from '../cashflow/levels.ts';
import { KINDS, type Line, type Sink } from '../cashflow/posting.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import { project } from '../evaluation/project.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { allDone } from '../plans/vehicle/keepPlan.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import { holdPresent } from '../plans/vehicle/presentVehicle.ts';
import { contractsOf } from '../plans/vehicle/recipe.ts';

/** Cash a month in currency units, repairs and upkeep at their average, yearly bills by month. */
export interface MonthlyFit {
  readonly id: string;
  /** What the loan or lease of another vehicle takes; 0 for none. */
  readonly payment: number;
  /** All that leaves the house in a regular month of the first year. */
  readonly regular: number;
  /** That less today's: the present vehicle's regular month, its loan included, the needed work left out. */
  readonly more: number;
  /** What it takes above spare money, 0 where it fits; null where nobody said what is spare. */
  readonly short: number | null;
  /** What big bills take of it besides, spread over the months of the first year: what they cost and what giving it up does. */
  readonly bigBills: number;
  /** For so many months from the first; 0 where it fits. */
  readonly months: number;
  /**
   * So many months savings make up for it, what is paid or comes once besides: that of the first three months at the start
   * (the price of a sale comes weeks later), all else in its month; null where it fits, or nothing is known of them.
   */
  readonly savingsLast: number | null;
}

const YEAR = 12;
/** Less than this a month is nothing anybody would notice. */
const NOTHING = 1;

/** What a plan pays month by month: what recurs, averaged over each year, and payments as they fall. */
interface Monthly {
  readonly recurring: Float64Array;
  readonly payments: Float64Array;
  readonly debts: Float64Array;
  /** What is paid, less what comes, once. */
  readonly once: Float64Array;
  /** What may never come, expected. */
  readonly rare: Float64Array;
}

/** By the end of this month whoever bought the old one has paid. */
const SETTLED = 3;

const isDebt = ({ category, role }: Line): boolean =>
  (category === 'loan' || category === 'lease') && role !== 'loan paid off' && role !== 'bridge';
const isOurs = ({ path }: Line): boolean => path === 'vehicle.loan' || path === 'household.card_rate';
const END = "what we'd own at the end";
const recurs = ({ category }: Line): boolean => !KINDS[category].once && !KINDS[category].rare;

const sinkInto = ({ recurring, payments, debts, once, rare }: Monthly, horizon: number): Sink => {
  const add = (line: Line, month: number, cash: number): void => {
    if (month > horizon || line.category === END) return;
    // What recurs and is paid on the first day is paid ahead: it is no regular month's.
    const regular = month > 0 && (isDebt(line) || recurs(line));
    const seldom = KINDS[line.category].rare ? rare : once;
    const into = !regular ? seldom : isDebt(line) ? (isOurs(line) ? debts : payments) : recurring;
    into[month] = (into[month] as number) + cash;
  };
  return {
    post: (line, month, _counted, cash) => add(line, month, cash),
    series: (line, from, to, levels, _counted, cash) => {
      for (let m = from; m <= to; m++) add(line, m, cash * levelAt(levels, m));
    },
    time: null,
    stands: null,
  };
};

const monthlyOf = (horizon: number, post: (sink: Sink) => void): Monthly => {
  const empty = (): Float64Array => new Float64Array(horizon + 1);
  const monthly: Monthly = {
    recurring: empty(),
    payments: empty(),
    debts: empty(),
    once: empty(),
    rare: empty(),
  };
  post(sinkInto(monthly, horizon));
  const { recurring } = monthly;
  for (let first = 1; first <= horizon; first += YEAR) {
    const year = recurring.subarray(first, Math.min(first + YEAR, horizon + 1));
    // The last year's bills were paid a year before, and the next ones come after the look: it is like the year before.
    const last = first > 1 && first + YEAR > horizon;
    year.fill(
      last ? (recurring[first - 1] as number) : year.reduce((sum, cash) => sum + cash, 0) / year.length,
    );
  }
  return monthly;
};

const inMonth = ({ recurring, payments, debts }: Monthly, month: number): number =>
  (recurring[month] as number) + (payments[month] as number) + (debts[month] as number);

/** What the present vehicle takes in each month, its loan included, the needed work left out. */
const todays = (ctx: Context): Monthly =>
  monthlyOf(ctx.horizon, (sink) => {
    for (const contract of contractsOf(holdPresent(allDone(ctx), ctx.horizon, ctx), ctx)) contract(sink);
  });

/** What is known of the household's money. */
interface Purse {
  /** What is left each month after today's; null: nobody said. */
  readonly spare: number | null;
  /** Null: nobody said. */
  readonly savings: number | null;
}

/** So many months until savings are used up by what is lacking each month, and by what is paid once. */
const monthsCarried = ({ once }: Monthly, lacking: (month: number) => number, savings: number): number => {
  let left = savings - once.subarray(0, SETTLED + 1).reduce((sum, cash) => sum + cash, 0);
  for (let month = 1; month < once.length; month++) {
    left -= lacking(month) + (month > SETTLED ? (once[month] as number) : 0);
    if (left < 0) return month - 1;
  }
  return once.length - 1;
};

const fitOf = (
  way: Monthly,
  today: Monthly,
  { id, replacement }: OptionResult,
  { spare, savings }: Purse,
  horizon: number,
): MonthlyFit => {
  const first = Array.from({ length: Math.min(YEAR, horizon) }, (_, i) => i + 1);
  const dearest = first.reduce((a, b) => (inMonth(way, b) > inMonth(way, a) ? b : a), 1);
  const moreIn = (month: number): number => inMonth(way, month) - inMonth(today, month);
  const regular = {
    id,
    // What keeping it holds of another one's loan is a chance of it (papers refused, an end), and no payment.
    payment: replacement === null ? 0 : (way.payments[dearest] as number),
    regular: inMonth(way, dearest),
    more: moreIn(dearest),
    bigBills: first.reduce((sum, month) => sum + (way.rare[month] as number), 0) / Math.max(1, first.length),
  };
  if (spare === null) return { ...regular, short: null, months: 0, savingsLast: null };
  const short = moreIn(dearest) - spare;
  if (short < NOTHING) return { ...regular, short: 0, months: 0, savingsLast: null };
  let months = 0;
  for (let m = dearest; m <= horizon && moreIn(m) - spare >= NOTHING; m++) months += 1;
  const savingsLast = savings === null ? null : monthsCarried(way, (month) => moreIn(month) - spare, savings);
  return { ...regular, short, months, savingsLast };
};

/**
 * Whether the regular month of each way fits, at averages.
 *
 * @param plans the plans of these results, by position
 */
export const monthlyFits = (
  plans: readonly Plan[],
  results: readonly OptionResult[],
  purse: Purse,
  ctx: Context,
): MonthlyFit[] => {
  const { horizon } = ctx;
  const today = todays(ctx);
  return plans.flatMap((plan, i) => {
    const result = results[i];
    if (!result) return [];
    const way = monthlyOf(horizon, (sink) => {
      project(plan, sink, ctx);
    });
    return [fitOf(way, today, result, purse, horizon)];
  });
};
