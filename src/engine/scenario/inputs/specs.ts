import { LONGEST_HORIZON } from '../../quantity/month.ts';
import type { Mark, Unit } from './scenario.ts';

/**
 * Every number a scenario can hold: what it counts, its range (what the reader may write, and what the solver scans),
 * whose number it usually is when it stands there bare, and what it is called. Money ranges are in US dollars, distance
 * ranges in miles; both are carried to the household's own units.
 */
export interface Spec {
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  readonly integer?: true;
  readonly mark: Mark;
  /** Why it must be one number and no range, to go on from "one number is needed: "; without it a range is welcome. */
  readonly exact?: string;
  /** What a range of it keeps clear of: nature's bounds, not the reader's. Nil unless told; null where there is none. */
  readonly bounds?: Bounds;
  /** What counts as a fifth of it at nil or below, in the unit of `min`; by its unit unless told. */
  readonly step?: number;
  /** In a household's words, lower case: "yearly cost of insurance". */
  readonly words: string;
}

export interface Bounds {
  readonly min: number | null;
  readonly max: number | null;
}

/** A share of a whole, or a chance. */
const WITHIN_ALL: Bounds = { min: 0, max: 1 };
/** What may as well fall as rise. */
const OPEN: Bounds = { min: null, max: null };

const CHOICE = 'it is yours to choose';
export const TERM = 'it is a term of a contract';
export const KNOWN = 'it can be looked up';

export const spec = (unit: Unit, min: number, max: number, mark: Mark, words: string): Spec => ({
  unit,
  min,
  max,
  mark,
  words,
});
export const whole = (unit: Unit, min: number, max: number, mark: Mark, words: string): Spec => ({
  ...spec(unit, min, max, mark, words),
  integer: true,
});
/** A number that cannot be a range, and why. */
export const exactly = <S extends Spec>(exact: string, one: S): S => ({ ...one, exact });
const bounded = <S extends Spec>(bounds: Bounds, one: S): S => ({ ...one, bounds });
/** A share of a whole, or a chance: between nil and one. */
export const share = (min: number, max: number, mark: Mark, words: string): Spec =>
  bounded(WITHIN_ALL, spec('share', min, max, mark, words));

export const HOUSEHOLD = {
  distanceAYear: spec('distance a year', 1, 60_000, 'guess', 'distance driven a year'),
  lookAhead: exactly(CHOICE, whole('months', 1, LONGEST_HORIZON, 'choice', 'how far ahead we look')),
  moneyEarns: spec('rate a year', 0, 0.5, 'guess', 'what the money would earn elsewhere'),
  priceOfOwnHour: spec('money an hour', 0, 500, 'guess', 'price of one own hour'),
  dayWithout: spec('money a day', 0, 500, 'guess', 'a day without a vehicle'),
  cardRate: spec('rate a year', 0, 0.6, 'guess', 'rate of the card that pays what savings do not'),
  savings: spec('money', 0, 200_000, 'measured', 'savings for this'),
  spareEachMonth: spec('money a month', 0, 20_000, 'guess', 'spare each month'),
  pricesRise: bounded(OPEN, spec('rate a year', -0.1, 0.3, 'guess', 'how prices rise')),
  ownShare: share(0, 1, 'guess', 'share of later repairs done at home'),
  partsShare: share(0, 1, 'guess', "parts as a share of a shop's bill"),
  shopHour: spec('money an hour', 0, 500, 'guess', "a shop's price of one hour"),
  tablePriceRatio: spec('factor', 0.1, 10, 'guess', 'what carries the tables of upkeep and repairs to today'),
  fuelPrice: spec('money per energy', 0, 50, 'guess', 'price of a gallon or litre, for every vehicle'),
  powerPrice: spec('money per energy', 0, 50, 'guess', 'price of a kWh, for every vehicle'),
} as const satisfies Record<string, Spec>;

