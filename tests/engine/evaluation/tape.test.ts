/** What is kept on the tape: nothing that a number moves may be in it, whatever number it is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ByReading } from '../../../src/engine/cashflow/posting.ts';
import { waysOf } from '../../../src/engine/evaluation/options.ts';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import { recordingsOf, type Tape } from '../../../src/engine/evaluation/tape.ts';
import { settled } from '../../../src/engine/plans/collision/settlement.ts';
import { type Context, contextOf, EXPECTED, type Future } from '../../../src/engine/plans/vehicle/context.ts';
import { treatmentsOf } from '../../../src/engine/plans/vehicle/keepPlan.ts';
import { type Way, wayOf } from '../../../src/engine/plans/vehicle/option.ts';
import { laterPlan } from '../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import { walkPlan } from '../../../src/engine/plans/vehicle/walkPlan.ts';
import { parseScenario } from '../../../src/engine/scenario/file/parse.ts';
import type {
  BillChange,
  Inputs,
  Replacement,
  UpkeepItem,
} from '../../../src/engine/scenario/inputs/inputs.ts';
import { copyOf } from '../../../src/engine/scenario/inputs/lens.ts';
import type { Scenario } from '../../../src/engine/scenario/inputs/scenario.ts';
import { type Detail, detailFor } from '../../../src/engine/simulation/cashDetail.ts';
import { drawerOf } from '../../../src/engine/simulation/futureDrawer.ts';
import { unknownsOf } from '../../../src/engine/simulation/unknowns.ts';
import { inputs as base } from '../../support/household.ts';
import { component, lease, scenarioOf } from '../simulation/scene.ts';

type Tree = Record<string, unknown>;

/** Dotted keys of all numbers, but of those that are places in a list, or the length of the look ahead. */
const numbersIn = (node: unknown, path: readonly string[] = []): string[] => {
  const name = path.at(-1);
  if (name === 'renews' || name === 'range' || name === 'lookAhead') return [];
  if (typeof node === 'number') return [path.join('.')];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => numbersIn(value, [...path, key]));
};

const moved = (value: number, name: string): number => {
  if (!Number.isInteger(value)) return value * 0.8;
  if (value === 0) return name === 'offTheRoad' ? 2 : 0.05;
  return value <= 20 ? value + 1 : Math.ceil(value * 1.3);
};

/** Moves a number in place, as between one future and the next. */
const move = (inputs: Inputs, key: string): void => {
  const steps = key.split('.');
  const last = steps.pop() ?? '';
  const holder = steps.reduce<Tree>((node, step) => node[step] as Tree, inputs as unknown as Tree);
  holder[last] = moved(holder[last] as number, last);
};

const LATER = [5, 30];

const HOWS = ['repair done', 'repair in money', 'given up', 'kept'] as const;

/** What an insurer would pay, and to whom, whichever way it is asked. */
const settlementsIn = (ctx: Context): number[] =>
  HOWS.flatMap((how) => {
    const { payment, lender, owner, refund, gap } = settled(ctx, { how, replaced: true, days: 9, more: 0 });
    return [payment, lender, owner, refund, gap];
  });

/** Ways of every kind, those that replace or walk away later among them. */
const everyWay = ({ inputs, facts }: Scenario): Way[] => {
  const later = inputs.claim ? [] : LATER;
  const asWay = (id: string, build: Way['build']): Way =>
    wayOf({ id, side: 'later', label: '', treatments: null }, build);
  return [
    ...waysOf(contextOf(inputs, facts, EXPECTED, 'unrounded')).open,
    ...inputs.replacement.flatMap((_, i) =>
      later.map((month) => asWay(`later ${i} ${month}`, (at) => laterPlan(i, month, at))),
    ),
    ...later.map((month) =>
      asWay(`walk ${month}`, (at) =>
        walkPlan(
          0,
          month,
          'broken',
          treatmentsOf(at, () => 'done'),
          at,
        ),
      ),
    ),
  ];
};

type CostOf = (way: Way, ctx: Context, detail: Detail) => ByReading<number>;

/** What a plan costs and takes in cash, put together for these very numbers. */
const plainly: CostOf = (way, ctx, detail) => presentCostOf(way.build(ctx), ctx, detail.sink);

const onTape =
  (tape: Tape): CostOf =>
  (way, ctx, detail) => {
    const compiled = tape.planOf(way, ctx);
    for (const contract of compiled.fixed) contract(detail.sink);
    return tape.costOf(compiled, ctx, detail.sink);
  };

