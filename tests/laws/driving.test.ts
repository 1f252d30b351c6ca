import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { laterTreatments } from '../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

/** However long a job may wait, how far it may be driven meanwhile is another matter. */
const drivenAnyhow: fc.Arbitrary<Inputs> = fc
  .tuple(
    anyInputs,
    fc.array(fc.constantFrom('yes' as const, 'to_the_shop' as const, 'no' as const), {
      minLength: 3,
      maxLength: 3,
    }),
  )
  .map(([inputs, how]) => ({
    ...inputs,
    workNeeded: inputs.workNeeded.map((job, i) => ({ ...job, mayBeDriven: how[i] ?? 'no' })),
  }));

describe('work undone', () => {
  it('is driven on with only where it may be driven, and is no work of safety', () =>
    fc.assert(
      fc.property(drivenAnyhow, fc.nat({ max: 119 }), (inputs, month) => {
        const ctx = contextOf(inputs, factsOf(inputs), EXPECTED, 'unrounded');
        const met = [
          ...waysOf(ctx).open.map(({ treatments }) => treatments ?? []),
          laterTreatments(month, ctx),
        ];
        const left = inputs.workNeeded.filter((_, i) => met.some((treatments) => treatments[i] === 'wait'));
        for (const job of left) expect([job.mayBeDriven, job.safety]).toEqual(['yes', false]);
      }),
    ));
});
