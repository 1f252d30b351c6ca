import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelAt } from '../../src/engine/cashflow/levels.ts';
import type { Sink } from '../../src/engine/cashflow/posting.ts';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { type Context, contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Plan } from '../../src/engine/plans/vehicle/plan.ts';
import { boughtSpan } from '../../src/engine/plans/vehicle/span.ts';
import { leftOf } from '../../src/engine/plans/vehicle/unnamedRepairs.ts';
import type { Component, Inputs } from '../../src/engine/scenario/inputs/inputs.ts';
import type { Quantity } from '../../src/engine/scenario/inputs/scenario.ts';
import { drawerOf } from '../../src/engine/simulation/futureDrawer.ts';
import { jointInputs } from '../../src/engine/simulation/jointInputs.ts';
import { unknownsOf } from '../../src/engine/simulation/unknowns.ts';
import { anyInputs, anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { scenarioWith } from '../support/drawn.ts';
import * as base from '../support/household.ts';

const bulb: Component = {
  name: 'light bulb',
  by: 'shop',
  parts: 3,
  hours: 0,
  shopPrice: 8,
  clock: 'months',
  scale: 100_000,
  shape: 6,
  run: 0,
  another: null,
  bill: { parts: null, hours: null, shopPrice: null },
  repairIs: 'renewal',
  tow: 0,
  daysWithout: 0,
  unsafe: false,
  shareOfAverage: 0.1,
};

const contextAt = (inputs: Inputs): Context =>
  contextOf(inputs, scenarioWith(inputs).facts, EXPECTED, 'unrounded');

/** A random vehicle has so many components at most. */
const PARTS = 2;

/** Repairs at shop prices by vehicle and month: those nobody named, and those of its components. */
interface Repairs {
  readonly unnamed: Float64Array;
  readonly named: Float64Array;
}

const repairsOf = (plan: Plan, ctx: Context): Map<string, Repairs> => {
  const all = new Map<string, Repairs>();
  const add = (path: string, month: number, shop: number): void => {
    const [vehicle = ''] = path.split('.');
    const known = all.get(vehicle) ?? {
      unnamed: new Float64Array(ctx.horizon + 1),
      named: new Float64Array(ctx.horizon + 1),
    };
    all.set(vehicle, known);
    const to = path.includes('components') ? known.named : known.unnamed;
    to[month] = (to[month] as number) + shop;
  };
  const sink: Sink = {
    post: (line, month, _counted, _cash, shop) => {
      if (line.category === 'repairs') add(line.path, month, shop);
    },
    series: (line, from, to, levels, _counted, _cash, shop) => {
      if (line.category === 'repairs')
        for (let m = from; m <= to; m++) add(line.path, m, shop * levelAt(levels, m));
    },
    time: null,
    stands: null,
  };
  presentCostOf(plan, ctx, sink);
  return all;
};

/** The same with every named component taking so much out of the average at most. */
const withShare = (share: number, inputs: Inputs): Inputs => {
  const of = <T extends { readonly components: readonly Component[] }>(vehicle: T): T => ({
    ...vehicle,
    components: vehicle.components.map((part) => ({ ...part, shareOfAverage: share })),
  });
  return { ...inputs, vehicle: of(inputs.vehicle), replacement: inputs.replacement.map(of) };
};

const sum = (of: ArrayLike<number>): number => Array.from(of).reduce((a, b) => a + b, 0);

describe('law 15: naming takes out what it brings, never more', () => {
  it('ten light bulbs that never fail leave an old wagon its repairs', () => {
    const keepCost = (components: readonly Component[]): number => {
      const vehicle = { ...base.vehicle, components };
      const ctx = contextAt({ ...base.inputs, vehicle });
      const keep = waysOf(ctx).open.find(({ side }) => side === 'keep');
      return keep ? presentCostOf(keep.build(ctx), ctx).counted : Number.NaN;
    };
    expect(keepCost(Array.from({ length: 10 }, () => bulb))).toBeCloseTo(keepCost([]), 2);
  });

  it('what often fails takes out its share of the average, and no more', () => {
    const often = { ...bulb, name: 'gearbox', shopPrice: 4000, scale: 20, shape: 1 };
    const vehicle = { ...base.vehicle, components: [often] };
    const ctx = contextAt({ ...base.inputs, vehicle });
    const left = leftOf(vehicle, boughtSpan('vehicle', '', 0, ctx.horizon), ctx);
    expect(left).toHaveLength(ctx.horizon);
    for (const share of left) expect(share).toBeCloseTo(0.9, 12);
  });

  it.each([
    ['anything', anyInputs],
    ['what may come to its end', anyInputsThatMayEnd],
  ] as const)('of every way, vehicle and month: %s', (_, any) => {
    let [compared, taken] = [0, 0];
    fc.assert(
      fc.property(any, fc.constantFrom(0.1, 0.3, 0.5), (of, share) => {
        const inputs = withShare(share, of);
        const ctx = contextAt(inputs);
        const whole = contextAt(withShare(0, of));
        for (const way of waysOf(ctx).open) {
          const own = repairsOf(way.build(ctx), ctx);
          const average = repairsOf(way.build(whole), whole);
          for (const [vehicle, { unnamed, named }] of own) {
            const all = average.get(vehicle)?.unnamed ?? new Float64Array(ctx.horizon + 1);
            const most = PARTS * share;
            for (let m = 0; m <= ctx.horizon; m++) {
              const [before, after] = [all[m] as number, unnamed[m] as number];
              const out = before - after;
              const tiny = 1e-9 * (1 + before);
              if (after < 0 || out < -tiny || out > Math.min(named[m] as number, most * before) + tiny)
                throw new Error(`${way.id}, ${vehicle}, month ${m}: ${out} of ${before} for ${named[m]}`);
            }
            compared += 1;
            if (sum(unnamed) < 0.99 * sum(all)) taken += 1;
          }
        }
      }),
      { numRuns: 60, seed: 15, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(100);
    expect(taken).toBeGreaterThan(30);
  });

  it('is fixed before the futures are drawn, from mean inputs', () => {
    const part = { ...bulb, name: 'gearbox', shopPrice: 900, scale: 90, shape: 3, run: 40 };
    const scale: Quantity = {
      key: 'vehicle.components.0.scale',
      path: 'vehicle.components[0].life',
      label: 'typical life, gearbox',
      unit: 'months',
      value: part.scale,
      range: { low: 30, likely: 80, high: 170, min: 0, max: null },
      varies: 'once',
      moves: [],
      mark: 'guess',
      source: '',
      note: '',
      isDefault: false,
      min: 1,
      max: 1200,
      integer: false,
    } as unknown as Quantity;
    const scenario = scenarioWith({ ...base.inputs, vehicle: { ...base.vehicle, components: [part] } }, [
      scale,
    ]);
    const joint = jointInputs(scenario.inputs, [scale]);
    const drawer = drawerOf(scenario, unknownsOf(scenario), 1, 0);
    const beforehand = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
    const span = boughtSpan('vehicle', '', 0, beforehand.horizon);
    const fixed = leftOf(scenario.inputs.vehicle, span, beforehand);
    const scales = new Set<number>();
    for (let draw = 0; draw < 20; draw++) {
      const future = drawer.moveTo(draw, null);
      joint.setTo(drawer.ranged);
      const ctx = contextOf(joint.inputs, scenario.facts, future, 'unrounded');
      scales.add(joint.inputs.vehicle.components[0]?.scale ?? 0);
      expect(leftOf(joint.inputs.vehicle, span, ctx)).toEqual(fixed);
    }
    expect(scales.size).toBe(20);
    expect(Math.min(...fixed)).toBeLessThan(0.99);
  });
});
