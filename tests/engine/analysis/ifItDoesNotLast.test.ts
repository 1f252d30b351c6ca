/** How long it has to last: by another route, by hand, and in words. */
import { describe, expect, it } from 'vitest';
import { decideAtAverage } from '../../../src/engine/answer/decide.ts';
import { lastsSentence } from '../../../src/report/words/lasting.ts';
import { type File, scenarioOf } from '../../support/file.ts';

const decided = (change: (file: File) => void = () => undefined) =>
  decideAtAverage(
    scenarioOf((file) => {
      Object.assign(file, { savings_for_this: 40_000 });
      change(file);
    }),
    'test',
  );
const lasting = (change?: (file: File) => void) => {
  const found = decided(change).lasting;
  if (!found) throw new Error('nothing to hold it against');
  return found;
};

describe('if it does not last', () => {
  it('costs what keeping it costs where its inspection is sure to end it in that month', () => {
    for (const month of [5, 12]) {
      const certain = decided((file) => {
        Object.assign(file.vehicle, {
          inspection_a_year: 40,
          inspection_due: month,
          ends: [{ what: 'frame rot', chance_a_year: 100 }],
        });
        Object.assign(file.replacement, { inspection_a_year: 40 });
      });
      const without = lasting((file) => {
        Object.assign(file.vehicle, { inspection_a_year: 40, inspection_due: month });
        Object.assign(file.replacement, { inspection_a_year: 40 });
      });
      const keep = certain.options.find(({ id }) => id === 'keep')?.netPresentCost.counted as number;
      // The ledger is in cents, one rounding a row.
      expect(without.curve[month - 1]?.cost).toBeCloseTo(keep / 100, 0);
    }
  });

  it('falls with every month it lasts, while it is the cheaper one to run', () => {
    const { curve } = lasting();
    for (let i = 1; i < curve.length; i++)
      expect(curve[i]?.cost).toBeLessThan((curve[i - 1]?.cost as number) + 60);
  });

  it('pays from the month after the last in which losing it costs no less', () => {
    const { curve, replaceNow, months } = lasting();
    expect(months).toBeGreaterThan(0);
    const cost = (k: number): number => curve[k - 1]?.cost as number;
    expect(cost(months as number)).toBeLessThan(replaceNow);
    expect(cost((months as number) - 1)).toBeGreaterThanOrEqual(replaceNow);
  });

  it('takes longer where the work costs more, and is never enough where it costs too much', () => {
    const months = (parts: number) =>
      lasting((file) => Object.assign(file.work_needed[0] ?? {}, { parts })).months;
    // Dear enough that it would be sold as it stands: mended and sold, the work is paid for either way.
    expect(months(5000)).toBeGreaterThan(months(640) as number);
    expect(months(30_000)).toBeNull();
  });

  it('is said in words', () => {
    expect(lastsSentence(decided())).toMatch(
      /^Mending it pays if it then lasts \d+ months, the 2021 hatchback after that\.$/,
    );
    expect(
      lastsSentence(decided((file) => Object.assign(file.work_needed[0] ?? {}, { parts: 30_000 }))),
    ).toBe('Mending it would not pay even if it then lasted five years.');
    const nothing = decided((file) => Reflect.deleteProperty(file, 'work_needed'));
    expect(lastsSentence(nothing)).toMatch(/^Keeping it pays/);
  });
});
