import { describe, expect, it } from 'vitest';
import { breakEvenOf, nearestTip, type RivalsAt } from '../../../src/engine/analysis/breakEven.ts';
import type { Quantity } from '../../../src/engine/scenario/inputs/scenario.ts';
import { decisionOf } from '../../support/file.ts';

/** One way of each side, the first of which costs nothing. */
const against =
  (f: (x: number) => number): RivalsAt =>
  (x) => ({ open: 'a b', first: [0], second: [f(x)], lead: f(x) });

describe('a shop taking over later', () => {
  it('leaves the card of the first day as it was: only later work differs', () => {
    // Nothing is done at home later, so from month 12 on a shop changes nothing at all.
    const decision = decisionOf((file) => {
      file.savings_for_this = 400;
      file.household = { at_home: { share: 0 } };
    });
    const counted = decision.difference?.counted as number;
    for (const { month, difference } of decision.shopFrom)
      if (month > 0) expect(Math.abs(difference - counted)).toBeLessThan(200);
  });
});

describe("at the loan's rate", () => {
  it('takes the rate of the loan that is compared, the low one where that is the better offer', () => {
    const decision = decisionOf((file) => {
      file.household = { money_earns: 6 };
      Object.assign(file.replacement, { low_rate_instead: 0.9 });
    });
    expect(decision.bestReplace?.id).toMatch(/low-rate$/);
    expect(decision.atLoanRate?.rate).toBeCloseTo((1 + 0.009 / 12) ** 12 - 1, 9);
  });
});

describe('where it tips', () => {
  const quantity: Quantity = {
    key: 'x',
    moves: [],
    path: 'x',
    standsAt: [],
    suffix: '',
    onlyRange: false,
    label: 'a number',
    unit: 'money',
    value: 100,
    range: null,
    varies: 'once',
    min: 0,
    max: 10000,
    step: 1,
    integer: false,
    mark: 'guess',
    known: false,
    isDefault: false,
    source: '',
    note: '',
  };

  it('a root where two scans meet is one root, and says who is cheaper above it', () => {
    // Bent, so that it is scanned; nil at 400, four times today's value, where the near and the far scan meet.
    const { status, roots } = breakEvenOf(
      quantity,
      against((x) => 400 - x + (x > 7000 ? 1e-3 * (x - 7000) : 0)),
      1,
    );
    expect(status).toBe('one');
    expect(roots).toHaveLength(1);
    expect(roots[0]).toMatchObject({ kind: 'root', above: 'replace' });
    expect(roots[0]?.at).toBeCloseTo(400, 6);
  });

  it('where the two ways only touch, nothing tips', () => {
    const touching = breakEvenOf(
      quantity,
      against((x) => Math.abs(x - 90) / 10),
      1,
    );
    expect(touching.roots.map(({ kind }) => kind)).toEqual(['touch']);
    expect(nearestTip(touching)).toBe(Number.POSITIVE_INFINITY);
  });
});
