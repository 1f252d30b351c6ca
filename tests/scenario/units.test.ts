import { describe, expect, it } from 'vitest';
import { economyIn, energyPerDistance, energyPriceIn } from '../../src/engine/quantity/energyUnits.ts';
import { parse, quantityOf, SHORT_FORM, scenarioOf, withLines } from './scenario.ts';

const valueAt = (text: string, key: string): number => quantityOf(scenarioOf(text), key).value;
const odometer = (written: string) =>
  valueAt(SHORT_FORM.replace('odometer: 171000', `odometer: ${written}`), 'vehicle.odometer');

describe('numbers as people write them', () => {
  it.each([
    ['171000', 171_000],
    ['171,000', 171_000],
    ['171 000', 171_000],
    ['171_000', 171_000],
    ['171,000 miles', 171_000],
    ['171.5e3', 171_500],
    ['"+171000 mi"', 171_000],
    ['160934.4 km', 100_000],
  ])('odometer %s', (written, value) => expect(odometer(written)).toBeCloseTo(value, 6));

  it.each([
    ['5 years', 60],
    ['18 months', 18],
    ['48', 48],
    ['1.5 years', 18],
  ])('look ahead %s', (written, months) =>
    expect(
      valueAt(withLines({ top: `household: { look_ahead: ${written} }\n` }), 'household.lookAhead'),
    ).toBe(months),
  );

  it.each([
    ['8.9', 0.089],
    ['8.9 %', 0.089],
    ['"8.9% a year"', 0.089],
    ['8.9 percent', 0.089],
    ['0', 0],
  ])('rate %s', (written, rate) =>
    expect(valueAt(SHORT_FORM.replace('apr: 8.9', `apr: ${written}`), 'replacement.0.payment.apr')).toBe(
      rate,
    ),
  );

  it.each([
    ['620', 620],
    ['"$620"', 620],
    ['USD 620', 620],
    ['620 USD a year', 620],
    ['620 / year', 620],
    ['620 per year', 620],
    ["1'240.50", 1240.5],
  ])('money %s', (written, amount) =>
    expect(
      valueAt(
        SHORT_FORM.replace('insurance_a_year: 620', `insurance_a_year: ${written}`),
        'vehicle.cover.aYear',
      ),
    ).toBe(amount),
  );

  it.each(['12 weeks', '620 a month', '620 miles', '6 2 0', '1.2.3', '12,34', '-', '.', 'e5', '0x', '１２'])(
    'is no yearly money: %s',
    (written) => {
      const result = parse(SHORT_FORM.replace('insurance_a_year: 620', `insurance_a_year: "${written}"`));
      expect('problems' in result && result.problems.map((problem) => problem.path)).toEqual([
        'vehicle.insurance_a_year',
      ]);
    },
  );

  it.each(['no', 'No', 'NO', 'false', '"no"'])('can_wait: %s', (written) =>
    expect(
      scenarioOf(SHORT_FORM.replace('can_wait: no }', `can_wait: ${written} }`)).inputs.workNeeded[0]
        ?.canWait,
    ).toBe(0),
  );

  it('reads yes as for ever and a number as months', () => {
    const wait = (written: string) =>
      scenarioOf(SHORT_FORM.replace('can_wait: no }', `can_wait: ${written} }`)).inputs.workNeeded[0];
    expect(wait('yes')).toMatchObject({ canWait: null, mayBeDriven: 'yes' });
    expect(wait('6')).toMatchObject({ canWait: 6, mayBeDriven: 'yes' });
    expect(wait('1 year')).toMatchObject({ canWait: 12 });
  });
});

describe('kilometres and another currency', () => {
  const text = withLines({ top: 'currency: EUR\nper_dollar: 0.9\n' }).replace(
    'miles_a_year: 9000',
    'km_a_year: 14000',
  );
  const { inputs, facts } = scenarioOf(text);

  it('carries the tables: dollars to euros, for a mile to for a kilometre', () => {
    expect(facts).toMatchObject({ currency: 'EUR', perDollar: 0.9, distanceUnit: 'km' });
    expect(inputs.vehicle.averageRepairs.priceRatio).toBeCloseTo((1.5 * 0.9) / 1.609344, 9);
    expect(inputs.vehicle.averageRepairs.perDollar).toBe(0.9);
    expect(inputs.vehicle.averageUpkeep).toBeCloseTo((0.101 * 1.5 * 0.9) / 1.609344, 9);
  });

  it('carries the defaults', () => {
    expect(inputs.household.dayWithout).toBeCloseTo(35 * 0.9, 9);
    expect(inputs.replacement[0]?.catchUp).toBeCloseTo(540, 9);
    // A 2009 wagon, four fifths of the way from 23.5 to 26.2 miles a US gallon: 25.66, which are 9.17 l/100km;
    // 3.40 dollars a gallon are 0.898 a litre.
    expect(inputs.vehicle.energy).toEqual({ stated: 'per100', economy: 9.17, price: 0.8082 });
    expect(facts.energyUnit.vehicle).toBe('litre');
  });

  it('scales ranges with the currency', () => {
    const yen = text
      .replace('EUR', 'JPY')
      .replace('0.9', '150')
      .replace('price_when_new: 19000', 'price_when_new: 2850000')
      .replace('price_with_all_fees: 17800', 'price_with_all_fees: 2600000');
    expect('scenario' in parse(yen)).toBe(true);
  });
});

