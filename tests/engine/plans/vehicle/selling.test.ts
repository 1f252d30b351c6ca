/** A private sale takes weeks: until its buyer pays, its money is not there. */
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../../../src/engine/evaluation/project.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED } from '../../../../src/engine/plans/vehicle/context.ts';
import { laterPlan } from '../../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import { monthsToPay } from '../../../../src/engine/plans/vehicle/selling.ts';
import type {
  Household,
  Inputs,
  PresentVehicle,
  Replacement,
} from '../../../../src/engine/scenario/inputs/inputs.ts';
import * as base from '../../../support/household.ts';

const of = (
  weeks: number,
  more: {
    readonly household?: Partial<Household>;
    readonly vehicle?: Partial<PresentVehicle>;
    readonly replacement?: Partial<Replacement>;
  } = {},
): Inputs => ({
  ...base.inputs,
  household: { ...base.household, savings: null, ...more.household },
  vehicle: { ...base.vehicle, selling: { cost: 100, hours: 0, weeks }, ...more.vehicle },
  replacement: [{ ...base.replacement, ...more.replacement }],
});
const ctxOf = (inputs: Inputs) => contextOf(inputs, base.factsOf(inputs), EXPECTED, 'to the cent');
const SOLD = 'replace/2021-hatchback/as-it-stands/as-it-stands';
const TRADED = 'replace/2021-hatchback/as-it-stands/trade-in';
const way = (inputs: Inputs, id = SOLD) => {
  const ctx = ctxOf(inputs);
  const found = waysOf(ctx).open.find((one) => one.id === id);
  if (!found) throw new Error(`no way ${id}`);
  return resultOf(found.build(ctx), ctx);
};
const rows = ({ ledger }: ReturnType<typeof way>, of: string) =>
  ledger.filter(({ what }) => what.startsWith(of)).map(({ month, amount }) => [month, amount.cash]);

describe('a private sale', () => {
  it('pays at once under two weeks, else after its weeks in whole months', () => {
    const months = [0, 1.9, 2, 3, 4.35, 4.4, 8.7, 9, 104].map((weeks) =>
      monthsToPay({ selling: { cost: 0, hours: 0, weeks } }),
    );
    expect(months).toEqual([0, 0, 1, 1, 1, 2, 2, 3, 24]);
  });

  it('begins today and pays at today’s price, its costs and those weeks’ bills paid today', () => {
    const vehicle = { parkingAMonth: 26, tax: { aYear: 104, nextDue: 12 } };
    // 100, and six weeks of 620, 104 and 12 x 26 a year.
    const takes = Math.round((100 + (6 / 52) * (620 + 104 + 312)) * 100);
    expect(rows(way(of(6, { vehicle })), 'what selling it takes')).toEqual([[0, takes]]);
    expect(rows(way(of(6, { vehicle })), 'sold:')).toEqual([[2, -90_000]]);
    expect(rows(way(of(0, { vehicle })), 'sold:')).toEqual([[0, 10_000 - 90_000]]);
  });

  it('trade-in and scrap pay at once, however long a private sale takes', () => {
    expect(rows(way(of(9), TRADED), 'sold:')).toEqual([[0, -60_000]]);
    expect(rows(way(of(9), TRADED.replace('trade-in', 'scrap')), 'sold:')).toEqual([[0, -45_000]]);
  });

  it('of what is held to the end pays as much later, and never less than scrap', () => {
    const end = (weeks: number, floor = 0): number =>
      way(of(weeks, { vehicle: { floor } }), 'keep').valueAtEnd / 100;
    const price = 3400 * 0.851 ** 5;
    const costs = 100 * 1.025 ** 5 + ((620 * 1.04 ** 4) / 52) * 9;
    expect(end(9)).toBeCloseTo(price * 1.04 ** (-3 / 12) - costs, 2);
    expect(end(9, 1400)).toBe(1400);
  });

  it('not paid when the look ends is owned then', () => {
    const inputs = of(9);
    const ctx = ctxOf(inputs);
    const [sold, kept] = [resultOf(laterPlan(0, 58, ctx), ctx), 3400 * 0.851 ** (58 / 12)];
    expect(rows(sold, 'sold:')).toEqual([]);
    const owned = sold.ledger
      .filter(({ path }) => path === 'to come')
      .map(({ amount }) => -amount.cash / 100);
    // Begun in month 58, paid in month 61; and ten twelfths of the year of insurance paid in month 58.
    expect(owned[0]).toBeCloseTo(kept * 1.04 ** (-1 / 12) + (1350 * 1.04 ** 4 * 10) / 12, 1);
  });

  it('leaves the present loan running till then, and pays it off out of its price', () => {
    const loan = { owed: 2000, note: 0.12, monthsLeft: 20 };
    const sold = way(of(6, { vehicle: { loan } }));
    const payment = (2000 * 0.01) / (1 - 1.01 ** -20);
    expect(rows(sold, 'present loan').map(([month]) => month)).toEqual([1, 2, 2]);
    const [one, two, off] = rows(sold, 'present loan').map(([, cents]) => (cents as number) / 100);
    expect(one).toBeCloseTo(payment, 2);
    expect(two).toBeCloseTo(payment, 2);
    expect(off).toBeCloseTo(2000 * 1.01 ** 2 - payment * 2.01, 1);
    // Traded in, it is paid off that day.
    expect(rows(way(of(6, { vehicle: { loan } }), TRADED), 'present loan')).toEqual([[0, 200_000]]);
  });

  it('that leaves the loan short rolls in what it will still owe when the buyer pays', () => {
    const loan = { owed: 2000, note: 0.12, monthsLeft: 20 };
    const payment = { ...(base.replacement.payment as { kind: 'loan' }), rollInShortfall: true };
    const sold = way(of(6, { vehicle: { loan }, replacement: { payment } as Partial<Replacement> }));
    const instalment = (2000 * 0.01) / (1 - 1.01 ** -20);
    const short = 2000 * 1.01 ** 2 - instalment * 2.01 - 900;
    expect(rows(sold, 'borrowed')[0]?.[1]).toBeCloseTo(-100 * (15_800 + short), -0.5);
  });
});

