import { describe, expect, it } from 'vitest';
import { meanOf } from '../../../../src/engine/chance/estimates.ts';
import { presentCostOf } from '../../../../src/engine/evaluation/project.ts';
import { keepWays } from '../../../../src/engine/plans/options/keepOptions.ts';
import { contextOf, EXPECTED } from '../../../../src/engine/plans/vehicle/context.ts';
import { chanceOfEnd } from '../../../../src/engine/plans/vehicle/endOfLife.ts';
import { walkPlan } from '../../../../src/engine/plans/vehicle/walkPlan.ts';
import type { EndOfLife, Inputs } from '../../../../src/engine/scenario/inputs/inputs.ts';
import { SCRAMBLES } from '../../../../src/engine/simulation/draws.ts';
import { drawnCosts, scenarioWith } from '../../../support/drawn.ts';
import { factsOf, inputs } from '../../../support/household.ts';

const rot = (chanceAYear: number, risesAYear = 0): EndOfLife => ({
  what: 'frame rot',
  chanceAYear,
  risesAYear,
});

/** Nobody counts savings here: a card for a forced change is not part of what is compared. */
const ending = (...ends: readonly EndOfLife[]): Inputs => ({
  ...inputs,
  household: { ...inputs.household, savings: null },
  vehicle: { ...inputs.vehicle, ends },
});

const keepCost = (of: Inputs): number => {
  const ctx = contextOf(of, factsOf(of), EXPECTED, 'unrounded');
  return presentCostOf((keepWays(ctx).open[0] as (typeof way)[number]).build(ctx), ctx).counted;
};
const way = keepWays(contextOf(inputs, factsOf(inputs), EXPECTED, 'unrounded')).open;

describe('what ends the vehicle for good', () => {
  it('is found out once a year, several reasons independent, each with its rise', () => {
    const chances = chanceOfEnd(ending(rot(0.1, 0.05), rot(0.2)).vehicle, 30);
    const first = inputs.vehicle.inspection.nextDue;
    expect(chances[first]).toBeCloseTo(1 - 0.9 * 0.8, 12);
    expect(chances[first + 12]).toBeCloseTo(1 - 0.85 * 0.8, 12);
    expect(chances.filter((chance) => chance > 0)).toHaveLength(2);
  });

  it('changes nothing when its chance is nil', () => {
    expect(keepCost(ending(rot(0)))).toBeCloseTo(keepCost(ending()), 8);
  });

  it('is the plan that walks away at the first inspection when it is certain', () => {
    const certain = ending(rot(1));
    const ctx = contextOf(certain, factsOf(certain), EXPECTED, 'unrounded');
    const month = certain.vehicle.inspection.nextDue;
    const treatments = way[0]?.treatments ?? [];
    expect(keepCost(certain)).toBeCloseTo(
      presentCostOf(walkPlan(0, month, 'broken', treatments, ctx), ctx).counted,
      6,
    );
  });

  it('makes keeping dearer the likelier it is, where a replacement is dear', () => {
    const costs = [0, 0.05, 0.1, 0.3].map((chance) => keepCost(ending(rot(chance))));
    expect([...costs].sort((a, b) => a - b)).toEqual(costs);
    expect(new Set(costs).size).toBe(4);
  });

  it('costs on average over drawn futures what the expected plan says', () => {
    const scenario = scenarioWith(ending(rot(0.08, 0.03)));
    const ctx = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
    const ways = keepWays(ctx).open;
    const costs = drawnCosts(scenario, ways, 128);
    ways.forEach((one, w) => {
      const { value, error } = meanOf(costs[w] as Float64Array, SCRAMBLES);
      const expected = presentCostOf(one.build(ctx), ctx).counted;
      expect(error).toBeGreaterThan(0);
      expect(Math.abs(value - expected)).toBeLessThan(3.5 * error);
    });
  });
});
