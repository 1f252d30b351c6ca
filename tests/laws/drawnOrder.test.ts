import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chances, Estimate } from '../../src/engine/analysis/chances.ts';
import { chancesOf } from '../../src/engine/analysis/futuresSummary.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { drawn, scenarioWith } from '../support/drawn.ts';

const chances = (inputs: Inputs): Chances => {
  const scenario = scenarioWith(inputs);
  const { subject, draws } = drawn(scenario, 4);
  return chancesOf(scenario, draws, { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 }, subject);
};

const reversed = <T>(list: readonly T[]): T[] => [...list].reverse();
const turned = <T extends { readonly components: readonly unknown[] }>(vehicle: T): T => ({
  ...vehicle,
  components: reversed(vehicle.components),
});

/** Every figure under a name that hangs on no position. */
const figures = (of: Chances): Map<string, number> => {
  const all = new Map<string, number>();
  const add = (name: string, { value, error }: Estimate): void => {
    all.set(name, value).set(`${name}, error`, error);
  };
  for (const { id, cost, regret } of [...of.ways, ...(of.rule ? [of.rule.way] : [])]) {
    add(`${id} costs`, cost.mean);
    add(`${id} in a bad case`, cost.bad);
    add(`${id} regret`, regret);
  }
  if (of.pair) {
    add('D', of.pair.mean);
    add(`${of.pair.keep} cheaper than ${of.pair.replace}`, of.pair.keepCheaper);
  }
  add('knowing all', of.perfect);
  // Parts of one name are told apart by no name: what knowing each is worth is put in order.
  const worths = new Map<string, number[]>();
  for (const { what, worth } of of.worthKnowing)
    worths.set(
      what,
      [...(worths.get(what) ?? []), worth.value].sort((a, b) => a - b),
    );
  for (const [what, values] of worths)
    for (const [i, value] of values.entries()) all.set(`${what} ${i}`, value);
  for (const { id, fund, towsAYear } of of.lumpy) {
    add(`${id} fund`, fund.needed);
    add(`${id} tows`, towsAYear);
  }
  return all;
};

describe('law 6: order changes no figure of the drawn futures', () => {
  it('of jobs, components and replacements, parts of one name among them', () => {
    let compared = 0;
    for (const inputs of fc.sample(anyInputsThatMayEnd, { numRuns: 5, seed: 20261125 })) {
      const before = figures(chances(inputs));
      const after = figures(
        chances({
          ...inputs,
          vehicle: turned(inputs.vehicle),
          workNeeded: reversed(inputs.workNeeded),
          replacement: reversed(inputs.replacement).map(turned),
        }),
      );
      expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
      for (const [name, figure] of before) {
        expect(Math.abs((after.get(name) as number) - figure), name).toBeLessThan(
          1e-6 * (1 + Math.abs(figure)),
        );
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(100);
  });
});

/** Other names, and the order of the alphabet turned round. */
const renamed = (inputs: Inputs): Inputs => {
  const components = <T extends { readonly name: string }>(all: readonly T[]): T[] =>
    all.map((one, i) => ({ ...one, name: `z${99 - i} part` }));
  return {
    ...inputs,
    vehicle: { ...inputs.vehicle, components: components(inputs.vehicle.components) },
    workNeeded: inputs.workNeeded.map((job, i) => ({ ...job, name: `y${99 - i} job` })),
    replacement: inputs.replacement.map((deal, i) => ({
      ...deal,
      name: `x${99 - i} vehicle`,
      components: components(deal.components),
    })),
  };
};

describe('law 19: a name changes no figure of the drawn futures', () => {
  it('of jobs, components and replacements', () => {
    for (const inputs of fc.sample(anyInputsThatMayEnd, { numRuns: 5, seed: 20261126 })) {
      const [before, after] = [inputs, renamed(inputs)].map((of) => {
        const { draws } = drawn(scenarioWith(of), 4);
        return draws;
      });
      expect(after).toEqual(before);
    }
  });
});
