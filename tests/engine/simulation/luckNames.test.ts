import { describe, expect, it } from 'vitest';
import { contextOf, EXPECTED } from '../../../src/engine/plans/vehicle/context.ts';
import { nextAfterEnd } from '../../../src/engine/plans/vehicle/nextAfterEnd.ts';
import type { Component, Inputs } from '../../../src/engine/scenario/inputs/inputs.ts';
import { luckNamesOf } from '../../../src/engine/simulation/luckNames.ts';
import { scenarioWith } from '../../support/drawn.ts';
import { inputs } from '../../support/household.ts';

const part = (name: string, more: Partial<Component> = {}): Component => ({
  name,
  clock: 'distance',
  by: 'shop',
  parts: 0,
  hours: 0,
  shopPrice: 900,
  scale: 150_000,
  shape: 3,
  run: 100_000,
  another: null,
  bill: { parts: null, hours: null, shopPrice: null },
  repairIs: 'renewal',
  tow: 0,
  daysWithout: 0,
  unsafe: false,
  shareOfAverage: 0,
  ...more,
});

const withParts = (components: readonly Component[], more: Partial<Inputs> = {}): Inputs => ({
  ...inputs,
  ...more,
  vehicle: { ...inputs.vehicle, components },
});

const names = (of: Inputs): readonly string[] => {
  const name = luckNamesOf(scenarioWith(of));
  return of.vehicle.components.map((_, i) => name(`vehicle.components.${i}.parts`));
};

describe('what luck goes by', () => {
  it('is the same in any order and under any name, and told apart by numbers', () => {
    const [dear, cheap] = [part('a', { shopPrice: 900 }), part('b', { shopPrice: 90 })];
    expect(names(withParts([dear, cheap]))).toEqual([
      'vehicle.components.#2.parts',
      'vehicle.components.#1.parts',
    ]);
    expect(names(withParts([cheap, dear]))).toEqual([
      'vehicle.components.#1.parts',
      'vehicle.components.#2.parts',
    ]);
    expect(names(withParts([{ ...dear, name: 'z' }, cheap]))).toEqual(names(withParts([dear, cheap])));
  });

  it('goes by the size of numbers, so that no currency turns it round', () => {
    const both = (times: number) => [
      part('a', { shopPrice: 9 * times }),
      part('b', { shopPrice: 80 * times }),
    ];
    expect(names(withParts(both(10)))).toEqual(names(withParts(both(1))));
  });

  it('tells alike parts apart by the work that renews them', () => {
    const [job] = inputs.workNeeded;
    if (!job) throw new Error('no job');
    const renewing = (at: number) =>
      names(withParts([part('a'), part('b')], { workNeeded: [{ ...job, renews: [at] }] }));
    expect(renewing(0)).toEqual([...renewing(1)].reverse());
  });

  it('is the place itself where there is no list', () => {
    const name = luckNamesOf(scenarioWith(inputs));
    expect(name('household.distanceAYear')).toBe('household.distanceAYear');
    expect(name('nowhere.3.at')).toBe('nowhere.3.at');
  });
});

describe('of two replacements at one price', () => {
  it('the same follows an end, whatever they are called and whichever comes first', () => {
    const [deal] = inputs.replacement;
    if (!deal) throw new Error('no replacement');
    const [plain, worn] = [deal, { ...deal, odometer: 90_000 }];
    const next = (...replacement: Inputs['replacement']) => {
      const withOffers = { ...inputs, replacement };
      return replacement[
        nextAfterEnd(contextOf(withOffers, scenarioWith(withOffers).facts, EXPECTED, 'unrounded')) ?? -1
      ]?.odometer;
    };
    const all = [
      next({ ...plain, name: 'a' }, { ...worn, name: 'b' }),
      next({ ...plain, name: 'b' }, { ...worn, name: 'a' }),
      next({ ...worn, name: 'a' }, { ...plain, name: 'b' }),
    ];
    expect(new Set(all).size).toBe(1);
  });
});
