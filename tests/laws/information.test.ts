import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  partialInformation,
  perfectInformation,
  testInformation,
} from '../../src/engine/chance/information.ts';

const SCRAMBLES = 4;

/** Up to five ways over the same draws, an event of each draw, and a test for it. */
const questions = fc
  .record({ ways: fc.integer({ min: 1, max: 5 }), points: fc.integer({ min: 1, max: 40 }) })
  .chain(({ ways, points }) => {
    const draws = points * SCRAMBLES;
    const column = fc
      .array(fc.integer({ min: -50_000, max: 50_000 }), { minLength: draws, maxLength: draws })
      .map(Float64Array.from.bind(Float64Array));
    return fc.record({
      costs: fc.array(column, { minLength: ways, maxLength: ways }),
      about: column,
      event: fc
        .array(fc.constantFrom(0, 1), { minLength: draws, maxLength: draws })
        .map(Uint8Array.from.bind(Uint8Array)),
      sees: fc.double({ min: 0, max: 1, noNaN: true }),
      clears: fc.double({ min: 0, max: 1, noNaN: true }),
    });
  });

/** Sums of tens of thousands in doubles. */
const ROUNDING = 1e-7;

describe('law 8: knowing all is worth at least knowing one thing, that at least an imperfect test, that at least nil', () => {
  it('holds in every sample', () => {
    fc.assert(
      fc.property(questions, ({ costs, about, event, sees, clears }) => {
        const all = perfectInformation(costs, SCRAMBLES).value;
        const one = partialInformation(costs, about, SCRAMBLES, 1).worth.value;
        const { worth, perfect } = testInformation(costs, event, sees, clears, SCRAMBLES);
        expect(all).toBeGreaterThanOrEqual(one - ROUNDING);
        expect(one).toBeGreaterThanOrEqual(0);
        expect(all).toBeGreaterThanOrEqual(perfect.value - ROUNDING);
        expect(perfect.value).toBeGreaterThanOrEqual(worth.value - ROUNDING);
        expect(worth.value).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 200 },
    );
  });

  it('all are nil, exactly, where nothing is uncertain', () => {
    fc.assert(
      fc.property(questions, ({ costs, about, event, sees, clears }) => {
        const certain = costs.map((cost) => new Float64Array(cost.length).fill(cost[0] as number));
        const nil = { value: 0, error: 0 };
        expect(perfectInformation(certain, SCRAMBLES)).toEqual(nil);
        expect(partialInformation(certain, about, SCRAMBLES, 1)).toEqual({ worth: nil, measurable: false });
        const { worth, perfect } = testInformation(certain, event, sees, clears, SCRAMBLES);
        expect([worth, perfect]).toEqual([nil, nil]);
      }),
      { numRuns: 100 },
    );
  });
});
