import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TO_THE_CENT } from '../../src/engine/cashflow/contracts/settlement/arithmetic.ts';
import { comparedValue } from '../../src/engine/cashflow/contracts/settlement/comparedValue.ts';
import { type Cents, toCents } from '../../src/engine/quantity/money.ts';
import { compare } from '../../src/engine/scenario/inputs/comparables.ts';
import { placeByCode } from '../../src/engine/scenario/places/places.ts';
import { scenarioToPassOn } from '../../src/engine/scenario/private/passOn.ts';
import { type ClaimForm, claimForm } from '../support/claim.ts';
import { type File, problemsOf, scenarioOf, type Tree, warningsOf } from '../support/file.ts';
import { parse, quantityOf } from './scenario.ts';

const claimed =
  (change: (claim: ClaimForm, file: File) => void = () => undefined) =>
  (file: File): void => {
    const claim: ClaimForm = claimForm();
    change(claim, file);
    file.claim = claim;
  };

const withClaim = (change?: (claim: ClaimForm, file: File) => void) => {
  const scenario = scenarioOf(claimed(change));
  const { claim } = scenario.inputs;
  if (!claim || !scenario.facts.claim) throw new Error('no claim');
  return { scenario, claim, facts: scenario.facts.claim };
};

describe('a claim', () => {
  it('is not there unless it is written', () => {
    const { inputs, facts, quantities } = scenarioOf();
    expect([inputs.claim, facts.claim]).toEqual([null, null]);
    expect(inputs.vehicle.ownDamage).toEqual({ collision: null, comprehensive: null });
    expect(quantities.filter(({ key }) => /^claim|ownDamage/.test(key))).toEqual([]);
  });

  it('says of each number that nobody gave that it is a default, and why', () => {
    const { scenario } = withClaim();
    for (const key of ['claim.fault', 'claim.surcharge.aYear', 'claim.estimate.supplement.chance'])
      expect(quantityOf(scenario, key)).toMatchObject({ isDefault: true, value: 0 });
    expect(quantityOf(scenario, 'claim.salvage')).toMatchObject({ isDefault: false, value: 600 });
  });

  it('leaves open what nobody said', () => {
    const { facts } = withClaim();
    expect(facts).toMatchObject({
      structure: 'not checked',
      airbagsDeployed: null,
      flooded: null,
      signingCloses: null,
      lender: null,
      rebuild: { insuranceQuoted: false, retitlingConfirmed: false, inspected: false },
    });
    expect(facts.estimate.parts).toEqual(["other maker's", 'used', 'not said', 'not said']);
  });

  it('counts labour as hours at a rate, the rest as amounts, and taxes parts and paint', () => {
    const { claim } = withClaim();
    expect(claim.estimate.lines.map(({ amount, labour, taxed }) => [amount, labour, taxed])).toEqual([
      [412.6, null, true],
      [655, null, true],
      [null, { hours: 9.5, rate: 58 }, false],
      [610, null, true],
    ]);
  });

  it('bears a share of the bill under the own policy alone', () => {
    const { claim } = withClaim((c, file) => {
      c.pays = 'other';
      c.fault = 0;
      delete (c as { deductible?: number }).deductible;
      file.title = 'theirs';
    });
    expect(claim.deductible).toBe(0);
  });

  it('takes a mended but visible value as lost by as much as the damage takes off, unless told', () => {
    const { claim } = withClaim((c) => {
      c.safe_only = { parts: 90, hours: 4 };
    });
    expect(claim.safeOnly?.valueLost).toBe(3400 - 900);
    expect(claim.safeOnly?.by).toBe('own');
  });

  it('never assumes what insurance costs once it is rebuilt', () => {
    const found = problemsOf(
      claimed((c) => {
        c.rebuild = { parts: 400, hours: 40 };
      }),
    );
    expect(found.map(({ path }) => path)).toEqual(['claim.rebuild.insurance_a_year']);
  });
});

