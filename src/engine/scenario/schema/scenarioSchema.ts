import * as z from 'zod/mini';
import * as HOME from '../inputs/householdInputs.ts';
import type { Units } from '../inputs/units.ts';
import * as WORK from '../inputs/workInputs.ts';
import { chanceSchema, lookSchema, togetherSchema } from './chanceSchema.ts';
import { claimSchema } from './claimSchema.ts';
import { date, dateOrMonths, list, mapping, maybe, num, numOr, record, words, yesNo } from './fields.ts';
import { shapeByUnit, shapeOf } from './groupShape.ts';
import {
  alreadySpentSchema,
  bigBillsSchema,
  doingWithoutSchema,
  householdSchema,
  likeOursSchema,
} from './householdSchema.ts';
import { replacementSchema } from './replacementSchema.ts';
import { OFFER, type runningShape } from './runningSchema.ts';
import { vehicleSchema } from './vehicleSchema.ts';
import { jobSchema } from './workSchema.ts';

const YES_NO = { yes: 'yes', no: 'no' } as const;

const need = (units: Units) =>
  z.union([
    numOr(OFFER, units, YES_NO, 'A number, or yes.'),
    mapping(
      {
        at_least: numOr(OFFER, units, YES_NO, 'A number, or yes.'),
        from: maybe(dateOrMonths(WORK.CAN_WAIT, units, 'From when: a date, or months from now.')),
      },
      'What is needed, and from when.',
    ),
  ]);

/** The scenario file: sparse, written by hand. `units` are the household's, read beforehand. */
export const scenarioSchema = (units: Units) =>
  mapping(
    {
      title: maybe(words('What the decision is called.')),
      date: maybe(date('The day of the decision; today unless told.')),
      note: maybe(words('Anything worth remembering.')),
      invented: maybe(yesNo('Whether this is an invented example.')),
      currency: maybe(words('The currency, three letters of ISO 4217; USD unless told.')),
      per_dollar: maybe(num(HOME.PER_DOLLAR, units)),
      ...shapeByUnit(HOME.DISTANCE_A_YEAR, units),
      ...shapeOf(HOME.FUND, units),
      private: maybe(list(words('A place in this file, such as household.partner.'))),
      household: maybe(householdSchema(units)),
      vehicle: vehicleSchema(units),
      work_needed: maybe(list(jobSchema(units))),
      already_spent: maybe(alreadySpentSchema(units, WORK.SPENT)),
      replacement: z.optional(replacementSchema(units)),
      doing_without: maybe(doingWithoutSchema(units)),
      another_like_ours: z.optional(likeOursSchema(units)),
      big_bills: maybe(bigBillsSchema(units)),
      claim: maybe(claimSchema(units)),
      needs: maybe(
        record(
          need(units),
          'What any vehicle must offer: seats, towing, child_seats, range, winter, or your own.',
        ),
      ),
      not_money: maybe(list(words('One sentence.'))),
      chance: maybe(chanceSchema(units)),
      go_together: maybe(togetherSchema(units)),
      look_first: maybe(lookSchema(units)),
      two_way: maybe(list(words('A place in this file that holds a number, such as miles_a_year.'))),
    },
    'Mend the older vehicle, or hand it on and take a payment? What Stillworth needs to know.',
  );

/** A file that passed the schema: quantities are `Stated`, nothing is filled in yet. */
export type Sparse = z.output<ReturnType<typeof scenarioSchema>>;
export type SparseVehicle = Sparse['vehicle'];
export type SparseClaim = NonNullable<Sparse['claim']>;
export type SparseReplacement = Exclude<Sparse['replacement'], readonly unknown[] | undefined>;
/** What any vehicle of the comparison says. */
export type SparseRunning = z.output<z.ZodMiniObject<ReturnType<typeof runningShape>, z.core.$strict>>;
export type SparseJob = NonNullable<Sparse['work_needed']>[number];
