import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { parse, quantityOf, SHORT_FORM, scenarioOf, TODAY, withLines } from './scenario.ts';

/** Path and words of each warning. */
const warned = (text: string, today = TODAY): Record<string, string> => {
  const result = parseScenario(text, { file: 'f', today });
  if ('problems' in result) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return Object.fromEntries(result.warnings.map(({ path, message }) => [path, message]));
};

describe('a bill that one vehicle has and another not', () => {
  const source = (text: string, key: string): string => quantityOf(scenarioOf(text), key).source;
  const KEEP = 'vehicle.registration.aYear';
  const BUY = 'replacement.0.registration.aYear';

  it('is left out on both sides only where neither is given', () => {
    for (const key of [KEEP, BUY])
      expect(source(SHORT_FORM, key)).toBe('not given for either vehicle: left out on both sides');
    expect(warned(SHORT_FORM)).toEqual({});
  });

  it('says which side it is counted on, and what that adds', () => {
    const bought = withLines({ replacement: '  registration_a_year: 120\n' });
    expect(source(bought, KEEP)).toBe(
      'not given: counted for the 2021 hatchback only, which adds about $120 a year to replacing',
    );
    expect(source(bought, BUY)).toBe('given in the scenario');
    const kept = withLines({ vehicle: '  parking_a_month: 20\n' });
    expect(source(kept, 'replacement.0.parkingAMonth')).toBe(
      'not given: counted for the 2009 wagon only, which adds about $20 a month to keeping',
    );
  });

  it('is asked for, both vehicles named, in the household’s currency', () => {
    const euro = withLines({ top: 'currency: EUR\nper_dollar: 0.9\n', replacement: '  tax_a_year: 95.5\n' });
    expect(warned(euro)['vehicle.tax_a_year']).toBe(
      'The vehicle tax is given for the 2021 hatchback (€95.50 a year), and for the 2009 wagon it is not.',
    );
  });

  it('is not asked for where it is nil, and no vehicle whose name is private is named', () => {
    expect(warned(withLines({ replacement: '  tax_a_year: 0\n' }))).toEqual({});
    expect(source(withLines({ replacement: '  tax_a_year: 0\n' }), 'vehicle.tax.aYear')).toBe(
      'not given: counts as nothing, as the figure given for the 2021 hatchback does',
    );
    const hidden = withLines({
      top: 'private: [vehicle.what]\n',
      vehicle: '  year: 2009\n',
      replacement: '  tax_a_year: 90\n',
    });
    expect(Object.values(warned(hidden))).toEqual([
      'The vehicle tax is given for the 2021 hatchback ($90 a year), and for the vehicle you have it is not.',
    ]);
  });

  it('names each of several that have it', () => {
    const one = (what: string, more: string) =>
      `  - { what: ${what}, odometer: 60000, price_with_all_fees: 9000, cash: yes, insurance_a_year: 900${more} }\n`;
    const several = SHORT_FORM.replace(
      /replacement:\n(?: {2}.*\n?)+/,
      `replacement:\n${one('2018 van', ', tax_a_year: 80')}${one('2017 estate', '')}${one('2016 coupe', ', tax_a_year: 60')}`,
    );
    expect(source(several, 'vehicle.tax.aYear')).toBe(
      'not given: counted for the 2018 van and the 2016 coupe only, which adds about $80 a year to the 2018 van and about $60 a year to the 2016 coupe',
    );
    expect(Object.keys(warned(several))).toEqual(['vehicle.tax_a_year', 'replacement.1.tax_a_year']);
    expect(source(several, KEEP)).toBe('not given for any vehicle: left out for all of them');
  });

  it('is just left out where there is one vehicle', () => {
    const alone = SHORT_FORM.replace(
      /replacement:\n(?: {2}.*\n?)+/,
      'doing_without: { a_day: 12, days_a_month: 15 }\n',
    );
    expect(source(alone, KEEP)).toBe('not given: left out');
  });
});

