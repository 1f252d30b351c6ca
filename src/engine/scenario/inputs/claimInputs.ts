/** The numbers of a claim after a collision. */
import { byUnit, follows, guess, guessOf, needed, nil, orNone, usual } from './declared.ts';
import { chance, exactly, known, money, type Spec, share, spec, term, whole } from './specs.ts';

const onPaper = (one: Spec): Spec => exactly('it stands on the estimate', one);

/** What a settlement is worked out from, beside the estimate. */
export const SETTLEMENT = {
  /** Own share of the fault. */
  fault: usual(
    'fault',
    chance('your share of the fault'),
    guessOf(0, 'of the fault', 'not given: none of it is yours'),
  ),
  /** Actual cash value before the collision, without tax: as stated, else the mean of the adjusted comparables. */
  value: follows('value', money(200_000, 'quoted', 'what the insurer says it was worth')),
  /** Damage it had before and that was not repaired: off the value. */
  damageBefore: usual('damage_before', money(100_000, 'quoted', 'damage it had before'), nil('none given')),
  /** What is bid for the wreck; null: no bid. */
  salvage: orNone('salvage', money(100_000, 'quoted', 'bid for the wreck')),
  /** As the policy has it; 0 unless the own insurer pays. */
  deductible: usual(
    'deductible',
    term(money(50_000, 'quoted', 'your share of the bill (deductible)')),
    nil('your own insurer does not pay'),
  ),
  /** The most the other driver's policy still pays; null: not known to bind. */
  otherLimit: orNone(
    'other_limit',
    term(money(10_000_000, 'quoted', "what the other driver's policy still pays")),
  ),
};

export const COMPARABLE = {
  price: needed('price', known(money(500_000, 'quoted', 'price of a comparable'))),
  odometer: needed('odometer', known(spec('distance', 0, 1_000_000, 'quoted', 'distance of a comparable'))),
  adjustment: orNone(
    'adjust',
    known(spec('money', -100_000, 100_000, 'quoted', 'adjustment of a comparable')),
  ),
};

export const PER_DISTANCE = byUnit(
  'a_mile',
  'a_km',
  exactly(
    'it is what the comparables were adjusted with',
    spec('money per distance', 0, 5, 'quoted', 'adjustment by distance'),
  ),
);

/** A line of the estimate: an amount, or labour. */
export const LINE = {
  amount: orNone('amount', onPaper(money(200_000, 'quoted', 'line of the estimate'))),
  hours: orNone('hours', onPaper(spec('hours', 0, 1_000, 'quoted', 'hours on the estimate'))),
  rate: orNone('rate', onPaper(spec('money an hour', 0, 1_000, 'quoted', 'labour rate of the estimate'))),
  /** Of the line, what is not paid because the new part is better than the worn one. */
  betterment: usual(
    'betterment',
    onPaper(money(100_000, 'quoted', 'the part they do not pay, being newer')),
    nil('none on this line'),
  ),
};

export const ESTIMATE = {
  /** Sales tax as a fraction of the taxed lines. */
  tax: usual(
    'tax',
    onPaper(share(0, 0.4, 'quoted', 'tax on the estimate')),
    guessOf(0, 'of the taxed lines', 'none on the estimate'),
  ),
  /** As it stands on the estimate, tax included. */
  total: orNone('total', onPaper(money(500_000, 'quoted', 'total of the estimate'))),
};

const NO_DAYS = nil('not given');

export const SHOP = {
  /** What the shop asks for an hour; null: the same as the estimate, so there is no gap. */
  shopHour: orNone('shop_hour', spec('money an hour', 0, 1_000, 'quoted', 'what the shop asks for an hour')),
  /** Days in the shop. */
  days: usual('days', spec('days', 0, 365, 'guess', 'days in the shop'), NO_DAYS),
};

const NONE = nil('none given');

/**
 * Damage that shows once it is opened: the chance, what it then adds before tax, and the share of that which the insurer
 * pays once it has seen it. What it does not pay is the owner's.
 */
