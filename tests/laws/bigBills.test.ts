/** What big bills add to each way, by another route than the one that posts them; and what they must not change. */
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../src/engine/evaluation/project.ts';
import { boughtBigMonths, renewalOf } from '../../src/engine/plans/vehicle/boughtBigBills.ts';
import { renewable } from '../../src/engine/plans/vehicle/boughtVehicle.ts';
import { type Context, contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { LIKE_OURS } from '../../src/engine/plans/vehicle/likeOurs.ts';
import { fixedForOurs, OURS, ourLasting, ourMonth } from '../../src/engine/plans/vehicle/ours.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { type File, scenarioOf } from '../support/file.ts';

const older = (change: (file: File) => void = () => undefined): Scenario =>
  scenarioOf((file) => {
    delete (file as Record<string, unknown>).big_bills;
    delete (file as Record<string, unknown>).another_like_ours;
    change(file);
  });
const at = ({ inputs, facts }: Scenario, bigBills: number): Context =>
  contextOf({ ...inputs, household: { ...inputs.household, bigBills } }, facts, EXPECTED, 'unrounded');
const costOf = (id: string, ctx: Context): number => {
  const way = waysOf(ctx).open.find((one) => one.id === id);
  if (!way) throw new Error(`${id} is not open`);
  return presentCostOf(way.build(ctx), ctx).counted;
};

describe('what big bills add', () => {
  const scenario = older();
  const ctx = at(scenario, 1);
  const without = at(scenario, 0);

  it('to another like ours: each month so many, the lesser of bill and renewing it, and nothing else', () => {
    let adds = 0;
    for (let m = 1; m <= 60; m++) {
      const one = renewable(LIKE_OURS, 0);
      const big = boughtBigMonths(one, 0, ctx)(m);
      if (big)
        adds += ctx.worthLater(m) * (big.paid.counted + big.ends.counted * renewalOf(one, m, ctx).counted);
    }
    expect(adds).toBeGreaterThan(1000);
    expect(costOf('another_like_ours', ctx) - costOf('another_like_ours', without)).toBeCloseTo(adds, 6);
  });

  it.each([
    ['some of the work at home', {}],
    ['a shop doing all of it', { household: { at_home: { share: 0 } } }],
  ])(
    'to keeping, %s: the lesser of bill and limit while ours is there, and what its like takes once it is given up',
    (_, said) => {
      const household = older((file) => Object.assign(file, said));
      const [ctx, without] = [at(household, 1), at(household, 0)];
      const { limit, next } = fixedForOurs(ctx);
      expect(next.slice(1, 60).every((one) => one === LIKE_OURS)).toBe(true);
      const { there } = ourLasting(ctx);
      let adds = 0;
      for (let m = 1; m <= 60; m++) {
        const left = there.counted[m - 1] as number;
        const ours = ourMonth(m, ctx);
        const its = boughtBigMonths(OURS, 0, ctx)(m);
        const renewed = renewalOf(OURS, m, ctx).counted;
        const kept = ours.paid.counted + ours.ends.counted * (limit.counted[m] as number);
        const after = (its?.paid.counted ?? 0) + (its?.ends.counted ?? 0) * renewed;
        adds += ctx.worthLater(m) * (left * kept + (1 - left) * after);
      }
      expect(adds).toBeGreaterThan(1000);
      expect(costOf('keep', ctx) - costOf('keep', without)).toBeCloseTo(adds, 4);
    },
  );

  it('never makes a limit higher than another one running takes, less what ours brings, and a hurry', () => {
    const { limit, scale } = fixedForOurs(ctx);
    for (let m = 1; m < 60; m++) {
      const above = (limit.counted[m] as number) - renewalOf(OURS, m, ctx).counted;
      // Another one pays its registration anew, and its clocks are its own.
      expect(above).toBeLessThan(0.1 * (scale[m] as number));
    }
  });
});

describe('how likely ours lasts', () => {
  const lasts = (change?: (file: File) => void): number => {
    const { inputs, facts } = older(change);
    const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
    return ourLasting(ctx).there.counted[60] as number;
  };
  const usual = lasts();

  it('is less for an older one, and more for a young one', () => {
    expect(lasts((f) => Object.assign(f.vehicle, { what: '2004 wagon' }))).toBeLessThan(usual);
    expect(lasts((f) => Object.assign(f.vehicle, { what: '2022 wagon' }))).toBeGreaterThan(0.9);
  });
  it('is less for one that is driven farther', () => {
    expect(lasts((f) => Object.assign(f, { miles_a_year: 18_000 }))).toBeLessThan(usual);
  });
  it('is more where own hands do more of the work', () => {
    const shop = lasts((f) => Object.assign(f, { household: { at_home: { share: 0 } } }));
    const own = lasts((f) => Object.assign(f, { household: { at_home: { share: '90 %' } } }));
    expect(shop).toBeLessThan(usual);
    expect(own).toBeGreaterThan(usual);
  });
  it('is sure where the file leaves big bills out', () => {
    expect(lasts((f) => Object.assign(f, { big_bills: 'no' }))).toBe(1);
  });
  it('a frame that was looked at takes its quarter', () => {
    const looked = lasts((f) => Object.assign(f.vehicle, { structural_rust: 'none' }));
    expect(looked).toBeGreaterThan(usual);
    expect(Math.log(looked) / Math.log(usual)).toBeCloseTo(0.75, 1);
  });
});
