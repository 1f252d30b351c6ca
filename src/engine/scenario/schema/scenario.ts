import * as z from 'zod';
import { date, dateOrMonths, list, mapping, num, numOr, words, yesNo } from '../fields.ts';
import { HOUSEHOLD, RUNNING, WORK } from '../specs.ts';
import type { Units } from '../units.ts';
import { alreadySpentSchema, doingWithoutSchema, householdSchema } from './household.ts';
import { replacementSchema } from './replacement.ts';
import { OFFER, type runningShape } from './running.ts';
import { vehicleSchema } from './vehicle.ts';
import { jobSchema } from './work.ts';

const YES_NO = { yes: 'yes', no: 'no' } as const;

const need = (units: Units) =>
  z.union([
    numOr(OFFER, units, YES_NO, 'A number, or yes.'),
    mapping(
      {
        at_least: numOr(OFFER, units, YES_NO, 'A number, or yes.'),
        from: dateOrMonths(WORK.canWait, units, 'From when: a date, or months from now.').optional(),
      },
      'What is needed, and from when.',
    ),
  ]);

/** The scenario file: sparse, written by hand. `units` are the household's, read beforehand. */
export const scenarioSchema = (units: Units) =>
  mapping(
    {
      title: words('What the decision is called.').optional(),
      date: date('The day of the decision; today unless told.').optional(),
      note: words('Anything worth remembering.').optional(),
      invented: yesNo('Whether this is an invented example.').optional(),
      currency: words('The currency, three letters of ISO 4217; USD unless told.').optional(),
      per_dollar: num(RUNNING.perDollar, units).optional(),
      miles_a_year: num(HOUSEHOLD.distanceAYear, { ...units, distance: 'miles' }).optional(),
      km_a_year: num(HOUSEHOLD.distanceAYear, { ...units, distance: 'km' }).optional(),
      spare_each_month: num(HOUSEHOLD.spareEachMonth, units).optional(),
      savings_for_this: num(HOUSEHOLD.savings, units).optional(),
      private: list(words('A place in this file, such as household.partner.')).optional(),
      household: householdSchema(units).optional(),
      vehicle: vehicleSchema(units),
      work_needed: list(jobSchema(units)).optional(),
      already_spent: alreadySpentSchema(units, WORK.spent).optional(),
      replacement: replacementSchema(units),
      doing_without: doingWithoutSchema(units).optional(),
      needs: z
        .record(z.string().max(60), need(units))
        .meta({
          description: 'What any vehicle must offer: seats, towing, child_seats, range, winter, or your own.',
        })
        .optional(),
      not_money: list(words('One sentence.')).optional(),
      two_way: list(words('A place in this file that holds a number, such as miles_a_year.')).optional(),
    },
    'Mend the older vehicle, or hand it on and take a payment? What Stillworth needs to know.',
  );

/** A file that passed the schema: quantities are `Stated`, nothing is filled in yet. */
export type Sparse = z.output<ReturnType<typeof scenarioSchema>>;
export type SparseVehicle = Sparse['vehicle'];
export type SparseReplacement = Exclude<Sparse['replacement'], readonly unknown[]>;
/** What any vehicle of the comparison says. */
export type SparseRunning = z.output<z.ZodObject<ReturnType<typeof runningShape>, z.core.$strict>>;
export type SparseJob = NonNullable<Sparse['work_needed']>[number];