describe('comparables', () => {
  const compared = (c: ClaimForm): void => {
    delete (c as { value?: number }).value;
    c.a_mile = 0.055;
    c.comparables = [
      { what: 'dealer', price: 3800, odometer: 165000 },
      { what: 'private', price: 3150, odometer: 176500, adjust: 150 },
      { what: 'auction', price: 3290.5, odometer: 174250, adjust: -100 },
    ];
  };

  it('are carried to its own distance, line by line, and their mean is the value', () => {
    const { claim, facts, scenario } = withClaim(compared);
    // 171,000 miles of its own: 6,000 fewer at 0.055 is 330 off; 5,500 more 302.50 on; 3,250 more 178.75 on.
    expect(facts.comparables.map(({ forDistance, says }) => [forDistance, says])).toEqual([
      [-330, 3470],
      [302.5, 3602.5],
      [178.75, 3369.25],
    ]);
    // (3,470 + 3,602.50 + 3,369.25) / 3 = 3,480.5833
    expect(claim.value).toBe(3480.58);
    expect(facts).toMatchObject({ comparablesSay: 3480.58, perDistance: 0.055 });
    expect(quantityOf(scenario, 'claim.value')).toMatchObject({
      isDefault: false,
      source: 'the mean of 3 comparables',
      path: 'claim.value',
    });
  });

  it('stand beside a value that is stated', () => {
    const { claim, facts } = withClaim((c) => {
      compared(c);
      c.value = 3300;
    });
    expect(claim.value).toBe(3300);
    expect(facts).toMatchObject({ comparablesSay: 3480.58 });
  });

  it('come to what the settlement makes of them, to the cent', () => {
    const amount = fc.integer({ min: 0, max: 2_000_000 }).map((cents) => cents / 100);
    const vehicle = fc.record({
      price: amount,
      odometer: fc.integer({ min: 0, max: 300_000 }),
      adjustment: fc.integer({ min: -50_000, max: 50_000 }).map((cents) => cents / 100),
    });
    fc.assert(
      fc.property(
        fc.array(vehicle, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 300_000 }),
        fc.integer({ min: 0, max: 40 }),
        (all, odometer, cents) => {
          const ours = compare(all, { odometer, perDistance: cents / 100 });
          const theirs = comparedValue(
            TO_THE_CENT,
            all.map((one) => ({
              price: toCents(one.price),
              distance: one.odometer,
              adjustment: toCents(one.adjustment),
            })),
            { distance: odometer, perDistance: cents as Cents },
          );
          expect(ours.lines.map(({ says }) => toCents(says))).toEqual(
            theirs?.lines.map(({ value }) => value),
          );
          expect(toCents(ours.mean ?? Number.NaN)).toBe(theirs?.value);
        },
      ),
    );
  });
});

describe('the place', () => {
  it('is a listed one by its code, small letters or not', () => {
    const { facts } = withClaim((c) => {
      c.place = 'us-va';
    });
    expect(facts.place).toBe(placeByCode('US-VA'));
  });

  it('may be written out; what is not said is not known', () => {
    const written = (place: object) =>
      withClaim((c) => {
        (c as Tree).place = place;
      }).facts.place;
    expect(written({ name: 'Harbour Province', total_loss: 70 })).toEqual({
      code: 'Harbour Province',
      name: 'Harbour Province',
      mayKeep: null,
      date: '2026-11',
      totalLoss: {
        test: { kind: 'percent', percent: 70, operator: 'not known' },
        leftOut: [],
        reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
        note: null,
        source: 'written in the scenario',
        evidence: 'stated',
      },
      neverAgain: null,
      settlement: null,
      tradeIn: {
        credit: { kind: 'not known' },
        note: null,
        source: 'written in the scenario',
        evidence: 'stated',
      },
      fault: null,
      notes: [],
    });
    const { totalLoss, settlement } = written({
      name: 'Elsewhere',
      total_loss: 'formula',
      line_counts: 'no',
      tax: 'before salvage',
      source: 'a leaflet',
    });
    expect(totalLoss.test).toEqual({ kind: 'formula', operator: '>' });
    expect(settlement).toEqual({
      tax: 'before salvage',
      fees: 'not known',
      source: 'a leaflet',
      evidence: 'stated',
    });
    expect(written({ name: 'There', total_loss: 'insurer' }).totalLoss.test).toEqual({
      kind: 'insurer decides',
    });
  });

  it('keeps a percentage of hundred as it is written', () => {
    for (const percent of [55, 57, 58, 72.5, 100]) {
      const { facts } = withClaim((c) => {
        (c as Tree).place = { name: 'Elsewhere', total_loss: percent };
      });
      expect(facts.place.totalLoss.test).toMatchObject({ percent });
    }
  });
});

