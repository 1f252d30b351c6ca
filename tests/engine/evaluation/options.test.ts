/** Ways put together from bare households: one thing matters at a time, and its cost can be said in one's head. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluation/evaluate.ts';
import { waysOf } from '../../../src/engine/evaluation/options.ts';
import { evaluatePlan } from '../../../src/engine/evaluation/project.ts';
import { replaceLaterCurve } from '../../../src/engine/evaluation/replacementTiming.ts';
import { type Context, contextOf, EXPECTED } from '../../../src/engine/plans/vehicle/context.ts';
import { laterPlan } from '../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import type {
  Component,
  Inputs,
  Job,
  Replacement,
  RunningCosts,
} from '../../../src/engine/scenario/inputs/inputs.ts';
import type { Facts } from '../../../src/engine/scenario/inputs/scenario.ts';
import { decisionOf } from '../../support/file.ts';
import * as base from '../../support/household.ts';

/** No money earns, no price rises, nothing costs anything to run, nothing loses value. */
const still = {
  priceWhenNew: 20000,
  energy: { stated: 'perUnit', economy: 25, price: 0 },
  cover: { aYear: 0, nextDue: 12 },
  averageUpkeep: 0,
  averageRepairs: { ...base.vehicle.averageRepairs, statedAYear: 0 },
  value: { kind: 'decline', perYear: 0, perDistance: 0, downTo: 0 },
  selling: { cost: 0, hours: 0, weeks: 0 },
} satisfies Partial<RunningCosts>;

const first = base.inputs.replacement[0] as Replacement;
const gasket = base.inputs.workNeeded[0] as Job;
const RISE = { general: 0, energy: 0, cover: 0, repairs: 0, ownTime: 0, vehicles: 0, fees: 0 };

const bare = (change: Partial<Inputs> = {}): Inputs => ({
  ...base.inputs,
  household: { ...base.household, moneyEarns: 0, savings: null, pricesRise: RISE },
  vehicle: { ...base.vehicle, ...still },
  workNeeded: [gasket],
  replacement: [{ ...first, ...still, payment: { kind: 'cash' }, inspectionBefore: 0, catchUp: 0 }],
  ...change,
});

const at = (inputs: Inputs, facts: Partial<Facts> = {}): Context =>
  contextOf(inputs, { ...base.factsOf(inputs), ...facts }, EXPECTED, 'unrounded');

const cost = (inputs: Inputs, id: string): number =>
  evaluate(inputs, EXPECTED, { facts: base.factsOf(inputs), rounding: 'unrounded', only: [id] })[0]
    ?.netPresentCost.counted as number;

const later = (inputs: Inputs, month: number): number => {
  const ctx = at(inputs);
  return evaluatePlan(laterPlan(0, month, ctx), ctx).netPresentCost.counted;
};

const waiting = (canWait: number | null): Job => ({ ...gasket, canWait, mayBeDriven: 'yes' });

describe('work that waits', () => {
  it('until the very last month is not done, and the vehicle goes as it stands', () => {
    const left = (canWait: number) => cost(bare({ workNeeded: [waiting(canWait)] }), 'keep/left');
    expect([59, 60, 61].map(left)).toEqual([640 - 3400, -900, -900]);
  });

  it('patched until the very last month likewise', () => {
    const patch = (months: number) => ({ by: 'own' as const, parts: 50, hours: 0, shopPrice: 90, months });
    const kept = (months: number) =>
      cost(bare({ workNeeded: [{ ...gasket, patch: patch(months) }] }), 'keep/patched');
    expect([59, 60, 61].map(kept)).toEqual([690 - 3400, 50 - 900, 50 - 900]);
  });

  it('until the month of a change of vehicle is not done for it', () => {
    const change = (canWait: number) => later(bare({ workNeeded: [waiting(canWait)] }), 12);
    expect(change(12)).toBe(change(13));
    expect(change(11)).toBeCloseTo(change(12) - (3400 - 900) + 640, 9);
  });

  it('is no way for a vehicle that is not to be driven, nor for one under a recall that says so', () => {
    const ids = (facts: Partial<Facts>) =>
      waysOf(at(bare({ workNeeded: [waiting(null)] }), facts)).open.map(({ id }) => id);
    expect(ids({})).toContain('keep/left');
    expect(ids({ mayBeDriven: false })).not.toContain('keep/left');
    expect(ids({ recallStop: true })).not.toContain('keep/left');
  });

  it('a safety job is never met by a patch', () => {
    const patch = { by: 'own' as const, parts: 50, hours: 0, shopPrice: 90, months: 24 };
    const ways = waysOf(at(bare({ workNeeded: [{ ...gasket, safety: true, patch }] })));
    expect(ways.open.map(({ id }) => id)).not.toContain('keep/patched');
    expect(ways.closed.find(({ id }) => id === 'keep/patched')?.why).toMatch(/safety/);
  });
});

