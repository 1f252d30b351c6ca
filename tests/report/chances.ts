import type {
  Chances,
  Estimate,
  LumpyWay,
  VarianceShare,
  WayChances,
} from '../../src/engine/analysis/chances.ts';
import type { ComponentLimit, WalkAway } from '../../src/engine/analysis/repairLimitView.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import type { Quantity } from '../../src/engine/scenario/inputs/scenario.ts';
import { decision, quantity } from './fixture.ts';

/**
 * What drawn futures might say of the household in fixture.ts, written down by hand. D follows a logistic law of mean
 * 3,980 and scale 2,590, so that its points, its bars and the chance of more than nil agree with each other.
 */
const MEAN = 3980;
const SCALE = 2590;
const H = 60;
const months = Array.from({ length: H + 1 }, (_, m) => m);

const e = (value: number, error: number): Estimate => ({ value, error });
const ranged = (key: string, low: number, likely: number, high: number): Quantity => ({
  ...quantity(key),
  range: { low, likely, high, min: 0, max: null },
});

const below = (x: number): number => 1 / (1 + Math.exp(-(x - MEAN) / SCALE));
const point = (p: number): number => MEAN + SCALE * Math.log(p / (1 - p));

const bars = Array.from({ length: 28 }, (_, i) => {
  const from = -10_000 + i * 1000;
  return { from, to: from + 1000, share: below(from + 1000) - below(from) };
});

/** Regret is the mean's distance from the cheapest mean, and what being wrong with that one costs. */
const KEEP_MEAN = 20_390;
const PERFECT = 690;
const way = (
  id: string,
  label: string,
  mean: number,
  spread: readonly [number, number, number],
  cheapest: Estimate,
): WayChances => ({
  id,
  label,
  cost: {
    mean: e(mean, 41),
    good: e(mean + spread[0], 55),
    middle: e(mean + spread[1], 44),
    bad: e(mean + spread[2], 83),
  },
  regret: e(PERFECT + mean - KEEP_MEAN, 19),
  cheapest,
});

const ways: readonly WayChances[] = [
  way('keep', 'Mend it and keep it', KEEP_MEAN, [-4010, -310, 4560], e(0.561, 0.004)),
  way('keep/patched', 'Patch it and keep it', 20_870, [-4080, -330, 4790], e(0.259, 0.004)),
  way(
    'replace/2021-hatchback/mended/private',
    'Mend it, then sell it privately, and get the 2021 hatchback',
    23_640,
    [-1640, -90, 1830],
    e(0.104, 0.003),
  ),
  way(
    'later/24/2021-hatchback',
    'Keep it for 24 months, then the 2021 hatchback',
    23_720,
    [-2390, -180, 2760],
    e(0.0052, 0.0006),
  ),
  way(
    'replace/2021-hatchback/as-it-stands/as-it-stands',
    'Sell it as it stands, and get the 2021 hatchback',
    24_370,
    [-1620, -80, 1790],
    e(0.0708, 0.003),
  ),
  way(
    'replace/2021-hatchback/as-it-stands/trade-in',
    'Trade it in, and get the 2021 hatchback',
    24_634,
    [-1620, -80, 1790],
    e(0, 0),
  ),
];

const share = (
  what: string,
  kind: VarianceShare['kind'],
  first: number,
  total: number,
  error = 0.012,
): VarianceShare => ({
  what,
  kind,
  first: e(first, error),
  total: e(total, error),
});

/** A fan that widens as the square root of time, around a steady outlay and one on the day. */
const fan = (onTheDay: number, aMonth: number, spread: number): LumpyWay['fan'] =>
  months.map((month) => {
    const middle = onTheDay + aMonth * month;
    const wide = spread * Math.sqrt(month);
    return { month, good: middle - wide, middle, bad: middle + wide * 1.35 };
  });

/** The chance that the fund has run dry by each month: it rises towards `end` and never falls. */
const dry = (end: number, pace: number): LumpyWay['fund']['dry'] =>
  months.map((month) => ({ month, chance: end * (1 - Math.exp(-month / pace)) }));

