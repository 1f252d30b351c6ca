/** Big bills of any vehicle: how often they come, how big they are, what they cost this household, what giving up takes. */
import { levelAt } from '../../cashflow/levels.ts';
import type { ByReading, Line, Reading } from '../../cashflow/posting.ts';
import { type AtLimit, atLimit, inAMonth } from '../../chance/bigBill.ts';
import { remember } from '../../quantity/remember.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import { bigBillsAYear, tableMiles } from '../../scenario/inputs/tables.ts';
import { type Context, EXPECTED, inFuture, onceByMonth, onceFor } from './context.ts';
import { netValue } from './selling.ts';

/** Where its luck stands among that of a vehicle's components. */
export const BIG = -2;

/** What is fixed before futures are drawn goes by mean inputs, and by the vehicle as it was before a collision. */
export const fixedBefore = (ctx: Context): Context => {
  const { future } = ctx;
  if (future.kind === 'expected') return ctx.origin;
  return future.atMean ?? onceFor(ctx.origin, 'as it is, expected', () => inFuture(EXPECTED, ctx.origin));
};

type Aged = Pick<RunningCosts, 'age' | 'bodyStyle'>;

/** Big bills expected in a month of a year (0 the first), by the table, at the household's own distance. */
export const bigBillsAMonth = ({ age, bodyStyle }: Aged, year: number, ctx: Context): number => {
  const { bigBills, milesAUnit } = ctx.inputs.household;
  if (bigBills === 0) return 0;
  const driven = (ctx.distanceAMonth * milesAUnit) / tableMiles(bodyStyle, age + year);
  return bigBills * bigBillsAYear(bodyStyle, age + year) * driven;
};

/** What a bill, or 1 of it, comes to in this household, and its own hours. */
interface Priced extends ByReading<number> {
  readonly hours: number;
}

/** What 1 of a shop's bill of a month comes to; a share of its labour is done at home. */
const partOfBill = (month: number, ctx: Context): Priced =>
  onceByMonth(ctx, 'parts of a bill', month, () => {
    const { share, partsShare, shopHour } = ctx.inputs.household.atHome;
    const labour = share * (1 - partsShare);
    const hours = shopHour > 0 ? labour / (shopHour * levelAt(ctx.levels.repairs, month)) : 0;
    const cash = 1 - labour;
    return { counted: cash + hours * ctx.ownHourAt(month), cash, shop: 1, hours };
  });

/** What a bill of a month, in money of that month, comes to in this household. */
export const priced = (bill: number, month: number, ctx: Context): Priced => {
  const { counted, cash, hours } = partOfBill(month, ctx);
  return { counted: bill * counted, cash: bill * cash, shop: bill, hours: bill * hours };
};

/** What a vehicle would bring in a month, running and broken down, before what selling it takes. */
export interface Prices {
  readonly running: number;
  readonly broken: number;
}

/** Of what renewing takes in a month, what hangs on the month alone. */
interface Renewing {
  /** Looking it over, what it wants in its first year, what its seller hid, and what a hurry adds. */
  readonly besidesPrice: number;
  /** Own hours of finding it. */
  readonly finding: number;
}

const renewingIn = (month: number, ctx: Context): Renewing =>
  onceByMonth(ctx, 'renewing by month', month, () => {
    const { anotherLikeOurs, usualLike, household } = ctx.inputs;
    const { inspectionBefore, catchUp, hiddenFault, hours } = anotherLikeOurs ?? usualLike;
    return {
      besidesPrice:
        inspectionBefore * ctx.oneOffLevel(month) +
        (catchUp + hiddenFault) * levelAt(ctx.levels.repairs, month) +
        hurryAt(month, ctx, household.dayWithout),
      finding: hours * ctx.ownHourAt(month),
    };
  });

/**
 * What renewing a vehicle by its like takes once it has broken down, beyond going on with it: another one's price with
 * tax, fees, looking it over, what it wants in its first year and what its seller hid, less what the broken one brings,
 * and what a hurry adds. On the last day of all nothing is got any more: what is lost is the value. In money of the month.
 *
 * @param asked what its like costs by what it is worth; null: by what is asked above that
 */