describe('dates of another year', () => {
  const dated = (date: string, more: Parameters<typeof withLines>[0] = {}) =>
    withLines({ ...more, top: `date: ${date}\n${more.top ?? ''}` });

  it('are measured from the decision, so that an old report is quiet about them', () => {
    const ends = { replacement: '  offer_ends: 2021-04-01\n' };
    expect(Object.keys(warned(withLines(ends)))).toEqual(['replacement.offer_ends']);
    expect(warned(dated('2021-03-20', ends))).toEqual({});
  });

  it('of the decision: past, it stands where another date is near it, or where all is invented', () => {
    expect(warned(dated('2021-03-20')).date).toBe(
      `The day of the decision, 2021-03-20, is more than a year before today, ${TODAY}.`,
    );
    expect(warned(dated('2021-03-20', { top: 'invented: yes\n' }))).toEqual({});
    expect(warned(dated('2025-03-12'))).toEqual({});
  });

  it('of the decision: to come, it is asked about whatever else is written', () => {
    const text = dated('2062-03-20', { replacement: '  offer_ends: 2062-04-01\n' });
    expect(Object.keys(warned(text))).toEqual(['date']);
  });

  it('may be told in months where they are far off', () => {
    const by = (when: string) => warned(withLines({ vehicle: `  must_pass_inspection_by: ${when}\n` }));
    expect(Object.keys(by('2027-08-01'))).toEqual(['vehicle.must_pass_inspection_by']);
    expect(by('17')).toEqual({});
  });
});

describe('an odometer', () => {
  const read = (odometer: string, year: number, top = '') =>
    warned(
      withLines(
        { top },
        SHORT_FORM.replace('odometer: 171000', `odometer: ${odometer}`).replace('2009', `${year}`),
      ),
    )['vehicle.odometer'];

  it('is asked about beyond four times, or below a tenth, of what its age has usually run', () => {
    // 2024, two years: 15,922 + 15,379 are usual, and up to a year more may be in it.
    expect(read('184000', 2024)).toBeUndefined();
    expect(read('185000', 2024)).toBe(
      '185,000 miles is very much for the model year 2024: by then about 31,000 miles are usual.',
    );
    expect(read('1500', 2024)).toBe(
      '1,500 miles is very little for the model year 2024: by then about 31,000 miles are usual.',
    );
    expect(read('1600', 2024)).toBeUndefined();
  });

  it('counts in the file’s own unit', () => {
    const km = (odometer: string) =>
      parse(
        SHORT_FORM.replace('miles_a_year', 'km_a_year')
          .replace('odometer: 171000', `odometer: ${odometer}`)
          .replace('2009', '2024'),
      );
    const messages = (odometer: string) => {
      const result = km(odometer);
      return 'warnings' in result ? result.warnings.map(({ message }) => message) : [];
    };
    expect(messages('296000')).toEqual([]);
    expect(messages('298000')).toEqual([
      '298,000 km is very much for the model year 2024: by then about 50,000 km are usual.',
    ]);
  });

  it('of a classic may be low, of a new one nil', () => {
    expect(read('2000', 1990)).toBeUndefined();
    expect(read('20', 2026)).toBeUndefined();
  });
});

describe('amounts that do not fit', () => {
  const at = (text: string, path: string) => warned(text)[path];

  it('are quiet where they are equal, or where nothing is charged', () => {
    const parts = (shop: number) => SHORT_FORM.replace('shop_price: 2900', `shop_price: ${shop}`);
    expect(at(parts(640), 'work_needed.0.shop_price')).toBeUndefined();
    expect(at(parts(0), 'work_needed.0.shop_price')).toBeUndefined();
    expect(at(parts(639), 'work_needed.0.shop_price')).toContain('$639');
    expect(
      at(SHORT_FORM.replace('running: 3400', 'running: 19000'), 'vehicle.sells_for.running'),
    ).toBeUndefined();
    expect(
      at(withLines({ replacement: '  worth_day_after: 17800\n' }), 'replacement.worth_day_after'),
    ).toBeUndefined();
  });

  it('name both where they stand, in upkeep, components, a patch and own repair too', () => {
    const upkeep = '  upkeep: [{ job: oil, every: 5000, parts: 60, shop_price: 45 }]\n';
    expect(at(withLines({ vehicle: upkeep }), 'vehicle.upkeep.0.shop_price')).toMatch(/\$45.*\$60/);
    const patch = SHORT_FORM.replace(
      'can_wait: no }',
      'can_wait: no, patch: { parts: 90, shop_price: 70, lasts: 4 } }',
    );
    expect(at(patch, 'work_needed.0.patch.shop_price')).toMatch(/\$70.*\$90/);
    expect(
      at(
        withLines({ vehicle: '  value_falls: [{ months: 9, value: 19500 }]\n' }),
        'vehicle.value_falls.0.value',
      ),
    ).toMatch(/\$19,500.*\$19,000/);
  });
});
