import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanOf } from '../../src/engine/chance/estimates.ts';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { SCRAMBLES } from '../../src/engine/simulation/draws.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { drawnCosts, scenarioWith } from '../support/drawn.ts';

const SCENARIOS = 40;
const POINTS = 128;

/** What walking away costs is worked out in a few months and taken in a straight line between: off by no more than this. */
const TAKEN_BETWEEN = 0.002;

/** What of a difference lies beyond a tolerance, with its sign. */
const beyond = (difference: number, tolerance: number): number =>
  Math.sign(difference) * Math.max(0, Math.abs(difference) - tolerance);

describe('law 10: with only failures random, the mean over draws is the expected ledger', () => {
  it(`of ways of ${SCENARIOS} random scenarios, within three standard errors`, () => {
    const off: number[] = [];
    for (const inputs of fc.sample(anyInputs, { numRuns: SCENARIOS, seed: 20261125 })) {
      // Whether the needed work cures it is no failure: it meets savings, which are no straight line.
      const scenario = scenarioWith({
        ...inputs,
        workNeeded: inputs.workNeeded.map((job) => ({
          ...job,
          notCured: { ...job.notCured, chance: 0 },
          moreFound: { ...job.moreFound, chance: 0 },
        })),
      });
      const ctx = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
      const all = waysOf(ctx).open;
      const ways = all.filter(({ side }, w) => all.findIndex((one) => one.side === side) === w);
      const costs = drawnCosts(scenario, ways, POINTS);
      ways.forEach((way, w) => {
        const expected = presentCostOf(way.build(ctx), ctx).counted;
        const { value, error } = meanOf(costs[w] as Float64Array, SCRAMBLES);
        // Where nothing is random, or hardly ever anything happens, there is no spread to measure by.
        const rare = error < 1e-4 * Math.abs(expected);
        if (rare) expect(Math.abs(value - expected)).toBeLessThan(Math.max(1, 1e-3 * Math.abs(expected)));
        else
          off.push(
            beyond(value - expected, way.side === 'keep' ? TAKEN_BETWEEN * Math.abs(expected) : 0) / error,
          );
      });
    }
    expect(off.length).toBeGreaterThan(50);
    // Sixteen scrambles tell the error only roughly: one way in fifty may lie a little beyond.
    expect(off.filter((z) => Math.abs(z) > 3).length).toBeLessThanOrEqual(2);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(5);
    // No side is favoured; ways of one scenario share much of their luck.
    expect(Math.abs(off.reduce((sum, z) => sum + z, 0) / off.length)).toBeLessThan(0.6);
  }, 600_000);
});