describe('money that is not there yet', () => {
  const onCard = (inputs: Inputs) => ({
    bridge: [
      ...rows(way(inputs), 'on the card, until the sale pays'),
      ...rows(way(inputs), 'card paid back from the sale'),
    ],
    twoYears: rows(way(inputs), 'on the card, for what'),
  });

  it('is borrowed till the buyer pays, as far as his price covers it, the rest over two years', () => {
    // The day takes 2,000 down, 1,350 and 150, 100 and 71.54 for six weeks, less 620 of unused insurance: 3,051.54.
    const day = 2000 + 1350 + 150 + 100 + (620 * 6) / 52 - 620;
    const few = onCard(of(6, { household: { savings: 2800, cardRate: 0.24 } }));
    const short = Math.round((day - 2800) * 100);
    expect(few.bridge).toEqual([
      [0, -short],
      [2, Math.round((day - 2800) * 1.02 ** 2 * 100)],
    ]);
    expect(few.twoYears).toEqual([]);
    const none = onCard(of(6, { household: { savings: 1000, cardRate: 0.24 } }));
    // 900 repays 900 / 1.02^2 of it.
    expect(none.bridge).toEqual([
      [0, -Math.round((900 / 1.02 ** 2) * 100)],
      [2, 90_000],
    ]);
    expect(none.twoYears[0]).toEqual([0, -Math.round((day - 1000 - 900 / 1.02 ** 2) * 100)]);
  });

  it('is not among the cash of the day, nor in savings the day after or at their lowest', () => {
    const household = { savings: 4000 };
    const [later, atOnce] = [way(of(6, { household })), way(of(1, { household }))];
    const day = 2000 + 1350 + 150 + 100 - 620;
    expect(later.cashOnTheDay).toBe(Math.round((day + (620 * 6) / 52) * 100));
    expect(atOnce.cashOnTheDay).toBe(Math.round((day + 620 / 52 - 900) * 100));
    expect(later.savingsLowest).toBe(later.savingsAfter);
  });

  it('savings at their lowest count what is paid once in the first three months, and nothing that recurs', () => {
    const household = { savings: 4000 };
    const oneOffs = [
      { name: 'tyres', month: 2, amount: 700 },
      { name: 'a trailer hitch', month: 4, amount: 900 },
    ];
    const sold = way(of(6, { household, replacement: { oneOffs } }));
    // The price comes in month 2, when the tyres go out: 900 against 700 and a little.
    expect(sold.savingsLowest).toBe(sold.savingsAfter);
    const dear = oneOffs.map((one) => ({ ...one, amount: 2 * one.amount }));
    const lower = way(of(6, { household, replacement: { oneOffs: dear } }));
    expect(lower.savingsAfter - lower.savingsLowest).toBe(Math.round((1400 * 1.025 ** (2 / 12) - 900) * 100));
    const due = { cover: { aYear: 620, nextDue: 2 } };
    const kept = way(of(6, { household, vehicle: due }), 'keep');
    expect(kept.savingsLowest).toBe(kept.savingsAfter);
  });

  it('at a later change is borrowed alike', () => {
    const inputs = of(6, { household: { savings: 0, spareEachMonth: 0, cardRate: 0.24 } });
    const ctx = ctxOf(inputs);
    const later = resultOf(laterPlan(0, 6, ctx), ctx);
    expect(rows(later, 'on the card, until the sale pays').map(([month]) => month)).toEqual([6]);
    const [month, back] = rows(later, 'card paid back from the sale')[0] as [number, number];
    expect(month).toBe(8);
    expect(back / 100).toBeCloseTo(3400 * 0.851 ** 0.5, 2);
  });

  it('costs a month of interest at the card’s rate, and no more than that', () => {
    const at = (weeks: number, cardRate: number): number => {
      const inputs = of(weeks, { household: { savings: 2800, cardRate } });
      const ctx = contextOf(inputs, base.factsOf(inputs), EXPECTED, 'unrounded');
      const found = waysOf(ctx).open.find(({ id }) => id === SOLD);
      return found ? presentCostOf(found.build(ctx), ctx).counted : Number.NaN;
    };
    const short = 2000 + 1350 + 150 + 100 + (620 * 3) / 52 - 620 - 2800;
    expect(at(3, 0.24) - at(3, 0)).toBeCloseTo(short * 0.02 * 1.04 ** (-1 / 12), 6);
  });
});