describe('days', () => {
  it('of storage are counted to the day until which the insurer pays', () => {
    const { claim, scenario } = withClaim((c) => {
      c.storage = { a_day: 30, days: 20, paid_until: '2026-12-02' };
    });
    expect(claim.storage).toEqual({ aDay: 30, days: 20, paidDays: 7 });
    expect(quantityOf(scenario, 'claim.storage.paidDays')).toMatchObject({
      isDefault: false,
      source: 'until 2026-12-02',
    });
  });

  it('to answer by that have passed are said, and marked', () => {
    const change = claimed((c) => {
      c.answer_by = [
        { what: 'the offer', date: '2026-11-20' },
        { what: 'the salvage bid', date: '2026-12-20' },
      ];
    });
    expect(warningsOf(change).map(({ path }) => path)).toContain('claim.answer_by.0.date');
    expect(scenarioOf(change).facts.claim?.answerBy.map(({ past }) => past)).toEqual([true, false]);
  });
});

describe('cover for the vehicle itself', () => {
  it('has its premiums within the yearly insurance, and guesses that are flagged', () => {
    const scenario = scenarioOf((file) => {
      file.vehicle.cover = {
        collision: { a_year: 210, deductible: 500, other_deductible: { deductible: 1000, a_year: 150 } },
      };
    });
    expect(scenario.inputs.vehicle.ownDamage).toEqual({
      collision: {
        aYear: 210,
        deductible: 500,
        chanceAYear: 0.05,
        meanLoss: 1360,
        totalShare: 0.25,
        other: { aYear: 150, deductible: 1000 },
      },
      comprehensive: null,
    });
    for (const key of ['chanceAYear', 'meanLoss', 'totalShare'])
      expect(quantityOf(scenario, `vehicle.ownDamage.collision.${key}`)).toMatchObject({
        isDefault: true,
        mark: 'guess',
      });
  });
});

describe('private words of a claim', () => {
  it('stay out of what is passed on, and change no figure', () => {
    const text = readFileSync(new URL('./full-form.yaml', import.meta.url), 'utf8').replace(
      'private: [',
      'private: [claim.insurer, claim.lender.name, claim.place.name, claim.what, claim.comparables.0.what, ',
    );
    const read = (of: string) => {
      const result = parse(of);
      if ('problems' in result) throw new Error(result.problems.map(({ message }) => message).join('\n'));
      return result.scenario;
    };
    const before = read(text);
    const passed = scenarioToPassOn(text, before.facts.date);
    for (const word of ['Harbour Mutual', 'Rivertown', 'Harbour Province', 'trailer', '2011 van'])
      expect(passed).not.toContain(word);
    expect(read(passed).inputs.claim?.estimate.lines.map(({ amount }) => amount)).toEqual(
      before.inputs.claim?.estimate.lines.map(({ amount }) => amount),
    );
    expect(read(passed).inputs.claim?.value).toBe(before.inputs.claim?.value);
    expect(read(passed).facts.claim?.place.totalLoss.test).toEqual(before.facts.claim?.place.totalLoss.test);
  });

  it('are words: a figure of a claim cannot be private', () => {
    const found = problemsOf(
      claimed((_, file) => {
        file.private = ['claim.deductible', 'claim.place'];
      }),
    );
    expect(found.map(({ kind }) => kind)).toEqual(['private', 'private']);
  });
});