const lumpy: readonly LumpyWay[] = [
  {
    id: 'keep',
    label: 'Mend it and keep it',
    regularAMonth: 243,
    worstMonth: { middle: 1290, bad: 2740 },
    worstYear: { middle: 5980, bad: 8420 },
    fan: fan(1380, 318, 410),
    fund: { start: 1120, aMonth: 150, dry: dry(0.31, 14), needed: e(2790, 85) },
    stopWithinAYear: e(0.287, 0.004),
    towsAYear: e(0.34, 0.006),
    daysWithoutAYear: e(6.3, 0.2),
    worstBill: { bad: 1840, payments: 8.1, overThreePayments: e(0.462, 0.005) },
    withoutIncome: { months: 3, mustPay: 730, dry: e(0.176, 0.004) },
  },
  {
    id: 'replace/2021-hatchback/as-it-stands/as-it-stands',
    label: 'Sell it as it stands, and get the 2021 hatchback',
    regularAMonth: 446,
    worstMonth: { middle: 1710, bad: 1980 },
    worstYear: { middle: 6930, bad: 7610 },
    fan: fan(2520, 451, 130),
    fund: { start: -20, aMonth: 0, dry: dry(0.78, 5), needed: e(1460, 40) },
    stopWithinAYear: e(0.041, 0.002),
    towsAYear: e(0.05, 0.002),
    daysWithoutAYear: e(0.9, 0.04),
    worstBill: { bad: 520, payments: 2.3, overThreePayments: e(0.058, 0.002) },
    withoutIncome: { months: 3, mustPay: 1340, dry: e(0.83, 0.004) },
  },
  {
    id: 'right-to-walk',
    label: 'Keep it, and walk away when a bill is too big',
    regularAMonth: 281,
    worstMonth: { middle: 1340, bad: 2310 },
    worstYear: { middle: 6120, bad: 7980 },
    fan: fan(1380, 331, 330),
    fund: { start: 1120, aMonth: 128, dry: dry(0.26, 15), needed: e(2410, 75) },
    stopWithinAYear: e(0.281, 0.004),
    towsAYear: e(0.29, 0.005),
    daysWithoutAYear: e(5.2, 0.2),
    worstBill: { bad: 1490, payments: 6.5, overThreePayments: e(0.381, 0.005) },
    withoutIncome: { months: 3, mustPay: 870, dry: e(0.191, 0.004) },
  },
];

