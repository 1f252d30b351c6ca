/** K of the repair limit by two routes: cut out of projections that run on, and as the net present cost of whole plans. */
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../../src/engine/plans/vehicle/context.ts';
import type { Treatments } from '../../../src/engine/plans/vehicle/neededWork.ts';
import { walkPlan } from '../../../src/engine/plans/vehicle/walkPlan.ts';
import { keepingFrom } from '../../../src/engine/policy/course.ts';
import { costAhead, NEVER, stateOf } from '../../../src/engine/policy/part.ts';
import type { Inputs } from '../../../src/engine/scenario/inputs/inputs.ts';
import { coursesOf } from '../../../src/engine/simulation/keepCourse.ts';
import { partsOf } from '../../../src/engine/simulation/policyParts.ts';
import { factsOf, inputs } from '../../support/household.ts';
import { component, household, lease } from './scene.ts';

const FARTHEST = 100;

const at = (of: Inputs, lookAhead: number) =>
  contextOf({ ...of, household: { ...of.household, lookAhead } }, factsOf(of), EXPECTED, 'unrounded');

const done: Treatments = inputs.workNeeded.map(() => 'done');

/** Yearly bills at odd dates, a present loan, little saved: whatever a cut may get wrong. */
const busy = household({
  household: { savings: 900, spareEachMonth: 20, priceOfOwnHour: 15 },
  vehicle: {
    cover: { aYear: 620, nextDue: 5 },
    registration: { aYear: 140, nextDue: 8 },
    loan: { owed: 2100, note: 0.07, monthsLeft: 31 },
    inAHurry: { adds: 300, days: 6, refused: 0.1, refusedCosts: 2500 },
    storageADay: 15,
  },
  replacement: {
    registration: { aYear: 210, nextDue: 12 },
    components: [component('its gearbox', { scale: 120_000, run: 38_000 })],
    guarantee: { months: 18, distance: 0 },
  },
});

const CASES: readonly (readonly [string, Inputs])[] = [
  ['a loan, yearly bills and a card', busy],
  [
    'cash and no savings told',
    household({ household: { savings: null }, replacement: { payment: { kind: 'cash' } } }),
  ],
  [
    'a shortfall rolled in',
    household({
      vehicle: { loan: { owed: 6000, note: 0.07, monthsLeft: 50 } },
      replacement: {
        payment: { ...(inputs.replacement[0]?.payment as object), rollInShortfall: true } as never,
      },
    }),
  ],
  ['leases one after the other', household({ replacement: { payment: { kind: 'lease', ...lease } } })],
  [
    'a lease ended early',
    household({ replacement: { payment: { kind: 'lease', ...lease, earlyTermination: 1800 } } }),
  ],
  [
    'a lease bought at its end',
    household({ replacement: { payment: { kind: 'lease', ...lease, afterwards: 'buy' } } }),
  ],
];

describe('keeping to a month and then replacing', () => {
  for (const [name, of] of CASES)
    for (const until of [30, 60, 84])
      it(`is what the whole plan costs after its first day: ${name}, looking ${until} months`, () => {
        const course = coursesOf(done, at(of, FARTHEST)).looking(0, until, 'always');
        const ctx = at(of, until);
        const cost = (month: number, how: 'running' | 'broken'): number =>
          presentCostOf(walkPlan(0, month, how, done, ctx), ctx).counted;
        const K = keepingFrom(course, 0);
        const firstDay = cost(0, 'running') - (K[0] as number);
        for (let k = 0; k <= until; k++) {
          expect(cost(k, 'running') - firstDay - (K[k] as number), `month ${k}`).toBeCloseTo(0, 6);
          const worse = (course.stoppingBroken[k] as number) - (course.stopping[k] as number);
          const discount = course.weights.falling[k] as number;
          expect(cost(k, 'broken') - cost(k, 'running') - discount * worse, `broken ${k}`).toBeCloseTo(0, 6);
        }
      });

  it('puts work that waits where it is done, and only if the vehicle is kept on', () => {
    const waiting = household({
      workNeeded: inputs.workNeeded.map((job) => ({
        ...job,
        safety: false,
        mayBeDriven: 'yes',
        canWait: 7,
        left: { aMonth: 12, valueLost: 300 },
      })),
    });
    const wait: Treatments = waiting.workNeeded.map(() => 'wait');
    const ctx = at(waiting, 36);
    const course = coursesOf(wait, ctx).looking(0, 36, 'then');
    const K = keepingFrom(course, 0);
    const cost = (k: number): number => presentCostOf(walkPlan(0, k, 'running', wait, ctx), ctx).counted;
    for (const k of [0, 6, 7, 8, 20, 36]) expect(cost(k) - (K[k] as number), `month ${k}`).toBeCloseTo(0, 6);
    expect(course.ifKeptOn[7]).toBeGreaterThan(0);
  });

  it('counts what may end it as the ledger of keeping it does', () => {
    const of = household({
      household: { savings: null },
      vehicle: { ends: [{ what: 'rust', chanceAYear: 0.1, risesAYear: 0.06 }] },
    });
    for (const until of [48, 60]) {
      const ctx = at(of, until);
      const K = keepingFrom(coursesOf(done, at(of, FARTHEST)).looking(0, until, 'then'), 0);
      const firstDay = presentCostOf(walkPlan(0, 0, 'running', done, ctx), ctx).counted - (K[0] as number);
      const keep = waysOf(ctx)
        .open.find((way) => way.id === 'keep')
        ?.build(ctx);
      if (!keep) throw new Error('keeping it is open');
      expect(presentCostOf(keep, ctx).counted - firstDay).toBeCloseTo(K[until] as number, 6);
    }
  });

  it('adds the components by their clocks, within a thousandth of the ledger', () => {
    const of = household({
      vehicle: {
        components: [
          component('gearbox'),
          component('alternator', { repairIs: 'patch', shape: 2, shopPrice: 500 }),
          component('pump', {
            clock: 'months',
            scale: 90,
            run: 40,
            another: { months: 14, range: { low: 5, likely: 13, high: 25, min: 0, max: null } },
          }),
          component('belt', { shopPrice: 900, run: 60_000, scale: 90_000, shape: 5 }),
        ],
        upkeep: [
          {
            name: 'belt change',
            by: 'shop',
            parts: 0,
            hours: 0,
            shopPrice: 600,
            everyMonths: 40,
            everyDistance: null,
            sinceMonths: 20,
            sinceDistance: 0,
            renews: [3],
          },
        ],
      },
    });
    const ctx = at(of, 60);
    const parts = partsOf(done, ctx);
    const course = coursesOf(done, ctx).looking(0, 60, 'then');
    const base = keepingFrom(course, 0);
    const rows = parts.map((part) => costAhead(part, 0, stateOf(part, 0, NEVER), course.weights, 60));
    const cost = (k: number): number => presentCostOf(walkPlan(0, k, 'running', done, ctx), ctx).counted;
    const firstDay = cost(0) - (base[0] as number);
    for (const k of [1, 10, 20, 21, 40, 60]) {
      const K = rows.reduce((sum, row) => sum + (row[k] as number), base[k] as number);
      expect(Math.abs((cost(k) - firstDay) / K - 1), `month ${k}`).toBeLessThan(0.001);
    }
  });
});
