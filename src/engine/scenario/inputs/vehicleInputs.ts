/** What any vehicle of the comparison is asked for. */
import { byUnit, follows, guess, guessOf, type Input, needed, nil, orNone, usual } from './declared.ts';
import {
  bounded,
  chance,
  exactly,
  known,
  money,
  type Spec,
  share,
  spec,
  term,
  WITHIN_ALL,
  whole,
} from './specs.ts';
import { DECLINE_A_YEAR, REPAIR_SOURCE } from './tables.ts';

/** Its age is counted from it. */
export const MODEL_YEAR = {
  age: follows('year', known(whole('calendar year', 1900, 2200, 'measured', 'model year'))),
};

const ODOMETER = known(spec('distance', 0, 1_000_000, 'measured', 'odometer'));
const PRICE_WHEN_NEW = spec('money', 500, 500_000, 'quoted', 'price when new');

/** The vehicle a household has. */
export const PRESENT = {
  odometer: needed('odometer', ODOMETER),
  priceWhenNew: needed('price_when_new', PRICE_WHEN_NEW),
};

/** The same of another one. */
export const BOUGHT = {
  odometer: follows('odometer', ODOMETER),
  priceWhenNew: follows('price_when_new', PRICE_WHEN_NEW),
};

/** A bill that nobody can guess: not given, it is left out, and both sides are held against each other. */
const leftOut = (bill: string) => ({
  // Where one vehicle has it and another not, complete/leftOutBills.ts says what that does.
  ...nil('not given for either vehicle: left out on both sides'),
  /** At the beginning of a sentence. */
  bill,
});

const due = <const N extends string>(bill: N) =>
  usual(
    `${bill}_due` as const,
    known(whole('months', 0, 12, 'measured', `months until the ${bill.replaceAll('_', ' ')} is due`)),
    guess(12, 'not given: a year from now'),
  );

const bill = (max: number, words: string) => spec('money a year', 0, max, 'quoted', words);

/** Bills that come once a year. When the next is due is told where the vehicle is kept; a bought one pays at its start. */
export const YEARLY_BILLS = {
  cover: {
    aYear: needed('insurance_a_year', bill(30_000, 'yearly cost of insurance')),
    nextDue: due('insurance'),
  },
  registration: {
    aYear: usual(
      'registration_a_year',
      bill(10_000, 'yearly registration'),
      leftOut('The cost of registration'),
    ),
    nextDue: due('registration'),
  },
  inspection: {
    aYear: usual('inspection_a_year', bill(5_000, 'yearly inspection'), leftOut('The cost of inspection')),
    nextDue: due('inspection'),
  },
  tax: {
    aYear: usual('tax_a_year', bill(20_000, 'yearly vehicle tax'), leftOut('The vehicle tax')),
    nextDue: due('tax'),
  },
};

type Column<N extends 'aYear' | 'nextDue'> = {
  readonly [B in keyof typeof YEARLY_BILLS]: (typeof YEARLY_BILLS)[B][N];
};
const column = <N extends 'aYear' | 'nextDue'>(name: N): Column<N> =>
  Object.fromEntries(Object.entries(YEARLY_BILLS).map(([bill, one]) => [bill, one[name]])) as never;

/** What each comes to, and when each is due, by bill. */
export const A_YEAR = column('aYear');
export const DUE = column('nextDue');

export const MONTHLY_BILLS = {
  parkingAMonth: usual(
    'parking_a_month',
    spec('money a month', 0, 5_000, 'quoted', 'parking a month'),
    leftOut('The cost of parking'),
  ),
};

/**
 * What it is from a date on, where that is known beforehand: an insurer drops a cover, a premium steps. In today's money, as
 * the figure before it is: prices go on rising.
 */
export const CHANGED = {
  cover: orNone(A_YEAR.cover.key, A_YEAR.cover),
  registration: orNone(A_YEAR.registration.key, A_YEAR.registration),
  inspection: orNone(A_YEAR.inspection.key, A_YEAR.inspection),
  tax: orNone(A_YEAR.tax.key, A_YEAR.tax),
  parkingAMonth: orNone(MONTHLY_BILLS.parkingAMonth.key, MONTHLY_BILLS.parkingAMonth),
};

type Bills = typeof A_YEAR & typeof MONTHLY_BILLS;

/** A bill that may be left out. */
export type Bill = Extract<Bills[keyof Bills], { readonly or: { readonly bill: string } }>;

export const isLeftOut = (one: Input): one is Bill => one.or !== undefined && 'bill' in one.or;

export const LEFT_OUT_BILLS = Object.values<Input>({ ...A_YEAR, ...MONTHLY_BILLS }).filter(isLeftOut);

