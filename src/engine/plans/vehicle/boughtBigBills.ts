/** Big bills of a bought vehicle: where one is above what going on is worth, the vehicle is renewed by its like. */
import type { ByReading, Contract } from '../../cashflow/posting.ts';
import { billAt } from '../../chance/bigBill.ts';
import { arrivalTimes } from '../../chance/failureTimes.ts';
import { yearOf } from '../../quantity/month.ts';
import { remember } from '../../quantity/remember.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import {
  BIG,
  type BigMonth,
  bigBillsAMonth,
  bigLines,
  bigMonth,
  fixedBefore,
  type OneBigBill,
  oneBigBill,
  type Prices,
  priced,
  renewalAt,
} from './bigBills.ts';
import { type Context, type DrawnFuture, onceFor, recalled } from './context.ts';
import type { Span } from './span.ts';

/** A vehicle whose like can be had, and what it brings in a month. */
export interface Renewable {
  /** Tells it from every other one, and from itself bought in another month. */
  readonly key: string;
  readonly vehicleAt: (ctx: Context) => RunningCosts;
  readonly pricesFrom: (ctx: Context) => (month: number) => Prices;
  /** What its like costs where that is not told by what it is worth. */
  readonly priceAt: (ctx: Context) => ((worth: number) => number) | null;
}

/** Renewing it in a month: what that takes, and a big bill against it. */
interface Renewing {
  readonly takes: ByReading<number>;
  readonly bill: OneBigBill | null;
}

/** Renewing it in any month; each is worked out once for these numbers. */
const renewalsOf = (one: Renewable, ctx: Context): ((month: number) => Renewing) =>
  onceFor(ctx, one.key, () => {
    const byMonth: (Renewing | undefined)[] = [];
    const [vehicle, prices, price] = [one.vehicleAt(ctx), one.pricesFrom(ctx), one.priceAt(ctx)];
    return (month: number): Renewing => {
      const known = byMonth[month];
      if (known) return known;
      const takes = renewalAt(prices(month), vehicle, price, month, ctx);
      const made = { takes, bill: oneBigBill(takes.shop, takes, month, ctx) };
      byMonth[month] = made;
      return made;
    };
  });

/** What renewing it takes in a month. */
export const renewalOf = (one: Renewable, month: number, ctx: Context): ByReading<number> =>
  renewalsOf(one, ctx)(month).takes;

/** A month of its big bills, expected, where it is got at the end of `start`; limits are those of mean inputs. */
export const boughtBigMonths = (one: Renewable, start: number, ctx: Context) => {
  const vehicle = one.vehicleAt(ctx);
  const renewing = renewalsOf(one, fixedBefore(ctx));
  return (month: number): BigMonth | null => {
    const rate = bigBillsAMonth(vehicle, yearOf(month - start), ctx);
    return rate <= 0 ? null : bigMonth(rate, renewing(month).bill);
  };
};

/** Months of which none is left out. */
const allMonths = remember(
  (months: number) => new Float64Array(months).fill(1),
  ([a], [b]) => a === b,
  64,
);

/** When big bills come in a drawn future, in months after the start, and the share of big bills that are smaller. */
export const bigArrivals = (
  vehicle: RunningCosts,
  luckOf: string,
  part: number,
  months: number,
  future: DrawnFuture,
  ctx: Context,
) =>
  recalled(future, vehicle.value, ['big bills', luckOf, vehicle.age, part, months], () => {
    const luck = future.luckOf(luckOf, BIG);
    const at = arrivalTimes((year) => part * bigBillsAMonth(vehicle, year, ctx), allMonths(months), luck);
    return at.map((time, i) => ({ month: Math.max(1, Math.ceil(time)), u: luck.quantile(i) }));
  });

/**
 * Over the months in which it is held: bills up to their limit are paid; above it, it is renewed by its like in that
 * month, its clocks and what comes running on, with no new loan.
 *
 * @param free months after the start in which a guarantee pays
 */
export const boughtBigBills = (one: Renewable, span: Span, free: number, ctx: Context): Contract[] => {
  if (ctx.inputs.household.bigBills === 0) return [];
  const { paid, ended } = bigLines(span.name);
  const { future } = ctx;
  if (future.kind === 'expected')
    return [
      (sink) => {
        const bigMonthIn = boughtBigMonths(one, span.start, ctx);
        const renewing = renewalsOf(one, ctx);
        for (let month = span.start + Math.floor(free) + 1; month <= span.end; month++) {
          const big = bigMonthIn(month);
          if (big === null) continue;
          sink.post(paid, month, big.paid.counted, big.paid.cash, big.paid.shop);
          if (big.hours !== 0) sink.time?.(paid, month, big.hours);
          const { takes } = renewing(month);
          const { counted, cash, shop } = big.ends;
          sink.post(ended, month, counted * takes.counted, cash * takes.cash, shop * takes.shop);
        }
      },
    ];
  const mean = fixedBefore(ctx);
  return [
    (sink) => {
      let over = 0;
      for (const { month: after, u } of bigArrivals(
        one.vehicleAt(ctx),
        span.luck,
        1,
        ctx.horizon - span.start,
        future,
        ctx,
      )) {
        const month = span.start + after;
        if (month > span.end || after <= free || month === over) continue;
        const limits = renewalOf(one, month, mean);
        const bill = billAt(limits.shop, u);
        const price = priced(bill, month, ctx);
        if (price.counted <= limits.counted) {
          sink.post(paid, month, price.counted, price.cash, price.shop);
          if (price.hours !== 0) sink.time?.(paid, month, price.hours);
          continue;
        }
        over = month;
        const takes = renewalOf(one, month, ctx);
        sink.post(ended, month, takes.counted, takes.cash, takes.shop);
      }
    },
  ];
};
