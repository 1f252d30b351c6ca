import type { Mark } from './scenario.ts';
import { DECLINE_A_YEAR, REPAIR_PRICE_INDEX, REPAIR_SOURCE, TABLE_PRICE_YEAR } from './tables.ts';

/**
 * Every default, in one place. Money is in US dollars and distance in miles; both are carried to the household's own
 * units. Never here: insurance, the all-in price, the loan's rate, what it brings as it stands, whether it may wait.
 */
export interface Default {
  readonly value: number;
  /** 10, 50 and 90 % points of a law above nil, whose mean `value` is. */
  readonly range?: { readonly low: number; readonly likely: number; readonly high: number };
  /** The unit as it stands here. */
  readonly unit: string;
  /** When it was set down. */
  readonly date: string;
  readonly source: string;
  readonly mark: Mark;
}

const SET = '2026-11';
const guess = (value: number, unit: string, why = 'our guess'): Default => ({
  value,
  unit,
  date: SET,
  source: why,
  mark: 'guess',
});
const choice = (value: number, unit: string, why: string): Default => ({
  ...guess(value, unit, why),
  mark: 'choice',
});
const nil = (unit: string, why: string): Default => guess(0, unit, why);
/** Where one vehicle has it and another not, complete/leftOutBills.ts says what that does. */
const LEFT_OUT = 'not given for either vehicle: left out on both sides';

