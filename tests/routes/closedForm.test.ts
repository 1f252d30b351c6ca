/** Two routes to one figure: the evaluation by months against present values in closed form. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Inputs, Replacement } from '../../src/engine/scenario/inputs/inputs.ts';
import * as base from '../support/household.ts';

const r = 0.06;
const H = 60;
const v = (months: number): number => (1 + r) ** (-months / 12);
/** What 1 at the end of each of n months is worth: (1 - v^n)/i. */
const annuity = (n: number): number => (1 - v(n)) / ((1 + r) ** (1 / 12) - 1);
/** A monthly 1 over whole years, re-priced by g once a year: a geometric sum of yearly annuities. */
const growingMonthly = (g: number, years: number): number => {
  const q = (1 + g) * v(12);
  return annuity(12) * (q === 1 ? years : (1 - q ** years) / (1 - q));
};

const plainHousehold = {
  ...base.household,
  moneyEarns: r,
  savings: null,
  pricesRise: { general: 0, energy: 0.03, cover: 0.05, repairs: 0.02, ownTime: 0, vehicles: 0, fees: 0 },
};

const inputs: Inputs = {
  ...base.inputs,
  household: plainHousehold,
  vehicle: { ...base.vehicle, averageRepairs: { ...base.vehicle.averageRepairs, statedAYear: 900 } },
  replacement: [
    {
      ...base.replacement,
      averageRepairs: { ...base.replacement.averageRepairs, statedAYear: 300 },
      inspectionBefore: 0,
      catchUp: 0,
    },
  ],
};

const npcOf = (of: Inputs, id: string): number => {
  const found = evaluate(of, EXPECTED, { facts: base.factsOf(of), rounding: 'unrounded', only: [id] });
  return found[0]?.netPresentCost.counted as number;
};

describe('closed forms against the months', () => {
  const energyAMonth = (9000 / 12) * (3.4 / 25);
  const homeShare = 1 - 0.5 * 0.5;
  const upkeepAMonth = (9000 / 12) * 0.1515 * homeShare;
  const running = (repairsAYear: number): number =>
    energyAMonth * growingMonthly(0.03, 5) +
    (upkeepAMonth + (repairsAYear / 12) * homeShare) * growingMonthly(0.02, 5);

  /** The weeks of a sale at the end, at the fifth year's price of insurance. */
  const insuredWhileForSale = (aYear: number): number => (aYear * 1.05 ** 4 * 3) / 52;

  /** Three weeks until a buyer pays are a month. */
  const paidLater = (price: number): number => price * v(1);

  it('keeping: work, a growing monthly cost, yearly bills ahead, a value at the end', () => {
    // Bills of months 12, 24 ... 60 at the price levels of their year, 1.05^0 to 1.05^4.
    const cover = [0, 1, 2, 3, 4].reduce((sum, y) => sum + 620 * 1.05 ** y * v(12 * (y + 1)), 0);
    // The one of month 60 is paid that day, and comes back whole.
    const atEnd = paidLater(3400 * (1 - 0.149) ** 5) - insuredWhileForSale(620) + 620 * 1.05 ** 4;
    const expected = 780 + running(900) + cover - atEnd * v(H);
    expect(npcOf(inputs, 'keep')).toBeCloseTo(expected, 6);
  });

  it('replacing on a loan: down payment, level payments, debt and value on the last day', () => {
    // Bills of months 0, 12 ... 48; month 12 still stands at today's prices, month 24 at the second year's.
    const cover = [0, 12, 24, 36, 48].reduce(
      (sum, m) => sum + 1350 * 1.05 ** Math.max(0, Math.floor((m - 1) / 12)) * v(m),
      0,
    );
    const i = 0.089 / 12;
    const payment = (15800 * i) / (1 - (1 + i) ** -66);
    const owed = (payment * (1 - (1 + i) ** -6)) / i;
    // The year paid for in month 48 is over.
    const atEnd = paidLater(16020 * (1 - 0.149) ** 5) - insuredWhileForSale(1350);
    // Sold today: the price a month later, three weeks still insured, the year's insurance just paid comes back.
    const sale = -900 * v(1) + (620 * 3) / 52 - 620;
    const expected = 2000 + sale + running(300) + cover + payment * annuity(H) + (owed - atEnd) * v(H);
    expect(npcOf(inputs, 'replace/2021-hatchback/as-it-stands/as-it-stands')).toBeCloseTo(expected, 6);
  });

  it('at the discount rate of the loan itself, borrowing costs what paying cash would', () => {
    const note = 0.072;
    const effective = (1 + note / 12) ** 12 - 1;
    const deal = inputs.replacement[0] as Replacement;
    const financed = (payment: Replacement['payment']): Inputs => ({
      ...inputs,
      household: { ...plainHousehold, moneyEarns: effective },
      replacement: [{ ...deal, payment }],
    });
    const id = 'replace/2021-hatchback/as-it-stands/as-it-stands';
    const onLoan = npcOf(
      financed({
        kind: 'loan',
        apr: note,
        months: 48,
        downPayment: 1000,
        firstPayment: 1,
        interestDuringDelay: true,
        rollInShortfall: false,
      }),
      id,
    );
    expect(onLoan).toBeCloseTo(npcOf(financed({ kind: 'cash' }), id), 6);
  });

  it('a lease at a nil money factor costs its depreciation, fees and nothing for money', () => {
    const deal = inputs.replacement[0] as Replacement;
    const leased: Inputs = {
      ...inputs,
      household: {
        ...plainHousehold,
        moneyEarns: 0,
        pricesRise: { ...plainHousehold.pricesRise, energy: 0, cover: 0, repairs: 0 },
      },
      replacement: [
        {
          ...deal,
          payment: {
            kind: 'lease',
            startsFrom: 24000,
            residual: 12000,
            moneyFactor: 0,
            months: 30,
            dueAtSigning: 1500,
            distanceAYear: 8000,
            overDistance: 0.2,
            acquisitionFee: 600,
            dispositionFee: 400,
            taxOnPayment: 0,
            afterwards: 'again',
            purchaseFee: 0,
            earlyTermination: null,
          },
        },
      ],
    };
    const oneLease = 24000 - 12000 + 600 + 400 + 1000 * 2.5 * 0.2;
    // Two leases of 30 months; each pays its yearly cover in its months 0, 12 and 24, and half a year comes back.
    const runs = energyAMonth * H + (upkeepAMonth + 25 * homeShare) * H + 1350 * (2.5 + 2.5);
    const sale = -900 + (620 * 3) / 52 - 620;
    expect(npcOf(leased, 'replace/2021-hatchback/as-it-stands/as-it-stands')).toBeCloseTo(
      2 * oneLease + runs + sale,
      6,
    );
  });
});
