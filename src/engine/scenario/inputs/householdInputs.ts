/** What is asked once for the whole file: the household, its money, doing without, how the future is drawn. */
import { LONGEST_HORIZON } from '../../quantity/month.ts';
import { byUnit, choice, follows, guess, guessOf, needed, nil, orNone, usual } from './declared.ts';
import { bounded, chance, chosen, exactly, known, money, open, share, spec, whole } from './specs.ts';
import { ON_THE_ROAD_SOURCE, REPAIR_PRICE_INDEX, TABLE_PRICE_YEAR } from './tables.ts';

export const PER_DOLLAR = known(
  spec('factor', 0.000_001, 1_000_000, 'quoted', 'currency units per US dollar'),
);

/** At the top of the file. */
export const FUND = {
  spareEachMonth: usual(
    'spare_each_month',
    spec('money a month', 0, 20_000, 'guess', 'spare each month'),
    nil('not given'),
  ),
  /** Money put by for this; null: nobody said, so nothing is checked against it or put on the card. */
  savings: orNone('savings_for_this', money(200_000, 'measured', 'savings for this')),
};

/** At the top of the file as well. */
export const BIG_BILLS = {
  /** Multiplies what the table says of every vehicle's kind and age; 0: none. */
  bigBills: usual('big_bills', spec('factor', 0, 10, 'guess', 'big bills against what the table says'), {
    value: 1,
    unit: 'times what the table says',
    date: '2021',
    source: ON_THE_ROAD_SOURCE,
    mark: 'table',
  }),
};

/** In the household's unit. */
export const DISTANCE_A_YEAR = byUnit(
  'miles_a_year',
  'km_a_year',
  spec('distance a year', 1, 60_000, 'guess', 'distance driven a year'),
);

export const HOUSEHOLD = {
  /** H, 1 to 240 months. */
  lookAhead: usual(
    'look_ahead',
    chosen(whole('months', 1, LONGEST_HORIZON, 'choice', 'how far ahead we look')),
    choice(60, 'our choice: five years'),
  ),
  /** r, the annual effective discount rate: what the money would earn elsewhere. */
  moneyEarns: usual(
    'money_earns',
    spec('rate a year', 0, 0.5, 'guess', 'what the money would earn elsewhere'),
    guess(0.04),
  ),
  /** Price of one own hour; 0 where the household does not price its time. */
  priceOfOwnHour: usual(
    'price_of_own_hour',
    spec('money an hour', 0, 500, 'guess', 'price of one own hour'),
    nil('own time not priced; shown as hours'),
  ),
  /** Cost of one day without a vehicle (rides, rental). */
  dayWithout: usual(
    'day_without',
    spec('money a day', 0, 500, 'guess', 'a day without a vehicle'),
    guess(35, 'our guess: two short rides'),
  ),
};

/** Noted after the household's own; ratio and pumps are parts of every vehicle's numbers. */
export const HOUSEHOLD_MORE = {
  /** Annual nominal rate of the card or credit line that pays on the day what savings do not cover. */
  cardRate: usual(
    'card_rate',
    spec('rate a year', 0, 0.6, 'guess', 'rate of the card that pays what savings do not'),
    guess(0.22),
  ),
  tablePriceRatio: usual(
    'table_price_ratio',
    spec('factor', 0.1, 10, 'guess', 'what carries the tables of upkeep and repairs to today'),
    {
      value: 1.5,
      unit: `times the prices of ${TABLE_PRICE_YEAR}`,
      date: '2025-07',
      source: `BLS index of vehicle maintenance and repair: ${REPAIR_PRICE_INDEX.of2025July} in 2025-07 (from a mirror) against about ${REPAIR_PRICE_INDEX.of2019} in ${TABLE_PRICE_YEAR} (from memory)`,
      mark: 'table',
    },
  ),
  fuelPrice: follows(
    'fuel_price',
    spec('money per energy', 0, 50, 'guess', 'price of a gallon or litre, for every vehicle'),
  ),
  powerPrice: follows(
    'power_price',
    spec('money per energy', 0, 50, 'guess', 'price of a kWh, for every vehicle'),
  ),
};

