/** Ways meet one future each alike: what an end costs, when it comes, and what is shared between ways. */
import { describe, expect, it } from 'vitest';
import { chancesOf } from '../../../src/engine/analysis/futuresSummary.ts';
import { waysOf } from '../../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import { type Context, contextOf, EXPECTED } from '../../../src/engine/plans/vehicle/context.ts';
import { laterPlan } from '../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import { walkPlan } from '../../../src/engine/plans/vehicle/walkPlan.ts';
import { keepingFrom } from '../../../src/engine/policy/course.ts';
import type { Inputs } from '../../../src/engine/scenario/inputs/inputs.ts';
import { detailFor } from '../../../src/engine/simulation/cashDetail.ts';
import { coursesOf } from '../../../src/engine/simulation/keepCourse.ts';
import { drawn } from '../../support/drawn.ts';
import { inputs as base } from '../../support/household.ts';
import { component, household, lease, scenarioOf } from './scene.ts';

const done = ['done', 'done'] as const;

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
  it('costs the rule what it costs the plan of keeping, savings or none', () => {
    for (const savings of [null, 200]) {
      const of = two(household({ household: { savings }, vehicle: rusty }));
      const ctx = at(of);
      const keep = waysOf(ctx).open.find((way) => way.id === 'keep');
      const courses = coursesOf(done, ctx);
      const K = keepingFrom(courses.looking(0, 60, 'then'), 0);
      const next = courses.nextAt(0, 'running', 60) ?? Number.NaN;
      const firstDay = presentCostOf(walkPlan(next, 0, 'running', done, ctx), ctx).counted - (K[0] as number);
      const planned = keep ? presentCostOf(keep.build(ctx), ctx).counted : Number.NaN;
      expect(firstDay + (K[60] as number)).toBeCloseTo(planned, 6);
    }
  });

  it('found out in the month of a planned change comes before it, as it does for the rule', () => {
    const ctx = at(household({ household: { savings: null }, vehicle: { ...rusty, loan: null } }));
    const K = keepingFrom(coursesOf(done, ctx).looking(0, 60, 'then'), 0);
    const cost = (k: number): number => presentCostOf(laterPlan(0, k, ctx), ctx).counted;
    const first = cost(11) - (K[11] as number);
    for (const k of [12, 13, 24, 36]) expect(cost(k) - (K[k] as number), `month ${k}`).toBeCloseTo(first, 6);
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
