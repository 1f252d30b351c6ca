import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cover,
  changeDeductible,
  claimsToPay,
  coverCost,
  type Exposure,
  type LossTable,
  lossesOf,
  valueToPay,
  worstLoss,
} from '../../../src/engine/valuation/cover.ts';

/** A fifth of losses total, the others 1,500, 3 in 100 years; worth 4,000. */
const EXPOSURE: Exposure = { claims: 0.03, losses: lossesOf(0.2, 1500), value: 4000 };
const COVER: Cover = { premium: 420, deductible: 500 };

const table: fc.Arbitrary<LossTable> = fc
  .array(
    fc.record({
      weight: fc.integer({ min: 1, max: 9 }),
      loss: fc.oneof(fc.constant('total' as const), fc.integer({ min: 0, max: 12_000 })),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((rows) => {
    const all = rows.reduce((sum, { weight }) => sum + weight, 0);
    return rows.map(({ weight, loss }) => ({ share: weight / all, loss }));
  });
const exposure = fc.record({
  claims: fc.integer({ min: 1, max: 400 }).map((n) => n / 1000),
  losses: table,
  value: fc.integer({ min: 0, max: 20_000 }),
});
const cover = fc.record({
  premium: fc.integer({ min: 1, max: 2000 }),
  deductible: fc.integer({ min: 0, max: 3000 }),
});

describe('cover on an old vehicle', () => {
  it('costs premium and the deductible with it, the losses without: never nothing', () => {
    expect(coverCost(COVER, EXPOSURE)).toBeCloseTo(420 + 0.03 * 500, 10);
    expect(coverCost(null, EXPOSURE)).toBeCloseTo(0.03 * (0.2 * 4000 + 0.8 * 1500), 10);
    expect([worstLoss(COVER, EXPOSURE), worstLoss(null, EXPOSURE)]).toEqual([500, 4000]);
    fc.assert(
      fc.property(exposure, cover, (at, with_) => {
        const loss = at.losses.reduce(
          (sum, { share, loss: l }) => sum + share * Math.min(l === 'total' ? at.value : l, at.value),
          0,
        );
        expect(coverCost(null, at)).toBeCloseTo(at.claims * loss, 9);
        expect(coverCost(with_, at)).toBeGreaterThanOrEqual(with_.premium);
        expect(coverCost({ premium: 0, deductible: 1e9 }, at)).toBeCloseTo(coverCost(null, at), 9);
      }),
    );
  });

  it('agrees with the limited mean of an exponential loss, drawn out as a fine table', () => {
    // E min(X, d) = 1,500 (1 - exp(-d/1,500)), from memory of any actuarial text.
    const n = 20_000;
    const losses: LossTable = Array.from({ length: n }, (_, k) => ({
      share: 1 / n,
      loss: -1500 * Math.log(1 - (k + 0.5) / n),
    }));
    const borne = coverCost({ premium: 0, deductible: 500 }, { claims: 1, losses, value: 1e9 });
    expect(borne).toBeCloseTo(1500 * (1 - Math.exp(-1 / 3)), 2);
  });

  it('tips at a number of claims, and at a value', () => {
    expect(claimsToPay(COVER, EXPOSURE)).toEqual({ status: 'at', at: 420 / (2000 - 500) });
    // 0.03 x (0.8 x 1,000 + 0.2 x (V - 500)) = 420
    const tips = valueToPay(COVER, EXPOSURE);
    expect(tips.status).toBe('at');
    if (tips.status === 'at') expect(tips.at).toBeCloseTo(66_500, 6);
    expect(claimsToPay({ premium: 1, deductible: 4000 }, EXPOSURE).status).toBe('never');
    expect(valueToPay(COVER, { claims: 0.03, losses: lossesOf(0, 1500) }).status).toBe('never');
    expect(claimsToPay({ premium: 0, deductible: 0 }, EXPOSURE).status).toBe('always');
    expect(valueToPay({ premium: 0, deductible: 0 }, EXPOSURE).status).toBe('always');
  });

  it('costs the same both ways where it tips, for any table', () => {
    fc.assert(
      fc.property(exposure, cover, (at, with_) => {
        const even = (there: Exposure) =>
          expect(Math.abs(coverCost(with_, there) - coverCost(null, there))).toBeLessThan(1e-6);
        const claims = claimsToPay(with_, at);
        if (claims.status === 'at') even({ ...at, claims: claims.at });
        const value = valueToPay(with_, at);
        if (value.status === 'at') even({ ...at, value: value.at });
        else
          expect(coverCost(with_, { ...at, value: 1e9 })).toBeGreaterThan(
            coverCost(null, { ...at, value: 1e9 }),
          );
      }),
    );
  });

  it('weighs a higher deductible: premium saved against what is borne', () => {
    const change = changeDeductible(COVER, { premium: 360, deductible: 1000 }, EXPOSURE);
    expect(change).toMatchObject({ saved: 60, worst: 500 });
    expect(change.borne).toBeCloseTo(15, 10);
    expect(change.gain).toBeCloseTo(45, 10);
    expect(change.tips).toEqual({ status: 'at', at: 60 / 500 });
    const back = changeDeductible({ premium: 360, deductible: 1000 }, COVER, EXPOSURE);
    expect(back).toMatchObject({ saved: -60, worst: -500, tips: { status: 'at', at: 60 / 500 } });
  });

  it('a higher deductible at the same premium never pays; a lower one at a lower premium always does', () => {
    fc.assert(
      fc.property(exposure, cover, fc.integer({ min: 0, max: 2000 }), (at, with_, more) => {
        const change = changeDeductible(with_, { ...with_, deductible: with_.deductible + more }, at);
        expect(change.gain).toBeLessThanOrEqual(0);
        expect(change.tips.status).toBe('never');
      }),
    );
    expect(changeDeductible(COVER, { premium: 400, deductible: 250 }, EXPOSURE).tips.status).toBe('always');
  });

  it('refuses shares that do not sum to 1', () => {
    expect(() => coverCost(null, { ...EXPOSURE, losses: [{ share: 0.5, loss: 100 }] })).toThrow(RangeError);
    expect(() => coverCost(null, { ...EXPOSURE, losses: lossesOf(1.5, 100) })).toThrow(RangeError);
  });
});
