import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { decideAtAverage } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { formatsFor } from '../../src/report/format.ts';
import { decidingSentence } from '../../src/report/words/facts.ts';
import { verdictText } from '../../src/report/words/verdict.ts';
import { shortForm, type Tree } from '../support/file.ts';

const KM = 1.609344;
const LITRES = 3.785411784;

interface Units {
  readonly km: boolean;
  readonly per100: boolean;
  /** Currency units per dollar. */
  readonly money: number;
}

/** One household, told in miles or kilometres, by the gallon or by what 100 km take, in dollars or any other money. */
const household = ({ km, per100, money }: Units): Tree => {
  const file = shortForm();
  const distance = (miles: number): number => miles * (km ? KM : 1);
  const amount = (dollars: number): number => dollars * money;
  const economy = (mpg: number): string => (per100 ? `${(100 * LITRES) / (mpg * KM)} l/100km` : `${mpg} mpg`);
  const fuel = (mpg: number) => ({
    economy: economy(mpg),
    price: per100 ? `${amount(3.6) / LITRES} per litre` : `${amount(3.6)} per gallon`,
  });
  const { miles_a_year, ...rest } = file;
  return {
    ...rest,
    ...(money === 1 ? {} : { currency: 'XTS', per_dollar: money }),
    [km ? 'km_a_year' : 'miles_a_year']: distance(miles_a_year),
    spare_each_month: amount(300),
    savings_for_this: amount(2500),
    vehicle: {
      ...file.vehicle,
      odometer: distance(171_000),
      price_when_new: amount(19_000),
      sells_for: { running: amount(3400), as_it_stands: amount(900), trade_in: amount(600) },
      insurance_a_year: amount(620),
      fuel: fuel(23),
    },
    work_needed: [
      { job: 'head gasket', parts: amount(640), hours: 22, shop_price: amount(2900), can_wait: 'no' },
      { job: 'radio', parts: amount(40), hours: 1, can_wait: 'yes' },
    ],
    replacement: {
      ...file.replacement,
      odometer: distance(38_000),
      price_with_all_fees: amount(11_800),
      down_payment: amount(2000),
      insurance_a_year: amount(900),
      fuel: fuel(31),
    },
  };
};

const decided = (units: Units): Decision => {
  const parsed = parseScenario(stringify(household(units)), { file: 'a file', today: '2026-11-25' });
  if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  return decideAtAverage(parsed.scenario, 'test');
};

/** The words without their figures and signs of money. */
const words = (d: Decision): string =>
  [verdictText(d, formatsFor(d.facts)), decidingSentence(d)]
    .join(' ')
    .replace(/(?:\$|XTS\s?)?[\d,.]*\d/g, '#');

/** How far each number has to go, whichever way, by where it stands in the file. */
const howFar = (d: Decision): Map<string, number> =>
  new Map(
    d.breakEvens.flatMap(({ quantity, roots }) => {
      const [root] = roots;
      const path = quantity.path.replace('km_a_year', 'miles_a_year').replace('_a_km', '_a_mile');
      return root && quantity.value > 0 ? [[path, Math.abs(root.distance)] as const] : [];
    }),
  );

describe('law 17: no unit decides', () => {
  const base = decided({ km: false, per100: false, money: 1 });

  it.each([
    ['kilometres', { km: true, per100: false, money: 1 }],
    ['litres for 100 km', { km: false, per100: true, money: 1 }],
    ['both', { km: true, per100: true, money: 1 }],
    ['a currency of small units', { km: false, per100: false, money: 130 }],
    ['a currency of large units', { km: false, per100: false, money: 0.31 }],
    ['all of it', { km: true, per100: true, money: 130 }],
  ])('%s', (_, units) => {
    const other = decided(units);
    expect(words(other)).toBe(words(base));
    expect(other.verdict.kind).toBe(base.verdict.kind);
    expect(other.verdict.deciding).toEqual(base.verdict.deciding);
    const [here, there] = [howFar(base), howFar(other)];
    expect([...there.keys()].sort()).toEqual([...here.keys()].sort());
    // Defaults of the tables are carried to a handful of digits.
    for (const [path, far] of here) expect(there.get(path), path).toBeCloseTo(far, 2);
    expect(here.size).toBeGreaterThan(10);
  });
});