export const DEFAULTS = {
  household: {
    lookAhead: choice(60, 'months', 'our choice: five years'),
    moneyEarns: guess(0.04, 'a year'),
    priceOfOwnHour: nil('dollars an hour', 'own time not priced; shown as hours'),
    dayWithout: guess(35, 'dollars a day', 'our guess: two short rides'),
    cardRate: guess(0.22, 'a year'),
    spareEachMonth: nil('dollars a month', 'not given'),
    general: guess(0.025, 'a year'),
    ownShare: guess(0.5, 'of the cost'),
    partsShare: guess(0.5, 'of the bill'),
    shopHour: guess(120, 'dollars an hour'),
    tablePriceRatio: {
      value: 1.5,
      unit: `times the prices of ${TABLE_PRICE_YEAR}`,
      date: '2025-07',
      source: `BLS index of vehicle maintenance and repair: ${REPAIR_PRICE_INDEX.of2025July} in 2025-07 (from a mirror) against about ${REPAIR_PRICE_INDEX.of2019} in ${TABLE_PRICE_YEAR} (from memory)`,
      mark: 'table',
    },
  },
  running: {
    decline: {
      value: DECLINE_A_YEAR,
      unit: 'a year',
      date: '2019',
      source: 'US EPA OMEGA sample input, average depreciation',
      mark: 'table',
    },
    declinePerDistance: nil('dollars a mile', 'none beyond the yearly decline'),
    registration: nil('dollars a year', LEFT_OUT),
    inspection: nil('dollars a year', LEFT_OUT),
    tax: nil('dollars a year', LEFT_OUT),
    parking: nil('dollars a month', LEFT_OUT),
    due: guess(12, 'months', 'not given: a year from now'),
    repairsFactor: {
      value: 1,
      unit: 'times the average',
      date: '2021',
      source: REPAIR_SOURCE,
      mark: 'table',
    },
    usualRepair: {
      ...guess(436.448, 'dollars', 'our guess: one in ten below 110, as many above 850'),
      range: { low: 110, likely: 320, high: 850 },
    },
    strands: guess(0.08, 'of such repairs', 'our guess: common practice, no source'),
    guaranteeMonths: nil('months', 'none given'),
    guaranteeDistance: nil('miles', 'none given'),
    brandFactor: guess(1, 'of a clean title', 'a clean title'),
    sellingCost: nil('dollars', 'our guess'),
    sellingHours: guess(6, 'hours'),
    sellingWeeks: guess(3, 'weeks'),
    milesPerGallon: guess(25, 'miles a US gallon'),
    pricePerGallon: guess(3.4, 'dollars a US gallon'),
    milesPerKWh: guess(3, 'miles a kWh'),
    pricePerKWh: guess(0.17, 'dollars a kWh'),
    floorOfPrice: guess(0.05, 'of its price'),
  },
  vehicle: {
    scrapOfAsItStands: guess(0.5, 'of what it brings as it stands'),
    storage: nil('dollars a day', 'not given'),
    risesAYear: nil('a year', 'not given: the same every year'),
    hurryAdds: guess(300, 'dollars', 'our guess: a worse price, no time to look'),
    hurryDays: guess(5, 'days', 'our guess: a working week until another is there'),
    refused: nil('chance', 'not given: the loan is taken as granted'),
    refusedCosts: nil('dollars', 'not given'),
  },
  work: {
    parts: nil('dollars', 'not given'),
    hours: nil('hours', 'not given'),
    chanceNotCured: nil('chance', 'not given'),
    chanceMoreFound: nil('chance', 'not given'),
    leftAMonth: nil('dollars a month', 'not given'),
    valueLost: nil('dollars', 'not given'),
    buyerPays: nil('of the cost', 'our guess: a buyer pays for none of it'),
    daysWithout: nil('days', 'not given'),
    shape: guess(3, 'Weibull shape', 'our guess: it wears out'),
    tow: nil('dollars', 'not given'),
    shareOfAverage: guess(0.1, 'of average repairs'),
  },
  purchase: {
    salesTax: nil('of the price', 'in the price with all fees, or none given'),
    rebate: nil('dollars', 'none given'),
    worthDayAfter: guess(0.9, 'of its price'),
    firstPayment: guess(1, 'month', 'the usual'),
    inspectionBefore: guess(150, 'dollars'),
    catchUp: guess(600, 'dollars', 'our guess: tyres, brakes, fluids in the first year of a used one'),
    newOne: nil('dollars', 'none for a new one'),
  },
  claim: {
    noShare: nil('dollars', 'your own insurer does not pay'),
    fault: nil('of the fault', 'not given: none of it is yours'),
    damageBefore: nil('dollars', 'none given'),
    betterment: nil('dollars', 'none on this line'),
    estimateTax: nil('of the taxed lines', 'none on the estimate'),
    supplementChance: nil('chance', 'not given: nothing more is found'),
    supplementPaid: guess(1, 'of it', 'common practice, no source: the insurer pays once it has seen it'),
    daysInShop: nil('days', 'not given'),
    recovered: nil('chance', 'not given: nothing comes back from the other side'),
    surcharge: nil('dollars a year', 'not given: insurance afterwards costs the same'),
    surchargeYears: nil('years', 'no surcharge given'),
    salesTax: nil('of the value', 'none given'),
    fee: nil('dollars', 'none given'),
    extras: nil('dollars', 'none given'),
    daysStored: nil('days', 'not given'),
    notPaid: nil('dollars', 'not given: the insurer pays none of it'),
    noDaysPaid: nil('days', 'not given: the insurer pays for none'),
    lostPaid: nil('chance', 'not given: nothing is counted on'),
    monthsOff: guess(2, 'months', 'our guess: parts, inspection, papers'),
    refused: guess(0.1, 'chance', 'our guess: one in ten; ask before you keep it'),
    titleFactor: guess(0.7, 'of a clean title', 'common practice, no source: 20 to 40 % less'),
    valueLost: nil('dollars', 'not given: nothing stays visible'),
  },
  cover: {
    collision: guess(0.05, 'a year', 'our guess: one in twenty years'),
    comprehensive: guess(0.03, 'a year', 'our guess: one in thirty years'),
    totalShare: guess(0.25, 'of losses', 'our guess: one in four, as the vehicle is old'),
    meanLossOfValue: guess(0.4, 'of its value'),
  },
  chance: {
    seed: choice(1, 'seed', 'our choice'),
    futures: choice(16_384, 'futures', 'our choice: 16 times 1,024'),
    mayRunDry: choice(0.05, 'chance', 'our choice: one in twenty'),
    monthsWithoutIncome: choice(3, 'months', 'our choice'),
  },
  lease: {
    dueAtSigning: nil('dollars', 'not given'),
    acquisitionFee: nil('dollars', 'not given'),
    dispositionFee: nil('dollars', 'not given'),
    taxOnPayment: nil('of the payment', 'not given'),
    purchaseFee: nil('dollars', 'not given'),
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Default>>>>;
