import { distanceRatio } from '../../quantity/distance.ts';
import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import { DEFAULTS } from '../inputs/defaults.ts';
import type { Lease, Payment, Replacement } from '../inputs/inputs.ts';
import { LEASE, PURCHASE, RUNNING } from '../inputs/specs.ts';
import { significant } from '../inputs/units.ts';
import { type Stated, times } from '../reading/stated.ts';
import type { SparseReplacement } from '../schema/scenarioSchema.ts';
import { yearOf } from '../text/year.ts';
import { completeRunning, type Shared } from './completeRunning.ts';
import { takeAge } from './completeVehicle.ts';
import { following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.purchase;
const L = DEFAULTS.lease;

type SparseLease = NonNullable<SparseReplacement['lease']>;

/** New where it says so, or where it has hardly been driven. */
const conditionOf = (file: {
  readonly condition?: 'new' | 'used' | undefined;
  readonly odometer?: { readonly value: number } | undefined;
}): 'new' | 'used' => file.condition ?? ((file.odometer?.value ?? 0) <= 100 ? 'new' : 'used');

const per = (stated: Stated | undefined, ratio: number): Stated | undefined => stated && times(stated, ratio);

const lease = (file: SparseLease, pen: Pen): Lease => {
  const { distance } = pen.units;
  const allowedIn = file.km_a_year ? 'km_a_year' : 'miles_a_year';
  const allowed = per(file[allowedIn], distanceRatio(file.km_a_year ? 'km' : 'miles', distance));
  const overIn = file.over_a_km ? 'over_a_km' : 'over_a_mile';
  const over = per(file[overIn], distanceRatio(distance, file.over_a_km ? 'km' : 'miles'));
  return {
    startsFrom: pen.take('startsFrom', 'starts_from', LEASE.startsFrom, file.starts_from),
    residual: pen.take('residual', 'residual', LEASE.residual, file.residual),
    moneyFactor: pen.take('moneyFactor', 'money_factor', LEASE.moneyFactor, file.money_factor),
    months: pen.take('months', 'months', LEASE.months, file.months),
    dueAtSigning: pen.take(
      'dueAtSigning',
      'due_at_signing',
      LEASE.dueAtSigning,
      file.due_at_signing,
      L.dueAtSigning,
    ),
    distanceAYear: pen.take('distanceAYear', allowedIn, LEASE.distanceAYear, allowed),
    overDistance: pen.take('overDistance', overIn, LEASE.overDistance, over),
    acquisitionFee: pen.take(
      'acquisitionFee',
      'acquisition_fee',
      LEASE.acquisitionFee,
      file.acquisition_fee,
      L.acquisitionFee,
    ),
    dispositionFee: pen.take(
      'dispositionFee',
      'disposition_fee',
      LEASE.dispositionFee,
      file.disposition_fee,
      L.dispositionFee,
    ),
    taxOnPayment: pen.take(
      'taxOnPayment',
      'tax_on_payment',
      LEASE.taxOnPayment,
      file.tax_on_payment,
      L.taxOnPayment,
    ),
    afterwards: file.afterwards ?? 'again',
    purchaseFee: pen.take('purchaseFee', 'purchase_fee', LEASE.purchaseFee, file.purchase_fee, L.purchaseFee),
    earlyTermination: file.early_termination
      ? pen.take('earlyTermination', 'early_termination', LEASE.earlyTermination, file.early_termination)
      : null,
  };
};

const payment = (file: SparseReplacement, pen: Pen): Payment => {
  const at = pen.at('payment', 'loan');
  if (file.loan)
    return {
      kind: 'loan',
      apr: at.take('apr', 'apr', PURCHASE.apr, file.loan.apr),
      months: at.take('months', 'months', PURCHASE.months, file.loan.months),
      downPayment: pen.take('payment.downPayment', 'down_payment', PURCHASE.downPayment, file.down_payment),
      firstPayment: at.take(
        'firstPayment',
        'first_payment',
        PURCHASE.firstPayment,
        file.loan.first_payment,
        D.firstPayment,
      ),
      interestDuringDelay: file.loan.interest_during_delay ?? true,
      rollInShortfall: file.loan.roll_in_shortfall ?? false,
    };
  return file.lease ? { kind: 'lease', ...lease(file.lease, pen.at('payment', 'lease')) } : { kind: 'cash' };
};

const extras = (file: SparseReplacement, pen: Pen): Pick<Replacement, 'fees' | 'addOns' | 'oneOffs'> => ({
  fees: (file.fees ?? []).map((fee, i) => ({
    name: fee.what,
    amount: pen.take(`fees.${i}.amount`, `fees.${i}.amount`, PURCHASE.fee, fee.amount, undefined, {
      words: fee.what,
    }),
    financed: fee.financed ?? false,
    financeCharge: fee.finance_charge ?? false,
  })),
  addOns: (file.add_ons ?? []).map((one, i) => ({
    name: one.what,
    amount: pen.take(`addOns.${i}.amount`, `add_ons.${i}.amount`, PURCHASE.fee, one.amount, undefined, {
      words: one.what,
    }),
    financed: one.financed ?? false,
    financeCharge: false,
  })),
  oneOffs: (file.one_offs ?? []).map((one, i) => {
    const at = pen.at(`oneOffs.${i}`, `one_offs.${i}`);
    return {
      name: one.what,
      month: at.take('month', 'month', PURCHASE.oneOffMonth, one.month, undefined, {
        words: `month of ${one.what}`,
      }),
      amount: at.take('amount', 'amount', PURCHASE.oneOff, one.amount, undefined, { words: one.what }),
    };
  }),
});

/** The price: as given, all fees in it or not; a lease's is what it starts from. */
const price = (file: SparseReplacement, pen: Pen): number => {
  const path = file.price ? 'price' : file.price_with_all_fees ? 'price_with_all_fees' : 'lease.starts_from';
  return pen.take(
    'price',
    path,
    PURCHASE.price,
    file.price ?? file.price_with_all_fees ?? file.lease?.starts_from,
    undefined,
    { words: path === 'price_with_all_fees' ? 'price with all fees' : 'price' },
  );
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
  const odometer = pen.take(
    'odometer',
    'odometer',
    RUNNING.odometer,
    file.odometer,
    following(0, 'new', 'measured'),
  );
  const cost = price(file, pen);
  const asPrice = following(cost, 'not given: taken as its price');
  const priceWhenNew = pen.take(
    'priceWhenNew',
    'price_when_new',
    RUNNING.priceWhenNew,
    file.price_when_new,
    asPrice,
  );
  const share = (part: { readonly value: number }, what: string) =>
    following(significant(cost * part.value, 12), `our guess: ${part.value * 100} % of its price${what}`);
  const worth = share(D.worthDayAfter, '');
  const worthDayAfter = pen.take(
    'worthDayAfter',
    'worth_day_after',
    PURCHASE.worthDayAfter,
    file.worth_day_after,
    worth,
  );
  const floor = pen.take(
    'floor',
    'floor',
    RUNNING.floor,
    file.floor,
    share(DEFAULTS.running.floorOfPrice, ''),
  );
  const catchUp = pen.take(
    'catchUp',
    'catch_up',
    PURCHASE.catchUp,
    file.catch_up,
    isNew ? D.newOne : D.catchUp,
  );
  const unknown = isNew ? ('new' as const) : catchUp > 0 ? ('caught up' as const) : ('due' as const);
  const about = {
    name: file.what,
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
    salesTax: pen.take('salesTax', 'sales_tax', PURCHASE.salesTax, file.sales_tax, D.salesTax),
    tradeInCredit: tradeInCredit(file.trade_in_lowers_tax, placeCredits),
    rebate: pen.take('rebate', 'rebate', PURCHASE.rebate, file.rebate, D.rebate),
    ...extras(file, pen),
    payment: payment(file, pen),
    lowRateInstead: file.low_rate_instead
      ? pen.take('lowRateInstead', 'low_rate_instead', PURCHASE.lowRate, file.low_rate_instead)
      : null,
    inspectionBefore: pen.take(
      'inspectionBefore',
      'inspection_before',
      PURCHASE.inspectionBefore,
      file.inspection_before,
      isNew ? D.newOne : D.inspectionBefore,
    ),
    catchUp,
  };
  return { replacement, energyUnit };
};
