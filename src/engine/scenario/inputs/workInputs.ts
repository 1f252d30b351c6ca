/** Work: needed today, scheduled, or after a failure. */
import { follows, guessOf, needed, nil, orNone, usual } from './declared.ts';
import { chance, exactly, known, money, spec, whole } from './specs.ts';

/** What doing a job once costs either way. */
export const WORK_COST = {
  parts: usual('parts', money(50_000, 'quoted', 'parts'), nil('not given')),
  hours: usual('hours', spec('hours', 0, 500, 'guess', 'own hours'), nil('not given')),
  /** Null: no shop price was given, so parts plus hours at a shop's hour. */
  shopPrice: orNone('shop_price', money(100_000, 'quoted', "a shop's price")),
};

export const CAN_WAIT = exactly(
  'it is a day to plan by',
  whole('months', 0, 240, 'guess', 'months it can wait'),
);
export const SPENT = known(money(500_000, 'measured', 'already spent'));

/** The chance that the work does not cure the fault. */
export const NOT_CURED = {
  chance: needed('chance', chance('chance that it does not cure it'), nil('not given')),
};

/** The chance of finding more once opened. */
export const MORE_FOUND = {
  chance: needed('chance', chance('chance of finding more'), nil('not given')),
};

export const PATCH = {
  months: needed('lasts', whole('months', 1, 240, 'guess', 'months the patch holds')),
};

/** What leaving a job undone costs a month, and takes off the sale price at the end. */
export const LEFT = {
  aMonth: usual(
    'a_month',
    spec('money a month', 0, 5_000, 'guess', 'cost of leaving it, a month'),
    nil('not given'),
  ),
  valueLost: usual(
    'value_lost',
    money(100_000, 'guess', 'taken off the sale price if left'),
    nil('not given'),
  ),
};

const DAYS_WITHOUT = usual(
  'days_without',
  spec('days', 0, 365, 'guess', 'days without the vehicle'),
  nil('not given'),
);

export const JOB = {
  /** Share of what a shop would charge that a buyer pays for, at the end; at most 1. */
  buyerPays: usual(
    'buyer_pays',
    chance('share of the work a buyer pays for'),
    guessOf(0, 'of the cost', 'our guess: a buyer pays for none of it'),
  ),
  /** Days the vehicle stands (waiting for parts, in the shop) and cannot be used. */
  daysWithout: DAYS_WITHOUT,
};

const SCHEDULE = 'it is a schedule';

export const UPKEEP_ITEM = {
  everyDistance: orNone('every', exactly(SCHEDULE, spec('distance', 100, 500_000, 'guess', 'due every'))),
  everyMonths: orNone('or_months', exactly(SCHEDULE, whole('months', 1, 240, 'guess', 'due every, months'))),
};

/** Since it was last done; an item whose history is unknown is due in month 1. */
export const SINCE = {
  sinceDistance: follows(
    'last_done',
    known(spec('distance', 0, 1_000_000, 'measured', 'odometer when last done')),
  ),
  sinceMonths: follows(
    'last_done_months_ago',
    known(whole('months', 0, 1_200, 'measured', 'months since last done')),
  ),
};

/** A life, and what has run of it, by what it is counted in. */
export const LIFE = {
  distance: spec('distance', 100, 2_000_000, 'guess', 'typical life'),
  months: spec('months', 1, 1_200, 'guess', 'typical life, months'),
};
export const RUN = {
  distance: spec('distance', 0, 2_000_000, 'measured', 'already run'),
  months: spec('months', 0, 1_200, 'measured', 'already run, months'),
};
export const ANOTHER = spec('months', 0.1, 1_200, 'guess', 'how much longer it lasts');

export const LIFE_LAW = {
  /** Weibull shape. */
  shape: usual(
    'shape',
    spec('factor', 0.3, 12, 'guess', 'how sharply it wears out'),
    guessOf(3, 'Weibull shape', 'our guess: it wears out'),
  ),
};

/** A part that fails. */
export const FAILURE = {
  tow: usual('tow', money(5_000, 'guess', 'tow'), nil('not given')),
  daysWithout: DAYS_WITHOUT,
  /** The share of the average repairs that it takes out at most: in each month no more than it is expected to bring. */
  shareOfAverage: usual(
    'share_of_average',
    exactly('it only says what the average no longer holds', chance('its share of average repairs')),
    guessOf(0.1, 'of average repairs'),
  ),
};
