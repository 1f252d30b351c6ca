import { describe, expect, it } from 'vitest';
import type { Cents } from '../../src/engine/quantity/money.ts';
import {
  calendar,
  day,
  formatsFor,
  giveOrTake,
  knownNumber,
  ledgerCents,
  ofHundred,
  percent,
  roundTo,
  span,
  stepBeside,
  stepKnown,
  stepOf,
  weekends,
} from '../../src/report/format.ts';
import { facts, quantities, quantity } from './fixture.ts';

const format = formatsFor(facts);

describe('drawn figures', () => {
  it.each([
    [57, 100],
    [14, 10],
    [20, 10],
    [21, 100],
    [0.004, 0.01],
    [0, 0],
  ])('an error of %d leaves steps of %d', (error, step) => {
    expect(stepKnown(error)).toBeCloseTo(step, 12);
  });

  it.each([
    [1234, 57, '$1,200', '$1,200'],
    [20_390, 41, '$20,000', '$20,400'],
    [212, 14, '$210', '$210'],
    [4, 8, 'less than $10', 'less than $10'],
    [0, 0, '$0', '$0'],
  ])('%d give or take %d is said as %s, and tabled as %s', (value, error, said, tabled) => {
    expect(format.about({ value, error })).toBe(said);
    expect(format.known({ value, error })).toBe(tabled);
  });

  it.each([
    [0.823, 0.004, '82 of 100', 'give or take 1 in 100'],
    [0.62, 0.03, '60 of 100', 'give or take 6 in 100'],
    [0.0052, 0.0006, 'fewer than 1 of 100', 'give or take less than 1 in 100'],
    [0.01, 0.02, 'fewer than 5 of 100', 'give or take 4 in 100'],
    [0.997, 0.0004, 'nearly all', 'give or take less than 1 in 100'],
    [0.994, 0.004, '99 of 100', 'give or take 1 in 100'],
    [1, 0, 'more than 99 of 100', ''],
    [0, 0, 'fewer than 1 of 100', ''],
  ])('a chance of %d give or take %d is %s, %s', (value, error, ways, told) => {
    expect(ofHundred({ value, error })).toBe(ways);
    expect(giveOrTake({ value, error })).toBe(told);
  });

  it('without a unit are said to the digit their error supports', () => {
    expect(knownNumber({ value: 0.4136, error: 0.0021 })).toBe('0.41');
    expect(knownNumber({ value: 13.6, error: 0.7 })).toBe('14');
  });
});

describe('amounts in prose', () => {
  it.each([
    [1934, '$1,900'],
    [17_843, '$18,000'],
    [4242.91, '$4,200'],
    [70.4, '$70'],
    [7.6, '$8'],
    [0.4, '$0'],
    [0, '$0'],
    [999.6, '$1,000'],
    [123_456, '$120,000'],
  ])('%d is about %s: two significant digits, never less than one unit', (amount, words) => {
    expect(format.round(amount)).toBe(words);
  });

  it('shows totals finely enough that their difference can be seen in them', () => {
    const step = stepBeside(20_259.76, 4242.91);
    expect([20_259.76, 24_502.67].map((n) => format.round(n, step))).toEqual(['$20,300', '$24,500']);
  });

  it('never shows totals finer than three significant digits', () => {
    expect(stepBeside(17_843, 3)).toBe(stepOf(17_843) / 10);
  });

  it('says exactly what was said exactly, with cents only where there are some', () => {
    expect([140, 228.67, 0.152].map(format.money)).toEqual(['$140', '$228.67', '$0.15']);
  });
});

describe('one minus sign', () => {
  it('is the typographic one in every format', () => {
    expect([ledgerCents(-123456 as Cents), percent(-0.079), format.money(-5), format.tick(-5000)]).toEqual([
      '\u22121,234.56',
      '\u22127.9%',
      '\u2212$5',
      '\u2212$5,000',
    ]);
  });

  it('never stands before nothing', () => {
    expect([format.round(-0.2), percent(-0.00001), ledgerCents(-0 as Cents)]).toEqual(['$0', '0%', '0.00']);
    expect(Object.is(roundTo(-0.1, 1), 0)).toBe(true);
  });
});

describe('quantities in the household own units', () => {
  it.each([
    ['household.distanceAYear', '9,000 miles a year'],
    ['replacement.0.payment.apr', '8.9% a year'],
    ['vehicle.cover.aYear', '$620 a year'],
    ['household.priceOfOwnHour', '$12 an hour'],
    ['workNeeded.0.hours', '22 hours'],
    ['vehicle.energy.economy', '24 miles a gallon'],
  ])('%s', (key, words) => {
    expect(format.quantity(quantity(key))).toBe(words);
  });

  it('states an economy the way the household does', () => {
    const metric = formatsFor({
      ...facts,
      currency: 'EUR',
      distanceUnit: 'km',
      energyUnit: { vehicle: 'litre', replacement: ['kWh'] },
      energyStated: { vehicle: 'per100', replacement: ['perUnit'] },
    });
    const economy = quantity('vehicle.energy.economy');
    expect(metric.quantity({ ...economy, value: 7.4 })).toBe('7.4 litres per 100 km');
    expect(metric.quantity({ ...economy, key: 'replacement.0.energy.economy', value: 6 })).toBe('6 km a kWh');
    expect(
      metric.quantity({ ...economy, key: 'vehicle.energy.price', unit: 'money per energy', value: 1.78 }),
    ).toBe('\u20ac1.78 a litre');
  });

  it('has words for every number of the scenario', () => {
    for (const q of quantities) expect(format.quantity(q)).toMatch(/\d/);
  });
});

describe('time', () => {
  it('says how far ahead in years where it can', () => {
    expect([60, 12, 18, 240, 1].map(span)).toEqual([
      'five years',
      'one year',
      '18 months',
      '20 years',
      '1 month',
    ]);
  });

  it('names the month that is so many months on', () => {
    expect([calendar('2026-11-25', 0), calendar('2026-11-25', 2), calendar('2026-12-01', 12)]).toEqual([
      'November 2026',
      'January 2027',
      'December 2027',
    ]);
    expect([calendar('someday', 3), day('someday'), day('2026-03-04')]).toEqual([
      '',
      'someday',
      '4 March 2026',
    ]);
  });

  it('turns own hours into weekends of twelve', () => {
    expect([0, 2, 6, 12, 18, 30, 92].map(weekends)).toEqual([
      'none',
      'a few hours',
      'half a weekend',
      '1 weekend',
      '1½ weekends',
      '2½ weekends',
      '7½ weekends',
    ]);
  });
});