/** Costs in every reading and cash of every way; null where the inputs are none that could be. */
const figuresBy = (costOf: CostOf, ways: readonly Way[], ctx: Context): number[] | null => {
  try {
    const settlements = ctx.inputs.claim ? settlementsIn(ctx) : [];
    const costs = ways.flatMap((way) => {
      const detail = detailFor(ctx.horizon);
      const { counted, cash, shop } = costOf(way, ctx, detail);
      const sum = (all: Float64Array): number => all.reduce((a, b, m) => a + b * (1 + m / 100), 0);
      const { stops, days, worst } = detail;
      return [counted, cash, shop, sum(detail.cash), sum(detail.lumps), sum(stops), sum(days), worst.bill];
    });
    return [...settlements, ...costs];
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
};

const oil: UpkeepItem = {
  name: 'oil',
  everyDistance: 6000,
  everyMonths: 12,
  sinceDistance: 1500,
  sinceMonths: 5,
  renews: [],
  by: 'own',
  parts: 30,
  hours: 0.7,
  shopPrice: 75,
};

const UNCHANGED: Omit<BillChange, 'from'> = {
  cover: null,
  registration: null,
  inspection: null,
  tax: null,
  parkingAMonth: null,
  coverEnds: [],
  why: '',
};

/** Everything there is, and each of it in such a way that it counts. */
const rich = (): Inputs => {
  const [first] = base.replacement as [Replacement];
  const fee = { amount: 300, financed: true, financeCharge: false };
  const cover = {
    aYear: 200,
    deductible: 6000,
    chanceAYear: 0.05,
    meanLoss: 5000,
    totalShare: 0.3,
    other: null,
  };
  const deal: Replacement = {
    ...first,
    tax: { aYear: 80, nextDue: 12 },
    parkingAMonth: 12,
    changes: [{ ...UNCHANGED, from: 17, cover: 900, inspection: 40, tax: 95 }],
    components: [component('pump', { run: 30_000 })],
    salesTax: 0.06,
    tradeInCredit: 500,
    rebate: 700,
    fees: [{ ...fee, name: 'papers' }],
    addOns: [{ ...fee, name: 'mats', financed: false }],
    lowRateInstead: 0.029,
    oneOffs: [{ name: 'winter tyres', month: 4, amount: 480 }],
    value: { kind: 'decline', perYear: 0.19, perDistance: 0.05, downTo: 0 },
    floor: 2500,
    brandFactor: 0.85,
    selling: { cost: 90, hours: 6, weeks: 3 },
  };
  return {
    ...base,
    household: { ...base.household, bigBills: 1, lookAhead: 72, priceOfOwnHour: 9, savings: 900 },
    vehicle: {
      ...base.vehicle,
      upkeep: [oil],
      averageUpkeep: 0,
      tax: { aYear: 60, nextDue: 7 },
      parkingAMonth: 14,
      changes: [
        { ...UNCHANGED, from: 4, cover: 480, coverEnds: ['collision'], why: 'a cover is dropped' },
        { ...UNCHANGED, from: 26, cover: 520, tax: 35, parkingAMonth: 0, registration: 90 },
      ],
      components: [component('gearbox', { scale: 25_000, run: 12_000 })],
      value: { kind: 'decline', perYear: 0.12, perDistance: 0.01, downTo: 0 },
      floor: 400,
      brandFactor: 0.9,
      loan: { owed: 3000, note: 0.1, monthsLeft: 40 },
      storageADay: 12,
      selling: { cost: 40, hours: 5, weeks: 2 },
      sellsFor: {
        running: 7400,
        asItStands: 3900,
        tradeIn: 2600,
        tradeInMended: 3200,
        brokenDown: 900,
        scrap: 450,
      },
      ends: [],
      ownDamage: { collision: cover, comprehensive: { ...cover, deductible: 200 } },
    },
    workNeeded: base.workNeeded.map((job, i) => ({
      ...job,
      canWait: i === 0 ? 15 : 0,
      mayBeDriven: i === 0 ? 'yes' : 'no',
      daysWithout: 6,
      left: { aMonth: 20, valueLost: 300 },
      buyerPays: 0.4,
      renews: i === 0 ? [0] : [],
      patch: { by: 'own', parts: 40, hours: 2, shopPrice: 160, months: 11 },
    })),
    replacement: [
      deal,
      {
        ...deal,
        name: 'a newer one',
        value: {
          kind: 'points',
          points: [
            { month: 0, value: 16_000 },
            { month: 60, value: 5000 },
          ],
        },
        payment: { kind: 'cash' },
        lowRateInstead: null,
      },
      { ...deal, name: 'a leased one', payment: { kind: 'lease', ...lease } },
    ],
  };
};

const demo = (name: string): Scenario => {
  const text = readFileSync(new URL(`../../../scenarios/${name}.yaml`, import.meta.url), 'utf8');
  const parsed = parseScenario(text, { file: name, today: '2026-11-25' });
  if ('problems' in parsed) throw new Error('a demo is not in order');
  return parsed.scenario;
};

/** A claim whose papers, limits and debts all bind, on either policy. */
const bound = (pays: 'own' | 'other'): Scenario => {
  const { inputs, facts, quantities } = demo('owed-sedan');
  if (!inputs.claim || !facts.claim) throw new Error('the demo has a claim');
  const settlement = { tax: 'after salvage', fees: 'paid', source: 'none', evidence: 'stated' } as const;
  const fault = { rule: 'in proportion', source: 'none', evidence: 'stated' } as const;
  return {
    inputs: {
      ...inputs,
      vehicle: { ...inputs.vehicle, loan: { owed: 14_000, note: 0.064, monthsLeft: 47 } },
      claim: {
        ...inputs.claim,
        damageBefore: 200,
        fault: 0.2,
        otherLimit: pays === 'other' ? 7600 : null,
        gap: { limit: 900, notCovered: 150 },
      },
    },
    facts: { ...facts, claim: { ...facts.claim, pays, place: { ...facts.claim.place, settlement, fault } } },
    quantities,
    written: null,
  };
};

const SCENES: Readonly<Record<string, () => Scenario>> = {
  'everything there is': () => scenarioOf(rich()),
  'a claim on the other policy': () => demo('parked-hatchback'),
  'a claim with a lender': () => demo('owed-sedan'),
  'a claim on the own policy, all of it bound': () => bound('own'),
  'a claim on the other policy, all of it bound': () => bound('other'),
  'a van': () => demo('van-gearbox'),
};

const near = (one: readonly number[] | null, other: readonly number[] | null, what: string): void => {
  expect(one === null, what).toBe(other === null);
  expect(one?.length, what).toBe(other?.length);
  one?.forEach((figure, w) => {
    const wanted = other?.[w] as number;
    expect(Math.abs(figure - wanted), `${what}, figure ${w}`).toBeLessThan(
      1e-9 * Math.max(1e3, Math.abs(wanted)),
    );
  });
};

describe.each(['expected', 'drawn'] as const)('a plan on the tape, %s', (kind) => {
  it.each(Object.keys(SCENES))(
    'costs what it costs put together anew, whichever number moves: %s',
    (name) => {
      const scenario = (SCENES[name] as () => Scenario)();
      const { inputs: base, facts } = scenario;
      const ways = everyWay(scenario);
      const drawer = drawerOf(scenario, unknownsOf(scenario), 1, 0);
      const futureAt = (draw: number): Future => (kind === 'drawn' ? drawer.moveTo(draw, null) : EXPECTED);
      const recordings = recordingsOf(contextOf(base, facts, EXPECTED, 'unrounded'));
      const keys = numbersIn(base);
      let counts = 0;
      for (const key of keys) {
        const inputs = copyOf(base);
        const tape = recordings.moving([key]);
        const at = (draw: number): Context => contextOf(inputs, facts, futureAt(draw), 'unrounded');
        const taped = (draw: number): Context =>
          contextOf(inputs, facts, futureAt(draw), 'unrounded', kind === 'drawn' ? null : tape.still);
        const before = figuresBy(onTape(tape), ways, taped(0));
        near(before, figuresBy(plainly, ways, at(0)), key);
        move(inputs, key);
        const anew = figuresBy(plainly, ways, at(0));
        near(figuresBy(onTape(tape), ways, taped(0)), anew, `${key} moved`);
        if (kind === 'drawn')
          near(
            figuresBy(onTape(tape), ways, taped(1)),
            figuresBy(plainly, ways, at(1)),
            `${key}, another future`,
          );
        if (anew?.some((figure, w) => Math.abs(figure - (before?.[w] as number)) > 1e-5)) counts += 1;
      }
      // Most numbers count: a scene in which they did not could not show what is kept wrongly.
      expect(counts).toBeGreaterThan(keys.length / 2);
    },
  );
});

describe('a plan', () => {
  it('that holds on to the numbers it was put together for is told so, not believed', () => {
    const { inputs, facts } = scenarioOf(rich());
    const still = contextOf(inputs, facts, EXPECTED, 'unrounded');
    const [keep] = waysOf(still).open as [Way];
    const holding: Way = {
      ...keep,
      key: -1,
      build: (ctx) => ({
        ...keep.build(ctx),
        owedAt: () => ctx.inputs.household.dayWithout,
      }),
    };
    expect(() => recordingsOf(still).moving([]).planOf(holding, still)).toThrow('after it was put together');
  });

  it('asks no luck while it is put together', () => {
    const scenario = scenarioOf(rich());
    const { inputs, facts } = scenario;
    const drawer = drawerOf(scenario, unknownsOf(scenario), 1, 0);
    const ctx = contextOf(inputs, facts, drawer.moveTo(0, null), 'unrounded');
    const [keep] = waysOf(ctx).open as [Way];
    const lucky: Way = {
      ...keep,
      key: -2,
      build: (at) => {
        if (at.future.kind === 'drawn') at.future.turnsOut('anything');
        return keep.build(at);
      },
    };
    const still = contextOf(inputs, facts, EXPECTED, 'unrounded');
    expect(() => recordingsOf(still).moving([]).planOf(lucky, ctx)).toThrow('luck is for its pieces');
  });
});
