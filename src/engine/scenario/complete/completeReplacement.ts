import { distanceRatio } from '../../quantity/distance.ts';
import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import type { Lease, Payment, Replacement } from '../inputs/inputs.ts';
import { LIKE_OURS } from '../inputs/likeInputs.ts';
import * as PURCHASE from '../inputs/purchaseInputs.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { type Stated, times } from '../reading/stated.ts';
import type { SparseReplacement } from '../schema/scenarioSchema.ts';
import { yearOf } from '../text/year.ts';
import { completeRunning, type Shared } from './completeRunning.ts';
import { takeAge } from './completeVehicle.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

type SparseLease = NonNullable<SparseReplacement['lease']>;

/** New where it says so, or where it has hardly been driven. */
const conditionOf = (file: {
  readonly condition?: 'new' | 'used' | undefined;
  readonly odometer?: { readonly value: number } | undefined;
}): 'new' | 'used' => file.condition ?? ((file.odometer?.value ?? 0) <= 100 ? 'new' : 'used');

const per = (stated: Stated | undefined, ratio: number): Stated | undefined => stated && times(stated, ratio);

const lease = (file: SparseLease, pen: Pen): Lease => {
  const { distance } = pen.units;
  const allowedIn = PURCHASE.LEASE_DISTANCE[file.km_a_year ? 'km' : 'miles'];
  const allowed = per(file[allowedIn.key], distanceRatio(file.km_a_year ? 'km' : 'miles', distance));
  const overIn = PURCHASE.LEASE_OVER[file.over_a_km ? 'km' : 'miles'];
  const over = per(file[overIn.key], distanceRatio(distance, file.over_a_km ? 'km' : 'miles'));
  return {
    ...pen.all(PURCHASE.LEASE, file),
    distanceAYear: pen.take('distanceAYear', allowedIn.key, allowedIn, allowed),
    overDistance: pen.take('overDistance', overIn.key, overIn, over),
    ...pen.all(PURCHASE.LEASE_FEES, file),
    afterwards: file.afterwards ?? 'again',
    ...pen.all(PURCHASE.LEASE_END, file),
  };
};

const payment = (file: SparseReplacement, pen: Pen): Payment => {
  const loan = pen.at('payment', 'loan').from(PURCHASE.LOAN, file.loan);
  if (file.loan)
    return {
      kind: 'loan',
      apr: loan('apr'),
      months: loan('months'),
      downPayment: pen.take(
        'payment.downPayment',
        PURCHASE.OFFER.downPayment.key,
        PURCHASE.OFFER.downPayment,
        file.down_payment,
      ),
      firstPayment: loan('firstPayment'),
      interestDuringDelay: file.loan.interest_during_delay ?? true,
      rollInShortfall: file.loan.roll_in_shortfall ?? false,
    };
  return file.lease ? { kind: 'lease', ...lease(file.lease, pen.at('payment', 'lease')) } : { kind: 'cash' };
};

const extras = (file: SparseReplacement, pen: Pen): Pick<Replacement, 'fees' | 'addOns' | 'oneOffs'> => ({
  fees: (file.fees ?? []).map((fee, i) => ({
    name: fee.what,
    ...pen.at(`fees.${i}`, `fees.${i}`).all(PURCHASE.FEE, fee, () => ({ words: fee.what })),
    financed: fee.financed ?? false,
    financeCharge: fee.finance_charge ?? false,
  })),
  addOns: (file.add_ons ?? []).map((one, i) => ({
    name: one.what,
    ...pen.at(`addOns.${i}`, `add_ons.${i}`).all(PURCHASE.FEE, one, () => ({ words: one.what })),
    financed: one.financed ?? false,
    financeCharge: false,
  })),
  oneOffs: (file.one_offs ?? []).map((one, i) => ({
    name: one.what,
    ...pen.at(`oneOffs.${i}`, `one_offs.${i}`).all(PURCHASE.ONE_OFF, one, ({ key }) => ({
      words: key === 'month' ? `month of ${one.what}` : one.what,
    })),
  })),
});

