import { describe, expect, it } from 'vitest';
import { billAnswer, billableNames } from '../../../src/engine/analysis/repairBill.ts';
import { walkAwayOf } from '../../../src/engine/analysis/repairLimitTable.ts';
import type { ComponentLimit, WalkAway } from '../../../src/engine/analysis/repairLimitView.ts';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../../src/engine/plans/vehicle/context.ts';
import type { Treatments } from '../../../src/engine/plans/vehicle/neededWork.ts';
import { presentBrokenAt } from '../../../src/engine/plans/vehicle/retirement.ts';
import { walkPlan } from '../../../src/engine/plans/vehicle/walkPlan.ts';
import type { Inputs } from '../../../src/engine/scenario/inputs/inputs.ts';
import { ruleFor } from '../../../src/engine/simulation/repairLimitPolicy.ts';
import { factsOf, inputs } from '../../support/household.ts';
import { component, household, scenarioOf } from '../simulation/scene.ts';

const done: Treatments = inputs.workNeeded.map(() => 'done');

const walkAway = (of: Inputs): WalkAway => {
  const found = walkAwayOf(scenarioOf(of));
  if (!found) throw new Error('a limit was expected');
  return found;
};
const limitsOf = (of: Inputs, position: number | null): readonly number[] =>
  (walkAway(of).components.find((one) => one.position === position) as ComponentLimit).byMonth.map(
    ({ limit }) => limit,
  );

const none = { general: 0, energy: 0, cover: 0, repairs: 0, ownTime: 0, vehicles: 0, fees: 0 };

/** Nothing moves: no growth, no decline, lives that forget their age, no bill that comes but once a year. */
const still = household({
  household: { pricesRise: none, savings: null },
  workNeeded: [],
  vehicle: {
    components: [
      component('gearbox', { shape: 1, scale: 90_000 }),
      component('alternator', { repairIs: 'patch', shape: 1, scale: 60_000, shopPrice: 450 }),
    ],
    averageRepairs: { ...inputs.vehicle.averageRepairs, statedAYear: 700 },
    cover: { aYear: 0, nextDue: 12 },
    value: { kind: 'decline', perYear: 0, perDistance: 0, downTo: 0 },
    sellsFor: { ...inputs.vehicle.sellsFor, asItStands: 900 },
    parkingAMonth: 0,
  },
  replacement: {
    payment: { kind: 'cash' },
    averageRepairs: { ...inputs.vehicle.averageRepairs, statedAYear: 300 },
    cover: { aYear: 0, nextDue: 12 },
    value: { kind: 'decline', perYear: 0, perDistance: 0, downTo: 0 },
  },
});

describe('the largest bill worth paying', () => {
  it('is the same in every month for a vehicle that stands still', () => {
    const { components } = walkAway(still);
    expect(components.map(({ position }) => position)).toEqual([0, 1, null]);
    for (const { byMonth } of components) {
      expect(byMonth.length).toBe(25);
      const first = byMonth[0]?.limit as number;
      // More than the 2,500 that mending it to sell it is worth: going on is.
      expect(first).toBeGreaterThan(2600);
      for (const { limit } of byMonth) expect(limit).toBeCloseTo(first, 6);
    }
  });

  it('rises with age where a large bill lies ahead, and has been paid', () => {
    const belt = {
      name: 'timing belt',
      by: 'shop',
      parts: 0,
      hours: 0,
      shopPrice: 1500,
      everyMonths: 120,
      everyDistance: null,
      sinceMonths: 108,
      sinceDistance: 0,
      renews: [],
    } as const;
    const limits = limitsOf({ ...still, vehicle: { ...still.vehicle, upkeep: [belt], averageUpkeep: 0 } }, 0);
    // At the end of month 12 the belt is paid; before, walking away saves it.
    expect(limits[12]).toBeGreaterThan((limits[11] as number) + 1000);
  });

  it('falls while a part that nobody repairs wears out', () => {
    const worn = component('gearbox', { shape: 4, shopPrice: 1500, scale: 260_000 });
    const limits = limitsOf({ ...still, vehicle: { ...still.vehicle, components: [worn] } }, null);
    expect(limits[24]).toBeLessThan((limits[0] as number) - 100);
  });

  it('does not hang on the order of the components', () => {
    const turned = {
      ...still,
      vehicle: { ...still.vehicle, components: still.vehicle.components.toReversed() },
    };
    const [a, b] = [limitsOf(still, 0), limitsOf(turned, 1)];
    a.forEach((limit, m) => {
      expect(limit).toBeCloseTo(b[m] as number, 6);
    });
  });

  it('is as the rule has it today, where both look as far', () => {
    const of = household({
      vehicle: { components: [component('gearbox'), component('pump', { shopPrice: 600 })] },
    });
    const rule = ruleFor(of, factsOf(of), done, 0);
    const nothing = Int16Array.of(-1, -1);
    for (const position of [0, 1, null])
      expect(limitsOf(of, position)[0]).toBeCloseTo(rule.limit(0, position ?? -1, nothing), 6);
  });

  it('looks twice as far only where anything is looked at so far', () => {
    const far = { ...still, household: { ...still.household, lookAhead: 132 } };
    expect(walkAway(far).components[0]?.byMonth.every(({ lookingTwice }) => lookingTwice === null)).toBe(
      true,
    );
    expect(walkAway(still).components[0]?.byMonth.every(({ lookingTwice }) => lookingTwice !== null)).toBe(
      true,
    );
  });

  it('says that it hangs on how far one looks where the two differ by more than a fifth', () => {
    const { components } = walkAway(still);
    for (const { byMonth, hangsOnHorizon } of components)
      expect(hangsOnHorizon).toBe(
        byMonth.some((p) => Math.abs((p.lookingTwice as number) - p.limit) > p.limit / 5),
      );
  });

  it('is not there where no replacement is open, or keeping is not', () => {
    const facts = factsOf(inputs);
    const seats = { what: 'seats', atLeast: 7, fromMonth: 0 };
    const closed = { ...facts, needs: [seats], offers: { vehicle: {}, replacement: [{ seats: 5 }] } };
    expect(walkAwayOf({ inputs, facts: closed, quantities: [], written: null })).toBeNull();
    expect(
      walkAwayOf({ inputs, facts: { ...facts, structuralRust: 'found' }, quantities: [], written: null }),
    ).toBeNull();
  });
});

