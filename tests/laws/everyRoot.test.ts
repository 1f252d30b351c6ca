/** The roots that the solver finds are those of a scan that looks at two hundred values of every number. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakEvenOf, everywhere } from '../../src/engine/analysis/breakEven.ts';
import { cheaperCost, comparisonFrom, leastCosts } from '../../src/engine/analysis/leastCosts.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { typingOf } from '../../src/engine/scenario/file/rewrite.ts';
import type { Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import { inputAt, withInput } from '../../src/engine/scenario/inputs/lens.ts';
import type { Facts, Quantity, Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import type { Rivals } from '../../src/engine/valuation/leastCrossings.ts';
import { anyInputs, anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

const shown = (places: readonly { readonly kind: string; readonly at: number }[], { min, max }: Quantity) =>
  places
    .filter(({ kind }) => kind !== 'touch')
    .map(({ kind, at }) => `${kind} at ${Number((at / (max - min)).toPrecision(7))} of the range`)
    .sort();

/** What the solver finds instead of what a full scan finds; nothing where it is the same. */
const instead = (quantity: Quantity, rivals: (value: number) => Rivals, unit: number): string[] => {
  const quick = shown(breakEvenOf(quantity, rivals, unit).roots, quantity);
  const full = shown(everywhere(quantity, (x) => rivals(x).lead, unit).found, quantity);
  return quick.join() === full.join() ? [] : [`${quantity.path}: ${quick} instead of ${full}`];
};

const unitAt = (inputs: Inputs, facts: Facts): number =>
  1e-4 * cheaperCost(leastCosts(contextOf(inputs, facts, EXPECTED, 'unrounded')));

/** Every fourth number of a file, typed in as a person would. */
const ofFile = (scenario: Scenario): string[] => {
  const compare = comparisonFrom(scenario);
  return scenario.quantities
    .filter(({ known, integer }, i) => !known && !integer && i % 4 === 0)
    .flatMap((quantity) => {
      const typing = typingOf(scenario, quantity);
      const rivals = (value: number): Rivals => {
        const ground = typing?.at(value);
        if (!ground) throw new Error(`${quantity.path} cannot be ${value}`);
        return compare(ground);
      };
      return typing ? instead(quantity, rivals, unitAt(scenario.inputs, scenario.facts)) : [];
    });
};

/** Numbers of any household that may be many times what they are. */
const KEYS = [
  'household.distanceAYear',
  'household.priceOfOwnHour',
  'household.moneyEarns',
  'vehicle.sellsFor.running',
  'vehicle.cover.aYear',
  'vehicle.components.0.parts',
  'vehicle.components.0.scale',
  'workNeeded.0.parts',
  'workNeeded.0.hours',
  'replacement.0.price',
  'replacement.0.worthDayAfter',
  'replacement.0.energy.economy',
];

const ofInputs = (inputs: Inputs): { readonly wrong: string[]; readonly tips: number } => {
  const facts = factsOf(inputs);
  const compare = comparisonFrom({ inputs, facts });
  let tips = 0;
  const wrong = KEYS.flatMap((key) => {
    let value: number;
    try {
      value = inputAt(inputs, key);
    } catch {
      return [];
    }
    if (value <= 0) return [];
    const rivals = (x: number): Rivals => {
      const at = compare({ inputs: withInput(inputs, key, x), facts });
      if (x === value && at.first.length > 0) tips += 1;
      return at;
    };
    const quantity = { key, path: key, value, min: value / 20, max: value * 9, step: 1, integer: false };
    return instead(quantity as Quantity, rivals, unitAt(inputs, facts));
  });
  return { wrong, tips };
};

describe('the places where the answer tips', () => {
  it.each(['short-form', 'knife-edge', 'van-gearbox'])('are those of a full scan: %s', (name) => {
    const parsed = parseScenario(readFileSync(`scenarios/${name}.yaml`, 'utf8'), {
      file: name,
      today: '2026-11-25',
    });
    expect('scenario' in parsed && ofFile(parsed.scenario)).toEqual([]);
  });

  it.each([
    ['any household', anyInputs],
    ['one whose vehicle may come to its end', anyInputsThatMayEnd],
  ])('are those of a full scan: %s', (_, any) => {
    let looked = 0;
    for (const inputs of fc.sample(any, { numRuns: 12, seed: 7 })) {
      const { wrong, tips } = ofInputs(inputs);
      expect(wrong).toEqual([]);
      looked += tips;
    }
    expect(looked).toBeGreaterThan(50);
  });
});