describe("a component's clock", () => {
  const part: Component = {
    name: 'gearbox',
    by: 'shop',
    parts: 0,
    hours: 0,
    shopPrice: 1000,
    clock: 'months',
    scale: 60,
    shape: 4,
    run: 60,
    another: null,
    bill: { parts: null, hours: null, shopPrice: null },
    repairIs: 'renewal',
    tow: 0,
    daysWithout: 0,
    unsafe: false,
    shareOfAverage: 0,
  };
  const repairs = (canWait: number): number => {
    const job = { ...waiting(canWait), parts: 0, hours: 0, shopPrice: 0, renews: [0] };
    const inputs = bare({ vehicle: { ...base.vehicle, ...still, components: [part] }, workNeeded: [job] });
    return cost(inputs, canWait === 0 ? 'keep' : 'keep/left') + 3400;
  };

  it('restarts in the month the work is done, not never: putting it off a month costs a month of risk', () => {
    expect(repairs(1) - repairs(0)).toBeGreaterThan(0);
    expect(repairs(1) - repairs(0)).toBeLessThan(80);
    expect(repairs(12)).toBeGreaterThan(repairs(1) + 300);
  });
});

describe('scheduled replacement', () => {
  it("restarts a component's clock each time it falls due", () => {
    const part: Component = {
      name: 'water pump',
      by: 'shop',
      parts: 0,
      hours: 0,
      shopPrice: 1000,
      clock: 'months',
      scale: 40,
      shape: 6,
      run: 0,
      another: null,
      bill: { parts: null, hours: null, shopPrice: null },
      repairIs: 'renewal',
      tow: 0,
      daysWithout: 0,
      unsafe: false,
      shareOfAverage: 0,
    };
    const item = {
      name: 'belt and pump',
      by: 'own' as const,
      parts: 0,
      hours: 0,
      shopPrice: 0,
      everyDistance: null,
      everyMonths: 20,
      sinceDistance: 0,
      sinceMonths: 0,
    };
    const repairs = (renews: number[]): number =>
      cost(
        bare({
          workNeeded: [],
          vehicle: { ...base.vehicle, ...still, components: [part], upkeep: [{ ...item, renews }] },
        }),
        'keep',
      ) + 3400;
    // Never older than 20 months: three stretches of 1 - exp(-(20/40)^6), second failures within one left aside.
    expect(repairs([0])).toBeCloseTo(3000 * (1 - Math.exp(-(0.5 ** 6))), 0);
    expect(repairs([])).toBeGreaterThan(900);
  });
});

