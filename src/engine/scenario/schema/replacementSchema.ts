import * as z from 'zod/mini';
import { LEASE, PURCHASE, RUNNING } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { date, list, mapping, maybe, num, oneOf, words, yesNo } from './fields.ts';
import { atLeast, atMost } from './listLength.ts';
import { runningShape } from './runningSchema.ts';

const loan = (units: Units) =>
  mapping(
    {
      apr: num(PURCHASE.apr, units),
      months: num(PURCHASE.months, units),
      first_payment: maybe(num(PURCHASE.firstPayment, units)),
      interest_during_delay: maybe(yesNo('Whether interest runs before a delayed start.')),
      roll_in_shortfall: maybe(yesNo("Whether a present loan's shortfall is rolled in.")),
    },
    'The loan it is bought with.',
  );

const lease = (units: Units) =>
  mapping(
    {
      starts_from: num(LEASE.startsFrom, units),
      residual: num(LEASE.residual, units),
      money_factor: num(LEASE.moneyFactor, units),
      months: num(LEASE.months, units),
      due_at_signing: maybe(num(LEASE.dueAtSigning, units)),
      miles_a_year: maybe(num(LEASE.distanceAYear, { ...units, distance: 'miles' })),
      km_a_year: maybe(num(LEASE.distanceAYear, { ...units, distance: 'km' })),
      over_a_mile: maybe(num(LEASE.overDistance, { ...units, distance: 'miles' })),
      over_a_km: maybe(num(LEASE.overDistance, { ...units, distance: 'km' })),
      acquisition_fee: maybe(num(LEASE.acquisitionFee, units)),
      disposition_fee: maybe(num(LEASE.dispositionFee, units)),
      tax_on_payment: maybe(num(LEASE.taxOnPayment, units)),
      afterwards: maybe(oneOf(['again', 'buy'], 'What follows when it ends before we stop looking.')),
      purchase_fee: maybe(num(LEASE.purchaseFee, units)),
      early_termination: maybe(num(LEASE.earlyTermination, units)),
    },
    'The lease it is taken on.',
  );

const replacement = (units: Units) =>
  mapping(
    {
      ...runningShape(units),
      odometer: maybe(num(RUNNING.odometer, units)),
      condition: maybe(oneOf(['new', 'used'], 'New or used.')),
      price_with_all_fees: maybe(num(PURCHASE.price, units)),
      price: maybe(num(PURCHASE.price, units)),
      price_when_new: maybe(num(RUNNING.priceWhenNew, units)),
      sales_tax: maybe(num(PURCHASE.salesTax, units)),
      trade_in_lowers_tax: maybe(yesNo('Whether the tax is on the price less the trade-in.')),
      fees: maybe(
        list(
          mapping(
            {
              what: words('The fee.'),
              amount: num(PURCHASE.fee, units),
              financed: maybe(yesNo('Whether the loan pays it.')),
              finance_charge: maybe(yesNo('Whether Regulation Z counts it as a finance charge.')),
            },
            'A fee of the purchase.',
          ),
        ),
      ),
      add_ons: maybe(
        list(
          mapping(
            {
              what: words('The add-on.'),
              amount: num(PURCHASE.fee, units),
              financed: maybe(yesNo('Whether the loan pays it.')),
            },
            'Something voluntary sold with it.',
          ),
        ),
      ),
      rebate: maybe(num(PURCHASE.rebate, units)),
      low_rate_instead: maybe(num(PURCHASE.lowRate, units)),
      worth_day_after: maybe(num(PURCHASE.worthDayAfter, units)),
      down_payment: maybe(num(PURCHASE.downPayment, units)),
      loan: maybe(loan(units)),
      cash: maybe(yesNo('Bought with cash.')),
      lease: maybe(lease(units)),
      inspection_before: maybe(num(PURCHASE.inspectionBefore, units)),
      catch_up: maybe(num(PURCHASE.catchUp, units)),
      one_offs: maybe(
        list(
          mapping(
            {
              what: words('What it is.'),
              month: num(PURCHASE.oneOffMonth, units),
              amount: num(PURCHASE.oneOff, units),
            },
            'Something paid once.',
          ),
        ),
      ),
      offer_ends: maybe(date('The day on which the offer ends.')),
      credit_confirmed: maybe(yesNo('Whether the lender has said yes.')),
    },
    'A vehicle to replace it with.',
  );

/** One replacement, or a list of them. */
export const replacementSchema = (units: Units) => {
  const one = replacement(units);
  return z.union([one, z.array(one).check(atLeast(1), atMost(20))]);
};
