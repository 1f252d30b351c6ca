import { describe, expect, it } from 'vitest';
import { decide, decideAtAverage } from '../../../src/engine/answer/decide.ts';
import { answersInSteps } from '../../../src/engine/answer/inSteps.ts';
import type { Scenario } from '../../../src/engine/scenario/inputs/scenario.ts';
import { SCRAMBLES, simulateScramble } from '../../../src/engine/simulation/draws.ts';
import { scenarioOf } from '../../support/file.ts';

const withFutures = (futures: number): Scenario => {
  const scenario = scenarioOf((file) => {
    Object.assign(file, { miles_a_year: { low: 6000, likely: 9000, high: 13000 } });
  });
  const { facts } = scenario;
  return { ...scenario, facts: { ...facts, chance: { ...facts.chance, futures, seed: 3 } } };
};

const stepsOf = (scenario: Scenario) => [...answersInSteps(scenario, decideAtAverage(scenario, 'test'))];

describe('answers in steps', () => {
  it('go by 256 futures, by 1,024, then by all', () => {
    const drawn = stepsOf(withFutures(4096)).map(({ chances }) => chances?.futures);
    expect(drawn).toEqual([256, 1024, 4096]);
  });

  it('end in what all of them say when drawn at once', () => {
    const scenario = withFutures(2048);
    const { seed } = scenario.facts.chance;
    const draws = Array.from({ length: SCRAMBLES }, (_, scramble) =>
      simulateScramble(scenario, { seed, scramble, from: 0, to: 2048 / SCRAMBLES }),
    );
    expect(stepsOf(scenario).at(-1)).toEqual(decide(scenario, 'test', draws));
  });

  it('are no more than are wanted', () => {
    expect(stepsOf(withFutures(0))).toEqual([]);
    expect(stepsOf(withFutures(256)).map(({ chances }) => chances?.futures)).toEqual([256]);
  });
});
