import { describe, expect, it } from 'vitest';
import type { Cents } from '../../src/index.ts';
import * as library from '../../src/index.ts';
import { scenarioOf } from '../support/file.ts';
import { CALLS, call } from './calls.ts';

type Name = keyof typeof CALLS;

/** The call in order with some of its first argument otherwise. */
const otherwise = (name: Name, change: object): readonly unknown[] => [
  { ...(CALLS[name][0] as object), ...change },
  ...CALLS[name].slice(1),
];

const date = (year: number, month: number, day: number) => ({ amount: 600, date: { year, month, day } });
const schedule = CALLS.payoffAt[0];

/** What was answered with silence, with what is said to it now. */
const REFUSED: readonly (readonly [Name, readonly unknown[], ErrorConstructor, string])[] = [
  ['payoffAt', [schedule, 1.5], RangeError, 'payoffAt, month: a whole number from 0 is wanted, not 1.5'],
  ['payoffAt', [schedule, -1], RangeError, 'payoffAt, month: a whole number from 0 is wanted, not -1'],
  [
    'payoffAt',
    [schedule, Number.NaN],
    RangeError,
    'payoffAt, month: a whole number from 0 is wanted, not NaN',
  ],
  ['payoffAt', [schedule, '6'], TypeError, 'payoffAt, month: a whole number from 0 is wanted, not "6"'],
  [
    'loanSchedule',
    otherwise('loanSchedule', { balloon: 500_000 }),
    TypeError,
    'loanSchedule, terms: there is no "balloon" here; it takes principal, notePerYear, payments, firstPaymentMonth, delayInterest',
  ],
  [
    'loanSchedule',
    otherwise('loanSchedule', { principal: -1 }),
    RangeError,
    'loanSchedule, terms.principal: a whole number from 0 to 9000000000000000 is wanted, not -1',
  ],
  [
    'loanSchedule',
    otherwise('loanSchedule', { delayInterest: 'chargd' }),
    RangeError,
    'loanSchedule, terms.delayInterest: "charged" or "free" is wanted, not "chargd"',
  ],
  [
    'economicLife',
    otherwise('economicLife', { values: [], costs: [] }),
    RangeError,
    'economicLife, owned.values: a list of at least 2 is wanted, not of 0',
  ],
  [
    'economicLife',
    otherwise('economicLife', { costs: [0, 400] }),
    RangeError,
    'economicLife, owned: as many costs as values are wanted, from time 0',
  ],
  [
    'replacementProgramme',
    otherwise('replacementProgramme', { horizon: 2.5 }),
    RangeError,
    'replacementProgramme, given.horizon: a whole number from 1 to 240 is wanted, not 2.5',
  ],
  [
    'replacementProgramme',
    otherwise('replacementProgramme', { tradeIn: () => Number.NaN }),
    RangeError,
    'replacementProgramme, tradeIn(1): a number is wanted, not NaN',
  ],
  [
    'presentValue',
    otherwise('presentValue', { due: 'begin' }),
    RangeError,
    'presentValue, annuity.due: "start" or "end" is wanted, not "begin"',
  ],
  [
    'rateFor',
    otherwise('rateFor', { periods: 2.5 }),
    RangeError,
    'rateFor, annuity.periods: a whole number from 1 to 12000 is wanted, not 2.5',
  ],
  [
    'aprOfDates',
    otherwise('aprOfDates', { payments: [date(2026, 9, 1), date(2026, 7, 1)] }),
    RangeError,
    'aprOfDates, loan.payments: dates in rising order are wanted, each once',
  ],
  [
    'aprOfDates',
    otherwise('aprOfDates', { payments: [date(2025, 9, 1), date(2026, 7, 1)] }),
    RangeError,
    'aprOfDates, loan: payments from the first advance on are wanted, the last after it',
  ],
  [
    'aprOfDates',
    otherwise('aprOfDates', { payments: [date(2026, 2, 30)] }),
    RangeError,
    'aprOfDates, loan.payments[0].date: a date that the calendar has is wanted',
  ],
  [
    'breakEvenOfWhole',
    [(n: number) => n, [5, 1, 4]],
    RangeError,
    'breakEvenOfWhole, values: values in rising order are wanted, each once',
  ],
  [
    'breakEvenOfWhole',
    [() => Number.NaN, [1, 2]],
    RangeError,
    'breakEvenOfWhole, f(1): a number is wanted, not NaN',
  ],
  ['breakEven', [() => 1, 3, 2], RangeError, 'breakEven, low: low below high is wanted'],
  [
    'breakEven',
    [() => 1, 0, 1, 200, { units: 1 }],
    TypeError,
    'breakEven, options: there is no "units" here; it takes unit',
  ],
  ['perPeriod', [{ kind: 'efective', perYear: 0.1 }], RangeError, '"effective" or "nominal" is wanted'],
  [
    'learn',
    [{ a: 2, b: 1 }, -5, 1],
    RangeError,
    'learn, counted: a whole number from 0 to 1000000 is wanted',
  ],
  [
    'rateBelow',
    [{ a: -3, b: 1 }, 0.5],
    RangeError,
    'rateBelow, belief.a: a number above 0 to 1000000 is wanted',
  ],
  ['presentCost', [[{ month: -2, amount: 1 }], library.effective(0)], RangeError, 'flows[0].month'],
  ['presentCost', [[{ month: 1.5, amount: 1 }], library.effective(0)], RangeError, 'flows[0].month'],
  ['equivalentCost', [100, 0.01, 0], RangeError, 'periods: a whole number from 1 is wanted, not 0'],
  ['centsText', [1.5], RangeError, 'centsText, cents: a whole number'],
  ['toCents', ['5'], TypeError, 'is wanted, not "5"'],
  ['startingScenario', ['yesterday'], RangeError, 'a day of the calendar is wanted, such as 2026-11-25'],
  [
    'parseScenario',
    ['', { file: '', today: '2026-02-30' }],
    RangeError,
    'context.today: a day of the calendar',
  ],
  [
    'evaluate',
    [CALLS.evaluate[0], { kind: 'expectd' }, CALLS.evaluate[2]],
    RangeError,
    'evaluate, future.kind: "expected" or "drawn" is wanted, not "expectd"',
  ],
  [
    'evaluate',
    [CALLS.evaluate[0], library.EXPECTED, { ...(CALLS.evaluate[2] as object), rounding: 'to the dollar' }],
    RangeError,
    '"to the cent" or "unrounded" is wanted',
  ],
  [
    'evaluate',
    [CALLS.evaluate[0], library.EXPECTED, { ...(CALLS.evaluate[2] as object), only: ['keep/nothing'] }],
    RangeError,
    'evaluate, setting.only[0]: ',
  ],
  [
    'withChances',
    CALLS.withChances.map((a, i) => (i === 2 ? [(a as readonly unknown[])[1]] : a)),
    RangeError,
    'scrambles',
  ],
  [
    'simulateScramble',
    [CALLS.decide[0], { seed: 1, scramble: 16, from: 0, to: 4 }],
    RangeError,
    'from 0 to 15',
  ],
  [
    'simulateScramble',
    [CALLS.decide[0], { seed: 1, scramble: 0, from: 8, to: 4 }],
    RangeError,
    'from below to',
  ],
];

