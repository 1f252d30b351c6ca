import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { typingOf } from '../../src/engine/scenario/file/rewrite.ts';
import { inputAt, withInput } from '../../src/engine/scenario/inputs/lens.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { parse, quantityOf, SHORT_FORM, scenarioOf } from './scenario.ts';

const FULL_FORM = readFileSync(new URL('./full-form.yaml', import.meta.url), 'utf8');

/** Every number of the inputs, by its dotted key. */
const leaves = (node: unknown, key = ''): string[] => {
  if (typeof node === 'number') return [key];
  if (node === null || typeof node !== 'object') return [];
  return Object.entries(node).flatMap(([step, below]) => leaves(below, key === '' ? step : `${key}.${step}`));
};

/** What a file takes as another number: a model year for an age, a reading for what was driven since; none for the ratio. */
const TOLD_OTHERWISE = /\.age$|\.sinceDistance$|^household\.tablePriceRatio$/;

/** No reader's to change: positions, "no" said in words, what a bought vehicle has no use for, the currency's rate. */
const FIXED = [
  /\.renews\.\d+$/,
  /\.canWait$/,
  /^replacement\.\d+\.\w+\.nextDue$/,
  /\.averageRepairs\.(perDollar|typeFactor|priceRatio)$/,
  // How far a unit of distance is, and another one like any vehicle as usual.
  /^household\.milesAUnit$|^usualLike\./,
  // Where all pay one price at the pump it is one number, and a lease's price is what it starts from.
  /\.energy\.price$|\.payment\.startsFrom$/,
  /\.brandFactor$/,
  /\.points\.0\.(month|value)$/,
  /\.(sinceDistance|sinceMonths)$/,
  // A date of the file, by the month it holds from.
  /\.changes\.\d+\.from$/,
  // The points of a law that the number beside it is the mean of.
  /\.range\.(low|likely|high|min|max)$|\.bill\.(parts|hours|shopPrice)\.(low|likely|high|min|max)$/,
];

describe.each([
  ['the short form', SHORT_FORM],
  ['the full form', FULL_FORM],
])('the quantities of %s', (_, text) => {
  const scenario: Scenario = scenarioOf(text);
  const { inputs, quantities } = scenario;

  it('agree with the inputs, each once', () => {
    for (const { key, value } of quantities)
      if (!TOLD_OTHERWISE.test(key)) expect(inputAt(inputs, key), key).toBe(value);
    expect(new Set(quantities.map(({ key }) => key)).size).toBe(quantities.length);
  });

  it('lie within their ranges, have words, and whole ones are whole', () => {
    for (const { key, value, min, max, integer, label, source } of quantities) {
      expect(value >= min && value <= max, `${key}: ${value} in ${min}..${max}`).toBe(true);
      expect(min < max, key).toBe(true);
      if (integer) expect(Number.isInteger(value), key).toBe(true);
      expect(label.length > 3 && source.length > 2, key).toBe(true);
    }
  });

  it('cover every number a reader may change', () => {
    const noted = new Set(quantities.map(({ key }) => key));
    const silent = leaves(inputs).filter((key) => !noted.has(key) && !FIXED.some((fixed) => fixed.test(key)));
    // An absent second attempt or a further find has a chance of nil and no amounts; an upkeep list has no average.
    // What a course of a claim leaves behind is nil in a file; the most a place credits is the place's.
    const absent =
      /\.(notCured|moreFound)\.(parts|hours|shopPrice)$|^vehicle\.(averageUpkeep|damage|offTheRoad)$|\.tradeInCredit$/;
    expect(silent.filter((key) => !absent.test(key))).toEqual([]);
  });

  it('can each be changed without touching another', () => {
    for (const { key, value } of quantities.filter((one) => !TOLD_OTHERWISE.test(one.key))) {
      const changed = withInput(inputs, key, value + 1);
      expect(inputAt(changed, key)).toBe(value + 1);
      expect(inputAt(inputs, key)).toBe(value);
      expect(withInput(changed, key, value)).toEqual(inputs);
    }
  });
});

describe('the lens', () => {
  const { inputs } = scenarioOf(SHORT_FORM);

  it('shares what it does not touch', () => {
    const changed = withInput(inputs, 'replacement.0.payment.apr', 0.05);
    expect(changed.vehicle).toBe(inputs.vehicle);
    expect(changed.replacement[0]?.value).toBe(inputs.replacement[0]?.value);
  });

  it.each(['vehicle.nothing', 'replacement.7.price', 'vehicle', '', '__proto__.x', 'vehicle.constructor'])(
    'refuses "%s"',
    (key) => {
      expect(() => inputAt(inputs, key)).toThrow(RangeError);
      expect(() => withInput(inputs, key, 1)).toThrow(RangeError);
    },
  );
});

