import * as z from 'zod/mini';
import * as HOME from '../inputs/householdInputs.ts';
import { LIKE_OURS } from '../inputs/likeInputs.ts';
import type { Units } from '../inputs/units.ts';
import { list, mapping, maybe, num, numOr, words, yesNo } from './fields.ts';
import { shapeOf } from './groupShape.ts';

/** The household: who is in it, how far it looks ahead, what its money and its time are worth. */
export const householdSchema = (units: Units) =>
  mapping(
    {
      mechanic: maybe(words('Who does the work at home.')),
      partner: maybe(words('Who shares the decision.')),
      ...shapeOf(HOME.HOUSEHOLD, units),
      ...shapeOf(HOME.HOUSEHOLD_MORE, units),
      prices_rise: maybe(
        mapping(
          shapeOf({ ...HOME.GENERAL_RISE, ...HOME.FAMILIES_RISE }, units),
          'How much prices rise a year, in percent; each family follows "general" unless told.',
        ),
      ),
      at_home: maybe(
        mapping(
          shapeOf(HOME.AT_HOME, units),
          'Who does the repairs and upkeep that are known only on average.',
        ),
      ),
    },
    'The household: how far it looks ahead, what its money and its time are worth.',
  );

/** Doing without a vehicle: rides, a rental, a borrowed spare. */
export const doingWithoutSchema = (units: Units) =>
  mapping(shapeOf(HOME.WITHOUT, units), 'What getting by without a vehicle would cost.');

/** Bills that may end a vehicle: as the table has them, so many times that, or none. */
export const bigBillsSchema = (units: Units) =>
  numOr(
    HOME.BIG_BILLS.bigBills,
    units,
    { no: 'no', yes: 'yes' },
    'Bills so big that they may end a vehicle, against what the table says of its kind and age; "no" leaves them out.',
  );

/** Another one like the present vehicle: whether there is one to be had, or what is known of it. */
export const likeOursSchema = (units: Units) =>
  z.union([
    yesNo('Whether another like yours could be bought; yes unless told.'),
    mapping(shapeOf(LIKE_OURS, units), 'What is known of another like yours, running.'),
  ]);

/** What is already spent and no longer counts. */
export const alreadySpentSchema = (units: Units, spec: Parameters<typeof num>[0]) =>
  list(
    mapping(
      {
        what: words('What it was spent on.'),
        amount: num(spec, units),
        returns: maybe(num(spec, units)),
      },
      'Money already spent, and what returning it would bring back.',
    ),
  );
