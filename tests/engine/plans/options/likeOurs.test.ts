/** Another one like ours: what it differs by from keeping ours, what it bounds, and what a file may say of it. */
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { walkAwayOf } from '../../../../src/engine/analysis/repairLimitTable.ts';
import { decideAtAverage } from '../../../../src/engine/answer/decide.ts';
import type { OptionResult } from '../../../../src/engine/evaluation/optionResult.ts';
import { presentCostOf } from '../../../../src/engine/evaluation/project.ts';
import { contextOf } from '../../../../src/engine/plans/vehicle/context.ts';
import { LIKE_OURS } from '../../../../src/engine/plans/vehicle/likeOurs.ts';
import { walkPlan } from '../../../../src/engine/plans/vehicle/walkPlan.ts';
import { parseScenario } from '../../../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../../../src/engine/scenario/inputs/scenario.ts';
import { studyOf } from '../../../../src/engine/simulation/study.ts';
import { subjectOf } from '../../../../src/engine/simulation/studyDesign.ts';
import { type File, scenarioOf, shortForm } from '../../../support/file.ts';

const withLike = (said: unknown, change: (file: File) => void = () => undefined): Scenario =>
  scenarioOf((file) => {
    if (said === undefined) Reflect.deleteProperty(file, 'another_like_ours');
    else Object.assign(file, { another_like_ours: said });
    change(file);
  });

const waysOf = (scenario: Scenario) => {
  const { options } = decideAtAverage(scenario, 'test');
  const [keep, like] = ['keep', 'another_like_ours'].map((id) => options.find((one) => one.id === id));
  if (!keep || !like) throw new Error('a way is missing');
  return { keep, like };
};

const sumOf = ({ ledger }: OptionResult, is: (what: string, category: string) => boolean): number =>
  ledger
    .filter(({ what, category }) => is(what, category))
    .reduce((total, { present }) => total + present.counted, 0) / 100;