const rise = (what: string) => open(spec('rate a year', -0.1, 0.3, 'guess', `how ${what} rise a year`));

export const GENERAL_RISE = {
  general: usual('general', rise('prices in general'), guess(0.025)),
};

/** Families of prices: each rises as prices in general do, unless told. */
export const FAMILIES_RISE = {
  energy: follows('energy', rise('energy prices')),
  cover: follows('insurance', rise('insurance prices')),
  /** Parts, shop labour, scheduled upkeep and repairs. */
  repairs: follows('repairs', rise('repair prices')),
  ownTime: follows('own_hour', rise('prices of own hours')),
  /** Prices of replacements for the same model age. */
  vehicles: follows('vehicles', rise('vehicle prices')),
  /** Registration, tax, inspection, parking. */
  fees: follows('fees', rise('fees and taxes')),
};

/** Who does the repairs and upkeep that are known only on average. */
export const AT_HOME = {
  /** Share of that work, by cost, done with own hands. */
  share: usual('share', chance('share of later repairs done at home'), guessOf(0.5, 'of the cost')),
  /** Parts as a share of a shop's bill. */
  partsShare: usual('parts_share', chance("parts as a share of a shop's bill"), guessOf(0.5, 'of the bill')),
  /** A shop's price of one hour: turns the labour part of a bill into own hours. */
  shopHour: usual(
    'shop_hour',
    spec('money an hour', 0, 500, 'guess', "a shop's price of one hour"),
    guess(120),
  ),
};

/** Doing without a vehicle: rides, a rental, a borrowed spare. */
export const WITHOUT = {
  aDay: needed('a_day', spec('money a day', 0, 500, 'guess', 'a day of doing without')),
  daysAMonth: needed(
    'days_a_month',
    bounded({ min: 0, max: 31 }, spec('days', 0, 31, 'guess', 'days a month that need a ride')),
  ),
};

/** How the future is drawn and what is asked of it: choices, none of them a number of the model. */
export const CHANCE = {
  seed: usual('seed', chosen(whole('factor', 0, 4_294_967_295, 'choice', 'seed of the drawn futures')), {
    ...choice(1, 'our choice'),
    unit: 'seed',
  }),
  /** Futures to draw at least; a whole number of scrambles times a power of two. */
  futures: usual('futures', chosen(whole('factor', 0, 1_048_576, 'choice', 'futures to draw')), {
    ...choice(16_384, 'our choice: 16 times 1,024'),
    unit: 'futures',
  }),
  /** The fund may run dry with at most this chance. */
  mayRunDry: usual(
    'may_run_dry',
    chosen(share(0.001, 0.5, 'choice', 'chance that the fund may run dry')),
    choice(0.05, 'our choice: one in twenty'),
  ),
  /**
   * Put by each month for repairs; the household's spare money unless told. Null: nobody said, so what repairs and
   * upkeep come to on average if the vehicle is kept.
   */
  setAside: orNone(
    'set_aside_each_month',
    chosen(spec('money a month', 0, 20_000, 'choice', 'set aside each month for repairs')),
  ),
  monthsWithoutIncome: usual(
    'months_without_income',
    chosen(whole('months', 0, 60, 'choice', 'months without income')),
    choice(3),
  ),
};

export const RANK = exactly(
  'it says how strongly two ranges go together',
  open(spec('factor', -1, 1, 'guess', 'rank correlation')),
);

const RIGHT = 'say how often it is right';

/** A test that tells, imperfectly, whether a component will fail soon. */
export const LOOK = {
  costs: needed('costs', known(money(10_000, 'quoted', 'what the look costs'))),
  /** The event is: it fails within so many months. */
  within: needed('within', chosen(whole('months', 1, 240, 'choice', 'months the look speaks of'))),
  /** Chance that it says so when it will (sensitivity). */
  sees: needed('sees', exactly(RIGHT, share(0.05, 1, 'guess', 'how often it sees what is about to fail'))),
  /** Chance that it says not when it will not (specificity). */
  clears: needed('clears', exactly(RIGHT, share(0.05, 1, 'guess', 'how often it clears what will hold'))),
};
