import * as z from 'zod/mini';
import { RUNNING, type Spec, WORK } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { clocked, list, mapping, maybe, num, numOr, oneOf, ranged, record, words, yesNo } from './fields.ts';

/** What doing a job costs either way. */
export const workCost = (units: Units) => ({
  parts: maybe(num(WORK.parts, units)),
  hours: maybe(num(WORK.hours, units)),
  shop_price: maybe(num(WORK.shopPrice, units)),
});

export const by = () => maybe(oneOf(['own', 'shop'], 'Who does it: own hands or a shop.'));

const upkeepItem = (units: Units) =>
  mapping(
    {
      job: words('The job, in a few words.'),
      every: maybe(num(WORK.everyDistance, units)),
      or_months: maybe(num(WORK.everyMonths, units)),
      last_done: maybe(
        numOr(
          RUNNING.odometer,
          units,
          { "don't know": 'unknown', 'do not know': 'unknown', unknown: 'unknown' },
          'Odometer when it was last done, or "don\'t know" (then it is due).',
        ),
      ),
      renews: maybe(list(words('The name of a component of the same vehicle.'))),
      last_done_months_ago: maybe(num(WORK.sinceMonths, units)),
      ...workCost(units),
      by: by(),
    },
    'One job of scheduled upkeep. A list of them replaces the average.',
  );

/** "140,000 miles" or "48 months": a life in distance or in time. */
const life = (units: Units) =>
  mapping(
    {
      typical: maybe(clocked(WORK.lifeDistance, WORK.lifeMonths, units, LIFE)),
      shape: maybe(num(WORK.shape, units)),
    },
    'How long the part lasts.',
  );
const LIFE = 'Distance, or months ("48 months"), by which about 63 in 100 have failed.';

const component = (units: Units) =>
  mapping(
    {
      name: words('The part, in a few words.'),
      like: maybe(words('Its name in the public table, where its own is another: "timing belt".')),
      life: maybe(life(units)),
      lasts_another: maybe(
        ranged(WORK.anotherMonths, units, 'How much longer the part that is in will last.'),
      ),
      run: maybe(clocked(WORK.runDistance, WORK.runMonths, units, 'What it has run already.')),
      ...workCost(units),
      by: by(),
      repair: maybe(oneOf(['renew', 'patch'], 'A new part restarts its clock; a patch leaves it running.')),
      tow: maybe(num(WORK.tow, units)),
      days_without: maybe(num(WORK.daysWithout, units)),
      unsafe: maybe(yesNo('Whether it is unsafe to drive once this fails.')),
      share_of_average: maybe(num(WORK.shareOfAverage, units)),
    },
    'A part that may fail, taken out of the average.',
  );

const valueFalls = (units: Units) =>
  z.union([
    num(RUNNING.declineAYear, units),
    mapping(
      {
        a_year: maybe(num(RUNNING.declineAYear, units)),
        a_mile: maybe(num(RUNNING.declinePerDistance, units)),
        a_km: maybe(num(RUNNING.declinePerDistance, units)),
      },
      'Decline a year in percent, and in money for each mile or km driven.',
    ),
    list(
      mapping(
        { months: num(RUNNING.pointMonth, units), value: num(RUNNING.pointValue, units) },
        'What it will bring so many months from now.',
      ),
    ),
  ]);

const price: Spec = RUNNING.energyPrice;

/** What any vehicle of the comparison may say about its costs. */
export const runningShape = (units: Units) => ({
  what: words('The vehicle in a few words, best with its model year: "2009 wagon".'),
  year: maybe(num(RUNNING.year, units)),
  kind: maybe(oneOf(['car', 'suv', 'truck'], 'Which column of the repair table it belongs to.')),
  powertrain: maybe(oneOf(['combustion', 'hybrid', 'plug_in', 'battery'], 'What drives it.')),
  insurance_a_year: num(RUNNING.insurance, units),
  registration_a_year: maybe(num(RUNNING.registration, units)),
  registration_refunded: maybe(
    yesNo('Whether the unused part of a year of registration comes back when the vehicle goes.'),
  ),
  inspection_a_year: maybe(num(RUNNING.inspection, units)),
  tax_a_year: maybe(num(RUNNING.tax, units)),
  parking_a_month: maybe(num(RUNNING.parking, units)),
  value_falls: maybe(valueFalls(units)),
  floor: maybe(num(RUNNING.floor, units)),
  title_factor: maybe(num(RUNNING.brandFactor, units)),
  fuel: maybe(
    mapping(
      { economy: maybe(num(RUNNING.economy, units)), price: maybe(num(price, units)) },
      'Economy ("25 mpg", "7.5 l/100km") and the price of one gallon, litre or kWh.',
    ),
  ),
  upkeep: maybe(list(upkeepItem(units))),
  upkeep_a_mile: maybe(num(RUNNING.averageUpkeep, units)),
  upkeep_a_km: maybe(num(RUNNING.averageUpkeep, units)),
  components: maybe(list(component(units))),
  repairs_a_year: maybe(num(RUNNING.repairsAYear, units)),
  repairs_factor: maybe(num(RUNNING.repairsFactor, units)),
  usual_repair: maybe(num(RUNNING.usualRepair, units)),
  strands: maybe(num(RUNNING.strands, units)),
  guarantee: maybe(
    mapping(
      {
        months: maybe(num(RUNNING.guaranteeMonths, units)),
        miles: maybe(num(RUNNING.guaranteeDistance, { ...units, distance: 'miles' })),
        km: maybe(num(RUNNING.guaranteeDistance, { ...units, distance: 'km' })),
      },
      'Repairs cost nothing while both last.',
    ),
  ),
  selling: maybe(
    mapping(
      {
        cost: maybe(num(RUNNING.sellingCost, units)),
        hours: maybe(num(RUNNING.sellingHours, units)),
        weeks: maybe(num(RUNNING.sellingWeeks, units)),
      },
      'What a private sale takes.',
    ),
  ),
  ...offers(units),
});

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
