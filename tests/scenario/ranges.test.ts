import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rangeLaw } from '../../src/engine/quantity/range.ts';
import { typingOf } from '../../src/engine/scenario/file/rewrite.ts';
import { inputAt } from '../../src/engine/scenario/inputs/lens.ts';
import { TABLE_PARTS, tablePart } from '../../src/engine/scenario/inputs/partTable.ts';
import { redactScenario } from '../../src/engine/scenario/private/redact.ts';
import { DEFAULTS } from './declared.ts';
import { parse, quantityOf, SHORT_FORM, scenarioOf, withLines } from './scenario.ts';

const FULL_FORM = readFileSync(new URL('./full-form.yaml', import.meta.url), 'utf8');
const full = scenarioOf(FULL_FORM);

const meanOf = (
  low: number,
  likely: number,
  high: number,
  min: number | null,
  max: number | null,
): number => {
  const law = rangeLaw({ low, likely, high, min, max });
  if ('refused' in law) throw new Error(law.refused);
  return law.mean;
};
const distance = (written: string) =>
  quantityOf(
    scenarioOf(SHORT_FORM.replace('miles_a_year: 9000', `miles_a_year: ${written}`)),
    'household.distanceAYear',
  );
const vehicleWith = (line: string) => scenarioOf(withLines({ vehicle: `  ${line}\n` }));

describe('a range', () => {
  it('stands in the base case as the mean of its law, to six digits', () => {
    const { value, range, varies } = distance('{ low: 7000, likely: 9000, high: 12000 }');
    expect(range).toEqual({ low: 7000, likely: 9000, high: 12_000, min: 0, max: null });
    expect(value).toBe(Number(meanOf(7000, 9000, 12_000, 0, null).toPrecision(6)));
    expect(value).not.toBe(9000);
    expect(varies).toBe('once');
  });

  it('says whose it is, as a value does', () =>
    expect(
      distance('{ low: 7000, likely: 9000, high: 12000, how: measured, source: odometer, note: roughly }'),
    ).toMatchObject({ mark: 'measured', source: 'odometer', note: 'roughly', isDefault: false }));

  it('takes min and max for its bounds', () =>
    expect(distance('{ low: 7000, likely: 9000, high: 12000, min: 5000, max: 15000 }').range).toMatchObject({
      min: 5000,
      max: 15_000,
    }));

  it('is in the unit of the household, whatever it was written in', () => {
    const { range, value } = distance('{ low: 10000 km, likely: 14000 km, high: 20000 km }');
    expect(range?.likely).toBeCloseTo(14_000 / 1.609344, 6);
    expect(value).toBeCloseTo(meanOf(10_000, 14_000, 20_000, 0, null) / 1.609344, 1);
  });

  it('of three equal points is that one number', () =>
    expect(distance('{ low: 9000, likely: 9000, high: 9000 }').value).toBe(9000));

  it('of a share keeps between nil and all, of a rise of prices knows no bounds', () => {
    const scenario = scenarioOf(
      withLines({
        top: 'household: { at_home: { share: { low: 30, likely: 60, high: 90 } }, prices_rise: { general: { low: -1, likely: 2, high: 6 } } }\n',
      }),
    );
    expect(quantityOf(scenario, 'household.atHome.share').range).toEqual({
      low: 0.3,
      likely: 0.6,
      high: 0.9,
      min: 0,
      max: 1,
    });
    const general = quantityOf(scenario, 'household.pricesRise.general');
    expect(general.range).toMatchObject({ low: -0.01, min: null, max: null });
    // The mean of an unbounded one in closed form: z50 + a3/2.
    expect(general.value).toBeCloseTo(0.02 + (0.06 - 0.01 - 0.04) / (1.6 * Math.log(9)), 7);
  });

  it('of whole months has a whole mean', () => {
    const { value } = quantityOf(full, 'workNeeded.0.patch.months');
    expect(value).toBe(Math.round(meanOf(2, 4, 9, 0, null)));
  });

  it('agrees with the inputs wherever it stands', () => {
    const ranged = full.quantities.filter(({ range }) => range !== null);
    expect(ranged.length).toBeGreaterThan(12);
    for (const { key, value, min, max } of ranged) {
      expect(inputAt(full.inputs, key), key).toBe(value);
      expect(value >= min && value <= max, key).toBe(true);
    }
  });
});

