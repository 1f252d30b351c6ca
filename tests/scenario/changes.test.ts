/** Figures that are others from a date on: how they are read. */
import { describe, expect, it } from 'vitest';
import { monthAfter, parseFrom } from '../../src/engine/quantity/civilDate.ts';
import { quantityOf, scenarioOf, withLines } from './scenario.ts';

const month = (decision: string, from: string): number => {
  const [start, date] = [parseFrom(decision), parseFrom(from)];
  if (!start || !date) throw new Error('no date');
  return monthAfter(start, date);
};

describe('the first month that ends after a date', () => {
  it('is counted from the day of the decision', () => {
    // Months of a decision on the 25th end on the 25th.
    expect(month('2026-11-25', '2027-04')).toBe(5);
    expect(month('2026-11-25', '2027-04-24')).toBe(5);
    expect(month('2026-11-25', '2027-04-25')).toBe(6);
    expect(month('2026-11-25', '2026-11-25')).toBe(1);
    expect(month('2026-11-25', '2026-12-24')).toBe(1);
    // One of the 31st ends with a month that is too short.
    expect(month('2027-01-31', '2027-02-27')).toBe(1);
    expect(month('2027-01-31', '2027-02-28')).toBe(2);
    expect(month('2027-01-31', '2027-03-30')).toBe(2);
  });
});

describe('a change of a bill', () => {
  const scenario = scenarioOf(
    withLines({
      vehicle: `  parking_a_month: 40
  changes:
    - { from: 2027-04, insurance_a_year: 800, why: a cover is dropped }
    - from: 2027-06-15
      insurance_a_year: { low: 500, likely: 600, high: 800, how: guess, note: asked around }
      parking_a_month: 0
      why: the yard is sold
`,
    }),
  );

  it('is complete: what it does not name stays as it was', () => {
    const none = { registration: null, inspection: null, tax: null, coverEnds: [] };
    // The decision is of 10 March 2026.
    const [first, second] = scenario.inputs.vehicle.changes;
    expect(first).toEqual({ ...none, from: 13, cover: 800, parkingAMonth: null, why: 'a cover is dropped' });
    expect(second).toMatchObject({ ...none, from: 16, parkingAMonth: 0, why: 'the yard is sold' });
    expect(scenario.inputs.replacement[0]?.changes).toEqual([]);
  });

  it('is a number of its own, at its place, with its reason', () => {
    const plain = quantityOf(scenario, 'vehicle.changes.0.cover');
    expect(plain).toMatchObject({
      path: 'vehicle.changes.0.insurance_a_year',
      mark: 'quoted',
      isDefault: false,
    });
    expect(plain.label).toMatch(/^yearly cost of insurance from April 2027, /);
    expect(plain.note).toBe('a cover is dropped');
    const ranged = quantityOf(scenario, 'vehicle.changes.1.cover');
    expect(ranged.label).toMatch(/^yearly cost of insurance from 15 June 2027, /);
    expect(ranged).toMatchObject({ range: { likely: 600 }, note: 'the yard is sold; asked around' });
    expect(quantityOf(scenario, 'vehicle.changes.1.parkingAMonth').value).toBe(0);
  });
});
