import { describe, expect, it } from 'vitest';
import type { ClaimFacts, Rebuild } from '../../../../src/engine/scenario/claim.ts';
import type { PlaceRule } from '../../../../src/engine/scenario/placeRule.ts';
import { named, results, sumOf, viewOf, waysFor, whyOf } from './asked.ts';
import { claim, hit, strict } from './collision.ts';

const rebuild = claim.rebuild as Rebuild;
const lender = (more: Partial<NonNullable<ClaimFacts['lender']>>): Partial<ClaimFacts> => ({
  lender: { name: 'the credit union', paidFirst: null, requiresRepair: null, cheque: null, ...more },
});
const CASH = ['claim/own-repair', 'claim/safe-only', 'claim/left', 'claim/sold-damaged'];
const openIn = (one: ReturnType<typeof hit>, course: string): boolean =>
  waysFor(one).open.some(({ id }) => id.startsWith(`${course}/`));

describe('a lender closes', () => {
  it('the cash where the cheque may only go to the repair, whoever is paid first', () => {
    for (const paidFirst of [null, true]) {
      const one = hit({}, lender({ cheque: 'only for the repair', paidFirst }), 2000);
      for (const course of CASH)
        expect([course, whyOf(one, course)]).toEqual([course, expect.stringMatching(/only for the repair/)]);
      expect(openIn(one, 'claim/shop-repair')).toBe(true);
    }
    expect(
      openIn(hit({}, lender({ cheque: 'only for the repair', paidFirst: false }), 2000), 'claim/left'),
    ).toBe(true);
  });

  it('what leaves the damage, where it requires the repair, claim or not', () => {
    const one = hit({}, lender({ requiresRepair: true }), 2000);
    for (const course of ['claim/left', 'claim/safe-only', 'claim/no-claim-left', 'claim/no-claim-safe'])
      expect([course, whyOf(one, course)]).toEqual([course, expect.stringMatching(/requires the repair/)]);
    expect(openIn(one, 'claim/no-claim-shop')).toBe(true);
    expect(openIn(one, 'claim/no-claim-own')).toBe(true);
  });
});

describe('over the line, without a claim', () => {
  const chart: PlaceRule = { ...strict, totalLoss: { ...strict.totalLoss, evidence: 'secondary' } };

  it('a rule that was not read in the law closes no mending, and is said as a risk', () => {
    const one = hit({}, { pays: 'nobody', place: chart });
    for (const course of ['claim/no-claim-shop', 'claim/no-claim-own'])
      expect(openIn(one, course)).toBe(true);
    expect(named(viewOf(one).courses, 'claim/no-claim-shop').risks.join(' ')).toMatch(
      /may have to be branded/,
    );
  });

  it('a rule that is stated closes it; rebuilding under branded papers is then a way of its own', () => {
    const one = hit({}, { pays: 'nobody', place: strict });
    expect(whyOf(one, 'claim/no-claim-shop')).toMatch(/papers are branded/);
    const kept = named(results(one), 'claim/no-claim-rebuild/keep');
    expect(sumOf(kept, 'settlement')).toBe(0);
    const clean = named(results(hit({}, { pays: 'nobody' })), 'claim/no-claim-shop/keep');
    expect(kept.valueAtEnd).toBeLessThan(0.75 * clean.valueAtEnd);
    const unquoted = { insuranceQuoted: false, retitlingConfirmed: true, inspected: true };
    expect(
      whyOf(hit({}, { pays: 'nobody', place: strict, rebuild: unquoted }), 'claim/no-claim-rebuild'),
    ).toMatch(/quoted/);
  });

  it('below the line nobody is offered branded papers', () => {
    expect(whyOf(hit({}, { pays: 'nobody' }), 'claim/no-claim-rebuild')).toMatch(/no total loss/);
    expect(waysFor(hit()).closed.map(({ id }) => id)).not.toContain('claim/no-claim-rebuild');
  });
});

describe('a wreck that is kept', () => {
  it('is not, where the place does not let the owner', () => {
    expect(whyOf(hit({}, { place: { ...strict, mayKeep: false } }), 'claim/rebuild')).toMatch(/does not let/);
    expect(openIn(hit({}, { place: { ...strict, mayKeep: true } }), 'claim/rebuild')).toBe(true);
  });

  it('carries what shows once it is opened, and nobody pays that', () => {
    const supplement = { chance: 0.4, amount: 500, paid: 1 };
    const estimate = { ...claim.estimate, supplement };
    const day = (one: ReturnType<typeof hit>): number =>
      named(results(one), 'claim/rebuild/keep').cashOnTheDay;
    // 0.4 x 500 and 8 % tax.
    expect(day(hit({ estimate }, { place: strict })) - day(hit({}, { place: strict }))).toBe(21_600);
    expect(named(viewOf(hit({ estimate }, { place: strict })).courses, 'claim/rebuild').risks).toContain(
      'more damage shows once it is opened',
    );
  });

  it('is not driven while it is off the road: rides every month, no energy, upkeep or repairs, but its bills', () => {
    const off = hit({ rebuild: { ...rebuild, monthsOff: 3 } }, { place: strict });
    const free = hit({}, { place: strict });
    const a = { ...off, inputs: { ...off.inputs, household: { ...off.inputs.household, dayWithout: 8 } } };
    const option = named(results(a), 'claim/rebuild/keep');
    const during = (category: string, last: number): number =>
      option.ledger
        .filter((row) => row.category === category && row.month >= 1 && row.month <= last)
        .reduce((sum, row) => sum + row.amount.cash, 0);
    for (const category of ['energy', 'scheduled upkeep', 'repairs']) {
      expect([category, during(category, 3)]).toEqual([category, 0]);
      expect(during(category, 6)).toBeGreaterThan(0);
    }
    // 365.25 / 12 x 8 a month, at prices of the first year, and none of it on the day.
    expect(sumOf(option, 'getting about without it', 0)).toBe(0);
    for (const month of [1, 2, 3]) expect(sumOf(option, 'getting about without it', month)).toBe(24_350);
    expect(sumOf(option, 'getting about without it', 4)).toBe(0);
    expect(sumOf(option, 'insurance', 12)).toBe(
      sumOf(named(results(free), 'claim/rebuild/keep'), 'insurance', 12),
    );
  });

  it('is not sold as rebuilt before it is, nor rebuilt for longer than is looked at', () => {
    const months = waysFor(hit({ rebuild: { ...rebuild, monthsOff: 7 } }, { place: strict }))
      .open.filter(({ id }) => id.startsWith('claim/rebuild/later/'))
      .map(({ id }) => Number(id.split('/').at(-1)));
    expect(Math.min(...months)).toBeGreaterThan(7);
    const { inputs } = hit();
    const forever = { ...rebuild, monthsOff: inputs.household.lookAhead };
    expect(whyOf(hit({ rebuild: forever }, { place: strict }), 'claim/rebuild')).toMatch(/off the road/);
  });
});

describe('damage that stays', () => {
  it('comes off what it brings later in full, never below scrap', () => {
    const end = (id: string, one = hit()): number => named(results(one), id).valueAtEnd;
    const whole = end('claim/shop-repair/keep');
    // 300 and 900 stay visible; left as it is, all of 6,000 - 3,600.
    expect(whole - end('claim/own-repair/keep')).toBe(30_000);
    expect(whole - end('claim/safe-only/keep')).toBe(90_000);
    // V(60) less 2,400 would be some 270: it brings 400 as scrap.
    expect(end('claim/left/keep')).toBe(40_000);
  });
});
