import * as z from 'zod/mini';
import type { Spec } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';
import { changesSchema } from './changeSchema.ts';
import { clocked, list, mapping, maybe, num, numOr, oneOf, ranged, record, words, yesNo } from './fields.ts';
import { shapeByUnit, shapeOf } from './groupShape.ts';

export const by = () => maybe(oneOf(['own', 'shop'], 'Who does it: own hands or a shop.'));

const upkeepItem = (units: Units) =>
  mapping(
    {
      job: words('The job, in a few words.'),
      ...shapeOf(WORK.UPKEEP_ITEM, units),
      last_done: maybe(
        numOr(
          VEHICLE.PRESENT.odometer,
          units,
          { "don't know": 'unknown', 'do not know': 'unknown', unknown: 'unknown' },
          'Odometer when it was last done, or "don\'t know" (then it is due).',
        ),
      ),
      renews: maybe(list(words('The name of a component of the same vehicle.'))),
      ...shapeOf({ sinceMonths: WORK.SINCE.sinceMonths, ...WORK.WORK_COST }, units),
      by: by(),
    },
    'One job of scheduled upkeep. A list of them replaces the average.',
  );

/** "140,000 miles" or "48 months": a life in distance or in time. */
const life = (units: Units) =>
  mapping(
    {
      typical: maybe(clocked(WORK.LIFE.distance, WORK.LIFE.months, units, TYPICAL)),
      ...shapeOf(WORK.LIFE_LAW, units),
    },
    'How long the part lasts.',
  );
const TYPICAL = 'Distance, or months ("48 months"), by which about 63 in 100 have failed.';

const component = (units: Units) => {
  const { share_of_average, ...failure } = shapeOf(WORK.FAILURE, units);
  return mapping(
    {
      name: words('The part, in a few words.'),
      like: maybe(words('Its name in the public table, where its own is another: "timing belt".')),
      life: maybe(life(units)),
      lasts_another: maybe(ranged(WORK.ANOTHER, units, 'How much longer the part that is in will last.')),
      run: maybe(clocked(WORK.RUN.distance, WORK.RUN.months, units, 'What it has run already.')),
      ...shapeOf(WORK.WORK_COST, units),
      by: by(),
      repair: maybe(oneOf(['renew', 'patch'], 'A new part restarts its clock; a patch leaves it running.')),
      ...failure,
      unsafe: maybe(yesNo('Whether it is unsafe to drive once this fails.')),
      share_of_average,
    },
    'A part that may fail, taken out of the average.',
  );
};

const valueFalls = (units: Units) =>
  z.union([
    num(VEHICLE.DECLINE.perYear, units),
    mapping(
      {
        ...shapeOf(VEHICLE.DECLINE, units),
        ...shapeOf(VEHICLE.DECLINE_PER_DISTANCE, units),
        ...shapeOf(VEHICLE.RUNNING_ONE, units),
      },
      'Decline a year in percent, and in money for each mile or km driven.',
    ),
    list(mapping(shapeOf(VEHICLE.POINT, units), 'What it will bring so many months from now.')),
  ]);

/** What any vehicle of the comparison may say about its costs. */
export const runningShape = (units: Units) => {
  const { insurance_a_year, registration_a_year, ...bills } = shapeOf(
    { ...VEHICLE.A_YEAR, ...VEHICLE.MONTHLY_BILLS },
    units,
  );
  return {
    what: words('The vehicle in a few words, best with its model year: "2009 wagon".'),
    ...shapeOf(VEHICLE.MODEL_YEAR, units),
    kind: maybe(
      oneOf(
        ['car', 'suv', 'truck'],
        'Which column of the tables it belongs to: a car is a sedan, wagon or hatchback; a suv a utility or van; a truck a pickup. Read from its name unless told.',
      ),
    ),
    powertrain: maybe(oneOf(['combustion', 'hybrid', 'plug_in', 'battery'], 'What drives it.')),
    insurance_a_year,
    registration_a_year,
    registration_refunded: maybe(
      yesNo('Whether the unused part of a year of registration comes back when the vehicle goes.'),
    ),
    ...bills,
    changes: maybe(changesSchema(units)),
    value_falls: maybe(valueFalls(units)),
    ...shapeOf(VEHICLE.WORTH, units),
    fuel: maybe(
      mapping(
        shapeOf(VEHICLE.FUEL, units),
        'Economy ("25 mpg", "7.5 l/100km") and the price of one gallon, litre or kWh.',
      ),
    ),
    upkeep: maybe(list(upkeepItem(units))),
    ...shapeOf(VEHICLE.AVERAGE_UPKEEP, units),
    components: maybe(list(component(units))),
    ...shapeOf(VEHICLE.REPAIRS, units),
    guarantee: maybe(
      mapping(
        { ...shapeOf(VEHICLE.GUARANTEE, units), ...shapeByUnit(VEHICLE.GUARANTEE_DISTANCE, units) },
        'Repairs cost nothing while both last.',
      ),
    ),
    selling: maybe(mapping(shapeOf(VEHICLE.SELLING, units), 'What a private sale takes.')),
    ...offers(units),
  };
};

/** What a vehicle offers against the household's needs: a number or yes. */
const offers = (units: Units) => {
  const offer = (what: string) => maybe(numOr(OFFER, units, { yes: 'yes', no: 'no' }, what));
  return {
    seats: offer('Seats.'),
    towing: offer('What it may tow: a weight, or yes.'),
    child_seats: offer('Child seats that fit.'),
    range: offer('Range on one filling or charge.'),
    winter: offer('Whether it is fit for winter.'),
    offers: maybe(
      record(
        numOr(OFFER, units, { yes: 'yes', no: 'no' }, 'A number or yes.'),
        'Anything else it offers against the needs.',
      ),
    ),
  };
};

/** A need or an offer: any number not below nil. */
export const OFFER: Spec = {
  unit: 'factor',
  min: 0,
  max: 1_000_000,
  mark: 'measured',
  words: 'what it offers',
};
