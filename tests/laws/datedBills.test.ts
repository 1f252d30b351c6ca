/** Bills that change on dates: nothing hangs on when they are paid, and a change to the same figure is none. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unearnedOf } from '../../src/engine/cashflow/contracts/recurring.ts';
import {
  inForce,
  type Step,
  settledMidway,
  yearlyStepped,
} from '../../src/engine/cashflow/contracts/stepped.ts';
import { priceLevels } from '../../src/engine/cashflow/levels.ts';
import type { Line } from '../../src/engine/cashflow/posting.ts';
import { monthlySink } from '../../src/engine/cashflow/sinks.ts';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { resultOf } from '../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { BillChange, Inputs, RunningCosts } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

const line: Line = { category: 'insurance', what: 'insurance', path: 'vehicle', reason: 'yearly' };
const LOOK = 60;

const steps: fc.Arbitrary<readonly Step[]> = fc
  .array(fc.record({ from: fc.integer({ min: 1, max: 70 }), amount: fc.integer({ min: 0, max: 2400 }) }), {
    maxLength: 4,
  })
  .map((all) => all.toSorted((a, b) => a.from - b.from));

describe('a bill paid ahead', () => {
  it('costs each month its twelfth at the figure of that month, whenever it is due', () => {
    const aYear = fc.integer({ min: 0, max: 2400 });
    const due = fc.integer({ min: 0, max: 12 });
    const levels = priceLevels(0, LOOK);
    fc.assert(
      fc.property(aYear, steps, due, (first, changes, firstDue) => {
        const bill = { aYear: first, steps: changes, levels, ahead: true };
        const sink = monthlySink(LOOK);
        yearlyStepped(() => line, bill, firstDue, LOOK)(sink);
        settledMidway(() => line, bill, firstDue, LOOK)(sink);
        const left = (month: number): number => unearnedOf(first, levels, firstDue, month, changes);
        for (let month = 1; month <= LOOK; month++) {
          const cost = (sink.flows.cash[month] as number) + left(month - 1) - left(month);
          expect(cost, `month ${month}`).toBeCloseTo(inForce(first, changes, month) / 12, 8);
        }
      }),
    );
  });
});

/** Changes that say again what a vehicle's bills are, some of them, at some months. */
const saidAgain = (vehicle: RunningCosts, months: readonly number[]): readonly BillChange[] =>
  months
    .toSorted((a, b) => a - b)
    .map((from) => ({
      from,
      why: 'a new contract',
      coverEnds: [],
      cover: from % 4 === 0 ? null : vehicle.cover.aYear,
      registration: from % 3 === 0 ? null : vehicle.registration.aYear,
      inspection: vehicle.inspection.aYear,
      tax: from % 5 === 0 ? null : vehicle.tax.aYear,
      parkingAMonth: vehicle.parkingAMonth,
    }));

const changed = (inputs: Inputs, months: readonly number[]): Inputs => ({
  ...inputs,
  vehicle: { ...inputs.vehicle, changes: saidAgain(inputs.vehicle, months) },
  replacement: inputs.replacement.map((deal) => ({ ...deal, changes: saidAgain(deal, months) })),
});

/** What each way posts, to the cent, whatever it is called and wherever it stands in the file. */
const postedBy = (inputs: Inputs): readonly string[] => {
  const ctx = contextOf(inputs, factsOf(inputs), EXPECTED, 'to the cent');
  return waysOf(ctx).open.flatMap((way) => {
    const { netPresentCost, ledger } = resultOf(way.build(ctx), ctx);
    const rows = ledger.map(({ month, what, amount, present }) =>
      JSON.stringify([month, what, amount, present]),
    );
    return [`${way.id} ${netPresentCost.counted}`, ...rows.toSorted()];
  });
};

describe('a change to the same figure', () => {
  it('changes nothing, to the cent, in any household', () => {
    const months = fc.array(fc.integer({ min: 1, max: 130 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(anyInputs, months, (inputs, when) => {
        expect(postedBy(changed(inputs, when))).toEqual(postedBy(inputs));
      }),
      { numRuns: 40 },
    );
  });
});