describe('another like ours', () => {
  it('is a way of its own unless the file says that there is none', () => {
    const sides = (said: unknown) =>
      decideAtAverage(withLike(said), 'test').options.filter(({ side }) => side === 'like').length;
    expect([undefined, 'yes', {}, 'no'].map(sides)).toEqual([1, 1, 1, 0]);
  });

  it('costs what ours costs to run, and is worth as much at the end', () => {
    const { keep, like } = waysOf(withLike(undefined));
    for (const category of ['energy', 'scheduled upkeep'])
      expect(sumOf(like, (_, of) => of === category)).toBeCloseTo(
        sumOf(keep, (_, of) => of === category),
        0,
      );
    const repairs = (way: OptionResult) =>
      sumOf(way, (what, of) => of === 'repairs' && !what.startsWith('hidden fault'));
    expect(repairs(like)).toBeCloseTo(repairs(keep), 0);
    expect(like.valueAtEnd).toBe(keep.valueAtEnd);
  });

  /** Model, section 3: the difference is A(0) - V_broken(0) less the needed work, and what else differs. */
  it('differs from keeping by its price less what ours brings, less the work, to the cent', () => {
    const said = { price: 4000, tax_and_fees: '10 %', inspection_before: 120, catch_up: 0, hidden_fault: 0 };
    const { keep, like } = waysOf(
      withLike({ ...said, hours_to_find: 0, days_to_find: 0 }, (file) => {
        Object.assign(file, { savings_for_this: 20_000, household: { price_of_own_hour: 20 } });
        Object.assign(file.vehicle, { selling: { cost: 50, hours: 0, weeks: 0 }, insurance_a_year: 0 });
      }),
    );
    const [head, brakes] = shortForm().work_needed;
    const work = [head, brakes].reduce((all, job) => all + Number(job?.parts) + 20 * Number(job?.hours), 0);
    const unused = sumOf(keep, (what) => what.startsWith('paid ahead'));
    const expected = 4000 * 1.1 + 120 - (900 - 50) - work;
    const apart = (like.netPresentCost.counted - keep.netPresentCost.counted) / 100;
    expect(unused).toBe(0);
    expect(apart).toBeCloseTo(expected, 1);
  });

  it('asks a tenth more than ours would bring, unless a price is known', () => {
    const priceOf = (said: unknown) =>
      sumOf(waysOf(withLike(said)).like, (what, of) => of === 'buying' && what.includes('price'));
    expect(priceOf(undefined)).toBeCloseTo(1.1 * 3400, 2);
    expect(priceOf({ price: 2950 })).toBeCloseTo(2950, 2);
  });

  it('bounds what a bill may be, whatever the other vehicle costs', () => {
    const limit = (said: unknown): number =>
      walkAwayOf(withLike(said))?.components.at(-1)?.byMonth[0]?.limit as number;
    const [none, some, dear, cheap] = [
      limit('no'),
      limit(undefined),
      limit({ price: 9000 }),
      limit({ price: 2000 }),
    ];
    expect(some).toBeLessThan(0.6 * none);
    expect(cheap).toBeLessThan(some);
    expect(dear).toBeGreaterThan(some);
    expect(dear).toBeLessThanOrEqual(none);
  });

  it('bounds it by no more than getting one takes and what ours, once mended, costs less', () => {
    for (const price of [2500, 4000, 6000]) {
      const scenario = withLike({ price });
      const w = walkAwayOf(scenario);
      if (!w?.likeOurs) throw new Error('another like ours is what would be got');
      const { costs, brings } = w.likeOurs;
      expect(costs).toBeGreaterThan(price);
      expect(brings).toBeGreaterThan(0);
      expect(brings).toBeLessThanOrEqual(900);
      // Ours needs nothing else once it is mended; the other one pays its first year's bills anew.
      const limit = w.components.at(-1)?.byMonth[0]?.limit as number;
      expect(Math.abs(limit - (costs - brings))).toBeLessThan(1500);
    }
  });

  it('costs days without a vehicle only where ours cannot be driven meanwhile', () => {
    const days = (may: string): number =>
      sumOf(
        waysOf(
          withLike(undefined, (file) => {
            Object.assign(file, { household: { day_without: 30 } });
            file.work_needed = [
              {
                job: 'clutch',
                parts: 300,
                hours: 9,
                shop_price: 1100,
                may_be_driven: may,
                can_wait: 'yes',
                safety: 'no',
                why: 'it only slips',
              },
            ];
          }),
        ).like,
        (what) => what.startsWith('days until one is found'),
      );
    expect(days('no')).toBeCloseTo(7 * 30, 2);
    expect(days('yes')).toBe(0);
  });

  it('is said so where it is the cheapest of all', () => {
    const decision = decideAtAverage(
      withLike({ price: 1500, catch_up: 0, hidden_fault: 0 }, (file) => {
        Object.assign(file.work_needed[0] ?? {}, { parts: 2600 });
      }),
      'test',
    );
    expect(decision.answer?.side).toBe('like');
    expect(decision.bestReplace?.side).toBe('replace');
  });

  it('is asked for in words that a file may hold', () => {
    const read = parseScenario(stringify({ ...shortForm(), another_like_ours: 'perhaps' }), {
      file: 'test.yaml',
      today: '2026-11-25',
    });
    expect('problems' in read && read.problems.map(({ path }) => path)).toEqual(['another_like_ours']);
  });

  it('costs the same in a future whichever is worked out first, one got now or one got later', () => {
    const scenario = withLike(undefined, (file) => {
      Object.assign(file, { miles_a_year: { low: 7000, likely: 9000, high: 12_000 } });
    });
    const costs = (order: readonly number[]): Map<number, number> => {
      const { drawer, joint } = studyOf(subjectOf(scenario));
      drawer.restart(1, 0);
      const future = drawer.moveTo(5, null);
      joint.setTo(drawer.ranged);
      const ctx = contextOf(joint.inputs, scenario.facts, future, 'unrounded');
      return new Map(
        order.map((month) => {
          const plan = walkPlan(LIKE_OURS, month, 'running', ['done', 'done'], ctx);
          return [month, presentCostOf(plan, ctx).counted];
        }),
      );
    };
    const [early, late] = [costs([1, 30, 48]), costs([48, 30, 1])];
    for (const month of [1, 30, 48]) expect(early.get(month)).toBe(late.get(month));
  });
});
