import { HOUSEHOLD, WITHOUT } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { list, mapping, maybe, num, words } from './fields.ts';

const pricesRise = (units: Units) => {
  const rate = () => maybe(num(HOUSEHOLD.pricesRise, units));
  return mapping(
    {
      general: rate(),
      energy: rate(),
      insurance: rate(),
      repairs: rate(),
      own_hour: rate(),
      vehicles: rate(),
      fees: rate(),
    },
    'How much prices rise a year, in percent; each family follows "general" unless told.',
  );
};

/** The household: who is in it, how far it looks ahead, what its money and its time are worth. */
export const householdSchema = (units: Units) =>
  mapping(
    {
      mechanic: maybe(words('Who does the work at home.')),
      partner: maybe(words('Who shares the decision.')),
      look_ahead: maybe(num(HOUSEHOLD.lookAhead, units)),
      money_earns: maybe(num(HOUSEHOLD.moneyEarns, units)),
      price_of_own_hour: maybe(num(HOUSEHOLD.priceOfOwnHour, units)),
      day_without: maybe(num(HOUSEHOLD.dayWithout, units)),
      card_rate: maybe(num(HOUSEHOLD.cardRate, units)),
      table_price_ratio: maybe(num(HOUSEHOLD.tablePriceRatio, units)),
      fuel_price: maybe(num(HOUSEHOLD.fuelPrice, units)),
      power_price: maybe(num(HOUSEHOLD.powerPrice, units)),
      prices_rise: maybe(pricesRise(units)),
      at_home: maybe(
        mapping(
          {
            share: maybe(num(HOUSEHOLD.ownShare, units)),
            parts_share: maybe(num(HOUSEHOLD.partsShare, units)),
            shop_hour: maybe(num(HOUSEHOLD.shopHour, units)),
          },
          'Who does the repairs and upkeep that are known only on average.',
        ),
      ),
    },
    'The household: how far it looks ahead, what its money and its time are worth.',
  );

/** Doing without a vehicle: rides, a rental, a borrowed spare. */
export const doingWithoutSchema = (units: Units) =>
  mapping(
    { a_day: num(WITHOUT.aDay, units), days_a_month: num(WITHOUT.daysAMonth, units) },
    'What getting by without a vehicle would cost.',
  );

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
