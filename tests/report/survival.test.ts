import { describe, expect, it } from 'vitest';
import { lastsSentence } from '../../src/report/words/lasting.ts';
import { ofHundred, survivalSentences } from '../../src/report/words/survival.ts';
import { decisionOf, type File } from '../support/file.ts';

const older = (change: (file: File) => void = () => undefined) =>
  decisionOf((file) => {
    Reflect.deleteProperty(file, 'big_bills');
    change(file);
  });

describe('how likely it is still on the road', () => {
  it('says what the table has of its kind, what we would do, and what own hands do for it', () => {
    const d = older();
    const [ofItsKind, ours] = survivalSentences(d);
    // 0.298 of sedans and wagons 17 years old: the worked case of tests/published/bigBills.test.ts.
    expect(ofItsKind).toBe(
      'Of sedans, wagons and hatchbacks 17 years old about 30 in 100 are still on the road five years on, collision and theft aside: the rest were given up over a bill.',
    );
    expect(ours).toMatch(/^By what we would pay to keep it, .*: about \d\d in 100; about \d\d with a shop/);
    expect(lastsSentence(d)).toMatch(
      /^Mending it pays if it then lasts \d+ months, the 2021 hatchback after that; about \d\d of 100 do\.$/,
    );
  });

  it('takes the kind from its name, and a younger one lasts longer', () => {
    const pickup = older((file) => Object.assign(file.vehicle, { what: '2009 pickup' }));
    expect(survivalSentences(pickup)[0]).toContain('Of pickups 17 years old');
    const ours = (year: number): number =>
      older((file) => Object.assign(file.vehicle, { what: `${year} wagon` })).survival?.years.at(-1)?.ours ??
      0;
    expect(ours(2020)).toBeGreaterThan(ours(2009));
  });

  it('says so where the file leaves big bills out, and has no chance to tell then', () => {
    const d = decisionOf();
    expect(d.survival).toBeNull();
    expect(survivalSentences(d)).toEqual([expect.stringContaining('left out, as the file says')]);
    expect(lastsSentence(d)).not.toContain('of 100');
  });

  it('never says all or none of a hundred', () => {
    expect([0, 0.004, 0.5, 0.996, 1].map(ofHundred)).toEqual([
      'fewer than one',
      'fewer than one',
      'about 50',
      'more than 99',
      'more than 99',
    ]);
  });
});
