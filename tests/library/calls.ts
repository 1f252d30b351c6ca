/** One call in order of every public function: what junk is put into, and what shows that the rest is as it should be. */
import * as library from '../../src/index.ts';
import { scenarioOf } from '../support/file.ts';

const terms = {
  principal: 1_200_000,
  notePerYear: 0.06,
  payments: 24,
  firstPaymentMonth: 2,
  delayInterest: 'charged',
} as const;
const flows = [
  { month: 0, amount: 1000 },
  { month: 12, amount: -1200 },
];
const date = (year: number, month: number, day: number) => ({ year, month, day });
const owned = { values: [9000, 7000, 5500], costs: [0, 400, 900], ratePerPeriod: 0.05 };
const belief = { a: 2, b: 3 };
const annuity = { rate: 0.01, periods: 12, payment: 90, present: -1000, future: 0, due: 'end' } as const;
const without = (sought: keyof typeof annuity) => {
  const { [sought]: _, ...rest } = annuity;
  return rest;
};
const scenario = scenarioOf();
const setting = { seed: 1, scramble: 0, from: 0, to: 4 };
const draws = [0, 1].map((scramble) => library.simulateScramble(scenario, { ...setting, scramble }));
const decision = library.decideAtAverage(scenario, '0');

type Functions = {
  [K in keyof typeof library as (typeof library)[K] extends (...args: never[]) => unknown
    ? K
    : never]: readonly unknown[];
};

export const CALLS: Functions = {
  annualPercentageRate: [
    {
      advances: [{ amount: 1000, t: 0, f: 0 }],
      payments: [{ amount: 90, t: 1, f: 0.5, count: 12 }],
      unitPeriodsPerYear: 12,
    },
  ],
  aprOfDates: [
    {
      advances: [{ amount: 1000, date: date(2026, 1, 10) }],
      payments: [
        { amount: 600, date: date(2026, 7, 10) },
        { amount: 600, date: date(2027, 1, 10) },
      ],
    },
  ],
  aprOfLoan: [
    { amountFinanced: 1000, payments: flows.map(({ month }) => ({ month: month + 1, amount: 550 })) },
  ],
  answersInSteps: [scenario, decision],
  averageCostOfOwning: [owned],
  breakEven: [(x: number) => x * x - 2, 0, 3, 50, { unit: 0.01 }],
  breakEvenOfWhole: [(n: number) => n - 3.5, [1, 2, 3, 4, 5], 1],
  breakEvenPeriod: [[-3, -1, 2]],
  centsText: [-123_405],
  chanceOfCount: [belief, 2, 1],
  chanceOfRateBelow: [belief, 0.5],
  decide: [scenario, '0', draws],
  decideAtAverage: [scenario, '0'],
  discountFactor: [library.effective(0.05), 18],
  economicLife: [owned],
  effective: [0.05],
  effectivePerYear: [library.nominal(0.06)],
  equivalentCost: [1000, 0.01, 12],
  equivalentMonthlyCost: [1000, library.effective(0.04), 60],
  evaluate: [
    scenario.inputs,
    library.EXPECTED,
    { facts: scenario.facts, rounding: 'unrounded', only: [decision.options[0]?.id] },
  ],
  firstAnswer: [scenario, '0'],
  futureValue: [without('future')],
  inUnits: [12_345],
  learn: [belief, 3, 2.5],
  leasePayment: [
    {
      startsFrom: 20_000,
      residual: 11_000,
      moneyFactor: 0.002,
      months: 36,
      dueAtSigning: 1500,
      taxOnPayment: 0.06,
    },
  ],
  loanPayment: [12_000, 0.005, 24],
  loanSchedule: [terms],
  marginalCost: [owned],
  modifiedRateOfReturn: [flows, 0.05, 0.03],
  nominal: [0.06, 12],
  nominalPerYear: [library.effective(0.05), 12],
  paybackTime: [[-3, -1, 2]],
  paymentFor: [without('payment')],
  payoffAt: [library.loanSchedule({ ...terms, principal: 1_200_000 as library.Cents }), 6],
  perPeriod: [library.effective(0.05), 12],
  periodsFor: [without('periods')],
  presentCost: [flows, library.effective(0.05)],
  presentCostOfSeries: [[1000, 50, 50], library.nominal(0.06)],
  presentValue: [without('present')],
  problemText: [
    'a.yaml',
    { line: 2, column: 3, kind: 'missing', path: 'vehicle', message: 'It is missing.', remedy: 'Add it.' },
  ],
  rateBelow: [belief, 0.9],
  rateFor: [without('rate')],
  rateOfReturn: [flows],
  realRate: [0.05, 0.02],
  replacementProgramme: [
    {
      horizon: 6,
      maxAge: 3,
      startAge: 1,
      price: 100,
      costAtAge: (age: number) => 10 + 20 * age,
      tradeIn: (age: number) => 60 / (age + 1),
      ratePerPeriod: 0.02,
    },
  ],
  simulateScramble: [scenario, setting],
  startingScenario: ['2026-11-25'],
  toCents: [12.345],
  parseScenario: ['vehicle: {}', { file: 'a.yaml', today: '2026-11-25' }],
  withTips: [scenario, library.firstAnswer(scenario, '0')],
  withChances: [scenario, decision, draws],
};

const FUNCTIONS = new Map(Object.entries(library)) as ReadonlyMap<string, unknown>;

/** Calls a public function by its name. */
export const call = (name: keyof Functions, args: readonly unknown[]): unknown =>
  (FUNCTIONS.get(name) as (...args: readonly unknown[]) => unknown)(...args);
