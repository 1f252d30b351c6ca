import { averageWork } from '../cashflow/contracts/averageWork.ts';
import { energy, energyPerDistance } from '../cashflow/contracts/energy.ts';
import { failures } from '../cashflow/contracts/failures.ts';
import { monthly, yearly } from '../cashflow/contracts/recurring.ts';
import { dueMonths, scheduledUpkeep } from '../cashflow/contracts/upkeep.ts';
import type { WorkOnce } from '../cashflow/contracts/work.ts';
import type { Category, Contract, Line } from '../cashflow/posting.ts';
import { patchIncrements, renewalIncrements } from '../chance/renewal.ts';
import { remember } from '../quantity/remember.ts';
import type { Component, RunningCosts } from '../scenario/inputs.ts';
import { repairRatePerMile2019 } from '../scenario/tables.ts';
import type { Context } from './context.ts';

/** The months in which a vehicle is run, and how it came to be there. */
export interface Span {
  /** Path of the vehicle in the scenario file, and its name. */
  readonly path: string;
  readonly name: string;
  /** Runs from the end of `start` to the end of `end`. */
  readonly start: number;
  readonly end: number;
  /** A bought vehicle pays its yearly bills at its start, a kept one at their own date. */
  readonly bought: boolean;
  /** The month in which work restarts a component's clock, by the component's position. */
  readonly renewed: ReadonlyMap<number, number>;
  /** Months of `start..end` for which the last yearly bill is not paid, because the vehicle is sold at `end` = H. */
  readonly lastYearlyBill: number;
}

const NONE: ReadonlyMap<number, number> = new Map();
/** A span of a bought vehicle: its yearly bills fall at its start and every year after, before the horizon. */
export const boughtSpan = (path: string, name: string, start: number, end: number): Span => ({
  path,
  name,
  start,
  end,
  bought: true,
  renewed: NONE,
  lastYearlyBill: end - 1,
});

/** Worked out for whole stretches of five years: a shorter span reads their beginning, so a horizon may move. */
const STRETCH = 60;

const incrementsFor = remember(
  (part: Component, run: number, pace: number, months: number) => {
    const life = { scale: part.scale, shape: part.shape };
    return part.repairIs === 'patch'
      ? patchIncrements(life, run, pace, months)
      : renewalIncrements(life, run, life, pace, months);
  },
  ([a, runA, paceA, monthsA], [b, runB, paceB, monthsB]) =>
    runA === runB &&
    paceA === paceB &&
    monthsA === monthsB &&
    a.repairIs === b.repairIs &&
    a.scale === b.scale &&
    a.shape === b.shape,
);

/** Expected failures by month; from the month of each renewal on, those of a new part. */
const failureCounts = (
  part: Component,
  pace: number,
  months: number,
  renewals: readonly number[],
): ArrayLike<number> => {
  const stretch = STRETCH * Math.ceil(months / STRETCH);
  const [first, ...others] = [...renewals].sort((a, b) => a - b);
  const installed = incrementsFor(part, first === 0 ? 0 : part.run, pace, stretch);
  const later = first === undefined || first === 0 ? others : [first, ...others];
  if (later.length === 0) return installed;
  const fresh = incrementsFor(part, 0, pace, stretch);
  return Array.from({ length: months }, (_, m) => {
    const latest = later.findLast((month) => month <= m);
    return (latest === undefined ? installed[m] : fresh[m - latest]) ?? 0;
  });
};

/** The months, counted from the span's start, in which scheduled work restarts a component's clock. */
const scheduledRenewals = (
  vehicle: RunningCosts,
  component: number,
  distanceAMonth: number,
  months: number,
): number[] =>
  vehicle.upkeep.flatMap((item) =>
    item.renews.includes(component) ? dueMonths(item, distanceAMonth, months) : [],
  );

/** Months from the start in which the guarantee pays for repairs: while both of its limits last, 0 meaning no such limit. */
const guaranteedMonths = (vehicle: RunningCosts, distanceAMonth: number): number => {
  const { months, distance } = vehicle.guarantee;
  if (months === 0 && distance === 0) return 0;
  const byDistance = distance > 0 && distanceAMonth > 0 ? Math.floor(distance / distanceAMonth) : Infinity;
  return Math.min(months > 0 ? months : Infinity, byDistance);
};

