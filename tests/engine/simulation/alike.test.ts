/** Ways meet one future each alike: what an end costs, when it comes, and what is shared between ways. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chancesOf } from '../../../src/engine/analysis/futuresSummary.ts';
import { bundled } from '../../../src/engine/cashflow/bundle.ts';
import type { Contract } from '../../../src/engine/cashflow/posting.ts';
import { waysOf } from '../../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import { COURSES, keepCourse } from '../../../src/engine/plans/collision/retention.ts';
import { type Context, contextOf, EXPECTED, inFuture } from '../../../src/engine/plans/vehicle/context.ts';
import { keepPlan, treatmentsOf } from '../../../src/engine/plans/vehicle/keepPlan.ts';
import { laterPlan } from '../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import { walkPlan } from '../../../src/engine/plans/vehicle/retirement.ts';
import { keepingFrom } from '../../../src/engine/policy/course.ts';
import { parseScenario } from '../../../src/engine/scenario/file/parse.ts';
import type { Inputs } from '../../../src/engine/scenario/inputs/inputs.ts';
import type { Scenario } from '../../../src/engine/scenario/inputs/scenario.ts';
import { detailFor } from '../../../src/engine/simulation/cashDetail.ts';
import { type Drawer, drawerOf } from '../../../src/engine/simulation/futureDrawer.ts';
import { coursesOf } from '../../../src/engine/simulation/keepCourse.ts';
import { type Still, stillIn } from '../../../src/engine/simulation/still.ts';
import { unknownsOf } from '../../../src/engine/simulation/unknowns.ts';
import { drawn } from '../../support/drawn.ts';
import { inputs as base } from '../../support/household.ts';
import { component, household, lease, scenarioOf } from './scene.ts';

const done = ['done', 'done'] as const;

/** Two sources of the same futures: one in which what the inputs leave as it is lasts, one that forgets it. */
const drawersOf = (scenario: Scenario, still: Still): readonly [Drawer, Drawer] => {
  const unknowns = unknownsOf(scenario);
  return [drawerOf(scenario, unknowns, 1, 0, { still }), drawerOf(scenario, unknowns, 1, 0)];
};

const at = (of: Inputs): Context => contextOf(of, scenarioOf(of).facts, EXPECTED, 'unrounded');
const rusty = { ends: [{ what: 'rust', chanceAYear: 0.3, risesAYear: 0.1 }] };

/** A second, cheaper replacement to buy, which the comparison need not be about. */
const two = (of: Inputs): Inputs => ({
  ...of,
  replacement: of.replacement.flatMap((one) => [
    one,
    { ...one, name: 'a cheap one', price: 4000, worthDayAfter: 3600, averageUpkeep: 1 },
  ]),
});

describe('an end of the vehicle', () => {
  it('costs the rule what it costs the plan of keeping, whichever replacement is compared, savings or none', () => {
    for (const savings of [null, 200]) {
      const of = two(household({ household: { savings }, vehicle: rusty }));
      const ctx = at(of);
      const keep = waysOf(ctx).open.find((way) => way.id === 'keep');
      const costs = [0, 1].map((replacement) => {
        const K = keepingFrom(coursesOf(done, replacement, ctx).looking(0, 60, 'then'), 0);
        const firstDay =
          presentCostOf(walkPlan(replacement, 0, 'running', done, ctx), ctx).counted - (K[0] as number);
        return firstDay + (K[60] as number);
      });
      const planned = keep ? presentCostOf(keep.build(ctx), ctx).counted : Number.NaN;
      for (const cost of costs) expect(cost).toBeCloseTo(planned, 6);
    }
  });

  it('found out in the month of a planned change comes before it, as it does for the rule', () => {
    const ctx = at(household({ household: { savings: null }, vehicle: { ...rusty, loan: null } }));
    const K = keepingFrom(coursesOf(done, 0, ctx).looking(0, 60, 'then'), 0);
    const cost = (k: number): number => presentCostOf(laterPlan(0, k, ctx), ctx).counted;
    const first = cost(11) - (K[11] as number);
    for (const k of [12, 13, 24, 36]) expect(cost(k) - (K[k] as number), `month ${k}`).toBeCloseTo(first, 6);
  });
});

