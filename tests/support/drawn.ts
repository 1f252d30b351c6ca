/** Drawn futures of hand-made or random inputs, small enough for tests. */

import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { contextOf } from '../../src/engine/plans/vehicle/context.ts';
import type { Way } from '../../src/engine/plans/vehicle/option.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import type { Quantity, Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { drawFutures, SCRAMBLES, type ScrambleDraws } from '../../src/engine/simulation/draws.ts';
import { drawerOf } from '../../src/engine/simulation/futureDrawer.ts';
import { type Subject, subjectOf } from '../../src/engine/simulation/studyDesign.ts';
import { unknownsOf } from '../../src/engine/simulation/unknowns.ts';
import { factsOf } from './household.ts';

/** A scenario of these inputs, with the ranges that are given. */
export const scenarioWith = (inputs: Inputs, quantities: readonly Quantity[] = []): Scenario => ({
  inputs,
  facts: factsOf(inputs),
  quantities,
  written: null,
});

/** All scrambles of a scenario, so many points each. */
export const drawn = (
  scenario: Scenario,
  points: number,
  seed = 1,
): { readonly subject: Subject; readonly draws: ScrambleDraws[] } => {
  const subject = subjectOf(scenario);
  const draws = Array.from({ length: SCRAMBLES }, (_, scramble) =>
    drawFutures(subject, { seed, scramble, from: 0, to: points }),
  );
  return { subject, draws };
};

/** What ways cost in drawn futures at fixed inputs, and nothing else: by way, scramble after scramble. */
export const drawnCosts = (scenario: Scenario, ways: readonly Way[], points: number): Float64Array[] => {
  const unknowns = unknownsOf(scenario);
  const costs = ways.map(() => new Float64Array(SCRAMBLES * points));
  for (let scramble = 0; scramble < SCRAMBLES; scramble++) {
    const drawer = drawerOf(scenario, unknowns, 1, scramble);
    for (let i = 0; i < points; i++) {
      const future = drawer.moveTo(i, null);
      const ctx = contextOf(scenario.inputs, scenario.facts, future, 'unrounded');
      ways.forEach((way, w) => {
        (costs[w] as Float64Array)[scramble * points + i] = presentCostOf(way.build(ctx), ctx).counted;
      });
    }
  }
  return costs;
};