describe('a range of energy', () => {
  it('has its unit at each point', () => {
    const scenario = vehicleWith('fuel: { economy: { low: 22 mpg, likely: 25 mpg, high: 27 mpg } }');
    expect(quantityOf(scenario, 'vehicle.energy.economy').range).toMatchObject({ low: 22, high: 27 });
    const metric = vehicleWith('fuel: { economy: { low: 8 l/100km, likely: 9 l/100km, high: 11 l/100km } }');
    const { range, value } = quantityOf(metric, 'vehicle.energy.economy');
    expect(range?.low).toBeCloseTo(8 * 1.609344, 9);
    expect(metric.inputs.vehicle.energy.economy).toBe(value);
  });

  it('is bought at one pump: price and range are one number for all', () => {
    const scenario = vehicleWith('fuel: { price: { low: 2.9, likely: 3.4, high: 4.4 } }');
    expect(quantityOf(scenario, 'vehicle.energy.price')).toMatchObject({
      range: { low: 2.9, likely: 3.4, high: 4.4 },
      path: 'household.fuel_price',
      moves: [
        { key: 'vehicle.energy.price', times: 1, plus: 0 },
        { key: 'replacement.0.energy.price', times: 1, plus: 0 },
      ],
    });
    expect(scenario.quantities.filter(({ key }) => key.endsWith('.energy.price'))).toHaveLength(1);
  });
});

describe("what carries the tables to today's prices", () => {
  it('carries its range as well, and everything that hangs on it', () => {
    const scenario = scenarioOf(
      withLines({ top: 'household: { table_price_ratio: { low: 1.3, likely: 1.5, high: 1.8 } }\n' }),
    );
    const ratio = quantityOf(scenario, 'household.tablePriceRatio');
    expect(ratio.range).toMatchObject({ low: 1.3, likely: 1.5, high: 1.8, min: 0 });
    expect(ratio.moves.map(({ key }) => key)).toContain('vehicle.averageUpkeep');
  });
});

describe('a bill', () => {
  const { components, averageRepairs } = full.inputs.vehicle;

  it('of a part is another each time it comes', () => {
    expect(components[0]?.bill).toEqual({
      parts: null,
      hours: null,
      shopPrice: { low: 1600, likely: 2400, high: 3900, min: 0, max: 6000 },
    });
    expect(quantityOf(full, 'vehicle.components.0.shopPrice').varies).toBe('each time');
    expect(quantityOf(full, 'workNeeded.0.parts').varies).toBe('once');
  });

  it('of a repair nobody named has a mean and a spread, given or not', () => {
    expect(averageRepairs.bill).toMatchObject({ range: { low: 100, likely: 280, high: 800 } });
    const usual = scenarioOf(SHORT_FORM).inputs.vehicle.averageRepairs;
    expect(usual.bill.range).toEqual({ low: 110, likely: 320, high: 850, min: 0, max: null });
    expect(usual.strands).toBe(0.08);
    const plain = vehicleWith('usual_repair: 500').inputs.vehicle.averageRepairs.bill;
    expect(plain).toEqual({ mean: 500, range: null });
  });

  it('by default is the mean of its range, in any currency', () => {
    const withRange = DEFAULTS.map(([, one]) => one).filter(({ range }) => range !== undefined);
    expect(withRange.length).toBeGreaterThan(0);
    for (const { value, range } of withRange)
      if (range)
        expect(value).toBe(Number(meanOf(range.low, range.likely, range.high, 0, null).toPrecision(6)));
    // 0.9 euros a dollar; the replacement of the full form gives none of its own.
    expect(full.inputs.replacement[0]?.averageRepairs.bill.range?.likely).toBeCloseTo(288, 9);
    expect(full.inputs.replacement[0]?.averageRepairs.bill.mean).toBeCloseTo(436.448 * 0.9, 2);
  });
});

describe('"it will last another ..."', () => {
  it('is the remaining life of the part that is in; its successors follow their own', () => {
    const part = full.inputs.vehicle.components[0];
    expect(part?.another?.range).toMatchObject({ low: 6, likely: 12, high: 36, min: 0 });
    expect(part?.another?.months).toBeCloseTo(meanOf(6, 12, 36, 0, null), 3);
    expect(part?.scale).toBe(260_000);
    // Its spread is the failure's own luck: drawn as an unknown as well, it would count twice.
    expect(quantityOf(full, 'vehicle.components.0.another.months').varies).toBe('each time');
    expect(full.inputs.vehicle.components[1]?.another).toBeNull();
  });
});