describe('what is shared between ways', () => {
  it('costs each of them what it costs unshared, in every future and reading', () => {
    const of = two(
      household({
        household: { savings: 1000 },
        vehicle: {
          ...rusty,
          components: [component('gearbox')],
          loan: { owed: 3000, note: 0.1, monthsLeft: 40 },
        },
        replacement: { components: [component('pump', { run: 30_000 })] },
      }),
    );
    const leased: Inputs = {
      ...of,
      replacement: of.replacement.map((one, i) =>
        i ? one : { ...one, payment: { kind: 'lease', ...lease } },
      ),
    };
    const [job] = of.workNeeded;
    const uncertain: Inputs = {
      ...of,
      workNeeded: job
        ? [{ ...job, notCured: { ...job.notCured, chance: 0.4 } }, ...of.workNeeded.slice(1)]
        : [],
    };
    for (const inputs of [of, leased, uncertain]) {
      const scenario = scenarioOf(inputs);
      const [drawer, forgetful] = drawersOf(scenario, stillIn(inputs, []));
      for (let draw = 0; draw < 12; draw++) {
        const ctx = contextOf(inputs, scenario.facts, drawer.moveTo(draw, null), 'unrounded');
        const builds = [
          ...waysOf(ctx).open.map((way) => way.build),
          ...[5, 12, 30].map((month) => (at: Context) => laterPlan(0, month, at)),
        ];
        const together = builds.map((build) => presentCostOf(build(ctx), ctx));
        const alone = builds.map((build) => {
          const apart = inFuture(forgetful.moveTo(draw, null), ctx);
          // A sink of its own is shown every posting, so nothing is taken as a whole.
          return presentCostOf(build(apart), apart, detailFor(ctx.horizon).sink);
        });
        together.forEach((cost, w) => {
          for (const reading of ['counted', 'cash', 'shop'] as const)
            expect(cost[reading]).toBeCloseTo(alone[w]?.[reading] as number, 6);
        });
      }
    }
  });

  it.each(['parked-hatchback', 'owed-sedan'])('after a collision too: %s', (name) => {
    const text = readFileSync(new URL(`../../../scenarios/${name}.yaml`, import.meta.url), 'utf8');
    const parsed = parseScenario(text, { file: name, today: '2026-11-25' });
    if ('problems' in parsed) throw new Error('a demo is not in order');
    const { facts, inputs: read } = parsed.scenario;
    // What is rebuilt at once runs over the same months as the rest, but is insured at another price.
    const rebuild = read.claim?.rebuild && { ...read.claim.rebuild, monthsOff: 0, insuranceAYear: 1900 };
    const inputs: Inputs = { ...read, claim: read.claim && { ...read.claim, rebuild: rebuild ?? null } };
    const scenario = { ...parsed.scenario, inputs };
    const courses = COURSES.map((course) => (at: Context) => keepCourse(course, 'x', 'x', at));
    const drawer = drawerOf(scenario, unknownsOf(scenario), 1, 0);
    for (let draw = 0; draw < 12; draw++) {
      const future = drawer.moveTo(draw, null);
      const ctx = contextOf(inputs, facts, future, 'unrounded');
      const waiting = (to: Context) =>
        keepPlan(
          'x',
          'x',
          'left',
          treatmentsOf(to, () => 'wait'),
          to,
        );
      const builds = [...waysOf(ctx).open.map((way) => way.build), ...courses, waiting];
      const together = builds.map((build) => presentCostOf(build(ctx), ctx));
      builds.forEach((build, w) => {
        future.recall.clear();
        const alone = presentCostOf(build(ctx), ctx, detailFor(ctx.horizon).sink);
        for (const reading of ['counted', 'cash', 'shop'] as const)
          expect(together[w]?.[reading], `way ${w}`).toBeCloseTo(alone[reading], 6);
      });
    }
  });

  it('gives no future anything of the one before but what no luck touches', () => {
    const inputs = two(
      household({
        household: { savings: 1000 },
        vehicle: { components: [component('gearbox', { tow: 90, daysWithout: 2 })], storageADay: 12 },
      }),
    );
    const scenario = scenarioOf(inputs);
    const [lasting, fresh] = drawersOf(scenario, stillIn(inputs, []));
    const details = (drawer: Drawer, draw: number) => {
      const ctx = contextOf(inputs, scenario.facts, drawer.moveTo(draw, null), 'unrounded');
      return [...waysOf(ctx).open.map((way) => way.build(ctx)), walkPlan(0, 7, 'broken', done, ctx)].map(
        (plan) => {
          const { sink, cash, lumps, stops, days, worst } = detailFor(ctx.horizon);
          const cost = presentCostOf(plan, ctx, sink);
          return [cost.counted, cost.cash, cost.shop, worst.bill, ...cash, ...lumps, ...stops, ...days];
        },
      );
    };
    for (let draw = 0; draw < 12; draw++) {
      const [kept, anew] = [details(lasting, draw), details(fresh, draw)];
      kept.forEach((one, w) => {
        one.forEach((figure, k) => {
          expect(figure, `way ${w}, figure ${k}`).toBeCloseTo(anew[w]?.[k] as number, 6);
        });
      });
    }
  });

  it('a bundle that lasts brings all its details each time', () => {
    const line = { category: 'repairs', what: 'belt', path: 'x', reason: 'x' } as const;
    const all: Contract[] = [
      (sink) => sink.stands?.(3, 1, 2),
      (sink) => sink.post(line, 4, 90, 70, 110),
      (sink) => sink.series(line, 5, 6, new Float64Array(13).fill(1), 10, 5, 10),
    ];
    const [whole, apart] = [detailFor(12), detailFor(12)];
    const bundle = bundled(all, 0, true);
    for (let future = 0; future < 2; future++) {
      whole.clear();
      bundle(whole.sink);
    }
    for (const contract of all) contract(apart.sink);
    for (const figures of ['cash', 'lumps', 'stops', 'days'] as const)
      expect([...whole[figures]], figures).toEqual([...apart[figures]]);
    expect(whole.worst).toEqual({ bill: 70 });
  });

  it('a bundle is its contracts, one after the other, for whoever takes no whole', () => {
    const seen: string[] = [];
    const all = ['a', 'b'].map((name) => () => void seen.push(name));
    const sink = detailFor(12).sink;
    bundled(all, 3, false)(sink);
    expect(seen).toEqual(['a', 'b']);
  });
});

