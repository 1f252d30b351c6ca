import { parseFrom } from '../../quantity/civilDate.ts';
import { OWN_DAMAGE } from '../inputs/claim.ts';
import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { showValue } from '../text/problems.ts';
import { field, json, list, mapping, maybe, oneOf, words } from './fields.ts';
import { shapeOf } from './groupShape.ts';

const HOW = 'Write year-month, such as 2027-04, or a day, such as 2027-04-15.';

/** From when something holds: a month or a day, as it is written. */
const from = () =>
  field<string>(
    (raw) =>
      typeof raw === 'string' && parseFrom(raw)
        ? { ok: raw }
        : [{ kind: 'not a date', value: raw, message: `"${showValue(raw)}" is no date.`, remedy: HOW }],
    json(
      'From when: a month (its first day) or a day. It holds from the first month, counted from the day of the decision, that ends after it.',
      HOW,
      { type: 'string', pattern: '^\\d{4}-\\d{2}(-\\d{2})?$' },
    ),
  );

/** Costs of a vehicle that change on dates known beforehand. */
export const changesSchema = (units: Units) =>
  list(
    mapping(
      {
        from: from(),
        ...shapeOf(VEHICLE.CHANGED, units),
        cover_ends: maybe(
          list(
            oneOf(
              OWN_DAMAGE,
              'Cover for the vehicle itself that ends with it; from then on a loss is yours to pay.',
            ),
          ),
        ),
        why: maybe(words('Why, in a few words: the insurer drops collision cover.')),
      },
      "What is another figure from a date on, in today's money: prices go on rising from there. A bill paid ahead is split by months.",
    ),
    20,
  );
