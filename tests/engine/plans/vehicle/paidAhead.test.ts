/** Yearly bills are paid ahead: what is unearned is owned at the end, and comes back when the vehicle goes. */
import { describe, expect, it } from 'vitest';
import { unearnedOf } from '../../../../src/engine/cashflow/contracts/recurring.ts';
import { priceLevels } from '../../../../src/engine/cashflow/levels.ts';
import { waysOf } from '../../../../src/engine/evaluation/options.ts';
import { presentEconomicLife } from '../../../../src/engine/evaluation/replacementTiming.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED } from '../../../../src/engine/plans/vehicle/context.ts';
import { laterPlan } from '../../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import type { Inputs, PresentVehicle, Replacement } from '../../../../src/engine/scenario/inputs/inputs.ts';
import { scenarioOf } from '../../../support/file.ts';
import * as base from '../../../support/household.ts';

const of = (
  vehicle: Partial<PresentVehicle>,
  replacement: Partial<Replacement> = {},
  lookAhead = 30,
): Inputs => ({
  ...base.inputs,
  household: { ...base.household, lookAhead, savings: null, moneyEarns: 0.05 },
  vehicle: { ...base.vehicle, ...vehicle },
  replacement: [{ ...base.replacement, ...replacement }],
});
const ctxOf = (inputs: Inputs) => contextOf(inputs, base.factsOf(inputs), EXPECTED, 'to the cent');
const way = (inputs: Inputs, id: string) => {
  const ctx = ctxOf(inputs);
  const found = waysOf(ctx).open.find((one) => one.id === id);
  if (!found) throw new Error(`no way ${id}`);
  return resultOf(found.build(ctx), ctx);
};
type Result = ReturnType<typeof way>;
const unused = ({ ledger }: Result, bill: string) =>
  ledger
    .filter(({ what }) => what.startsWith(`${bill}, unused`))
    .map(({ month, category, amount }) => ({ month, category, cents: amount.counted }));
const toCome = ({ ledger }: Result): number =>
  ledger.filter(({ path }) => path === 'to come').reduce((sum, row) => sum - row.amount.cash, 0);
const TRADED = 'replace/2021-hatchback/as-it-stands/trade-in';