describe('the rule, where it never walks away', () => {
  it('has of its money what keeping has, month by month', () => {
    const of = household({ vehicle: { components: [component('gearbox', { tow: 90, daysWithout: 2 })] } });
    const { subject, draws } = drawn(scenarioOf(of), 8);
    expect(subject.ruleWay).toBe(subject.options[subject.keep ?? -1]);
    const never = draws.filter(({ walkedIn }) => walkedIn.every((month) => month === 0));
    expect(never.length).toBeGreaterThan(0);
    for (const { details } of never) {
      expect(details[0]?.needed.some((fund) => fund > 0)).toBe(true);
      expect(details[2]).toEqual(details[0]);
    }
  });
});

describe('the cash of walking away', () => {
  it('has in its lumps what pays the loan off and what a lease takes to start, and no level payment', () => {
    const of = household({
      household: { savings: null },
      vehicle: { loan: { owed: 3000, note: 0.12, monthsLeft: 48 } },
    });
    const leased = household({
      household: { savings: null },
      replacement: { payment: { kind: 'lease', ...lease } },
    });
    const lumpsAt = (inputs: Inputs, month: number): number => {
      const ctx = at(inputs);
      const detail = detailFor(ctx.horizon);
      presentCostOf(walkPlan(0, 20, 'running', done, ctx), ctx, detail.sink);
      return detail.lumps[month] as number;
    };
    const free = household({ household: { savings: null } });
    // Its buyer pays a month later, and only then is the loan paid off.
    expect(lumpsAt(of, 21) - lumpsAt(free, 21)).toBeGreaterThan(1700);
    expect(lumpsAt(of, 20)).toBeCloseTo(lumpsAt(free, 20), 8);
    const bought = household({ household: { savings: null }, replacement: { payment: { kind: 'cash' } } });
    expect(lumpsAt(leased, 20)).toBeLessThan(lumpsAt(bought, 20));
    expect(lumpsAt(leased, 21)).toBeCloseTo(lumpsAt(bought, 21), 8);
  });
});

describe('work that can wait', () => {
  it('is left by the rule too, where a date before it is due is cheapest', () => {
    const of = household({
      vehicle: { averageUpkeep: 0.9 },
      workNeeded: base.workNeeded.map((job) => ({
        ...job,
        by: 'shop' as const,
        canWait: 9,
        safety: false,
        mayBeDriven: 'yes',
        left: { aMonth: 300, valueLost: 100 },
      })),
    });
    const scenario = scenarioOf(of);
    const { subject, draws } = drawn(scenario, 8);
    const { rule } = chancesOf(
      scenario,
      draws,
      { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 },
      subject,
    );
    expect(subject.options[subject.keep ?? -1]?.id).toBe('keep');
    expect(subject.fixed?.label).toContain('month');
    expect(subject.ruleWay?.treatments).toEqual(['wait', 'wait']);
    expect(rule?.against).toHaveLength(3);
    for (const { saves, id } of rule?.against ?? [])
      expect(saves.value, id).toBeGreaterThanOrEqual(-3 * saves.error - 1);
  });
});
