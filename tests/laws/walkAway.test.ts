import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chancesOf } from '../../src/engine/analysis/futuresSummary.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputs, anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { drawn, scenarioWith } from '../support/drawn.ts';

const POINTS = 16;

/** By how many standard errors, and how much money, the rule is cheaper than each of the plain courses. */
const ahead = (of: Inputs): { readonly what: string; readonly saves: number; readonly error: number }[] => {
  const inputs = { ...of, household: { ...of.household, lookAhead: Math.min(40, of.household.lookAhead) } };
  const scenario = scenarioWith(inputs);
  const { subject, draws } = drawn(scenario, POINTS);
  const { rule } = chancesOf(
    scenario,
    draws,
    { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 },
    subject,
  );
  return (rule?.against ?? []).map(({ label, saves }) => ({
    what: label,
    saves: saves.value,
    error: saves.error,
  }));
};

describe('law 7: the right to walk away costs no more than any course fixed today', () => {
  const cases = [
    ['anything', anyInputs],
    ['what may come to its end', anyInputsThatMayEnd],
  ] as const;
  for (const [name, any] of cases)
    it(`keeping, replacing now and the best fixed date, over the same draws: ${name}`, () => {
      let [compared, cheaper] = [0, 0];
      for (const inputs of fc.sample(any, { numRuns: 10, seed: 7 }))
        for (const { what, saves, error } of ahead(inputs)) {
          // The rule tells time by whole months, the futures by real numbers: a unit of money is no difference.
          expect(saves, what).toBeGreaterThanOrEqual(-3 * error - 1);
          compared += 1;
          if (saves > 3 * error + 1) cheaper += 1;
        }
      expect(compared).toBeGreaterThan(10);
      expect(cheaper).toBeGreaterThan(3);
    });
});
