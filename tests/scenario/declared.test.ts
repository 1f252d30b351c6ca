import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { differing } from '../../src/engine/scenario/complete/movedInputs.ts';
import { typedIn } from '../../src/engine/scenario/file/rewrite.ts';
import { inputAt } from '../../src/engine/scenario/inputs/lens.ts';
import type { Quantity } from '../../src/engine/scenario/inputs/scenario.ts';
import type { Spec } from '../../src/engine/scenario/inputs/specs.ts';
import { limits } from '../../src/engine/scenario/inputs/units.ts';
import { INPUTS, SPECS } from './declared.ts';
import { scenarioOf } from './scenario.ts';

const demos = new URL('../../scenarios/', import.meta.url);
const FILES = [
  ...readdirSync(demos).flatMap((name) => (name.endsWith('.yaml') ? [new URL(name, demos)] : [])),
  new URL('./full-form.yaml', import.meta.url),
];

/** What goes as far as something else: a year around today, energy by how it is stated, a lease's price as any price. */
const OWN_LIMITS = /\.age$|\.energy\.(economy|price)$|^replacement\.1\.price$/;

/** A model year is told for an age, a reading for what was driven since; the ratio is no input of its own. */
const TOLD_OTHERWISE = /\.age$|\.sinceDistance$|^household\.tablePriceRatio$/;

/** What nothing else follows, one of each room of the file. */
const ALONE =
  /^household\.(dayWithout|cardRate|atHome\.share)$|^vehicle\.(tax\.aYear|tax\.nextDue|parkingAMonth|selling\.hours|inAHurry\.days|storageADay|averageRepairs\.strands)$|^workNeeded\.0\.(left\.aMonth|buyerPays)$|^replacement\.0\.(guarantee\.months|rebate|payment\.firstPayment)$|^doingWithout\.aDay$|^claim\.(fault|salvage|estimate\.days)$/;

describe('the declarations', () => {
  it('give every number a key, words and a range', () => {
    expect(INPUTS.length).toBeGreaterThan(100);
    for (const [name, { key, words, min, max }] of INPUTS) {
      expect(key, name).toMatch(/^[a-z]+(_[a-z]+)*$/);
      expect(words.length, name).toBeGreaterThan(1);
      expect(min, name).toBeLessThan(max);
    }
  });

  it('hold defaults that the file itself may say', () => {
    for (const [name, { missing, or, min, max }] of INPUTS)
      if (or && missing !== 'follows') expect(or.value >= min && or.value <= max, name).toBe(true);
  });
});

describe.each(FILES.map((file) => [file.pathname.split('/').at(-1), readFileSync(file, 'utf8')] as const))(
  'the numbers of %s',
  (_, text) => {
    const scenario = scenarioOf(text);
    const { inputs, quantities, written } = scenario;
    if (!written) throw new Error('This was read from a file.');

    const fits = ({ unit, min, max, integer, exact }: Spec, one: Quantity): boolean => {
      const within = limits({ unit, min, max, mark: one.mark, words: '' }, written.units);
      return (
        unit === one.unit &&
        (integer === true) === one.integer &&
        (exact === undefined || one.range === null) &&
        (OWN_LIMITS.test(one.key) || (within.min === one.min && within.max === one.max))
      );
    };

    it('are noted once each, as declared under their key in the file', () => {
      expect(new Set(quantities.map(({ key }) => key)).size).toBe(quantities.length);
      for (const one of quantities) {
        if (!TOLD_OTHERWISE.test(one.key)) expect(inputAt(inputs, one.key), one.key).toBe(one.value);
        const keyed = INPUTS.filter(([, { key }]) => `.${one.path}`.endsWith(`.${key}`));
        const specs = keyed.length > 0 ? keyed.map(([, spec]) => spec) : SPECS.map(([, spec]) => spec);
        expect(
          specs.some((spec) => fits(spec, one)),
          one.key,
        ).toBe(true);
      }
    });

    it('move nothing but themselves when typed where their path says', () => {
      const alone = quantities.filter(({ key, min, max }) => ALONE.test(key) && min < max);
      expect(alone.length).toBeGreaterThan(5);
      for (const quantity of alone) {
        const { key, value, max } = quantity;
        const other = value + 1 <= max ? value + 1 : value / 2;
        const typed = typedIn(written, { quantity, value: other });
        expect(typed && differing(inputs, typed.inputs), key).toEqual([{ key, from: value, to: other }]);
      }
    });
  },
);