export const SUPPLEMENT = {
  chance: needed(
    'chance',
    chance('chance of more damage once it is opened'),
    nil('not given: nothing more is found'),
  ),
  amount: needed('adds', money(100_000, 'guess', 'what more damage adds'), NONE),
  paid: usual(
    'paid',
    chance('share of more damage that the insurer pays'),
    guessOf(1, 'of it', 'common practice, no source: the insurer pays once it has seen it'),
  ),
};

export const RECOVERY = {
  /** Chance that the own insurer gets the money back from the other side. 0 unless the own insurer pays. */
  recovered: needed(
    'chance',
    chance('chance that the other side pays it back'),
    nil('not given: nothing comes back from the other side'),
  ),
};

/** Dearer insurance afterwards where a claim is made on the own policy: a year, and for how many. */
export const SURCHARGE = {
  aYear: needed(
    'a_year',
    spec('money a year', 0, 20_000, 'guess', 'dearer insurance afterwards (surcharge)'),
    nil('not given: insurance afterwards costs the same'),
  ),
  years: needed(
    'years',
    whole('years', 0, 10, 'guess', 'years of dearer insurance'),
    nil('no surcharge given'),
  ),
};

export const TOTAL_LOSS = {
  /** What enters a total loss beside the value. */
  salesTax: usual(
    'sales_tax',
    share(0, 0.4, 'quoted', 'sales tax in a total loss'),
    guessOf(0, 'of the value', 'none given'),
  ),
  /** Title of a comparable, paid where it is surrendered. */
  titleFee: usual('title_fee', known(money(5_000, 'quoted', 'title and papers of another vehicle')), NONE),
  /** Papers of a salvage vehicle, paid where it is kept. */
  transferFee: usual('transfer_fee', known(money(5_000, 'quoted', 'papers of a salvage vehicle')), NONE),
};

const NOT_PAID = nil('not given: the insurer pays none of it');
const NO_DAYS_PAID = nil('not given: the insurer pays for none');

/** Rental: what a day costs, what of it the insurer pays, and for how many days. */
export const RENTAL = {
  aDay: needed('a_day', spec('money a day', 0, 500, 'quoted', 'a day of rental')),
  paidADay: usual(
    'paid_a_day',
    term(spec('money a day', 0, 500, 'quoted', 'what the insurer pays of a rental day')),
    NOT_PAID,
  ),
  paidDays: usual(
    'paid_days',
    term(spec('days', 0, 365, 'quoted', 'rental days the insurer pays')),
    NO_DAYS_PAID,
  ),
};

/** Where it stands: so much a day, for so many days from today, of which the insurer pays the first. */
export const STORAGE = {
  aDay: needed('a_day', spec('money a day', 0, 500, 'quoted', 'a day of storage')),
  days: usual('days', spec('days', 0, 365, 'guess', 'days it stands in storage from today'), NO_DAYS),
  paidDays: usual(
    'paid_days',
    known(spec('days', 0, 365, 'quoted', 'days of storage the insurer pays')),
    NO_DAYS_PAID,
  ),
};

/** Towing it home or to a shop: what it costs, and the most the insurer pays of it. */
export const TOW = {
  costs: needed('costs', money(5_000, 'quoted', 'towing it away')),
  paid: usual('paid', term(money(5_000, 'quoted', 'what the insurer pays of the tow')), NOT_PAID),
};

/** Paid ahead and in part unused when the vehicle goes. */
export const PREPAID = {
  paid: needed('paid', known(money(50_000, 'measured', 'paid ahead'))),
  /** Months it was paid for, and how many of them are left. */
  months: needed('months', term(whole('months', 1, 240, 'measured', 'months paid for'))),
  left: needed('left', term(whole('months', 0, 240, 'measured', 'months left unused'))),
  /** What cancelling costs. */
  fee: usual('fee', term(money(5_000, 'quoted', 'fee for cancelling')), NONE),
};

