import { describe, expect, it } from 'vitest';
import { startingScenario } from '../../src/engine/scenario/file/starting.ts';
import { HOUSEHOLD_MORE } from '../../src/engine/scenario/inputs/householdInputs.ts';
import { REPAIR_PRICE_INDEX, repairRatePerMile2019 } from '../../src/engine/scenario/inputs/tables.ts';
import { DEFAULTS } from './declared.ts';
import { parse, SHORT_FORM, scenarioOf, TODAY } from './scenario.ts';

describe('the defaults', () => {
  it.each(DEFAULTS)('%s has a value, a unit, a date, a source and a mark', (_, one) => {
    expect(Number.isFinite(one.value)).toBe(true);
    expect(one.unit).not.toBe('');
    expect(one.date).toMatch(/^\d{4}(-\d{2})?$/);
    expect(one.source.length).toBeGreaterThan(3);
    expect(['guess', 'table', 'choice']).toContain(one.mark);
  });

  it('hold nothing that is never assumed', () => {
    // What it brings as it stands may set another default; it is never one itself.
    const never = /insurance|apr|allFees|^asItStands|canWait/i;
    expect(DEFAULTS.map(([name]) => name.split('.').at(-2) ?? '').filter((name) => never.test(name))).toEqual(
      [],
    );
  });

  it('carry prices by the index they name', () => {
    const ratio = REPAIR_PRICE_INDEX.of2025July / REPAIR_PRICE_INDEX.of2019;
    expect(HOUSEHOLD_MORE.tablePriceRatio.or.value).toBeCloseTo(ratio, 2);
  });

  it('are listed for a report: which, from where', () => {
    const used = scenarioOf(SHORT_FORM).quantities.filter(({ isDefault }) => isDefault);
    expect(used.length).toBeGreaterThan(60);
    for (const { key, source, mark } of used) {
      expect(source.length, key).toBeGreaterThan(2);
      expect(['guess', 'table', 'measured', 'choice'], key).toContain(mark);
    }
  });
});

describe('the repair curve', () => {
  // Retrieved values of the public table: nil for two years, then 0.00333, 0.01, 0.0167, and 0.00333 more each year.
  it.each([
    [0, 0],
    [1, 0],
    [2, 0.00333],
    [3, 0.01],
    [4, 0.0167],
    [5, 0.02003],
    [10, 0.03668],
  ])('at age %i, a price of nil: %d a mile', (age, rate) =>
    expect(repairRatePerMile2019(age, 0, 1)).toBeCloseTo(rate, 10),
  );

  it('rises with the price when new, up to 100,000, and with its type', () => {
    expect(repairRatePerMile2019(16, 19_000, 1)).toBeCloseTo((0.0167 + 12 * 0.00333) * Math.exp(0.38), 12);
    expect(repairRatePerMile2019(16, 250_000, 1)).toBe(repairRatePerMile2019(16, 100_000, 1));
    expect(repairRatePerMile2019(16, 19_000, 0.7)).toBeCloseTo(
      0.7 * repairRatePerMile2019(16, 19_000, 1),
      12,
    );
  });
});

describe('the starting scenario', () => {
  const text = startingScenario(TODAY);
  const uncommented = text.replaceAll(/^# /gm, '');

  it('is a complete scenario as it stands', () => {
    const result = parse(text);
    expect('warnings' in result && result.warnings).toEqual([]);
  });

  it('shows each default as it is: taking the comments away changes no number', () => {
    const plain = scenarioOf(text);
    const full = scenarioOf(uncommented);
    expect(full.inputs).toEqual(plain.inputs);
  });

  it('has every default in sight', () => {
    const hidden = scenarioOf(uncommented).quantities.filter(({ isDefault }) => isDefault);
    // A second job has the same defaults as the first; amounts of a chance of nil, and tax within an all-in price, are nil.
    const elsewhere = /^workNeeded\.1\.|\.(notCured|moreFound)\.(parts|hours|shopPrice)$|\.salesTax$/;
    expect(hidden.map(({ key }) => key).filter((key) => !elsewhere.test(key))).toEqual([]);
  });

  it('is as long as a page or two, and names no day but the one handed in', () => {
    expect(text.split('\n').length).toBeLessThan(140);
    expect(text).toContain(`date: ${TODAY}`);
  });
});
