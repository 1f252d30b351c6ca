/** What another vehicle comes with: its price, its loan or lease. */
import { byUnit, follows, guess, guessOf, needed, nil, orNone, usual } from './declared.ts';
import { chosen, exactly, money, open, share, spec, term, whole } from './specs.ts';
import { significant } from './units.ts';

/** One of the two, unless it is leased. */
export const PRICE = {
  withAllFees: orNone('price_with_all_fees', money(500_000, 'quoted', 'price with all fees')),
  price: orNone('price', money(500_000, 'quoted', 'price')),
};

export const SALES_TAX = {
  salesTax: usual(
    'sales_tax',
    share(0, 0.4, 'quoted', 'sales tax'),
    guessOf(0, 'of the price', 'in the price with all fees, or none given'),
  ),
};

/** A fee, or something sold with it. */
export const FEE = { amount: needed('amount', money(50_000, 'quoted', 'fee')) };

export const OFFER = {
  rebate: usual('rebate', money(50_000, 'quoted', 'rebate'), nil('none given')),
  /** The maker's low rate offered instead of the rebate, for loans; null where there is no such choice. */
  lowRateInstead: orNone(
    'low_rate_instead',
    spec('rate a year', 0, 0.6, 'quoted', 'low rate instead of the rebate'),
  ),
  /** Market value the day after it is bought, privately. */
  worthDayAfter: follows(
    'worth_day_after',
    money(500_000, 'guess', 'worth the day after'),
    guessOf(0.9, 'of its price'),
  ),
  /** Asked for beside a loan, without meaning elsewhere. */
  downPayment: orNone('down_payment', chosen(money(500_000, 'quoted', 'down payment'))),
};

/** What one cost when new above its price today, for each year of its age; our guess, money's own worth is in it. */
export const DEARER_WHEN_NEW = 0.08;

/** What a used one cost when new, where nobody says. */
export const usualWhenNew = (price: number, age: number): number =>
  significant(price * (1 + DEARER_WHEN_NEW) ** age, 3);

/** What is left the day after of a price with tax and all fees in it: nobody pays for those again. */
export const usualWorthDayAfter = (priceWithFees: number, fees: number): number =>
  significant((priceWithFees * OFFER.worthDayAfter.or.value) / (1 + fees), 3);

export const FIRST_YEAR = {
  inspectionBefore: usual(
    'inspection_before',
    money(2_000, 'quoted', 'inspection before buying'),
    guess(150),
  ),
  /** Tyres, brakes, fluids, belt in the first year of a used one; posted at month 6. */
  catchUp: usual(
    'catch_up',
    money(20_000, 'guess', 'first-year catch-up'),
    guess(600, 'our guess: tyres, brakes, fluids in the first year of a used one'),
  ),
};
/** The same of a new one. */
export const NONE_FOR_NEW = guessOf(0, 'dollars', 'none for a new one');

export const ONE_OFF = {
  month: needed(
    'month',
    exactly(
      'give the month and let the amount range',
      whole('months', 0, 240, 'guess', 'month of the one-off'),
    ),
  ),
  amount: needed('amount', open(spec('money', -100_000, 100_000, 'guess', 'one-off'))),
};

export const APR = spec('rate a year', 0, 0.6, 'quoted', "the loan's rate");

export const LOAN = {
  /** Note rate, nominal a year, compounded monthly. */
  apr: needed('apr', APR),
  months: needed('months', term(whole('months', 1, 180, 'quoted', 'months of the loan'))),
  /** Month of the first payment: 1 unless the start is delayed. */
  firstPayment: usual(
    'first_payment',
    term(whole('months', 1, 24, 'quoted', 'month of the first payment')),
    guessOf(1, 'month', 'the usual'),
  ),
};

export const LEASE = {
  /** Capitalised cost: the price the lease starts from. */
  startsFrom: needed('starts_from', spec('money', 500, 500_000, 'quoted', 'price the lease starts from')),
  residual: needed('residual', money(500_000, 'quoted', 'residual value of the lease')),
  moneyFactor: needed('money_factor', spec('factor', 0, 0.02, 'quoted', 'lease interest (money factor)')),
  months: needed('months', term(whole('months', 1, 120, 'quoted', 'months of the lease'))),
  dueAtSigning: usual('due_at_signing', money(100_000, 'quoted', 'due at signing'), nil('not given')),
};

/** In the household's unit. */
export const LEASE_DISTANCE = byUnit(
  'miles_a_year',
  'km_a_year',
  term(spec('distance a year', 0, 60_000, 'quoted', 'distance the lease allows')),
);
export const LEASE_OVER = byUnit(
  'over_a_mile',
  'over_a_km',
  spec('money per distance', 0, 5, 'quoted', 'price of distance over the allowance'),
);

export const LEASE_FEES = {
  acquisitionFee: usual('acquisition_fee', money(10_000, 'quoted', 'acquisition fee'), nil('not given')),
  dispositionFee: usual('disposition_fee', money(10_000, 'quoted', 'disposition fee'), nil('not given')),
  taxOnPayment: usual(
    'tax_on_payment',
    share(0, 0.4, 'quoted', 'tax on the lease payment'),
    guessOf(0, 'of the payment', 'not given'),
  ),
};

export const LEASE_END = {
  purchaseFee: usual('purchase_fee', money(10_000, 'quoted', 'purchase fee at the end'), nil('not given')),
  /** Charge for ending it before its term; null: what is left is prorated. */
  earlyTermination: orNone('early_termination', money(100_000, 'quoted', 'ending the lease early')),
};