describe('a change of vehicle in month k', () => {
  it('finds a table of values grown with the price', () => {
    const table = { kind: 'points' as const, points: [{ month: 60, value: 8010 }] };
    const inputs = bare({ workNeeded: [] });
    const growing = {
      ...inputs,
      household: { ...inputs.household, pricesRise: { ...RISE, vehicles: 0.05 } },
      replacement: [{ ...(inputs.replacement[0] as Replacement), value: table, floor: 0 }],
    };
    const ctx = at(growing);
    expect(laterPlan(0, 48, ctx).valueAt(ctx, 60)('cash')).toBeCloseTo(14418 * 1.05 ** 4, 6);
  });

  it('is paid from savings and what is put by till then, and only the rest from the card', () => {
    const rich = bare({ workNeeded: [] });
    const saving = (savings: number | null) => ({
      ...rich,
      household: { ...rich.household, savings, spareEachMonth: 300, cardRate: 0.22 },
    });
    // 17,800 less the sale at 3,400 is 14,400: 2,400 put by and 300 a month reach it in month 40.
    expect(later(saving(2400), 40)).toBeCloseTo(later(saving(null), 40), 6);
    const interest = later(saving(2400), 12) - later(saving(null), 12);
    const payment = 0.22 / 12 / (1 - (1 + 0.22 / 12) ** -24);
    expect(interest).toBeCloseTo((14400 - 2400 - 3600) * (payment * 24 - 1), 4);
  });

  it('in month 0 with nothing to mend is the private sale of today', () => {
    const loan = { owed: 3000, note: 0.06, monthsLeft: 20 };
    const payment = {
      ...(base.replacement.payment as Extract<Replacement['payment'], { kind: 'loan' }>),
      rollInShortfall: true,
    };
    const inputs = bare({
      workNeeded: [],
      vehicle: { ...base.vehicle, ...still, loan },
      replacement: [{ ...first, ...still, payment, inspectionBefore: 0, catchUp: 0 }],
    });
    expect(later(inputs, 0)).toBeCloseTo(cost(inputs, 'replace/2021-hatchback/as-it-stands/private'), 9);
    expect(replaceLaterCurve(0, at(inputs))?.curve).toHaveLength(61);
  });
});

describe('letting it go', () => {
  it('to do without takes no trade-in, and what leaves most once it is sold', () => {
    const without = (selling: number) => {
      const vehicle = {
        ...base.vehicle,
        ...still,
        selling: { cost: selling, hours: 0, weeks: 0 },
        sellsFor: { ...base.vehicle.sellsFor, tradeIn: 1200, asItStands: 900, scrap: 800 },
      };
      return cost(bare({ vehicle, doingWithout: { aDay: 0, daysAMonth: 0 } }), 'without');
    };
    expect(without(0)).toBe(-900);
    expect(without(300)).toBe(-800);
  });

  it('mended brings what buyers pay for the work on the day, as it does at the end', () => {
    const inputs = bare({ workNeeded: [{ ...gasket, buyerPays: 0.1 }] });
    expect(cost(inputs, 'keep')).toBeCloseTo(640 - 3400 - 290, 9);
    expect(cost(inputs, 'replace/2021-hatchback/mended/private')).toBeCloseTo(
      640 - 3400 - 290 + 17800 - 16020,
      9,
    );
  });

  it('under a branded title costs its part today as later', () => {
    const inputs = bare({ workNeeded: [], vehicle: { ...base.vehicle, ...still, brandFactor: 0.6 } });
    expect(cost(inputs, 'keep')).toBeCloseTo(-0.6 * 3400, 9);
    expect(cost(inputs, 'replace/2021-hatchback/as-it-stands/private')).toBeCloseTo(
      -0.6 * 3400 + 17800 - 16020,
      9,
    );
  });
});

describe('two numbers for a line', () => {
  it.each([
    ['a price that is nil today', ['miles_a_year', 'household.price_of_own_hour']],
    ['whole numbers', ['replacement.loan.months', 'household.look_ahead']],
  ])('%s', (_, twoWay) => {
    const decision = decisionOf((file) => {
      file.household = { price_of_own_hour: 0, look_ahead: 60 };
      file.two_way = twoWay;
    });
    expect(decision.breakEvenLine?.points).toHaveLength(13);
  });
});