/** Everything a vehicle costs to run over a span: energy, bills, upkeep and repairs. Not its price, nor its value. */
export const runningCosts = (vehicle: RunningCosts, span: Span, ctx: Context): Contract[] => {
  const { start, end, path } = span;
  const { distanceAMonth, levels, work } = ctx;
  const line = (category: Category, what: string, at: string, reason: string): Line => ({
    category,
    what: `${what}, ${span.name}`,
    path: `${path}.${at}`,
    reason,
  });
  const bill = (
    category: Category,
    what: string,
    at: string,
    { aYear, nextDue }: { readonly aYear: number; readonly nextDue: number },
    prices = levels.fees,
  ): Contract =>
    span.bought
      ? yearly(
          line(category, what, at, 'yearly, from the day it is bought'),
          aYear,
          prices,
          start,
          span.lastYearlyBill,
        )
      : yearly(line(category, what, at, 'yearly, when it falls due'), aYear, prices, start + nextDue, end);

  const contracts: Contract[] = [
    energy(
      line('energy', 'energy', 'fuel', 'every month, by distance'),
      energyPerDistance(vehicle.energy.stated, vehicle.energy.economy, vehicle.energy.price),
      distanceAMonth,
      levels.energy,
      start,
      end,
    ),
    bill('insurance', 'insurance', 'insurance_a_year', vehicle.cover, levels.cover),
    bill('registration, tax, inspection', 'registration', 'registration_a_year', vehicle.registration),
    bill('registration, tax, inspection', 'inspection', 'inspection_a_year', vehicle.inspection),
    bill('registration, tax, inspection', 'yearly tax', 'tax_a_year', vehicle.tax),
    monthly(
      line('parking', 'parking', 'parking_a_month', 'every month'),
      vehicle.parkingAMonth,
      levels.fees,
      start + 1,
      end,
    ),
  ];

  const { atHome } = ctx.inputs.household;
  if (vehicle.averageUpkeep > 0) {
    const aMonth = vehicle.averageUpkeep * distanceAMonth;
    const why = 'average for its kind, by distance';
    contracts.push(
      averageWork(
        line('scheduled upkeep', 'upkeep', 'upkeep', why),
        () => aMonth,
        atHome,
        work,
        start,
        end,
        0,
      ),
    );
  }
  vehicle.upkeep.forEach((item, i) => {
    const at = line(
      'scheduled upkeep',
      item.name,
      `upkeep[${i}]`,
      'due by distance or months, whichever is first',
    );
    contracts.push(scheduledUpkeep(at, item, { ...item, ...ON_TIME }, work, distanceAMonth, start, end));
  });

  const free = guaranteedMonths(vehicle, distanceAMonth);
  contracts.push(averageRepairs(vehicle, line, free, start, end, ctx));
  vehicle.components.forEach((part, i) => {
    const reason = 'expected failures, from its life law and what it has run';
    const at = line('repairs', part.name, `components[${i}]`, reason);
    const pace = part.clock === 'distance' ? distanceAMonth : 1;
    const byWork = span.renewed.get(i);
    const counts = failureCounts(part, pace, end - start, [
      ...(byWork === undefined ? [] : [byWork]),
      ...scheduledRenewals(vehicle, i, distanceAMonth, end - start),
    ]);
    const each: WorkOnce = { ...part, either: part.tow };
    contracts.push(failures(at, counts, each, work, start, end, free));
  });
  return contracts;
};

/** Scheduled work is planned: no tow, and no day without. */
const ON_TIME = { daysWithout: 0, either: 0 };

/** Repairs nobody named: the average for its age, less the share of the components that were named. */
const averageRepairs = (
  vehicle: RunningCosts,
  line: (category: Category, what: string, at: string, reason: string) => Line,
  free: number,
  start: number,
  end: number,
  ctx: Context,
): Contract => {
  const { averageRepairs: average } = vehicle;
  const rest = Math.max(0, 1 - vehicle.components.reduce((sum, part) => sum + part.shareOfAverage, 0));
  const stated = average.statedAYear;
  const priceWhenNew = vehicle.priceWhenNew / average.perDollar;
  const inYear = (year: number): number =>
    stated !== null
      ? stated / 12
      : repairRatePerMile2019(vehicle.age + year, priceWhenNew, average.typeFactor) *
        average.priceRatio *
        ctx.distanceAMonth;
  const why =
    stated !== null
      ? 'a stated amount a year'
      : 'average for its age and price when new, less the named components';
  return averageWork(
    line('repairs', 'repairs nobody can name yet', 'repairs', why),
    (year) => rest * average.scale * inYear(year),
    ctx.inputs.household.atHome,
    ctx.work,
    start,
    end,
    free,
  );
};
