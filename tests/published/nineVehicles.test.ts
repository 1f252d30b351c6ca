/**
 * What stands in where a file says nothing, for three kinds at three ages, held against what others publish of the whole.
 * DEVELOPERS.md prints the table: UPDATE=1 writes it anew.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { firstAnswer } from '../../src/engine/answer/atAverage.ts';
import { marketValue } from '../../src/engine/cashflow/contracts/marketValue.ts';
import type { Category } from '../../src/engine/cashflow/posting.ts';
import { scenarioOf, shortForm } from '../support/file.ts';

const MILES = 9000;

/** Prices when new, and what one brings at 5, 12 and 20 years: our guesses, common practice, no source. */
const KINDS = [
  { name: 'sedan', whenNew: 28_000, brings: [16_000, 6_500, 2_500] },
  { name: 'utility', whenNew: 34_000, brings: [19_500, 8_500, 3_200] },
  { name: 'pickup', whenNew: 42_000, brings: [27_000, 13_500, 5_500] },
] as const;
const AGES = [5, 12, 20] as const;

interface Year {
  readonly name: string;
  readonly age: number;
  readonly upkeep: number;
  readonly repairs: number;
  readonly bigBills: number;
  readonly decline: number;
  readonly energy: number;
}

/** Its first year in today's file, a shop doing everything, nothing given beyond what a file has to give. */
const yearOf = (name: string, whenNew: number, running: number, age: number): Year => {
  const scenario = scenarioOf((file) => {
    delete (file as { another_like_ours?: string }).another_like_ours;
    delete (file as { big_bills?: string }).big_bills;
    file.work_needed = [];
    Object.assign(file, {
      household: { look_ahead: 12 },
      miles_a_year: MILES,
      vehicle: {
        ...shortForm().vehicle,
        what: `${2026 - age} ${name}`,
        odometer: MILES * age,
        price_when_new: whenNew,
        sells_for: { running, as_it_stands: running, trade_in: 0.8 * running },
      },
    });
  });
  const keep = firstAnswer(scenario, '0.0.0').options.find(({ id }) => id === 'keep');
  const of = (category: Category): number =>
    (keep?.ledger ?? [])
      .filter((row) => row.category === category)
      .reduce((sum, { amount }) => sum + amount.shop, 0) / 100;
  const { value, floor } = scenario.inputs.vehicle;
  const then = marketValue({ now: running, law: value, floor, brandFactor: 1 }, 12, MILES);
  return {
    name,
    age,
    upkeep: of('scheduled upkeep'),
    repairs: of('repairs'),
    bigBills: of('big bills'),
    decline: running - then,
    energy: of('energy'),
  };
};

const NINE = KINDS.flatMap(({ name, whenNew, brings }) =>
  AGES.map((age, i) => yearOf(name, whenNew, brings[i] as number, age)),
);

const money = (amount: number): string => (10 * Math.round(amount / 10)).toLocaleString('en-US');

const rowOf = ({ name, age, upkeep, repairs, bigBills, decline, energy }: Year): string => {
  const all = upkeep + repairs + bigBills + decline + energy;
  const cells = [upkeep, repairs, bigBills, decline, energy].map(money);
  return `| ${name}, ${age} years | ${cells.join(' | ')} | ${((100 * all) / MILES).toFixed(0)} |`;
};

const table = [
  '| vehicle | upkeep | repairs | big bills | decline | energy | together, cents a mile |',
  '| --- | --- | --- | --- | --- | --- | --- |',
  ...NINE.map(rowOf),
].join('\n');

const perMile = (amount: number): number => amount / MILES;

describe('what stands in for nine vehicles', () => {
  it('is printed in the documents', () => {
    const file = new URL('../../DEVELOPERS.md', import.meta.url);
    const [before, rest] = readFileSync(file, 'utf8').split('| vehicle | upkeep |');
    const [, ...after] = (rest ?? '').split('\n\n');
    const current = `${before}${table}\n\n${after.join('\n\n')}`;
    if (process.env.UPDATE === '1') writeFileSync(file, current);
    expect(readFileSync(file, 'utf8'), 'stale: UPDATE=1 npx vitest run tests/published/nineVehicles').toBe(
      current,
    );
  });

  // IRS notice 2026-10 by a summary of it: 72.5 cents a mile of business use, 35 of them decline. The rest is energy,
  // upkeep, repairs and tyres, and also insurance and fees, which are not among these.
  it.each(NINE.filter(({ age }) => age === 5))(
    'leaves room for insurance and fees in the public rate: $name',
    (year) => {
      const driven = perMile(year.upkeep + year.repairs + year.energy);
      expect(driven).toBeGreaterThan(0.5 * 0.375);
      // A pickup drinks more than the average that the rate is for.
      expect(driven).toBeLessThan((year.name === 'pickup' ? 1.1 : 1) * 0.375);
      expect(perMile(year.decline)).toBeLessThan(1.5 * 0.35);
    },
  );

  // Argonne ANL/ESD-21/4: 10.1 cents a mile in 2019 money, carried to today by the price index of repairs.
  it.each(NINE)('has the public upkeep: $name of $age years', ({ upkeep }) => {
    expect(perMile(upkeep)).toBeCloseTo((0.101 * 440.04) / 293, 2);
  });

  it.each(KINDS)(
    'is dearer to mend and likelier to be given up the older it is, and falls less: $name',
    (kind) => {
      const [young, middle, old] = NINE.filter(({ name }) => name === kind.name) as [Year, Year, Year];
      for (const cost of ['repairs', 'bigBills', 'energy'] as const) {
        expect(middle[cost]).toBeGreaterThan(young[cost]);
        expect(old[cost]).toBeGreaterThan(middle[cost]);
      }
      expect(middle.decline).toBeLessThan(young.decline);
      expect(old.decline).toBeLessThan(middle.decline);
    },
  );

  it('ranks kinds as anyone would: a pickup drinks more than a utility, that more than a sedan', () => {
    for (const age of AGES) {
      const [sedan, utility, pickup] = NINE.filter((year) => year.age === age).map(({ energy }) => energy);
      expect(utility).toBeGreaterThan(sedan as number);
      expect(pickup).toBeGreaterThan(utility as number);
    }
  });

  it('never makes a year of mending dearer than another one', () => {
    for (const { name, age, upkeep, repairs } of NINE) {
      const kind = KINDS.find((one) => one.name === name);
      expect(upkeep + repairs).toBeLessThan(1.25 * ((kind?.brings[AGES.indexOf(age as 5)] ?? 0) as number));
    }
  });
});
