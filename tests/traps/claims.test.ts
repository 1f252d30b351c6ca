import { describe, expect, it } from 'vitest';
import { coverView } from '../../src/engine/decision/claim/coverView.ts';
import { STRAIGHT } from '../../src/report/words/claim/cautions.ts';
import { named, results, sumOf, viewOf, waysFor, whyOf } from '../engine/decision/claim/asked.ts';
import { claim, hit, strict } from '../engine/decision/claim/collision.ts';
import { afterCollision } from '../report/claims.ts';
import { read, render } from '../report/page.ts';

const collision = {
  aYear: 180,
  deductible: 500,
  chanceAYear: 0.04,
  meanLoss: 1800,
  totalShare: 0.25,
  other: null,
};
const insured = (savings: number | null) => {
  const { inputs, facts } = hit();
  return {
    facts,
    inputs: {
      ...inputs,
      household: { ...inputs.household, savings },
      vehicle: { ...inputs.vehicle, ownDamage: { collision, comprehensive: null } },
    },
  };
};

describe('cover dropped', () => {
  it('says what is left the day after a total loss, with and without it', () => {
    const { inputs, facts } = insured(4000);
    // Worth 6,000, the wreck brings 400: 500 to bear with cover, 5,600 without.
    expect(coverView(inputs, facts)?.parts[0]?.savingsAfter).toEqual({ withIt: 3500, without: -1600 });
  });

  it('and without savings that anybody told, the loss itself', () => {
    const { inputs, facts } = insured(null);
    const part = coverView(inputs, facts)?.parts[0];
    expect(part?.savingsAfter).toBeNull();
    expect(part?.worst).toEqual({ withIt: 500, without: 5600 });
  });

  it('neither is free: what a deductible leaves to pay is in every projection', () => {
    for (const { id, ledger } of results(insured(null)))
      expect([id, ledger.some(({ what }) => what.startsWith('own part of a loss'))]).toEqual([id, true]);
  });
});

describe("the lender's demand for cover", () => {
  it('closes going without', () => {
    const { inputs, facts } = insured(4000);
    expect(coverView(inputs, { ...facts, lenderRequiresCover: true })?.mustKeep).toMatch(
      /until the debt is gone/,
    );
  });
});

describe('salvage way wins on paper', () => {
  const ready = { insuranceQuoted: true, retitlingConfirmed: true, inspected: true };

  it('is held until an insurance quote and the retitling are confirmed', () => {
    const why = (more: Partial<typeof ready>) =>
      whyOf(hit({}, { place: strict, rebuild: { ...ready, ...more } }), 'claim/rebuild');
    expect(why({})).toBeUndefined();
    expect(why({ insuranceQuoted: false })).toMatch(/quoted/);
    expect(why({ retitlingConfirmed: false })).toMatch(/retitled/);
  });

  it('some can never be retitled', () => {
    const never = { source: 'invented', evidence: 'stated', percent: 33, operator: '>=' } as const;
    // 2,004 of 6,000 is 33.4 %.
    expect(whyOf(hit({}, { place: { ...strict, neverAgain: never } }), 'claim/rebuild')).toMatch(/never/);
  });

  it('its months off the road cost what getting about costs', () => {
    const rebuild = { ...(claim.rebuild as NonNullable<typeof claim.rebuild>), monthsOff: 2 };
    const one = hit({ rebuild }, { place: strict });
    const rides = { ...one.inputs, household: { ...one.inputs.household, dayWithout: 12 } };
    // 12 x 365.25 / 12 a month.
    const option = named(results({ ...one, inputs: rides }), 'claim/rebuild/keep');
    expect(sumOf(option, 'getting about without it')).toBe(2 * 36_525);
    expect(sumOf(option, 'energy', 1)).toBe(0);
  });
});

describe('flooded, airbag deployed', () => {
  it.each([{ airbagsDeployed: true }, { flooded: true }])(
    'own repair is closed until inspected: %o',
    (what) => {
      const unseen = { insuranceQuoted: true, retitlingConfirmed: true, inspected: false };
      expect(whyOf(hit({}, { ...what, rebuild: unseen }), 'claim/own-repair')).toMatch(/inspected/);
      expect(whyOf(hit({}, { ...what, rebuild: unseen }), 'claim/left')).toMatch(/not safe/);
      expect(waysFor(hit({}, what)).open.some(({ id }) => id.startsWith('claim/own-repair/'))).toBe(true);
    },
  );
});

describe('advice that shades into misstatement', () => {
  const words = read(render(afterCollision)).querySelector('#before-signing')?.textContent ?? '';

  it('tells to tell the insurer the truth, of a waived share, and of papers that must be shown', () => {
    for (const caution of [STRAIGHT.truth, STRAIGHT.waive, STRAIGHT.brand]) expect(words).toContain(caution);
    expect(STRAIGHT.waive).toMatch(/law/);
  });
});

describe('somebody else may pay', () => {
  it('an insurer that pays is no reason to forget what it costs: no claim, no payment and no surcharge', () => {
    const dear = hit({ surcharge: { aYear: 400, years: 3 } });
    const option = named(results(dear), 'claim/no-claim-own/keep');
    expect(sumOf(option, 'settlement')).toBe(0);
    expect(option.ledger.some(({ what }) => what.startsWith('dearer'))).toBe(false);
    expect(viewOf(dear).courses.length).toBeGreaterThan(5);
  });
});
