import * as z from 'zod';
import { clocked, list, mapping, num, numOr, oneOf, words, yesNo } from '../fields.ts';
import { RUNNING, type Spec, WORK } from '../specs.ts';
import type { Units } from '../units.ts';

/** What doing a job costs either way. */
export const workCost = (units: Units) => ({
  parts: num(WORK.parts, units).optional(),
  hours: num(WORK.hours, units).optional(),
  shop_price: num(WORK.shopPrice, units).optional(),
});

export const by = () => oneOf(['own', 'shop'], 'Who does it: own hands or a shop.').optional();

const upkeepItem = (units: Units) =>
  mapping(
    {
      job: words('The job, in a few words.'),
      every: num(WORK.everyDistance, units).optional(),
      or_months: num(WORK.everyMonths, units).optional(),
      last_done: numOr(
        RUNNING.odometer,
        units,
        { "don't know": 'unknown', 'do not know': 'unknown', unknown: 'unknown' },
        'Odometer when it was last done, or "don\'t know" (then it is due).',
      ).optional(),
      last_done_months_ago: num(WORK.sinceMonths, units).optional(),
      ...workCost(units),
      by: by(),
    },
    'One job of scheduled upkeep. A list of them replaces the average.',
  );

/** "140,000 miles" or "48 months": a life in distance or in time. */
const life = (units: Units) =>
  mapping(
    {
      typical: clocked(WORK.lifeDistance, WORK.lifeMonths, units, LIFE),
      shape: num(WORK.shape, units).optional(),
    },
    'How long the part lasts.',
  );
const LIFE = 'Distance, or months ("48 months"), by which about 63 in 100 have failed.';

const component = (units: Units) =>
  mapping(
    {
      name: words('The part, in a few words.'),
      life: life(units),
      run: clocked(WORK.runDistance, WORK.runMonths, units, 'What it has run already.').optional(),
      ...workCost(units),
      by: by(),
      repair: oneOf(
        ['renew', 'patch'],
        'A new part restarts its clock; a patch leaves it running.',
      ).optional(),
      tow: num(WORK.tow, units).optional(),
      days_without: num(WORK.daysWithout, units).optional(),
      unsafe: yesNo('Whether it is unsafe to drive once this fails.').optional(),
      share_of_average: num(WORK.shareOfAverage, units).optional(),
    },
    'A part that may fail, taken out of the average.',
  );

const valueFalls = (units: Units) =>
  z.union([
    num(RUNNING.declineAYear, units),
    mapping(
      {
        a_year: num(RUNNING.declineAYear, units).optional(),
        a_mile: num(RUNNING.declinePerDistance, units).optional(),
        a_km: num(RUNNING.declinePerDistance, units).optional(),
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
  year: num(RUNNING.year, units).optional(),
  kind: oneOf(['car', 'suv', 'truck'], 'Which column of the repair table it belongs to.').optional(),
  powertrain: oneOf(['combustion', 'hybrid', 'plug_in', 'battery'], 'What drives it.').optional(),
  insurance_a_year: num(RUNNING.insurance, units),
  registration_a_year: num(RUNNING.registration, units).optional(),
  inspection_a_year: num(RUNNING.inspection, units).optional(),
  tax_a_year: num(RUNNING.tax, units).optional(),
  parking_a_month: num(RUNNING.parking, units).optional(),
  value_falls: valueFalls(units).optional(),
  floor: num(RUNNING.floor, units).optional(),
  title_factor: num(RUNNING.brandFactor, units).optional(),
  fuel: mapping(
    { economy: num(RUNNING.economy, units).optional(), price: num(price, units).optional() },
    'Economy ("25 mpg", "7.5 l/100km") and the price of one gallon, litre or kWh.',
  ).optional(),
  upkeep: list(upkeepItem(units)).optional(),
  upkeep_a_mile: num(RUNNING.averageUpkeep, units).optional(),
  upkeep_a_km: num(RUNNING.averageUpkeep, units).optional(),
  components: list(component(units)).optional(),
  repairs_a_year: num(RUNNING.repairsAYear, units).optional(),
  repairs_factor: num(RUNNING.repairsFactor, units).optional(),
  guarantee: mapping(
    {
      months: num(RUNNING.guaranteeMonths, units).optional(),
      miles: num(RUNNING.guaranteeDistance, { ...units, distance: 'miles' }).optional(),
      km: num(RUNNING.guaranteeDistance, { ...units, distance: 'km' }).optional(),
    },
    'Repairs cost nothing while both last.',
  ).optional(),
  selling: mapping(
    {
      cost: num(RUNNING.sellingCost, units).optional(),
      hours: num(RUNNING.sellingHours, units).optional(),
      weeks: num(RUNNING.sellingWeeks, units).optional(),
    },
    'What a private sale takes.',
  ).optional(),
  ...offers(units),
});

/** What a vehicle offers against the household's needs: a number or yes. */
const offers = (units: Units) => {
  const offer = (what: string) => numOr(OFFER, units, { yes: 'yes', no: 'no' }, what).optional();
  return {
    seats: offer('Seats.'),
    towing: offer('What it may tow: a weight, or yes.'),
    child_seats: offer('Child seats that fit.'),
    range: offer('Range on one filling or charge.'),
    winter: offer('Whether it is fit for winter.'),
    offers: z
      .record(z.string().max(60), numOr(OFFER, units, { yes: 'yes', no: 'no' }, 'A number or yes.'))
      .meta({ description: 'Anything else it offers against the needs.' })
      .optional(),
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