const whenNew = (cost: number, age: number): Fallback =>
  age === 0
    ? following(cost, 'not given: taken as its price')
    : following(
        PURCHASE.usualWhenNew(cost, age),
        `our guess: ${PURCHASE.DEARER_WHEN_NEW * 100} % more than its price for each year of its age`,
      );

const withoutFees = (cost: number): Fallback => {
  const { worthDayAfter } = PURCHASE.OFFER;
  const fees = LIKE_OURS.taxAndFees.or.value;
  return following(
    PURCHASE.usualWorthDayAfter(cost, fees),
    `our guess: ${worthDayAfter.or.value * 100} % of its price without tax and fees of ${fees * 100} %`,
  );
};

/** The price: as given, all fees in it or not; a lease's is what it starts from. */
const price = (file: SparseReplacement, pen: Pen): number => {
  const { price, withAllFees } = PURCHASE.PRICE;
  const one = file.price_with_all_fees && !file.price ? withAllFees : price;
  const stated = file[one.key];
  return pen.take('price', stated ? one.key : 'lease.starts_from', one, stated ?? file.lease?.starts_from);
};

/** As the file says; else as the place of a claim has it; where neither is known, the tax is on the whole price. */
const tradeInCredit = (stated: boolean | undefined, placeCredits: number | null): number | null => {
  if (stated !== undefined) return stated ? null : 0;
  return placeCredits === Number.POSITIVE_INFINITY ? null : (placeCredits ?? 0);
};

/**
 * One replacement's numbers, complete. `pen` stands at it.
 *
 * @param placeCredits the most of a trade-in that lowers what is taxed where the claim is; null: not known
 */
export const completeReplacement = (
  file: SparseReplacement,
  pen: Pen,
  date: string,
  shared: Shared,
  placeCredits: number | null,
): { readonly replacement: Replacement; readonly energyUnit: EnergyUnit } => {
  const condition = conditionOf(file);
  const isNew = condition === 'new';
  const year = file.year?.value ?? yearOf(file.what) ?? Number(date.slice(0, 4));
  const age = takeAge(file, pen, date, year);
  const known = pen.from(VEHICLE.BOUGHT, file);
  const offer = pen.from(PURCHASE.OFFER, file);
  const firstYear = pen.from(PURCHASE.FIRST_YEAR, file);
  const odometer = known('odometer', following(0, 'new', 'measured'));
  const cost = price(file, pen);
  const priceWhenNew = known('priceWhenNew', whenNew(cost, age));
  const share = (part: { readonly value: number }) =>
    following(significant(cost * part.value, 12), `our guess: ${part.value * 100} % of its price`);
  const worthDayAfter = offer(
    'worthDayAfter',
    file.price_with_all_fees && !file.price ? withoutFees(cost) : share(PURCHASE.OFFER.worthDayAfter.or),
  );
  const floor = pen.from(VEHICLE.WORTH, file)('floor', share(VEHICLE.WORTH.floor.or));
  const catchUp = firstYear('catchUp', isNew ? PURCHASE.NONE_FOR_NEW : undefined);
  const unknown = isNew ? ('new' as const) : catchUp > 0 ? ('caught up' as const) : ('due' as const);
  const about = {
    name: file.what,
    modelYear: Number(date.slice(0, 4)) - age,
    age,
    odometer,
    priceWhenNew,
    today: worthDayAfter,
    floor,
    due: null,
    unknown,
  };
  const { costs, energyUnit } = completeRunning(file, pen, about, shared);
  const replacement: Replacement = {
    ...costs,
    name: file.what,
    condition,
    price: cost,
    worthDayAfter,
    ...pen.all(PURCHASE.SALES_TAX, file),
    tradeInCredit: tradeInCredit(file.trade_in_lowers_tax, placeCredits),
    rebate: offer('rebate'),
    ...extras(file, pen),
    payment: payment(file, pen),
    lowRateInstead: offer('lowRateInstead'),
    inspectionBefore: firstYear('inspectionBefore', isNew ? PURCHASE.NONE_FOR_NEW : undefined),
    catchUp,
  };
  return { replacement, energyUnit };
};