describe('energy', () => {
  const energy = (vehicle: string, km = false) => {
    const text = withLines({ vehicle, replacement: '  fuel: { economy: 30 mpg }\n' });
    return scenarioOf(km ? text.replace('miles_a_year', 'km_a_year') : text);
  };

  it.each([
    ['fuel: { economy: 25, price: 3.5 }', { stated: 'perUnit', economy: 25, price: 3.5 }, 'gallon'],
    [
      'fuel: { economy: 25 mpg, price: "$3.50 a gallon" }',
      { stated: 'perUnit', economy: 25, price: 3.5 },
      'gallon',
    ],
    [
      'fuel: { economy: 25 mpg, price: 1 per litre }',
      { stated: 'perUnit', economy: 25, price: 3.785411784 },
      'gallon',
    ],
    [
      'fuel: { economy: 8 l/100 km, price: 1 }',
      { stated: 'per100', economy: 8 * 1.609344, price: 1 },
      'litre',
    ],
    [
      'fuel: { economy: 12 km/l, price: 1 }',
      { stated: 'perUnit', economy: 12 / 1.609344, price: 1 },
      'litre',
    ],
    [
      'powertrain: battery\n  fuel: { economy: 3.5 mi/kWh, price: 0.2 }',
      { stated: 'perUnit', economy: 3.5, price: 0.2 },
      'kWh',
    ],
    [
      'powertrain: battery\n  fuel: { economy: 3.5 }',
      { stated: 'perUnit', economy: 3.5, price: 0.17 },
      'kWh',
    ],
  ])('%s', (line, expected, unit) => {
    const { inputs, facts } = energy(`  ${line}\n`);
    expect(inputs.vehicle.energy.stated).toBe(expected.stated);
    expect(inputs.vehicle.energy.economy).toBeCloseTo(expected.economy, 9);
    expect(inputs.vehicle.energy.price).toBeCloseTo(expected.price, 9);
    expect(facts.energyUnit.vehicle).toBe(unit);
  });

  it('reads a bare economy by the kilometre as l/100km, for a battery as kWh/100km', () => {
    expect(energy('  fuel: { economy: 8, price: 1.7 }\n', true).inputs.vehicle.energy).toEqual({
      stated: 'per100',
      economy: 8,
      price: 1.7,
    });
    const battery = energy('  powertrain: battery\n  fuel: { economy: 18, price: 0.3 }\n', true);
    expect(battery.inputs.vehicle.energy).toEqual({ stated: 'per100', economy: 18, price: 0.3 });
  });

  it('buys at the same pump where only one price is given', () => {
    const scenario = energy('  fuel: { economy: 25 mpg, price: 4 }\n');
    expect(scenario.inputs.replacement[0]?.energy.price).toBe(4);
    expect(quantityOf(scenario, 'vehicle.energy.price')).toMatchObject({
      isDefault: false,
      label: 'price of a gallon',
      path: 'household.fuel_price',
    });
  });

  it('goes by kind and model year where nobody gives an economy, and says that the table is recalled', () => {
    const economy = (lines: string) =>
      quantityOf(scenarioOf(withLines({ vehicle: lines })), 'vehicle.energy.economy');
    expect(economy('')).toMatchObject({ value: 25.7, mark: 'table' });
    expect(economy('').source).toContain('from memory');
    expect(economy('  kind: truck\n')).toMatchObject({ value: 16.7 });
    expect(economy('  kind: suv\n  year: 1980\n')).toMatchObject({ value: 16.5 });
    expect(economy('  kind: suv\n  year: 2024\n')).toMatchObject({ value: 25 });
    expect(economy('  powertrain: hybrid\n').value).toBeCloseTo(35.9, 9);
  });

  it('converts without changing what is used', () => {
    const mpg = { stated: 'perUnit', value: 30, distance: 'miles', energy: 'gallon' } as const;
    const per100 = { stated: 'per100', value: 8, distance: 'km', energy: 'litre' } as const;
    expect(energyPerDistance(economyIn(mpg, 'km')) * 1.609344).toBeCloseTo(1 / 30, 12);
    expect(energyPerDistance(economyIn(per100, 'miles'))).toBeCloseTo(0.08 * 1.609344, 12);
    expect(energyPriceIn(3.785411784, 'gallon', 'litre')).toBeCloseTo(1, 12);
    expect(energyPriceIn(1, 'kWh', 'litre')).toBeNull();
  });
});
