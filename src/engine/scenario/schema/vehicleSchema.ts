import { COVER } from '../inputs/claimSpecs.ts';
import { END, PURCHASE, RUNNING, SALE, WORK } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { dateOrMonths, list, mapping, maybe, num, oneOf, words, yesNo } from './fields.ts';
import { runningShape } from './runningSchema.ts';

/** One kind of cover for damage to the vehicle itself. */
const cover = (units: Units, description: string) =>
  maybe(
    mapping(
      {
        a_year: num(COVER.aYear, units),
        deductible: num(COVER.deductible, units),
        chance_a_year: maybe(num(COVER.chanceAYear, units)),
        mean_loss: maybe(num(COVER.meanLoss, units)),
        total_share: maybe(num(COVER.totalShare, units)),
        other_deductible: maybe(
          mapping(
            { deductible: num(COVER.deductible, units), a_year: num(COVER.aYear, units) },
            'Another deductible on offer, with its premium a year.',
          ),
        ),
      },
      description,
    ),
  );

/** The present vehicle. */
export const vehicleSchema = (units: Units) => {
  const due = () => maybe(num(RUNNING.due, units));
  return mapping(
    {
      ...runningShape(units),
      odometer: num(RUNNING.odometer, units),
      price_when_new: num(RUNNING.priceWhenNew, units),
      sells_for: mapping(
        {
          running: num(SALE.running, units),
          as_it_stands: num(SALE.asItStands, units),
          trade_in: maybe(num(SALE.tradeIn, units)),
          trade_in_mended: maybe(num(SALE.tradeInMended, units)),
          scrap: maybe(num(SALE.scrap, units)),
        },
        'What it would bring today: three prices that are never mixed.',
      ),
      insurance_due: due(),
      registration_due: due(),
      inspection_due: due(),
      tax_due: due(),
      loan: maybe(
        mapping(
          {
            owed: num(SALE.owed, units),
            apr: num(PURCHASE.apr, units),
            months_left: num(PURCHASE.monthsLeft, units),
          },
          'A loan still running on it.',
        ),
      ),
      storage_a_day: maybe(num(SALE.storage, units)),
      ends: maybe(
        list(
          mapping(
            {
              what: words(
                'What ends it for good: frame rot, an inspection it cannot pass, parts no longer made.',
              ),
              chance_a_year: num(END.chanceAYear, units),
              rises_a_year: maybe(num(END.risesAYear, units)),
            },
            'Something that may end the vehicle for good, found out at a yearly inspection.',
          ),
          10,
        ),
      ),
      in_a_hurry: maybe(
        mapping(
          {
            adds: maybe(num(END.adds, units)),
            days: maybe(num(END.days, units)),
            loan_refused: maybe(num(END.refused, units)),
            refused_costs: maybe(num(END.refusedCosts, units)),
          },
          'What replacing it in a hurry adds to replacing it in peace, once it has broken down.',
        ),
      ),
      cover: maybe(
        mapping(
          {
            collision: cover(units, 'What pays when it hits or is hit.'),
            comprehensive: cover(units, 'What pays for theft, hail, fire, glass, animals.'),
          },
          'Of the yearly insurance, what answers for damage to the vehicle itself.',
        ),
      ),
      may_be_driven: maybe(yesNo('Whether it may be driven today.')),
      recall_checked: maybe(yesNo("Whether the maker's recall list was checked.")),
      recall_stop: maybe(yesNo('Whether an open recall says "do not drive".')),
      structural_rust: maybe(oneOf(['none', 'unknown', 'found'], 'Rust in what carries the vehicle.')),
      must_pass_inspection_by: maybe(
        dateOrMonths(WORK.canWait, units, 'Date (or months from now) by which it must pass inspection.'),
      ),
      inspection_failed: maybe(yesNo('Whether it has failed its inspection.')),
      lender_requires_cover: maybe(yesNo('Whether a lender asks for full cover.')),
    },
    'The vehicle you have.',
  );
};
