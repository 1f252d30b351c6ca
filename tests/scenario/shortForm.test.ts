import { describe, expect, it } from 'vitest';
import { parse, quantityOf, SHORT_FORM, scenarioOf } from './scenario.ts';

describe('the short form', () => {
  const scenario = scenarioOf(SHORT_FORM);
  const { facts, inputs } = scenario;

  it('has at most twenty lines beside its comments, and nothing to warn of', () => {
    const lines = SHORT_FORM.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('#'));
    expect(lines.length).toBeLessThanOrEqual(20);
    const result = parse(SHORT_FORM);
    expect('warnings' in result && result.warnings).toEqual([]);
  });

  it('reads what is given', () => {
    expect(inputs.household).toMatchObject({ distanceAYear: 9000, savings: 2500, spareEachMonth: 200 });
    expect(inputs.vehicle.sellsFor).toEqual({
      running: 3400,
      asItStands: 900,
      tradeIn: 600,
      tradeInMended: null,
      brokenDown: 900,
      scrap: 450,
    });
    expect(inputs.vehicle).toMatchObject({ age: 17, odometer: 171_000, priceWhenNew: 19_000, floor: 450 });
    expect(inputs.replacement[0]).toMatchObject({
      name: '2021 hatchback',
      condition: 'used',
      age: 5,
      price: 17_800,
      salesTax: 0,
      fees: [],
      // Nine tenths of the price without tax and fees of 8 %; 8 % more for each of five years.
      worthDayAfter: 14_800,
      priceWhenNew: 26_200,
      payment: { kind: 'loan', apr: 0.089, months: 66, downPayment: 2000, firstPayment: 1 },
    });
  });

  it('knows who does each job, and what the car may do until it is done', () => {
    expect(
      inputs.workNeeded.map(({ name, by, canWait, safety, mayBeDriven }) => [
        name,
        by,
        canWait,
        safety,
        mayBeDriven,
      ]),
    ).toEqual([
      ['head gasket', 'own', 0, false, 'to_the_shop'],
      ['front brakes', 'own', 0, true, 'no'],
    ]);
    expect(facts.jobs.map((job) => job.dangers)).toEqual([['lifting'], ['brakes', 'lifting']]);
  });

  it('says nothing that nobody said', () => {
    expect(facts).toMatchObject({
      title: '2009 wagon or 2021 hatchback',
      date: '2026-03-10',
      currency: 'USD',
      distanceUnit: 'miles',
      energyUnit: { vehicle: 'gallon', replacement: ['gallon'] },
      mayBeDriven: null,
      hoursPriced: false,
      sunk: [],
      needs: [],
      private: [],
    });
  });

  it('never has a default for what decides', () => {
    const given = [
      'vehicle.cover.aYear',
      'vehicle.sellsFor.asItStands',
      'replacement.0.cover.aYear',
      'replacement.0.price',
      'replacement.0.payment.apr',
    ];
    expect(given.filter((key) => quantityOf(scenario, key).isDefault)).toEqual([]);
  });
});
