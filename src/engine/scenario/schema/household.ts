import { list, mapping, num, words } from '../fields.ts';
import { HOUSEHOLD, WITHOUT } from '../specs.ts';
import type { Units } from '../units.ts';

const pricesRise = (units: Units) => {
  const rate = () => num(HOUSEHOLD.pricesRise, units).optional();
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
      mechanic: words('Who does the work at home.').optional(),
      partner: words('Who shares the decision.').optional(),
      look_ahead: num(HOUSEHOLD.lookAhead, units).optional(),
      money_earns: num(HOUSEHOLD.moneyEarns, units).optional(),
      price_of_own_hour: num(HOUSEHOLD.priceOfOwnHour, units).optional(),
      day_without: num(HOUSEHOLD.dayWithout, units).optional(),
      card_rate: num(HOUSEHOLD.cardRate, units).optional(),
      table_price_ratio: num(HOUSEHOLD.tablePriceRatio, units).optional(),
      prices_rise: pricesRise(units).optional(),
      at_home: mapping(
        {
          share: num(HOUSEHOLD.ownShare, units).optional(),
          parts_share: num(HOUSEHOLD.partsShare, units).optional(),
          shop_hour: num(HOUSEHOLD.shopHour, units).optional(),
        },
        'Who does the repairs and upkeep that are known only on average.',
      ).optional(),
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
        returns: num(spec, units).optional(),
      },
      'Money already spent, and what returning it would bring back.',
    ),
  );
