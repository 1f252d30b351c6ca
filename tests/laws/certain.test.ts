import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chancesOf } from '../../src/engine/analysis/futuresSummary.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Inputs, RunningCosts } from '../../src/engine/scenario/inputs/inputs.ts';
import type { Quantity } from '../../src/engine/scenario/inputs/scenario.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { drawn, scenarioWith } from '../support/drawn.ts';

/** Nothing fails and nothing turns out one way or the other. */
const sure = <T extends RunningCosts>(vehicle: T): T => ({
  ...vehicle,
  components: [],
  averageRepairs: { ...vehicle.averageRepairs, scale: 0 },
});
const certain = (inputs: Inputs): Inputs => ({
  ...inputs,
  household: { ...inputs.household, bigBills: 0 },
  vehicle: sure(inputs.vehicle),
  workNeeded: inputs.workNeeded.map((job, i) => ({
    ...job,
    notCured: { ...job.notCured, chance: i % 2 },
    moreFound: { ...job.moreFound, chance: 0 },
  })),
  replacement: inputs.replacement.map(sure),
});

/** A number with a range that is no range: three points in one. */
const pinned = (key: string, value: number): Quantity => ({
  key,
  moves: [],
  path: 'household.distance_a_year',
  standsAt: [],
  suffix: '',
  onlyRange: false,
  label: 'distance a year',
  unit: 'distance a year',
  value,
  range: { low: value, likely: value, high: value, min: 0, max: null },
  varies: 'once',
  min: 0,
  max: 1e6,
  step: 1,
  integer: false,
  mark: 'guess',
  known: false,
  isDefault: false,
  source: '',
  note: '',
});

describe('with nothing random', () => {
  it('every future is the answer at average inputs to the last digit, and every error and worth of knowing is nil', () => {
    for (const raw of fc.sample(anyInputs, { numRuns: 12, seed: 11 })) {
      const inputs = certain(raw);
      const scenario = scenarioWith(inputs, [
        pinned('household.distanceAYear', inputs.household.distanceAYear),
      ]);
      const { subject, draws } = drawn(scenario, 2);
      const chances = chancesOf(
        scenario,
        draws,
        { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 },
        subject,
      );
      const ctx = contextOf(inputs, scenario.facts, EXPECTED, 'unrounded');
      subject.options.forEach((way, w) => {
        const cost = presentCostOf(way.build(ctx), ctx).counted;
        const { mean, good, middle, bad } = (chances.ways[w] as (typeof chances.ways)[number]).cost;
        for (const one of [mean, good, middle, bad]) {
          expect(one.value).toBeCloseTo(cost, 8);
          expect(one.error).toBe(0);
        }
      });
      expect(chances.perfect).toEqual({ value: 0, error: 0 });
      for (const { worth, measurable } of chances.worthKnowing) {
        expect(worth).toEqual({ value: 0, error: 0 });
        expect(measurable).toBe(false);
      }
      for (const { saves } of chances.rule?.against ?? []) expect(saves.error).toBe(0);
      expect(chances.pair?.keepCheaper.error ?? 0).toBe(0);
      for (const { first, total } of chances.shares) expect([first.value, total.value]).toEqual([0, 0]);
    }
  });
});
