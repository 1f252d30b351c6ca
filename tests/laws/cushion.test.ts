import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chances } from '../../src/engine/analysis/chances.ts';
import { chancesOf } from '../../src/engine/analysis/futuresSummary.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { drawn, scenarioWith } from '../support/drawn.ts';

/** Figures of a household that puts by so much a month; its horizon kept short. */
const chances = (of: Inputs, setAside: number, seed = 1): Chances => {
  const household = { ...of.household, lookAhead: Math.min(48, of.household.lookAhead) };
  const plain = scenarioWith({ ...of, household });
  const { facts } = plain;
  const scenario = { ...plain, facts: { ...facts, chance: { ...facts.chance, setAside } } };
  const { subject, draws } = drawn(scenario, 8, seed);
  return chancesOf(scenario, draws, { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 }, subject);
};

const some = fc.sample(anyInputsThatMayEnd, { numRuns: 3, seed: 5 });

describe('a cushion', () => {
  it('need not be larger where more is put by each month', () => {
    for (const inputs of some) {
      const [none, little, much] = [0, 60, 400].map((aMonth) => chances(inputs, aMonth).lumpy);
      none?.forEach(({ id, fund }, w) => {
        const [a, b, c] = [fund, little?.[w]?.fund, much?.[w]?.fund].map(
          (one) => one?.needed.value as number,
        );
        expect(b, id).toBeLessThanOrEqual(a as number);
        expect(c, id).toBeLessThanOrEqual(b as number);
        expect(c, id).toBeGreaterThanOrEqual(0);
      });
    }
  });

  it('and every other figure is the same for the same seed, and within its error for another', () => {
    const apart: number[] = [];
    for (const inputs of some) {
      const [first, again, other] = [chances(inputs, 60), chances(inputs, 60), chances(inputs, 60, 2)];
      expect(again).toEqual(first);
      first.ways.forEach(({ cost, id }, w) => {
        const there = other.ways[w]?.cost.mean;
        expect(other.ways[w]?.id).toBe(id);
        const error = Math.hypot(cost.mean.error, there?.error ?? 0);
        if (error > 1e-6) apart.push(((there?.value ?? 0) - cost.mean.value) / error);
      });
    }
    expect(apart.length).toBeGreaterThan(5);
    expect(apart.some((z) => z !== 0)).toBe(true);
    // Ways of one household share their luck, so they lie apart together: the worst of a few households.
    expect(Math.max(...apart.map(Math.abs))).toBeLessThan(4.5);
  });
});
