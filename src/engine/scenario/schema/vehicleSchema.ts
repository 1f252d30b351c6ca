import * as OWNED from '../inputs/ownedInputs.ts';
import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';
import { dateOrMonths, list, mapping, maybe, oneOf, words, yesNo } from './fields.ts';
import { shapeOf } from './groupShape.ts';
import { runningShape } from './runningSchema.ts';

/** One kind of cover for damage to the vehicle itself. */
const cover = (units: Units, description: string) =>
  maybe(
    mapping(
      {
        ...shapeOf(OWNED.COVER, units),
        other_deductible: maybe(
          mapping(
            shapeOf({ deductible: OWNED.COVER.deductible, aYear: OWNED.COVER.aYear }, units),
            'Another deductible on offer, with its premium a year.',
          ),
        ),
      },
      description,
    ),
  );

/** The present vehicle. */
export const vehicleSchema = (units: Units) =>
  mapping(
    {
      ...runningShape(units),
      ...shapeOf(VEHICLE.PRESENT, units),
      sells_for: mapping(
        shapeOf(OWNED.SALE, units),
        'What it would bring today: three prices that are never mixed.',
      ),
      ...shapeOf(VEHICLE.DUE, units),
      loan: maybe(mapping(shapeOf(OWNED.LOAN_LEFT, units), 'A loan still running on it.')),
      ...shapeOf(OWNED.STANDING, units),
      ends: maybe(
        list(
          mapping(
            {
              what: words(
                'What ends it for good: frame rot, an inspection it cannot pass, parts no longer made.',
              ),
              ...shapeOf(OWNED.END, units),
            },
            'Something that may end the vehicle for good, found out at a yearly inspection.',
          ),
          10,
        ),
      ),
      in_a_hurry: maybe(
        mapping(
          shapeOf(OWNED.HURRY, units),
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
        dateOrMonths(WORK.CAN_WAIT, units, 'Date (or months from now) by which it must pass inspection.'),
      ),
      inspection_failed: maybe(yesNo('Whether it has failed its inspection.')),
      lender_requires_cover: maybe(yesNo('Whether a lender asks for full cover.')),
    },
    'The vehicle you have.',
  );