describe('what is unearned of a yearly bill', () => {
  const levels = priceLevels(0.1, 60);

  it('is so many twelfths of what was paid for it, at the price of the month it was paid in', () => {
    // Due in 5 months: five twelfths of a bill in force, at today's price.
    expect(unearnedOf(600, levels, 5, 0)).toBe(250);
    expect(unearnedOf(600, levels, 5, 4)).toBe(50);
    // Paid that day, at first year's prices; a month before the next; then the second bill, of month 17.
    expect(unearnedOf(600, levels, 5, 5)).toBe(600);
    expect(unearnedOf(600, levels, 5, 16)).toBe(50);
    expect(unearnedOf(600, levels, 5, 17)).toBeCloseTo(660, 9);
    expect(unearnedOf(600, levels, 5, 23)).toBeCloseTo(330, 9);
  });

  it('comes back of the present vehicle on the day of the decision: n months to go, n twelfths', () => {
    for (const [nextDue, cents] of [
      [12, -62_000],
      [5, -25_833],
      [1, -5167],
    ] as const) {
      const gone = way(of({ cover: { aYear: 620, nextDue } }), TRADED);
      expect(unused(gone, 'insurance')).toEqual([{ month: 0, category: 'insurance', cents }]);
    }
    // Due that very day: it is not paid any more, and nothing of the last one is left.
    expect(unused(way(of({ cover: { aYear: 620, nextDue: 0 } }), TRADED), 'insurance')).toEqual([]);
  });

  it('is owned at the end, of either vehicle', () => {
    // Kept: paid in months 5, 17 and 29, eleven twelfths of the last at the third year's 1.04^2. Bought: of month 24,
    // six twelfths at the second year's.
    const inputs = of({ cover: { aYear: 620, nextDue: 5 } });
    expect(toCome(way(inputs, 'keep'))).toBe(Math.round(((620 * 1.04 ** 2 * 11) / 12) * 100));
    expect(toCome(way(inputs, TRADED))).toBe(Math.round(1350 * 1.04 * 0.5 * 100));
    // In month 24 the year bought in month 12 is over, and no other is begun.
    expect(toCome(way(of({}, {}, 24), TRADED))).toBe(0);
    // A kept one's bill of the last day is paid, and all of it owned.
    expect(toCome(way(of({}, {}, 24), 'keep'))).toBe(Math.round(620 * 1.04 * 100));
  });

  it('tax too; registration only where it is refunded; an inspection never', () => {
    const bills = { aYear: 120, nextDue: 3 };
    const fees = { registration: bills, inspection: bills, tax: { aYear: 60, nextDue: 3 } };
    const plain = way(of(fees), TRADED);
    expect(unused(plain, 'yearly tax')).toEqual([
      { month: 0, category: 'registration, tax, inspection', cents: -1500 },
    ]);
    expect(unused(plain, 'registration')).toEqual([]);
    expect(unused(plain, 'inspection')).toEqual([]);
    const back = { ...fees, registrationRefunded: true };
    expect(unused(way(of(back), TRADED), 'registration').map(({ cents }) => cents)).toEqual([-3000]);
    // Paid in months 3, 15 and 27: nine twelfths of the last, at the third year's price.
    const more = toCome(way(of(back), 'keep')) - toCome(way(of(fees), 'keep'));
    expect(more / 100).toBeCloseTo((120 * 1.02 ** 2 * 9) / 12, 1);
  });

  it('comes back at a later sale, and is not owned a second time', () => {
    const inputs = of({ cover: { aYear: 600, nextDue: 12 } });
    const ctx = ctxOf(inputs);
    const later = resultOf(laterPlan(0, 15, ctx), ctx);
    // Paid in month 12 at today's price: nine twelfths.
    expect(unused(later, 'insurance')).toEqual([{ month: 15, category: 'insurance', cents: -45_000 }]);
    // The one bought in month 15 pays then, at the second year's 1.04, and in month 27, at the third year's.
    expect(toCome(later)).toBe(Math.round(1350 * 1.04 ** 2 * 0.75 * 100));
  });

  it('stays in the cost of stopping at any month: no step where a bill falls due', () => {
    const { cumulative } = way(of({}, {}, 60), TRADED);
    const steps = cumulative.slice(13).map((cost, i) => cost - (cumulative[i + 12] as number));
    expect(Math.max(...steps)).toBeLessThan(600);
    expect(Math.min(...steps)).toBeGreaterThan(0);
  });

  it('counts in the average cost of owning, at the start and at the end', () => {
    const curve = (nextDue: number): readonly number[] =>
      presentEconomicLife(
        contextOf(
          of({ cover: { aYear: 620, nextDue } }, {}, 24),
          base.factsOf(base.inputs),
          EXPECTED,
          'unrounded',
        ),
      ).curve.map(({ averageCost }) => averageCost);
    const v = 1.05 ** (-1 / 12);
    const annuity = (n: number): number => (1 / v - 1) / (1 - v ** n);
    // Due in 12 months: a bill's worth owned at the start, one paid and owned at month 12. Due in 5: five twelfths at
    // the start, a bill in month 5, five twelfths left at month 12. The rest is alike.
    const [yearly, sooner] = [curve(12)[0] as number, curve(5)[0] as number];
    const first = 620 + 620 * v ** 12 - 620 * v ** 12;
    const second = (620 * 5) / 12 + 620 * v ** 5 - ((620 * 5) / 12) * v ** 12;
    expect(yearly - sooner).toBeCloseTo((first - second) * annuity(12), 8);
  });

  it('registration_refunded is read from the file, of either vehicle, and is no unless said', () => {
    const { inputs } = scenarioOf((file) => {
      file.vehicle.registration_refunded = 'yes';
    });
    expect(inputs.vehicle.registrationRefunded).toBe(true);
    expect(inputs.replacement[0]?.registrationRefunded).toBe(false);
  });
});