export const GAP = {
  limit: orNone('limit', term(money(200_000, 'quoted', 'the most the gap cover pays'))),
  notCovered: usual('not_covered', term(money(50_000, 'quoted', 'what the gap cover leaves out')), NONE),
};

/** What a buyer pays less though it is well repaired, what is claimed for that, and the chance that it is paid. */
export const LOST_VALUE = {
  lost: needed('lost', money(100_000, 'guess', 'what a buyer pays less though it is repaired')),
  claimed: follows('claimed', money(100_000, 'quoted', 'claim for lost market value')),
  paid: usual(
    'paid',
    chance('chance that lost market value is paid'),
    nil('not given: nothing is counted on'),
  ),
};

/** A percentage of value in the rule of a place. */
export const OF_VALUE = known(share(0.01, 2, 'quoted', 'share of value'));

const extra = (max: number, words: string) => ({
  costs: needed('costs', money(max, 'quoted', words)),
});

/** Needed to have it safe again, whoever repairs it. */
export const EXTRAS = {
  alignment: { key: 'alignment', help: 'Wheel alignment.', numbers: extra(5_000, 'wheel alignment') },
  calibration: {
    key: 'sensor_calibration',
    help: 'Calibration of cameras and sensors.',
    numbers: extra(10_000, 'calibration of sensors'),
  },
  belts: {
    key: 'seat_belts',
    help: 'Seat belts that were loaded: new, never used.',
    numbers: extra(10_000, 'seat belts'),
  },
  /** Needed whichever way, another vehicle included. */
  childSeats: {
    key: 'child_seats',
    help: 'Child seats that were in it: needed whichever way.',
    numbers: extra(5_000, 'child seats'),
  },
} as const;

/** Work of the household's own plan, beside what any work costs. */
export const PLAN = {
  paint: usual('paint', money(20_000, 'quoted', 'paint'), NONE),
  /** Tools bought for it, and what they bring afterwards. */
  tools: usual('tools', money(20_000, 'quoted', 'tools bought for it'), NONE),
  toolsBring: usual('tools_bring', money(20_000, 'guess', 'what the tools bring afterwards'), NONE),
  /** What only qualified work will do, over and above: paid whoever does the rest. */
  qualified: usual('qualified_work', money(50_000, 'quoted', 'what only qualified work will do'), NONE),
  /** What stays visible: taken off any later sale, at today's prices. */
  valueLost: usual(
    'value_lost',
    money(100_000, 'guess', 'lost value that stays visible'),
    nil('not given: nothing stays visible'),
  ),
};

export const PLAN_DAYS = {
  /** Days without the vehicle. */
  days: usual('days', spec('days', 0, 730, 'guess', 'days without the vehicle'), nil('not given')),
};

/** Keeping it after a total loss, and getting it back on the road; its insurance is never a default. */
export const REBUILD = {
  inspection: usual('inspection', money(5_000, 'quoted', 'inspection of the rebuilt vehicle'), NONE),
  retitling: usual('retitling', money(5_000, 'quoted', 'new papers of the rebuilt vehicle'), NONE),
  monthsOff: usual(
    'months_off_road',
    whole('months', 0, 60, 'guess', 'months off the road'),
    guess(2, 'our guess: parts, inspection, papers'),
  ),
  /** Chance that the papers are refused: it is then worth scrap. */
  refused: usual(
    'refused',
    chance('chance that the papers are refused'),
    guess(0.1, 'our guess: one in ten; ask before you keep it'),
  ),
  /** Insurance a year once it is branded. */
  insuranceAYear: needed(
    'insurance_a_year',
    spec('money a year', 0, 30_000, 'quoted', 'yearly insurance once rebuilt'),
  ),
  /** Value against a clean title. */
  titleFactor: usual(
    'title_factor',
    share(0.05, 1, 'guess', 'value once rebuilt, against a clean title'),
    guessOf(0.7, 'of a clean title', 'common practice, no source: 20 to 40 % less'),
  ),
};