export const RUNNING = {
  year: exactly(KNOWN, whole('calendar year', 1900, 2200, 'measured', 'model year')),
  odometer: exactly(KNOWN, spec('distance', 0, 1_000_000, 'measured', 'odometer')),
  priceWhenNew: spec('money', 500, 500_000, 'quoted', 'price when new'),
  insurance: spec('money a year', 0, 30_000, 'quoted', 'yearly cost of insurance'),
  registration: spec('money a year', 0, 10_000, 'quoted', 'yearly registration'),
  inspection: spec('money a year', 0, 5_000, 'quoted', 'yearly inspection'),
  tax: spec('money a year', 0, 20_000, 'quoted', 'yearly vehicle tax'),
  due: exactly(KNOWN, whole('months', 0, 12, 'measured', 'months until due')),
  parking: spec('money a month', 0, 5_000, 'quoted', 'parking a month'),
  averageUpkeep: spec('money per distance', 0, 2, 'guess', 'average scheduled upkeep'),
  repairsFactor: spec('factor', 0, 10, 'guess', 'repairs against the average'),
  perDollar: exactly(KNOWN, spec('factor', 0.000_001, 1_000_000, 'quoted', 'currency units per US dollar')),
  usualRepair: spec('money', 1, 50_000, 'guess', 'what one repair nobody named costs at a shop'),
  strands: share(0, 1, 'guess', 'share of such repairs that leave it at the roadside'),
  repairsAYear: spec('money a year', 0, 50_000, 'guess', 'repairs a year'),
  guaranteeMonths: exactly(TERM, whole('months', 0, 180, 'quoted', 'guarantee, months')),
  guaranteeDistance: exactly(TERM, spec('distance', 0, 1_000_000, 'quoted', 'guarantee, distance')),
  declineAYear: bounded(WITHIN_ALL, spec('rate a year', 0, 0.9, 'guess', 'how fast its value falls')),
  declinePerDistance: spec('money per distance', 0, 5, 'guess', 'value lost by distance driven'),
  pointMonth: exactly(
    'give the month and let the amount range',
    whole('months', 0, 600, 'guess', 'month of a value'),
  ),
  pointValue: spec('money', 0, 500_000, 'guess', 'value'),
  floor: spec('money', 0, 100_000, 'guess', 'the least it ever brings'),
  brandFactor: share(0.05, 1, 'guess', 'value against a clean title'),
  sellingCost: spec('money', 0, 10_000, 'guess', 'cost of selling'),
  sellingHours: spec('hours', 0, 200, 'guess', 'own hours of selling'),
  sellingWeeks: spec('weeks', 0, 104, 'guess', 'weeks it takes to sell'),
  economy: spec('economy', 0, 250, 'guess', 'energy economy'),
  energyPrice: spec('money per energy', 0, 50, 'guess', 'price of energy'),
} as const satisfies Record<string, Spec>;

export const SALE = {
  running: spec('money', 0, 200_000, 'guess', 'private sale, running'),
  asItStands: spec('money', 0, 200_000, 'quoted', 'sale as it stands'),
  tradeIn: spec('money', 0, 200_000, 'quoted', 'trade-in as it stands'),
  tradeInMended: spec('money', 0, 200_000, 'quoted', 'trade-in with the work done'),
  scrap: spec('money', 0, 100_000, 'guess', 'scrap value'),
  storage: spec('money a day', 0, 500, 'quoted', 'storage a day'),
  owed: spec('money', 0, 300_000, 'quoted', 'owed on the present loan'),
} as const satisfies Record<string, Spec>;

export const WORK = {
  parts: spec('money', 0, 50_000, 'quoted', 'parts'),
  hours: spec('hours', 0, 500, 'guess', 'own hours'),
  shopPrice: spec('money', 0, 100_000, 'quoted', "a shop's price"),
  canWait: exactly('it is a day to plan by', whole('months', 0, 240, 'guess', 'months it can wait')),
  chance: share(0, 1, 'guess', 'chance'),
  lasts: whole('months', 1, 240, 'guess', 'months the patch holds'),
  leftAMonth: spec('money a month', 0, 5_000, 'guess', 'cost of leaving it, a month'),
  valueLost: spec('money', 0, 100_000, 'guess', 'taken off the sale price if left'),
  buyerPays: share(0, 1, 'guess', 'share of the work a buyer pays for'),
  daysWithout: spec('days', 0, 365, 'guess', 'days without the vehicle'),
  spent: exactly(KNOWN, spec('money', 0, 500_000, 'measured', 'already spent')),
  everyDistance: exactly('it is a schedule', spec('distance', 100, 500_000, 'guess', 'due every')),
  everyMonths: exactly('it is a schedule', whole('months', 1, 240, 'guess', 'due every, months')),
  lastDone: exactly(KNOWN, spec('distance', 0, 1_000_000, 'measured', 'odometer when last done')),
  sinceMonths: exactly(KNOWN, whole('months', 0, 1_200, 'measured', 'months since last done')),
  lifeDistance: spec('distance', 100, 2_000_000, 'guess', 'typical life'),
  lifeMonths: spec('months', 1, 1_200, 'guess', 'typical life, months'),
  anotherMonths: spec('months', 0.1, 1_200, 'guess', 'how much longer it lasts'),
  shape: spec('factor', 0.3, 12, 'guess', 'how sharply it wears out'),
  runDistance: spec('distance', 0, 2_000_000, 'measured', 'already run'),
  runMonths: spec('months', 0, 1_200, 'measured', 'already run, months'),
  tow: spec('money', 0, 5_000, 'guess', 'tow'),
  shareOfAverage: exactly(
    'it only says what the average no longer holds',
    share(0, 1, 'guess', 'its share of average repairs'),
  ),
} as const satisfies Record<string, Spec>;