describe('a number typed into the file', () => {
  const scenario = scenarioOf(SHORT_FORM);
  const at = (key: string, value: number, of = scenario) => {
    const typed = typingOf(of, quantityOf(of, key))?.at(value);
    if (!typed) throw new Error(`${key} cannot be typed`);
    return typed.inputs;
  };

  it('moves all that is one number: one pump, one carriage of the tables, average upkeep with it', () => {
    const pump = at('vehicle.energy.price', 4.2);
    expect([pump.vehicle.energy.price, pump.replacement[0]?.energy.price]).toEqual([4.2, 4.2]);
    const dearer = at('household.tablePriceRatio', 3);
    expect(dearer.replacement[0]?.averageRepairs.priceRatio).toBe(3);
    expect(dearer.vehicle.averageUpkeep).toBeCloseTo(0.101 * 3, 9);
  });

  it('moves what was filled in from it', () => {
    const cheaper = at('replacement.0.price', 10_000).replacement[0];
    expect([cheaper?.price, cheaper?.worthDayAfter, cheaper?.floor]).toEqual([10_000, 8_330, 500]);
    expect(at('vehicle.sellsFor.asItStands', 700).vehicle).toMatchObject({
      floor: 350,
      sellsFor: { asItStands: 700, scrap: 350 },
    });
  });

  it('raises what rises with prices in general, where nothing else was given', () => {
    expect(at('household.pricesRise.general', 0.06).household.pricesRise.cover).toBe(0.06);
    const given = scenarioOf(`${SHORT_FORM}household: { prices_rise: { insurance: 7 } }\n`);
    expect(at('household.pricesRise.general', 0.06, given).household.pricesRise).toMatchObject({
      cover: 0.07,
      energy: 0.06,
    });
  });

  it.each(['km_a_year: 14000\ncurrency: EUR\nper_dollar: 0.9'])(
    'shows what carries the tables as the file takes it, in any currency and distance: %s',
    (units) => {
      const text = SHORT_FORM.replace('miles_a_year: 9000', units).replaceAll('$', '');
      const ratio = quantityOf(scenarioOf(text), 'household.tablePriceRatio');
      expect(ratio).toMatchObject({ value: 1.5, path: 'household.table_price_ratio' });
    },
  );
});

describe('whose number it is', () => {
  it('follows the file, then the usual', () => {
    const text = SHORT_FORM.replace(
      'insurance_a_year: 620',
      'insurance_a_year: { value: "640 USD", how: guess, source: last year, note: may rise }',
    );
    const scenario = scenarioOf(text);
    expect(quantityOf(scenario, 'vehicle.cover.aYear')).toMatchObject({
      value: 640,
      mark: 'guess',
      source: 'last year',
      note: 'may rise',
      isDefault: false,
      label: 'yearly cost of insurance, 2009 wagon',
      path: 'vehicle.insurance_a_year',
    });
    expect(quantityOf(scenario, 'replacement.0.cover.aYear').mark).toBe('quoted');
    expect(quantityOf(scenario, 'vehicle.odometer').mark).toBe('measured');
    expect(quantityOf(scenario, 'workNeeded.0.hours').mark).toBe('guess');
  });

  it('names the table behind a table value, with where it stretches it', () => {
    const scenario = scenarioOf(SHORT_FORM);
    expect(quantityOf(scenario, 'vehicle.averageRepairs.scale')).toMatchObject({
      mark: 'table',
      isDefault: true,
    });
    expect(quantityOf(scenario, 'vehicle.averageRepairs.scale').source).toContain('ten years');
    expect(quantityOf(scenario, 'household.tablePriceRatio').source).toContain('from memory');
  });

  it('keeps paths that lead back to the file', () => {
    const scenario = scenarioOf(FULL_FORM);
    expect(quantityOf(scenario, 'replacement.0.payment.apr').path).toBe('replacement.0.loan.apr');
    expect(quantityOf(scenarioOf(SHORT_FORM), 'replacement.0.payment.apr').path).toBe('replacement.loan.apr');
    const result = parse(FULL_FORM);
    const billsOf = (i: number) =>
      ['inspection_a_year', 'parking_a_month', 'registration_a_year', 'tax_a_year'].map(
        (bill) => `replacement.${i}.${bill}`,
      );
    expect('warnings' in result && result.warnings.map((warning) => warning.path)).toEqual([
      'work_needed.0.quote_ends',
      ...billsOf(0),
      'replacement.0.upkeep',
      ...billsOf(1),
      'replacement.1.upkeep',
      'replacement.1.fuel.price',
      'replacement.2.fuel.economy',
      ...billsOf(2),
      'replacement.2.upkeep',
    ]);
  });
});

describe('pumps that differ', () => {
  it('stay two numbers, each with the name of its vehicle', () => {
    const text = SHORT_FORM.replace(
      'insurance_a_year: 620',
      'insurance_a_year: 620\n  fuel: { economy: 24 mpg, price: 3.2 }',
    ).replace('insurance_a_year: 1350', 'insurance_a_year: 1350\n  fuel: { economy: 33 mpg, price: 3.9 }');
    const labels = scenarioOf(text)
      .quantities.filter(({ key }) => key.endsWith('.energy.price'))
      .map(({ label }) => label);
    expect(labels).toEqual(['price of a gallon, 2009 wagon', 'price of a gallon, 2021 hatchback']);
  });
});