describe('a part of the public table', () => {
  it('needs no life and no price', () => {
    const scenario = vehicleWith('components: [{ name: Timing belt }, { name: spring, like: shocks }]');
    const [belt, spring] = scenario.inputs.vehicle.components;
    // 2019 dollars times the table's ratio of 1.5.
    expect(belt).toMatchObject({ scale: 90_000, clock: 'distance', by: 'shop', shopPrice: 1125 });
    expect(spring).toMatchObject({ scale: 100_000, shopPrice: 1500 });
    expect(quantityOf(scenario, 'vehicle.components.0.scale')).toMatchObject({
      mark: 'table',
      isDefault: true,
      source: expect.stringContaining('stands in for its typical life'),
    });
    const ratio = quantityOf(scenario, 'household.tablePriceRatio');
    expect(typingOf(scenario, ratio)?.at(3)?.inputs.vehicle.components[0]?.shopPrice).toBe(2250);
  });

  it('is carried to kilometres and another currency, and keeps what the file says', () => {
    const part = full.inputs.vehicle.components[2];
    expect(part?.scale).toBeCloseTo(90_000 * 1.609344, 0);
    expect(part?.shopPrice).toBeCloseTo(750 * 1.4 * 0.9, 6);
    const own = vehicleWith(
      'components: [{ name: timing belt, life: { typical: 70000 }, parts: 90, hours: 6 }]',
    );
    expect(own.inputs.vehicle.components[0]).toMatchObject({ scale: 70_000, shopPrice: null, by: 'own' });
  });

  it('is none where the powertrain has no such part', () => {
    expect(tablePart('timing belt', 'battery')).toBeNull();
    expect(tablePart('brake pads', 'battery')).toEqual({ miles: 75_000, dollars: 350 });
    expect(
      'problems' in
        parse(withLines({ vehicle: '  powertrain: battery\n  components: [{ name: timing belt }]\n' })),
    ).toBe(true);
  });

  it('has one meaning for each name', () => {
    const names = TABLE_PARTS.flatMap((part) => part.names);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('what ends the vehicle, and haste', () => {
  it('are read, with what is not said', () => {
    expect(full.inputs.vehicle.ends).toEqual([
      {
        what: 'frame rot',
        chanceAYear: expect.closeTo(meanOf(0.01, 0.03, 0.09, 0, 1), 6),
        risesAYear: 0.005,
      },
      { what: 'parts no longer made', chanceAYear: 0.01, risesAYear: 0 },
    ]);
    expect(full.inputs.vehicle.inAHurry).toEqual({ adds: 400, days: 6, refused: 0.1, refusedCosts: 900 });
    const { ends, inAHurry } = scenarioOf(SHORT_FORM).inputs.vehicle;
    expect(ends).toEqual([]);
    expect(inAHurry).toEqual({ adds: 300, days: 5, refused: 0, refusedCosts: 0 });
  });
});

describe('how the future is drawn', () => {
  it('has defaults that are choices', () =>
    expect(scenarioOf(SHORT_FORM).facts.chance).toEqual({
      seed: 1,
      futures: 16_384,
      correlations: [],
      looks: [],
      monthsWithoutIncome: 3,
      mayRunDry: 0.05,
      setAside: 200,
      pair: null,
    }));

  it('is read, futures rounded up to sixteen times a power of two', () =>
    expect(full.facts.chance).toMatchObject({
      seed: 7,
      futures: 32_768,
      monthsWithoutIncome: 4,
      mayRunDry: 0.1,
      setAside: 120,
      looks: [{ what: 'gearbox opened', costs: 140, component: 0, within: 12, sees: 0.85, clears: 0.85 }],
    }));

  it('may be no future at all, but never so few that they say nothing', () => {
    const asked = (futures: number) =>
      scenarioOf(withLines({ top: `chance: { futures: ${futures} }\n` })).facts.chance.futures;
    expect([0, 1, 256, 257].map(asked)).toEqual([0, 256, 256, 512]);
  });

  it('knows which ranges go together, by their keys', () =>
    expect(full.facts.chance.correlations).toEqual([
      { a: 'household.distanceAYear', b: 'vehicle.energy.economy', rank: 0.3 },
      { a: 'household.pricesRise.energy', b: 'household.pricesRise.general', rank: 0.5 },
    ]));

  it('finds a price that is shared under either vehicle', () => {
    const price = '  fuel: { economy: 25 mpg, price: { low: 2.9, likely: 3.4, high: 4.4 } }\n';
    const text = withLines({
      top: 'household: { day_without: { low: 20, likely: 30, high: 50 } }\ngo_together: [{ a: replacement.fuel.price, b: household.day_without, rank: 0.4 }]\n',
      vehicle: price,
      replacement: price,
    });
    expect(scenarioOf(text).facts.chance.correlations).toEqual([
      { a: 'vehicle.energy.price', b: 'household.dayWithout', rank: 0.4 },
    ]);
  });
});

describe('a private range', () => {
  const text = withLines(
    {
      top: 'private: [savings_for_this, chance.set_aside_each_month]\nchance: { set_aside_each_month: 77 }\n',
    },
    SHORT_FORM.replace('savings_for_this: 2500', 'savings_for_this: { low: 2100, likely: 2600, high: 3300 }'),
  );

  it('is left out of the figures, and disappears whole from what is passed on', () => {
    const { inputs, facts } = scenarioOf(text);
    expect(inputs.household.savings).toBeNull();
    expect(facts.chance.setAside).toBe(200);
    const passed = redactScenario(text);
    expect(passed).not.toMatch(/2100|2600|3300|77|savings|private/);
    expect(scenarioOf(passed).inputs).toEqual(inputs);
    expect(scenarioOf(passed).facts.chance).toEqual(facts.chance);
  });
});
