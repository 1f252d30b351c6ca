import * as z from 'zod/mini';
import * as PURCHASE from '../inputs/purchaseInputs.ts';
import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { date, list, mapping, maybe, oneOf, words, yesNo } from './fields.ts';
import { shapeByUnit, shapeOf } from './groupShape.ts';
import { atLeast, atMost } from './listLength.ts';
import { runningShape } from './runningSchema.ts';

const loan = (units: Units) =>
  mapping(
    {
      ...shapeOf(PURCHASE.LOAN, units),
      interest_during_delay: maybe(yesNo('Whether interest runs before a delayed start.')),
      roll_in_shortfall: maybe(yesNo("Whether a present loan's shortfall is rolled in.")),
    },
    'The loan it is bought with.',
  );

const lease = (units: Units) =>
  mapping(
    {
      ...shapeOf(PURCHASE.LEASE, units),
      ...shapeByUnit(PURCHASE.LEASE_DISTANCE, units),
      ...shapeByUnit(PURCHASE.LEASE_OVER, units),
      ...shapeOf(PURCHASE.LEASE_FEES, units),
      afterwards: maybe(oneOf(['again', 'buy'], 'What follows when it ends before we stop looking.')),
      ...shapeOf(PURCHASE.LEASE_END, units),
    },
    'The lease it is taken on.',
  );

const replacement = (units: Units) => {
  const { odometer, price_when_new } = shapeOf(VEHICLE.BOUGHT, units);
  return mapping(
    {
      ...runningShape(units),
      odometer,
      condition: maybe(oneOf(['new', 'used'], 'New or used.')),
      ...shapeOf(PURCHASE.PRICE, units),
      price_when_new,
      ...shapeOf(PURCHASE.SALES_TAX, units),
      trade_in_lowers_tax: maybe(yesNo('Whether the tax is on the price less the trade-in.')),
      fees: maybe(
        list(
          mapping(
            {
              what: words('The fee.'),
              ...shapeOf(PURCHASE.FEE, units),
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
              ...shapeOf(PURCHASE.FEE, units),
              financed: maybe(yesNo('Whether the loan pays it.')),
            },
            'Something voluntary sold with it.',
          ),
        ),
      ),
      ...shapeOf(PURCHASE.OFFER, units),
      loan: maybe(loan(units)),
      cash: maybe(yesNo('Bought with cash.')),
      lease: maybe(lease(units)),
      ...shapeOf(PURCHASE.FIRST_YEAR, units),
      one_offs: maybe(
        list(
          mapping(
            { what: words('What it is.'), ...shapeOf(PURCHASE.ONE_OFF, units) },
            'Something paid once.',
          ),
        ),
      ),
      offer_ends: maybe(date('The day on which the offer ends.')),
      credit_confirmed: maybe(yesNo('Whether the lender has said yes.')),
    },
    'A vehicle to replace it with.',
  );
};

/** One replacement, or a list of them. */
export const replacementSchema = (units: Units) => {
  const one = replacement(units);
  return z.union([one, z.array(one).check(atLeast(1), atMost(20))]);
};
