import { dateOrMonths, mapping, num, oneOf, yesNo } from '../fields.ts';
import { PURCHASE, RUNNING, SALE, WORK } from '../specs.ts';
import type { Units } from '../units.ts';
import { runningShape } from './running.ts';

/** The present vehicle. */
export const vehicleSchema = (units: Units) => {
  const due = () => num(RUNNING.due, units).optional();
  return mapping(
    {
      ...runningShape(units),
      odometer: num(RUNNING.odometer, units),
      price_when_new: num(RUNNING.priceWhenNew, units),
      sells_for: mapping(
        {
          running: num(SALE.running, units),
          as_it_stands: num(SALE.asItStands, units),
          trade_in: num(SALE.tradeIn, units).optional(),
          trade_in_mended: num(SALE.tradeInMended, units).optional(),
          scrap: num(SALE.scrap, units).optional(),
        },
        'What it would bring today: three prices that are never mixed.',
      ),
      insurance_due: due(),
      registration_due: due(),
      inspection_due: due(),
      tax_due: due(),
      loan: mapping(
        {
          owed: num(SALE.owed, units),
          apr: num(PURCHASE.apr, units),
          months_left: num(PURCHASE.monthsLeft, units),
        },
        'A loan still running on it.',
      ).optional(),
      storage_a_day: num(SALE.storage, units).optional(),
      may_be_driven: yesNo('Whether it may be driven today.').optional(),
      recall_checked: yesNo("Whether the maker's recall list was checked.").optional(),
      recall_stop: yesNo('Whether an open recall says "do not drive".').optional(),
      structural_rust: oneOf(['none', 'unknown', 'found'], 'Rust in what carries the vehicle.').optional(),
      must_pass_inspection_by: dateOrMonths(
        WORK.canWait,
        units,
        'Date (or months from now) by which it must pass inspection.',
      ).optional(),
      inspection_failed: yesNo('Whether it has failed its inspection.').optional(),
      lender_requires_cover: yesNo('Whether a lender asks for full cover.').optional(),
    },
    'The vehicle you have.',
  );
};
