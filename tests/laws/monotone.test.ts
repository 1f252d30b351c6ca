import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Way } from '../../src/engine/plans/vehicle/option.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { withInput } from '../../src/engine/scenario/inputs/lens.ts';
import type { Pair } from '../../src/engine/simulation/optionPair.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

/** Mending and keeping against the sale as it stands (with nothing to mend it goes privately). */
const pairOf = (inputs: Inputs): Pair => {
  const { open } = waysOf(contextOf(inputs, factsOf(inputs), EXPECTED, 'unrounded'));
  const sale = inputs.workNeeded.length > 0 ? 'as-it-stands' : 'private';
  const way = (id: string): Way => open.find((one) => one.id === id) as Way;
  return { keep: way('keep'), replace: way(`replace/small-hatchback/as-it-stands/${sale}`) };
};

const D = (inputs: Inputs): number => {
  const ctx = contextOf(inputs, factsOf(inputs), EXPECTED, 'unrounded');
  const { keep, replace } = pairOf(inputs);
  const cost = (way: Way): number => presentCostOf(way.build(ctx), ctx).counted;
  return cost(replace) - cost(keep);
};

/** Buyers who pay for work, or a price that falls by the shop price of what is undone, make a cost a receipt too. */
const plainly = (inputs: Inputs): Inputs => ({
  ...inputs,
  workNeeded: inputs.workNeeded.map((job) => ({ ...job, buyerPays: 0 })),
});

const ONLY_KEEP = [
  'vehicle.parkingAMonth',
  'vehicle.averageUpkeep',
  'vehicle.registration.aYear',
  'vehicle.tax.aYear',
  'vehicle.inspection.aYear',
  'vehicle.averageRepairs.scale',
  'vehicle.energy.price',
  'vehicle.storageADay',
  'workNeeded.0.parts',
  'workNeeded.0.hours',
  'workNeeded.0.notCured.chance',
  'workNeeded.0.moreFound.chance',
  'vehicle.components.0.parts',
  'vehicle.components.0.tow',
  'vehicle.upkeep.0.parts',
];

const ONLY_REPLACE = [
  'replacement.0.price',
  'replacement.0.salesTax',
  'replacement.0.parkingAMonth',
  'replacement.0.averageUpkeep',
  'replacement.0.cover.aYear',
  'replacement.0.registration.aYear',
  'replacement.0.averageRepairs.scale',
  'replacement.0.energy.price',
  'replacement.0.inspectionBefore',
  'replacement.0.catchUp',
  'replacement.0.fees.0.amount',
  'replacement.0.payment.apr',
];

const has = (inputs: Inputs, key: string): boolean =>
  typeof key
    .split('.')
    .reduce<unknown>((tree, step) => (tree as Record<string, unknown> | undefined)?.[step], inputs) ===
  'number';

const valueAt = (inputs: Inputs, key: string): number =>
  key.split('.').reduce<unknown>((tree, step) => (tree as Record<string, unknown>)[step], inputs) as number;

/** Chances stay chances when they are raised. */
const raised = (key: string, value: number): number =>
  key.endsWith('chance')
    ? Math.min(1, value + 0.2)
    : value * 1.3 + (key.endsWith('apr') || key.endsWith('Tax') ? 0.01 : 1);

describe('law 5: an added cost never helps the side that bears it', () => {
  it.each(ONLY_KEEP)('keep: %s', (key) => {
    fc.assert(
      fc.property(anyInputs.map(plainly), (inputs) => {
        fc.pre(has(inputs, key));
        const change = D(withInput(inputs, key, raised(key, valueAt(inputs, key)))) - D(inputs);
        expect(change).toBeLessThanOrEqual(1e-6);
      }),
      { numRuns: 40 },
    );
  });

  it.each(ONLY_REPLACE)('replace: %s', (key) => {
    fc.assert(
      fc.property(anyInputs.map(plainly), (inputs) => {
        fc.pre(has(inputs, key));
        const change = D(withInput(inputs, key, raised(key, valueAt(inputs, key)))) - D(inputs);
        expect(change).toBeGreaterThanOrEqual(-1e-6);
      }),
      { numRuns: 40 },
    );
  });
});
