/** What only the vehicle that a household has is asked for besides. */
import { follows, guess, guessOf, needed, nil, orNone, usual } from './declared.ts';
import { APR } from './purchaseInputs.ts';
import { chance, money, spec, term, whole } from './specs.ts';

/** What the present vehicle brings today. */
export const SALE = {
  /** Private sale, needed work done. */
  running: needed('running', money(200_000, 'guess', 'private sale, running')),
  /** Private sale as it stands today. */
  asItStands: needed('as_it_stands', money(200_000, 'quoted', 'sale as it stands')),
  /** Dealer's offer as it stands, against a purchase; null: none was made. */
  tradeIn: orNone('trade_in', money(200_000, 'quoted', 'trade-in as it stands')),
  /** Dealer's offer with the work done. */
  tradeInMended: orNone('trade_in_mended', money(200_000, 'quoted', 'trade-in with the work done')),
  /** Private sale once it has broken down: as it stands, where it needs work today. */
  brokenDown: follows(
    'broken_down',
    money(200_000, 'guess', 'sale once it has broken down'),
    guessOf(0.3, 'of what it brings running'),
  ),
  scrap: follows(
    'scrap',
    money(100_000, 'guess', 'scrap value'),
    guessOf(0.5, 'of what it brings broken down'),
  ),
};

export const STANDING = {
  /** A day of standing about unable to move: storage. */
  storageADay: usual(
    'storage_a_day',
    spec('money a day', 0, 500, 'quoted', 'storage a day'),
    nil('not given'),
  ),
};

/** What ends a vehicle for good. */
export const END = {
  /** Chance at the first yearly inspection. */
  chanceAYear: needed('chance_a_year', chance('chance a year')),
  /** Added to it each year after. */
  risesAYear: usual(
    'rises_a_year',
    chance('rise of that chance a year'),
    nil('not given: the same every year'),
  ),
};

/** What replacing in a hurry adds to replacing in peace, once the vehicle has broken down. */
export const HURRY = {
  /** Money: a worse price, a tow, storage. */
  adds: usual(
    'adds',
    money(50_000, 'guess', 'what replacing in a hurry adds'),
    guess(300, 'our guess: a worse price, no time to look'),
  ),
  /** Days without a vehicle until another is there. */
  days: usual(
    'days',
    spec('days', 0, 365, 'guess', 'days until another is there, in a hurry'),
    guess(5, 'our guess: a working week until another is there'),
  ),
  /** Chance that the loan is refused, and what is paid more in that case. */
  refused: usual(
    'loan_refused',
    chance('chance that the loan is refused, in a hurry'),
    nil('not given: the loan is taken as granted'),
  ),
  refusedCosts: usual(
    'refused_costs',
    money(100_000, 'guess', 'what a refused loan costs'),
    nil('not given'),
  ),
};

/** A loan still running on the present vehicle. */
export const LOAN_LEFT = {
  owed: needed('owed', money(300_000, 'quoted', 'owed on the present loan')),
  /** Note rate, nominal a year, compounded monthly. */
  note: needed('apr', APR),
  monthsLeft: needed(
    'months_left',
    term(whole('months', 1, 180, 'quoted', 'months left of the present loan')),
  ),
};

/** One kind of cover for damage to the vehicle itself; its premium is part of the yearly insurance. */
export const COVER = {
  aYear: needed('a_year', spec('money a year', 0, 20_000, 'quoted', 'yearly premium')),
  deductible: needed('deductible', term(money(50_000, 'quoted', 'deductible'))),
  /** Chance of a loss a year that it would answer for. */
  chanceAYear: follows('chance_a_year', chance('chance of a loss a year')),
  /** Mean of the losses that are not total. */
  meanLoss: follows(
    'mean_loss',
    money(200_000, 'guess', 'mean loss that is not total'),
    guessOf(0.4, 'of its value'),
  ),
  /** Share of the losses that are total. */
  totalShare: usual(
    'total_share',
    chance('share of losses that are total'),
    guessOf(0.25, 'of losses', 'our guess: one in four, as the vehicle is old'),
  ),
};

/** The usual chance of a loss a year, by kind of cover. */
export const LOSSES = {
  collision: guessOf(0.05, 'a year', 'our guess: one in twenty years'),
  comprehensive: guessOf(0.03, 'a year', 'our guess: one in thirty years'),
};