describe('what is wanted', () => {
  it.each(REFUSED.map(([name, args, kind, words]) => ({ name, args, kind, words })))(
    '$words',
    ({ name, args, kind, words }) => {
      expect(() => call(name, args)).toThrow(kind);
      expect(() => call(name, args)).toThrow(words);
    },
  );

  it('is of a whole scenario that every number in it is one', () => {
    const scenario = scenarioOf();
    const deciding = (vehicle: object) => () =>
      library.decideAtAverage(
        { ...scenario, inputs: { ...scenario.inputs, vehicle: { ...scenario.inputs.vehicle, ...vehicle } } },
        '0',
      );
    expect(deciding({ odometer: '171000' })).toThrow(
      new TypeError('decideAtAverage, scenario.inputs.vehicle.odometer: a number is wanted, not "171000"'),
    );
    expect(deciding({ parkingAMonth: Number.NaN })).toThrow(RangeError);
    const work = scenario.inputs.workNeeded.map((job) => ({ ...job, by: 'ownn' as 'own' }));
    expect(() =>
      library.decideAtAverage({ ...scenario, inputs: { ...scenario.inputs, workNeeded: work } }, '0'),
    ).toThrow(
      new RangeError(
        'decideAtAverage, scenario.inputs.workNeeded.0.by: "own" or "shop" is wanted, not "ownn"',
      ),
    );
    const household = { ...scenario.inputs.household, lookAhead: 60.5 };
    expect(() =>
      library.decideAtAverage({ ...scenario, inputs: { ...scenario.inputs, household } }, '0'),
    ).toThrow('lookAhead: a whole number from 1 to 240 is wanted, not 60.5');
  });

  it('says nothing that a terminal would obey', () => {
    const bad = () =>
      library.loanSchedule({ ...(CALLS.loanSchedule[0] as object), 'a\u001b[2J': 1 } as never);
    expect(bad).toThrow(String.raw`there is no "a\u001b[2J" here`);
  });
});

