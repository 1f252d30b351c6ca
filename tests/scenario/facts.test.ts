import { describe, expect, it } from 'vitest';
import { monthsUntil } from '../../src/engine/scenario/complete/completeFacts.ts';
import { dangersOf } from '../../src/engine/scenario/danger/dangers.ts';
import { nearest } from '../../src/engine/scenario/text/nearest.ts';
import { parse, SHORT_FORM, scenarioOf, withLines } from './scenario.ts';

describe('dates as months', () => {
  it.each([
    ['2026-03-10', '2026-03-10', 0],
    ['2026-03-10', '2026-04-09', 0],
    ['2026-03-10', '2026-04-10', 1],
    ['2026-03-31', '2026-12-31', 9],
    ['2026-03-10', '2027-03-15', 12],
    ['2026-03-10', '2025-01-01', 0],
  ])('%s to %s: %i', (from, to, months) => expect(monthsUntil(from, to)).toBe(months));
});

describe('dangers recognised from the words of a job', () => {
  it.each([
    ['front brakes', ['brakes', 'lifting']],
    ['head gasket', ['lifting']],
    ['tie rod ends', ['steering', 'lifting']],
    ['exhaust pipe', ['exhaust', 'lifting']],
    ['airbag module', ['airbag']],
    ['fuel pump', ['fuel']],
    ['battery', ['battery']],
    ['traction battery', ['high-voltage']],
    ['rust in the sills', ['structure', 'lifting']],
    ['wiper blades', []],
  ])('%s', (job, dangers) => expect(dangersOf(job, undefined)).toEqual(dangers));

  it('are as listed where they are listed', () => expect(dangersOf('brakes', [])).toEqual([]));
});

describe('work that only the qualified may do', () => {
  const job = (line: string) => withLines({}, SHORT_FORM.replace(/ {2}- \{ job: front.*/, `  - { ${line} }`));

  it('is done by a shop, whatever hours are given', () => {
    const text = job('job: airbag module, parts: 90, hours: 2, shop_price: 480, can_wait: no, safety: yes');
    const { inputs, facts } = scenarioOf(text);
    expect(inputs.workNeeded[1]).toMatchObject({ by: 'shop', shopPrice: 480 });
    expect(facts.jobs[1]).toMatchObject({ qualifiedOnly: true, dangers: ['airbag'] });
  });

  it('may be told otherwise by who is', () => {
    const text = job(
      'job: airbag module, parts: 90, hours: 2, can_wait: no, safety: yes, qualified_only: no',
    );
    expect(scenarioOf(text).inputs.workNeeded[1]?.by).toBe('own');
  });
});

describe('needs and offers', () => {
  const { facts } = scenarioOf(
    withLines({
      top: 'needs: { seats: 5, towing: yes, winter: no, child_seats: { at_least: 2, from: 2026-09-10 }, roof: { at_least: yes, from: 3 } }\n',
      vehicle: '  seats: 5\n  towing: no\n  offers: { roof: yes }\n',
      replacement: '  seats: 4\n',
    }),
  );

  it('are read with their date; a need denied is none', () =>
    expect(facts.needs).toEqual([
      { what: 'seats', atLeast: 5, fromMonth: 0 },
      { what: 'towing', atLeast: true, fromMonth: 0 },
      { what: 'child_seats', atLeast: 2, fromMonth: 6 },
      { what: 'roof', atLeast: true, fromMonth: 3 },
    ]));

  it('say nothing of what nobody said', () =>
    expect(facts.offers).toEqual({
      vehicle: { seats: 5, towing: false, roof: true },
      replacement: [{ seats: 4 }],
    }));
});

describe('upkeep and parts', () => {
  const vehicle = (lines: string) => scenarioOf(withLines({ vehicle: lines })).inputs.vehicle;

  it('is due where nobody knows when it was last done', () => {
    const { upkeep, averageUpkeep } = vehicle(
      "  upkeep:\n    - { job: belt, every: 90000, or_months: 72, last_done: don't know, shop_price: 700 }\n",
    );
    expect(upkeep[0]).toMatchObject({ sinceDistance: 90_000, sinceMonths: 72, by: 'shop' });
    expect(averageUpkeep).toBe(0);
  });

  it('works months out from distance and distance from months', () => {
    const { upkeep } = vehicle(
      '  upkeep:\n    - { job: oil, every: 7500, or_months: 12, last_done: 166500, parts: 45, hours: 1 }\n    - { job: fluid, every: 30000, or_months: 36, last_done_months_ago: 12, shop_price: 90 }\n',
    );
    expect(upkeep[0]).toMatchObject({ sinceDistance: 4500, sinceMonths: 6, by: 'own' });
    expect(upkeep[1]).toMatchObject({ sinceDistance: 9000, sinceMonths: 12 });
  });

  it('counts a part by distance or by months, from new unless told', () => {
    const { components } = vehicle(
      '  components:\n    - { name: gearbox, life: { typical: 220000, shape: 4 }, shop_price: 2600 }\n    - { name: battery, life: { typical: 6 years }, run: 2 years, parts: 140, hours: 0.5, repair: patch }\n',
    );
    expect(components[0]).toMatchObject({
      clock: 'distance',
      scale: 220_000,
      run: 171_000,
      shareOfAverage: 0.1,
      repairIs: 'renewal',
    });
    expect(components[1]).toMatchObject({ clock: 'months', scale: 72, run: 24, shape: 3, repairIs: 'patch' });
  });

  it('starts a table of values with what the vehicle is worth today', () => {
    const { value } = vehicle('  value_falls: [{ months: 12, value: 2800 }, { months: 60, value: 900 }]\n');
    expect(value).toEqual({
      kind: 'points',
      points: [
        { month: 0, value: 3400 },
        { month: 12, value: 2800 },
        { month: 60, value: 900 },
      ],
    });
  });
});

describe('private words', () => {
  it('may be words and own money, nothing the costs rest on', () => {
    const paths = (list: string) => parse(withLines({ top: `note: hush\nprivate: [${list}]\n` }));
    expect('scenario' in paths('note, savings_for_this, spare_each_month')).toBe(true);
    for (const path of ['vehicle.odometer', 'work_needed', 'replacement.loan.apr', 'nowhere', 'vehicle.what'])
      expect('problems' in paths(path), path).toBe(true);
  });
});

describe('the nearest word', () => {
  it.each([
    ['month', ['months', 'apr'], 'months'],
    ['Insurance a year', ['insurance_a_year'], 'insurance_a_year'],
    ['savings', ['savings_for_this'], 'savings_for_this'],
    ['arp', ['apr'], 'apr'],
    ['zebra', ['months', 'apr'], null],
    ['', ['apr'], null],
  ])('%s', (word, candidates, expected) => expect(nearest(word, candidates)).toBe(expected));
});