export const PURCHASE = {
  price: spec('money', 0, 500_000, 'quoted', 'price'),
  worthDayAfter: spec('money', 0, 500_000, 'guess', 'worth the day after'),
  salesTax: share(0, 0.4, 'quoted', 'sales tax'),
  rebate: spec('money', 0, 50_000, 'quoted', 'rebate'),
  fee: spec('money', 0, 50_000, 'quoted', 'fee'),
  apr: spec('rate a year', 0, 0.6, 'quoted', "the loan's rate"),
  months: exactly(TERM, whole('months', 1, 180, 'quoted', 'months of the loan')),
  monthsLeft: exactly(TERM, whole('months', 1, 180, 'quoted', 'months left of the present loan')),
  downPayment: exactly(CHOICE, spec('money', 0, 500_000, 'quoted', 'down payment')),
  firstPayment: exactly(TERM, whole('months', 1, 24, 'quoted', 'month of the first payment')),
  lowRate: spec('rate a year', 0, 0.6, 'quoted', 'low rate instead of the rebate'),
  inspectionBefore: spec('money', 0, 2_000, 'quoted', 'inspection before buying'),
  catchUp: spec('money', 0, 20_000, 'guess', 'first-year catch-up'),
  oneOff: bounded(OPEN, spec('money', -100_000, 100_000, 'guess', 'one-off')),
  oneOffMonth: exactly(
    'give the month and let the amount range',
    whole('months', 0, 240, 'guess', 'month of the one-off'),
  ),
} as const satisfies Record<string, Spec>;

export const LEASE = {
  startsFrom: spec('money', 500, 500_000, 'quoted', 'price the lease starts from'),
  residual: spec('money', 0, 500_000, 'quoted', 'residual value of the lease'),
  moneyFactor: spec('factor', 0, 0.02, 'quoted', 'lease interest (money factor)'),
  months: exactly(TERM, whole('months', 1, 120, 'quoted', 'months of the lease')),
  dueAtSigning: spec('money', 0, 100_000, 'quoted', 'due at signing'),
  distanceAYear: exactly(TERM, spec('distance a year', 0, 60_000, 'quoted', 'distance the lease allows')),
  overDistance: spec('money per distance', 0, 5, 'quoted', 'price of distance over the allowance'),
  acquisitionFee: spec('money', 0, 10_000, 'quoted', 'acquisition fee'),
  dispositionFee: spec('money', 0, 10_000, 'quoted', 'disposition fee'),
  taxOnPayment: share(0, 0.4, 'quoted', 'tax on the lease payment'),
  purchaseFee: spec('money', 0, 10_000, 'quoted', 'purchase fee at the end'),
  earlyTermination: spec('money', 0, 100_000, 'quoted', 'ending the lease early'),
} as const satisfies Record<string, Spec>;

/** What ends a vehicle for good, and what replacing it in a hurry adds. */
export const END = {
  chanceAYear: share(0, 1, 'guess', 'chance a year'),
  risesAYear: share(0, 1, 'guess', 'rise of that chance a year'),
  adds: spec('money', 0, 50_000, 'guess', 'what replacing in a hurry adds'),
  days: spec('days', 0, 365, 'guess', 'days until another is there, in a hurry'),
  refused: share(0, 1, 'guess', 'chance that the loan is refused, in a hurry'),
  refusedCosts: spec('money', 0, 100_000, 'guess', 'what a refused loan costs'),
} as const satisfies Record<string, Spec>;

/** How the future is drawn and what is asked of it: choices, none of them a number of the model. */
export const CHANCE = {
  seed: exactly(CHOICE, whole('factor', 0, 4_294_967_295, 'choice', 'seed of the drawn futures')),
  futures: exactly(CHOICE, whole('factor', 0, 1_048_576, 'choice', 'futures to draw')),
  mayRunDry: exactly(CHOICE, share(0.001, 0.5, 'choice', 'chance that the fund may run dry')),
  setAside: exactly(CHOICE, spec('money a month', 0, 20_000, 'choice', 'set aside each month for repairs')),
  monthsWithoutIncome: exactly(CHOICE, whole('months', 0, 60, 'choice', 'months without income')),
  rank: exactly(
    'it says how strongly two ranges go together',
    bounded(OPEN, spec('factor', -1, 1, 'guess', 'rank correlation')),
  ),
  lookCosts: exactly(KNOWN, spec('money', 0, 10_000, 'quoted', 'what the look costs')),
  lookWithin: exactly(CHOICE, whole('months', 1, 240, 'choice', 'months the look speaks of')),
  lookSees: exactly(
    'say how often it is right',
    share(0.05, 1, 'guess', 'how often it sees what is about to fail'),
  ),
  lookClears: exactly(
    'say how often it is right',
    share(0.05, 1, 'guess', 'how often it clears what will hold'),
  ),
} as const satisfies Record<string, Spec>;

export const WITHOUT = {
  aDay: spec('money a day', 0, 500, 'guess', 'a day of doing without'),
  daysAMonth: bounded({ min: 0, max: 31 }, spec('days', 0, 31, 'guess', 'days a month that need a ride')),
} as const satisfies Record<string, Spec>;