export const renewalAt = (
  { running, broken }: Prices,
  vehicle: RunningCosts,
  asked: ((worth: number) => number) | null,
  month: number,
  ctx: Context,
): ByReading<number> => {
  const brings = netValue(vehicle, broken, month, ctx);
  if (month >= ctx.horizon) {
    const worth = netValue(vehicle, running, month, ctx);
    return perReading((reading) => worth(reading) - brings(reading));
  }
  const { above, taxAndFees } = ctx.inputs.anotherLikeOurs ?? ctx.inputs.usualLike;
  const { besidesPrice, finding } = renewingIn(month, ctx);
  const another = (asked?.(running) ?? running * (1 + above)) * (1 + taxAndFees) + besidesPrice;
  return {
    counted: another + finding - brings('counted'),
    cash: another - brings('cash'),
    shop: another + finding - brings('shop'),
  };
};

/** What a hurry adds: money, days without, storage, a loan refused. */
const hurryAt = (month: number, ctx: Context, dayWithout: number): number => {
  const { inAHurry, storageADay } = ctx.inputs.vehicle;
  const { adds, days, refused, refusedCosts } = inAHurry;
  return (
    (adds + days * storageADay + refused * refusedCosts) * ctx.oneOffLevel(month) +
    days * dayWithout * levelAt(ctx.levels.general, month)
  );
};

/** What one month of big bills comes to, expected, given that the vehicle is there when it begins. */
export interface BigMonth {
  /** Chance that one is above its limit. */
  readonly ends: ByReading<number>;
  /** Of what is not given up. */
  readonly paid: ByReading<number>;
  readonly hours: number;
}

export const NO_BIG_BILLS: BigMonth = {
  ends: { counted: 0, cash: 0, shop: 0 },
  paid: { counted: 0, cash: 0, shop: 0 },
  hours: 0,
};

/** One big bill of a month against what is paid at most, with own hands and with a shop doing everything. */
export interface OneBigBill {
  /** The part of a shop's bill that it comes to, in each reading. */
  readonly part: Priced;
  readonly own: AtLimit;
  readonly atShop: AtLimit;
}

/**
 * Own hands decide by what a bill comes to with own hands, and pay the same ones in cash; with a shop doing everything
 * all is decided anew.
 *
 * @param scale the bill at which an ordinary household gives up, at a shop's prices of the month; null unless above nil
 * @param limit up to which a bill is paid, own hands and shop
 */
export const oneBigBill = (
  scale: number,
  limit: Pick<ByReading<number>, 'counted' | 'shop'>,
  month: number,
  ctx: Context,
): OneBigBill | null => {
  if (scale <= 0) return null;
  const part = partOfBill(month, ctx);
  return { part, own: atLimit(limit.counted, part.counted * scale), atShop: atLimit(limit.shop, scale) };
};

/** @param rate big bills expected in the month */
export const bigMonth = (rate: number, one: OneBigBill | null): BigMonth => {
  if (rate <= 0 || one === null) return NO_BIG_BILLS;
  const { part, own, atShop } = one;
  const months = inAMonth(rate, own);
  const shop = inAMonth(rate, atShop);
  const shopBills = (months.bills * own.paid) / part.counted;
  return {
    ends: { counted: months.ends, cash: months.ends, shop: shop.ends },
    paid: { counted: months.bills * own.paid, cash: shopBills * part.cash, shop: shop.bills * atShop.paid },
    hours: shopBills * part.hours,
  };
};

/** The lines of a vehicle's big bills, the very same whenever they are asked for. */
export const bigLines = remember(
  (name: string): { readonly paid: Line; readonly ended: Line } => {
    const line = (what: string, reason: string): Line => ({
      category: 'big bills',
      what: `${what}, ${name}`,
      path: 'big_bills',
      reason,
    });
    return {
      paid: line('big bills paid', 'as often as its kind and age have them, up to what going on is worth'),
      ended: line('given up over a bigger one', 'what changing then takes, above going on with it'),
    };
  },
  ([a], [b]) => a === b,
);

export const perReading = (of: (reading: Reading) => number): ByReading<number> => ({
  counted: of('counted'),
  cash: of('cash'),
  shop: of('shop'),
});