export const chances: Chances = {
  seed: 20261125,
  futures: 16_384,
  scrambles: 16,
  ranged: [
    ranged('vehicle.averageRepairs.statedAYear', 1100, 1800, 2900),
    ranged('workNeeded.0.hours', 14, 21, 32),
    ranged('replacement.0.cover.aYear', 820, 1060, 1400),
    ranged('household.distanceAYear', 7500, 9000, 10_500),
  ],
  exactGuesses: 6,
  pair: {
    keep: 'keep',
    replace: 'replace/2021-hatchback/as-it-stands/as-it-stands',
    keepCheaper: e(1 - below(0), 0.004),
    mean: e(MEAN, 45),
    low: e(point(0.1), 90),
    middle: e(point(0.5), 52),
    high: e(point(0.9), 88),
    atAverageInputs: (decision.difference?.counted ?? 0) / 100,
    gapMatters: true,
    likelier: 'keep',
    bars,
  },
  ways,
  shares: [
    share('luck with the gearbox, 2009 wagon', 'luck', 0.338, 0.402),
    share('repairs nobody named, 2009 wagon', 'number', 0.213, 0.236),
    share('luck with repairs nobody named, 2009 wagon', 'luck', 0.126, 0.148),
    share('yearly cost of insurance, 2021 hatchback', 'number', 0.094, 0.097),
    share('luck with the timing chain, 2009 wagon', 'luck', 0.061, 0.083),
    share('head gasket, own hours', 'number', 0.037, 0.038),
    share('distance driven a year', 'number', 0.021, 0.034),
    share('luck with repairs nobody named, 2021 hatchback', 'luck', 0.014, 0.015),
    share('luck with the alternator, 2009 wagon', 'luck', 0.009, 0.011),
    share('luck with the wheel bearings, 2009 wagon', 'luck', 0.006, 0.008),
    share('luck with the starter, 2009 wagon', 'luck', -0.002, 0.003),
  ],
  failures: [
    {
      component: 'gearbox',
      vehicle: '2009 wagon',
      expected: 0.4127,
      drawn: e(0.4136, 0.0021),
      apart: e(0.0009, 0.0021),
      agree: true,
    },
    {
      component: 'timing chain',
      vehicle: '2009 wagon',
      expected: 0.2283,
      drawn: e(0.2279, 0.0017),
      apart: e(-0.0004, 0.0017),
      agree: true,
    },
    {
      component: 'alternator',
      vehicle: '2009 wagon',
      expected: 0.6841,
      drawn: e(0.6852, 0.0026),
      apart: e(0.0011, 0.0026),
      agree: true,
    },
    {
      component: 'wheel bearings',
      vehicle: '2009 wagon',
      expected: 0.9377,
      drawn: e(0.9361, 0.0034),
      apart: e(-0.0016, 0.0034),
      agree: true,
    },
  ],
  lumpy,
  perfect: e(PERFECT, 19),
  worthKnowing: [
    { what: 'how long the gearbox will last, 2009 wagon', kind: 'part', worth: e(212, 14), measurable: true },
    { what: 'repairs nobody named, 2009 wagon', kind: 'number', worth: e(88, 11), measurable: true },
    {
      what: 'how long the timing chain will last, 2009 wagon',
      kind: 'part',
      worth: e(41, 9),
      measurable: true,
    },
    {
      what: 'yearly cost of insurance, 2021 hatchback',
      kind: 'number',
      worth: e(17, 10),
      measurable: false,
    },
    { what: 'distance driven a year', kind: 'number', worth: e(3, 8), measurable: false },
  ],
  looks: [
    {
      what: 'a gearbox shop looks at the oil and the magnet',
      component: 'gearbox',
      within: 18,
      costs: 140,
      sees: 0.8,
      clears: 0.9,
      event: e(0.214, 0.003),
      worth: e(96, 12),
      perfect: e(178, 13),
      pays: 'no',
    },
    {
      what: 'compression test',
      component: 'timing chain',
      within: 12,
      costs: 30,
      sees: 0.7,
      clears: 0.85,
      event: e(0.083, 0.002),
      worth: e(26, 8),
      perfect: e(39, 9),
      pays: 'cannot tell',
    },
  ],
  rule: {
    today: false,
    way: way(
      'right-to-walk',
      'Keep it, and walk away when a bill is too big',
      19_960,
      [-3600, -190, 3410],
      e(0.603, 0.004),
    ),
    against: [
      { id: 'keep', label: 'Mend it and keep it', saves: e(430, 22) },
      {
        id: 'replace/2021-hatchback/as-it-stands/as-it-stands',
        label: 'Sell it as it stands, and get the 2021 hatchback',
        saves: e(4410, 46),
      },
      { id: 'fixed', label: 'Replace after 24 months whatever happens', saves: e(3760, 40) },
    ],
    walkedBy: [
      { month: 12, chance: e(0.093, 0.002) },
      { month: 24, chance: e(0.178, 0.003) },
      { month: 60, chance: e(0.402, 0.004) },
    ],
  },
};

/** A limit that falls as the vehicle ages; looking twice as far it is worth more to be rid of repairs to come. */
const limit = (
  component: string,
  position: number | null,
  today: number,
  amonth: number,
  twice: number,
  bill: number,
  badBill: number | null,
  unsafe = false,
): ComponentLimit => ({
  component,
  position,
  byMonth: Array.from({ length: 25 }, (_, month) => ({
    month,
    limit: Math.max(0, today - amonth * month),
    lookingTwice: Math.max(0, (today - amonth * month) * twice),
  })),
  hangsOnHorizon: Math.abs(1 - twice) > 0.2,
  usualBill: bill,
  badBill,
  daysCost: position === null ? 0 : 80,
  unsafe,
  atHome: null,
});

export const walkAway: WalkAway = {
  replacement: '2021 hatchback',
  likeOurs: null,
  bestMonth: 60,
  letGoToday: false,
  horizon: H,
  components: [
    limit('any repair nobody named', null, 2210, 31, 0.91, 640, null),
    limit('gearbox', 0, 3140, 44, 0.72, 2650, 3400),
    limit('timing chain', 1, 2480, 36, 0.88, 1150, 1600),
    limit('alternator', 2, 2190, 30, 0.93, 420, null),
    limit('brake lines', 3, 2230, 30, 0.94, 380, null, true),
  ],
};

/** The household of fixture.ts with its futures drawn and its repair limit known. */
export const withChances: Decision = { ...decision, chances, walkAway };
