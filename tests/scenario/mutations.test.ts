import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decideAtAverage } from '../../src/engine/answer/decide.ts';
import { holds } from './holds.ts';
import { CHANGES, changed, FORMS, type Node, placesOf, textOf } from './mutations.ts';
import { parse, SHORT_FORM, withLines } from './scenario.ts';

const changes = Object.entries(CHANGES);
const forms = Object.entries(FORMS);

/** Every place of a form gets some of the changes, every change some of the places: one in 24 of all there are. */
const STRIDE = 24;
const changedForms = (form: Node, start = 0): { readonly what: string; readonly text: string }[] =>
  placesOf(form)
    .flatMap((at) => changes.map(([what, change]) => ({ at, what, change })))
    .filter((_, i) => (i + Math.floor(i / changes.length)) % STRIDE === start)
    .map(({ at, what, change }) => ({
      what: `${at.join('.')}: ${what}`,
      text: textOf(changed(form, at, change)),
    }));

const numbersIn = (node: unknown): number[] => {
  if (typeof node === 'number') return [node];
  return node !== null && typeof node === 'object' ? Object.values(node).flatMap(numbersIn) : [];
};

describe('the full form with something else at a place', () => {
  it.each(forms)('%s: is in order before', (_, form) => {
    const result = parse(textOf(form));
    expect('problems' in result ? result.problems : []).toEqual([]);
  });

  it.each(forms)('%s: a scenario or problems', (_, form) => {
    for (const { what, text } of changedForms(form)) expect(() => holds(text), what).not.toThrow();
  });

  const places = forms.flatMap(([, form]) => placesOf(form).map((at) => ({ form, at })));
  const two = fc
    .constantFrom(...places)
    .chain(({ form, at }) =>
      fc.tuple(
        fc.constant(form),
        fc.constant(at),
        fc.constantFrom(...placesOf(form)),
        fc.constantFrom(...changes),
        fc.constantFrom(...changes),
      ),
    );
  it('at two places: a scenario or problems', () => {
    fc.assert(
      fc.property(two, ([form, a, b, [, here], [, there]]) => {
        holds(textOf(changed(changed(form, a, here), b, there)));
      }),
      { numRuns: 400, seed: 12 },
    );
  });

  // What passes is decided too: a few of each form, for each takes its time.
  it.each(forms)('%s: what passes has an answer without holes', (_, form) => {
    const passing = changedForms(form, 3).flatMap(({ what, text }) => {
      const result = parse(text);
      return 'scenario' in result ? [{ what, scenario: result.scenario }] : [];
    });
    expect(passing.length).toBeGreaterThan(5);
    const some = passing.filter((_, i) => i % Math.ceil(passing.length / 2) === 0);
    for (const { what, scenario } of some)
      expect(numbersIn(decideAtAverage(scenario, 'test')).some(Number.isNaN), what).toBe(false);
  });
});

describe('names that every object answers to', () => {
  const problemsAt = (text: string): string[] => {
    const result = holds(text);
    return 'problems' in result ? result.problems.map(({ kind, path }) => `${kind}: ${path}`) : [];
  };

  it('are needs and offers like any other', () => {
    for (const name of ['toString', 'valueOf', 'hasOwnProperty', 'length']) {
      const result = parse(withLines({ top: `needs: { ${name}: 4 }\n` }));
      if (!('scenario' in result)) throw new Error(name);
      const { options, closed, notices } = decideAtAverage(result.scenario, 'test');
      expect(options.length, name).toBeGreaterThan(0);
      expect(closed.filter(({ why }) => why.includes('needed'))).toEqual([]);
      const said = notices.filter(({ kind }) => kind === 'needs-unknown').map(({ text }) => text);
      expect(said).toHaveLength(2);
      expect(said[0]).toContain(name);
    }
  });

  it('are unknown keys like any other', () => {
    for (const name of ['toString', 'length', 'valueOf']) {
      const key = `unknown key: vehicle.${name}`;
      expect(problemsAt(withLines({ vehicle: `  ${name}: { a: 1 }\n` }))).toEqual([key]);
    }
    expect(
      problemsAt(SHORT_FORM.replace(/work_needed:\n(?: {2}- .*\n)+/, 'work_needed: { length: { a: 1 } }\n')),
    ).toEqual(['wrong shape: work_needed']);
  });

  it('are no spoken words, places or parts', () => {
    expect(problemsAt(withLines({ vehicle: '  towing: toString\n' }))).toEqual([
      'not a number: vehicle.towing',
    ]);
    expect(
      problemsAt(withLines({ vehicle: '  components: [{ name: a, like: valueOf, shop_price: 4 }]\n' })),
    ).toEqual(['not one of: vehicle.components.0.like']);
    expect(problemsAt(withLines({ top: 'claim: { place: toString }\n' }))).toContain(
      'not one of: claim.place',
    );
  });
});

describe('slips that once went through or fell over', () => {
  const problemsAt = (text: string): string[] => {
    const result = holds(text);
    return 'problems' in result ? result.problems.map(({ path }) => path) : [];
  };

  it('words about an economy that is not there', () => {
    for (const economy of ['{ how: measured }', '{}', '[[1], [1]]'])
      expect(problemsAt(withLines({ vehicle: `  fuel: { economy: ${economy} }\n` }))[0]).toMatch(
        /^vehicle\.fuel\.economy/,
      );
  });

  it('numbers in the place of names are names', () => {
    const look =
      'look_first: [{ what: a look, costs: 50, component: 3, within: 12, sees: 80, clears: 80 }]\n';
    expect(problemsAt(withLines({ top: look }))).toEqual(['look_first.0.component']);
    expect(problemsAt(withLines({ top: 'private: [3]\n' }))).toEqual(['private.0']);
    expect(problemsAt(withLines({ top: 'currency: 4\n' }))).toContain('currency');
    expect(problemsAt(withLines({ top: 'claim: { place: 0 }\n' }))).toContain('claim.place');
    expect(problemsAt(SHORT_FORM.replace('what: 2009 wagon', 'what: 2009'))).toEqual([]);
  });

  it('capitals in one of a few words do not count for the rules either', () => {
    const electric = '  powertrain: Battery\n  fuel: { economy: 3 mi/kWh }\n';
    expect(problemsAt(withLines({ vehicle: electric }))).toEqual([]);
    const plain = SHORT_FORM.replace('  odometer: 38000\n', '  condition: New\n');
    expect(problemsAt(plain)).toEqual([]);
    expect(problemsAt(withLines({ replacement: '  condition: New\n' }))).toEqual(['replacement.condition']);
  });
});
