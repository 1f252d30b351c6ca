import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

const costs = (inputs: Inputs): Map<string, number> =>
  new Map(
    evaluate(inputs, EXPECTED, { facts: factsOf(inputs), rounding: 'to the cent' }).map((one) => [
      one.plan.id,
      one.netPresentCost.counted,
    ]),
  );

const reversed = <T>(list: readonly T[]): T[] => [...list].reverse();

describe('law 6: order changes no figure', () => {
  it('of jobs, components, upkeep items, fees and replacements', () => {
    fc.assert(
      fc.property(anyInputs, (inputs) => {
        const other: Inputs = {
          ...inputs,
          vehicle: {
            ...inputs.vehicle,
            components: reversed(inputs.vehicle.components),
            upkeep: reversed(inputs.vehicle.upkeep),
          },
          workNeeded: reversed(inputs.workNeeded),
          replacement: reversed(inputs.replacement).map((deal) => ({ ...deal, fees: reversed(deal.fees) })),
        };
        const before = costs(inputs);
        const after = costs(other);
        expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
        for (const [id, cost] of before) expect(after.get(id)).toBeCloseTo(cost, 6);
      }),
      { numRuns: 80 },
    );
  });
});
