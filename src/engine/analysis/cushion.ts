import { type Estimate, meanOf, pointsOf, quantileOf, shareOf } from '../chance/estimates.ts';
import { type DetailDraws, fanMonths } from '../simulation/cashDraws.ts';
import type { ScrambleDraws } from '../simulation/draws.ts';
import { RULE } from '../simulation/policyOption.ts';
import type { Subject } from '../simulation/studyDesign.ts';
import type { LumpyWay } from './chances.ts';
import { gatherer } from './columns.ts';

type Column = (detail: DetailDraws) => ArrayLike<number>;

/** A repair bill of more than so many payments is a bad one. */
const PAYMENTS = 3;

/** The middle and the bad case of a column. */
const middleAndBad = (values: Float64Array): { readonly middle: number; readonly bad: number } => {
  const [middle = 0, bad = 0] = pointsOf(values, [0.5, 0.9]);
  return { middle, bad };
};

/** One of: the best keep, the best replace, the rule. */
const wayOf = (
  subject: Subject,
  which: 0 | 1 | 2,
): { readonly id: string; readonly label: string } | null => {
  const { keep, replace, options, rule } = subject;
  if (which === 2) return rule ? RULE : null;
  const w = which === 0 ? keep : replace;
  const way = w === null ? null : options[w];
  return way ? { id: way.id, label: way.label } : null;
};

/** What a way takes a month besides lumps; the rule's is keeping's until it walks away, and the other's from then on. */
const regularOf = (subject: Subject, which: 0 | 1 | 2, draws: readonly ScrambleDraws[]): number => {
  const { regular, horizon } = subject;
  if (which === 0) return regular.keep;
  if (which === 1) return regular.replace;
  let kept = 0;
  let count = 0;
  for (const { walkedIn } of draws)
    for (const month of walkedIn) {
      kept += month === 0 ? horizon : Math.max(0, month);
      count += 1;
    }
  const share = count === 0 ? 1 : kept / (count * horizon);
  return share * regular.keep + (1 - share) * regular.replace;
};

const lumpyWay = (
  subject: Subject,
  which: 0 | 1 | 2,
  draws: readonly ScrambleDraws[],
  payment: number | null,
): LumpyWay | null => {
  const way = wayOf(subject, which);
  if (!way) return null;
  const scrambles = draws.length;
  const { horizon, scenario } = subject;
  const { chance } = scenario.facts;
  const { savings } = scenario.inputs.household;
  const gather = gatherer(draws);
  const all = (column: Column): Float64Array =>
    gather(({ details }) => column(details[which] as DetailDraws));
  const months = fanMonths(horizon);
  const fans = all(({ fan }) => fan);
  const fanAt = (k: number): Float64Array => {
    const paid = new Float64Array(fans.length / months.length);
    for (let i = 0; i < paid.length; i++) paid[i] = fans[i * months.length + k] as number;
    return paid;
  };
  const mean = (column: Column): Estimate => meanOf(all(column), scrambles);
  const years = horizon / 12;
  const aYear = (column: Column): Estimate => {
    const { value, error } = mean(column);
    return { value: value / years, error: error / years };
  };
  const dryIn = all((detail) => detail.dryIn);
  // How many run dry in each month; then by the end of it.
  const dryBy = new Float64Array(horizon + 1);
  for (const m of dryIn) if (m > 0) dryBy[m] = (dryBy[m] as number) + 1 / dryIn.length;
  for (let m = 1; m <= horizon; m++) dryBy[m] = (dryBy[m] as number) + (dryBy[m - 1] as number);
  const worstBill = all((detail) => detail.worstBill);
  const [bad = 0] = pointsOf(worstBill, [0.9]);
  const regular = regularOf(subject, which, draws);
  return {
    ...way,
    regularAMonth: regular,
    worstMonth: middleAndBad(all((detail) => detail.worstMonth)),
    worstYear: middleAndBad(all((detail) => detail.worstYear)),
    fan: months.map((month, k) => {
      const [good = 0, middle = 0, bad = 0] = pointsOf(fanAt(k), [0.1, 0.5, 0.9]);
      return { month, good, middle, bad };
    }),
    fund: {
      start: savings === null ? null : savings - meanOf(fanAt(0), scrambles).value,
      aMonth: subject.setAside - (regular - subject.regular.keep),
      dry:
        savings === null
          ? []
          : Array.from({ length: horizon + 1 }, (_, month) => ({ month, chance: dryBy[month] as number })),
      needed: quantileOf(
        all((detail) => detail.needed),
        1 - chance.mayRunDry,
        scrambles,
      ),
    },
    stopWithinAYear: shareOf(
      all((detail) => detail.stopsFirstYear),
      (stops) => stops > 0,
      scrambles,
    ),
    towsAYear: aYear((detail) => detail.stops),
    daysWithoutAYear: aYear((detail) => detail.days),
    worstBill: {
      bad,
      payments: payment === null || payment <= 0 ? null : bad / payment,
      overThreePayments: shareOf(
        worstBill,
        (bill) => bill > (payment === null || payment <= 0 ? bad : PAYMENTS * payment),
        scrambles,
      ),
    },
    withoutIncome: {
      months: chance.monthsWithoutIncome,
      mustPay: chance.monthsWithoutIncome * regular,
      dry: savings === null ? null : mean((detail) => detail.incomeDry),
    },
  };
};

/** How the money of the ways compared comes, lumpy or level. */
export const lumpyWays = (
  subject: Subject,
  draws: readonly ScrambleDraws[],
  payment: number | null,
): LumpyWay[] => ([0, 1, 2] as const).flatMap((which) => lumpyWay(subject, which, draws, payment) ?? []);