/** "a year", "a month". */
export const periodOf = ({ unit }: Spec): string => unit.replace('money ', '');

/** Scheduled upkeep known only on average: money for each unit of distance, a shop doing it. */
export const AVERAGE_UPKEEP = byUnit(
  'upkeep_a_mile',
  'upkeep_a_km',
  spec('money per distance', 0, 2, 'guess', 'average scheduled upkeep'),
);

/** Repairs nobody named. */
export const REPAIRS = {
  /** A stated amount a year replaces the table. */
  statedAYear: orNone('repairs_a_year', spec('money a year', 0, 50_000, 'guess', 'repairs a year')),
  /** Multiplies the whole table, or the stated yearly amount. */
  scale: usual('repairs_factor', spec('factor', 0, 10, 'guess', 'repairs against the average'), {
    value: 1,
    unit: 'times the average',
    date: '2021',
    source: REPAIR_SOURCE,
    mark: 'table',
  }),
  /** What one such repair costs at a shop on average, and how bills spread; they come one by one, at random. */
  bill: usual(
    'usual_repair',
    spec('money', 1, 50_000, 'guess', 'what one repair nobody named costs at a shop'),
    {
      ...guess(436.448, 'our guess: one in ten below 110, as many above 850'),
      range: { low: 110, likely: 320, high: 850 },
    },
  ),
  /** Share of them, the dearest, that leave it at the roadside. */
  strands: usual(
    'strands',
    chance('share of such repairs that leave it at the roadside'),
    guessOf(0.08, 'of such repairs', 'our guess: common practice, no source'),
  ),
};

export const GUARANTEE = {
  months: usual('months', term(whole('months', 0, 180, 'quoted', 'guarantee, months')), nil('none given')),
};
export const GUARANTEE_DISTANCE = byUnit(
  'miles',
  'km',
  term(spec('distance', 0, 1_000_000, 'quoted', 'guarantee, distance')),
  nil('none given'),
);

/** How its value falls. */
export const DECLINE = {
  /** Compound decline a year. */
  perYear: usual(
    'a_year',
    bounded(WITHIN_ALL, spec('rate a year', 0, 0.9, 'guess', 'how fast its value falls')),
    {
      value: DECLINE_A_YEAR,
      unit: 'a year',
      date: '2019',
      source: 'US EPA OMEGA sample input, average depreciation',
      mark: 'table',
    },
  ),
};
export const DECLINE_PER_DISTANCE = byUnit(
  'a_mile',
  'a_km',
  spec('money per distance', 0, 5, 'guess', 'value lost by distance driven'),
  nil('none beyond the yearly decline'),
);

/** Down to where it falls: what a running one of any age brings. */
export const RUNNING_ONE = {
  downTo: follows(
    'down_to',
    money(100_000, 'guess', 'what a running one of any age brings'),
    guessOf(2000, 'dollars: what a running one of any age brings'),
  ),
};

/** What it will bring in a month to come. */
export const POINT = {
  month: needed(
    'months',
    exactly('give the month and let the amount range', whole('months', 0, 600, 'guess', 'month of a value')),
  ),
  value: needed('value', money(500_000, 'guess', 'value')),
};

export const WORTH = {
  /** The least it ever brings: scrap. */
  floor: follows('floor', money(100_000, 'guess', 'the least it ever brings'), guessOf(0.05, 'of its price')),
  /** Value multiplier of a branded title; 1 for a clean one. */
  brandFactor: usual(
    'title_factor',
    share(0.05, 1, 'guess', 'value against a clean title'),
    guessOf(1, 'of a clean title', 'a clean title'),
  ),
};

/** One way of selling, used for every later sale: its cost and own hours. */
export const SELLING = {
  cost: usual('cost', money(10_000, 'guess', 'cost of selling'), nil('our guess')),
  hours: usual('hours', spec('hours', 0, 200, 'guess', 'own hours of selling'), guess(6)),
  weeks: usual('weeks', spec('weeks', 0, 104, 'guess', 'weeks it takes to sell'), guess(3)),
};

export const FUEL = {
  economy: follows('economy', spec('economy', 0, 250, 'guess', 'energy economy')),
  price: follows('price', spec('money per energy', 0, 50, 'guess', 'price of energy')),
};

/** Stands in for what a vehicle uses, and for the pump, where neither is told. */
export const USUAL_ENERGY = {
  /** Times the table's, where it brakes into a battery too. */
  hybrid: guessOf(1.4, "times the table's"),
  pricePerGallon: guessOf(3.4, 'dollars a US gallon'),
  milesPerKWh: guessOf(3, 'miles a kWh'),
  pricePerKWh: guessOf(0.17, 'dollars a kWh'),
};
