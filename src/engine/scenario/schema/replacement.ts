import * as z from 'zod';
import { date, list, mapping, num, oneOf, words, yesNo } from '../fields.ts';
import { LEASE, PURCHASE, RUNNING } from '../specs.ts';
import type { Units } from '../units.ts';
import { runningShape } from './running.ts';

const loan = (units: Units) =>
  mapping(
    {
      apr: num(PURCHASE.apr, units),
      months: num(PURCHASE.months, units),
      first_payment: num(PURCHASE.firstPayment, units).optional(),
      interest_during_delay: yesNo('Whether interest runs before a delayed start.').optional(),
      roll_in_shortfall: yesNo("Whether a present loan's shortfall is rolled in.").optional(),
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
      due_at_signing: num(LEASE.dueAtSigning, units).optional(),
      miles_a_year: num(LEASE.distanceAYear, { ...units, distance: 'miles' }).optional(),
      km_a_year: num(LEASE.distanceAYear, { ...units, distance: 'km' }).optional(),
      over_a_mile: num(LEASE.overDistance, { ...units, distance: 'miles' }).optional(),
      over_a_km: num(LEASE.overDistance, { ...units, distance: 'km' }).optional(),
      acquisition_fee: num(LEASE.acquisitionFee, units).optional(),
      disposition_fee: num(LEASE.dispositionFee, units).optional(),
      tax_on_payment: num(LEASE.taxOnPayment, units).optional(),
      afterwards: oneOf(['again', 'buy'], 'What follows when it ends before we stop looking.').optional(),
      purchase_fee: num(LEASE.purchaseFee, units).optional(),
      early_termination: num(LEASE.earlyTermination, units).optional(),
    },
    'The lease it is taken on.',
  );

const replacement = (units: Units) =>
  mapping(
    {
      ...runningShape(units),
      odometer: num(RUNNING.odometer, units).optional(),
      condition: oneOf(['new', 'used'], 'New or used.').optional(),
      price_with_all_fees: num(PURCHASE.price, units).optional(),
      price: num(PURCHASE.price, units).optional(),
      price_when_new: num(RUNNING.priceWhenNew, units).optional(),
      sales_tax: num(PURCHASE.salesTax, units).optional(),
      trade_in_lowers_tax: yesNo('Whether the tax is on the price less the trade-in.').optional(),
      fees: list(
        mapping(
          {
            what: words('The fee.'),
            amount: num(PURCHASE.fee, units),
            financed: yesNo('Whether the loan pays it.').optional(),
            finance_charge: yesNo('Whether Regulation Z counts it as a finance charge.').optional(),
          },
          'A fee of the purchase.',
        ),
      ).optional(),
      add_ons: list(
        mapping(
          {
            what: words('The add-on.'),
            amount: num(PURCHASE.fee, units),
            financed: yesNo('Whether the loan pays it.').optional(),
          },
          'Something voluntary sold with it.',
        ),
      ).optional(),
      rebate: num(PURCHASE.rebate, units).optional(),
      low_rate_instead: num(PURCHASE.lowRate, units).optional(),
      worth_day_after: num(PURCHASE.worthDayAfter, units).optional(),
      down_payment: num(PURCHASE.downPayment, units).optional(),
      loan: loan(units).optional(),
      cash: yesNo('Bought with cash.').optional(),
      lease: lease(units).optional(),
      inspection_before: num(PURCHASE.inspectionBefore, units).optional(),
      catch_up: num(PURCHASE.catchUp, units).optional(),
      one_offs: list(
        mapping(
          {
            what: words('What it is.'),
            month: num(PURCHASE.oneOffMonth, units),
            amount: num(PURCHASE.oneOff, units),
          },
          'Something paid once.',
        ),
      ).optional(),
      offer_ends: date('The day on which the offer ends.').optional(),
      credit_confirmed: yesNo('Whether the lender has said yes.').optional(),
    },
    'A vehicle to replace it with.',
  );

/** One replacement, or a list of them. */
export const replacementSchema = (units: Units) => {
  const one = replacement(units);
  return z.union([one, z.array(one).min(1).max(20)]);
};