describe('what is taken as it is meant', () => {
  it('an amount is rounded as a person rounds the decimal in front of them', () => {
    for (const [amount, cents] of [
      [1.005, 101],
      [-1.005, -101],
      [1.004999, 100],
      [8.575, 858],
      [2.675, 268],
      [0.615, 62],
      [0.285, 29],
      [10.235, 1024],
      [4.0249999, 402],
      [8702.595, 870_260],
      [1_234_567.895, 123_456_790],
      [45_035_996_273.705, 4_503_599_627_371],
      [0.005, 1],
      [0.004, 0],
      [-0.004, 0],
      [1e-7, 0],
      [89_999_999_999_999, 8_999_999_999_999_900],
    ] as const)
      expect(library.toCents(amount), String(amount)).toBe(cents);
    expect(Object.is(library.toCents(-0.001), 0)).toBe(true);
  });

  it('every third decimal, up to ten million', () => {
    for (let k = 5; k < 10_000_000_000; k = Math.ceil(k * 1.001) + 7) {
      // What a person reads are the digits: the last one is cut off, and from five on rounds up.
      expect(library.toCents(k / 1000)).toBe(Math.trunc(k / 10) + (k % 10 >= 5 ? 1 : 0));
      expect(library.toCents(-k / 1000)).toBe(-library.toCents(k / 1000) + 0);
    }
  });

  it('a flow of nil changes no rate of return, wherever it stands', () => {
    const flows = [
      { month: 0, amount: 100 },
      { month: 1, amount: -110 },
    ];
    const nil = [0, 1, 2, 9].map((month) => ({ month, amount: 0 }));
    const gone = [5, 5].map((month, k) => ({ month, amount: k === 0 ? 70 : -70 }));
    for (const more of [nil, gone, [...nil, ...gone]]) {
      expect(library.rateOfReturn([...more, ...flows])).toEqual(library.rateOfReturn(flows));
      expect(library.modifiedRateOfReturn([...nil, ...flows], 0.05, 0.02)).toEqual(
        library.modifiedRateOfReturn(flows, 0.05, 0.02),
      );
    }
    expect(library.rateOfReturn(flows)).toMatchObject({ status: 'one', rate: expect.closeTo(0.1, 12) });
  });

  it('payments at period starts with nothing at the end have a rate: the one that gives them back', () => {
    const annuity = { periods: 12, payment: 90, present: -1000, future: 0, due: 'start' } as const;
    const found = library.rateFor(annuity);
    if (found.status !== 'one') throw new Error(found.status);
    const { payment: _, ...rest } = annuity;
    expect(library.paymentFor({ ...rest, rate: found.rate })).toBeCloseTo(90, 9);
  });

  it('many equally cheap programmes are counted, not all written out', () => {
    const free = library.replacementProgramme({
      horizon: 60,
      maxAge: 60,
      startAge: null,
      price: 0,
      costAtAge: () => 0,
      tradeIn: () => 0,
      ratePerPeriod: 0,
    });
    expect(free.cost).toBe(0);
    expect(free.purchases.length).toBe(1000);
    expect(free.more).toBe(true);
  });

  it('a payoff after the last payment is nil', () => {
    const paid = library.loanSchedule({
      principal: 100_000 as Cents,
      notePerYear: 0.06,
      payments: 12,
      firstPaymentMonth: 1,
      delayInterest: 'free',
    });
    expect([12, 13, 500].map((month) => library.payoffAt(paid, month))).toEqual([0, 0, 0]);
  });
});