describe('the rule followed', () => {
  it('replaces today where that is cheaper than the needed work and all that follows, and not where it is dear', () => {
    const dear = inputs;
    const cheap = household({
      replacement: {
        price: 1200,
        payment: { kind: 'cash' },
        worthDayAfter: 1100,
        cover: { aYear: 400, nextDue: 12 },
      },
    });
    const walksToday = (of: Inputs): boolean =>
      ruleFor(of, factsOf(of), done, 0).walksAt(0, new Int16Array(0));
    expect(walksToday(dear)).toBe(false);
    expect(walksToday(cheap)).toBe(true);
  });

  it('counts what may end the vehicle: the surer its end, the less a bill for it is worth', () => {
    const ending = (chanceAYear: number): number => {
      const of = household({
        vehicle: {
          components: [component('gearbox')],
          ends: chanceAYear > 0 ? [{ what: 'rust', chanceAYear, risesAYear: 0.05 }] : [],
        },
      });
      return limitsOf(of, 0)[0] as number;
    };
    expect(ending(0.3)).toBeLessThan(ending(0.1));
    expect(ending(0.1)).toBeLessThan(ending(0));
  });
});

describe('walking away', () => {
  const of = household({
    vehicle: {
      inAHurry: { adds: 400, days: 5, refused: 0.2, refusedCosts: 1000 },
      storageADay: 20,
    },
  });
  const ctx = contextOf(of, factsOf(of), EXPECTED, 'unrounded');

  it('brings the same part of its running value broken as today, not less than scrap', () => {
    const share = 900 / 3400;
    expect(presentBrokenAt(done, 0, ctx)).toBeCloseTo(900, 9);
    expect(presentBrokenAt(done, 24, ctx)).toBeCloseTo(Math.max(450, share * 3400 * 0.851 ** 2), 9);
    expect(presentBrokenAt(done, 60, ctx)).toBe(450);
  });

  it('adds once what a hurry adds: money, days and their storage, the chance of a loan refused', () => {
    const cost = (how: 'running' | 'broken', inAHurry = of.vehicle.inAHurry): number => {
      const changed = { ...of, vehicle: { ...of.vehicle, inAHurry } };
      const at = contextOf(
        { ...changed, household: { ...changed.household, savings: null } },
        ctx.facts,
        EXPECTED,
        'unrounded',
      );
      return presentCostOf(walkPlan(0, 12, how, done, at), at).counted;
    };
    const peace = { adds: 0, days: 0, refused: 0, refusedCosts: 0 };
    const later = 1.025 * 1.04 ** -1;
    // Days without are re-priced once a year: month 12 is still the first.
    const hurry = (400 + 0.2 * 1000 + 5 * 20) * later + (5 * 35) / 1.04;
    expect(cost('broken') - cost('broken', peace)).toBeCloseTo(hurry, 6);
    expect(cost('running') - cost('running', peace)).toBeCloseTo(0, 9);
  });
});

describe("a shop's bill", () => {
  const of = household({ vehicle: { components: [component('gearbox', { unsafe: true })] } });
  const found = walkAway(of);
  const gearbox = found.components[0] as ComponentLimit;
  const limit = gearbox.byMonth[0]?.limit as number;
  const days = 4 * 35;

  it('is paid below the limit, days without included, and not above', () => {
    const [pay, walk] = [limit * 0.8 - days, limit * 1.2 - days].map((amount) =>
      billAnswer(found, gearbox, amount),
    );
    expect(pay).toMatchObject({ component: 'gearbox', answer: 'pay', unsafe: true });
    expect(pay?.paying).toBeCloseTo(limit * 0.8, 6);
    expect(pay?.by).toBeCloseTo(limit * 0.2, 6);
    expect(walk?.answer).toBe('walk away');
    expect(walk?.by).toBeCloseTo(limit * 0.2, 6);
    expect(billAnswer(found, gearbox, limit - days).answer).toBe('even');
  });

  it('says where looking twice as far turns the answer', () => {
    const twice = gearbox.byMonth[0]?.lookingTwice as number;
    const between = (limit + twice) / 2 - days;
    expect(Math.abs(twice - limit)).toBeGreaterThan(0.05 * limit);
    expect(billAnswer(found, gearbox, between).otherwiseLookingTwice).toBe(true);
    expect(billAnswer(found, gearbox, 1).otherwiseLookingTwice).toBe(false);
  });

  it('can be for any component by name; what nobody named has none', () => {
    expect(billableNames(found)).toEqual(['gearbox']);
  });
});
