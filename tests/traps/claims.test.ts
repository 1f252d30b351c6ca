/** Where advice about a claim, cover or a lender would be confidently wrong, and what is said or counted instead. */
import { describe, expect, it } from 'vitest';
import { coverView } from '../../src/engine/analysis/coverView.ts';
import type { OptionResult } from '../../src/engine/answer/decision.ts';
import type { Claim, ClaimFacts, CoverPart, Rebuild } from '../../src/engine/scenario/inputs/claim.ts';
import { STRAIGHT } from '../../src/report/words/claim/claimCautions.ts';
import { type Hit, named, results, sumOf, viewOf, whyOf } from '../engine/plans/collision/asked.ts';
import { claim, hit, place, strict } from '../engine/plans/collision/collision.ts';
import { afterCollision } from '../report/claims.ts';
import { read, render } from '../report/page.ts';
import { scenarioOf } from '../support/file.ts';

const rows = (option: OptionResult, what: string): [number, number][] =>
  option.ledger.filter((row) => row.what === what).map((row) => [row.month, row.amount.cash]);

const collision: CoverPart = {
  aYear: 300,
  deductible: 500,
  chanceAYear: 0.06,
  meanLoss: 2000,
  totalShare: 0.25,
  other: null,
};
const covered = (one: Hit): Hit => ({
  ...one,
  inputs: {
    ...one.inputs,
    vehicle: { ...one.inputs.vehicle, ownDamage: { collision, comprehensive: null } },
  },
});
const rebuild = claim.rebuild as Rebuild;
const rebuilt = (changes: Partial<Rebuild> = {}, facts: Partial<ClaimFacts> = {}): Hit =>
  hit({ rebuild: { ...rebuild, ...changes } }, { place: strict, ...facts });

describe('cover dropped', () => {
  const leaves = (savings: number | null) => {
    const { inputs, facts } = covered(hit());
    const view = coverView({ ...inputs, household: { ...inputs.household, savings } }, facts);
    return view?.parts[0]?.savingsAfter;
  };
  it('says what the day after a total loss leaves of the savings: 4,000 - 500, and 4,000 - (6,000 - 400)', () => {
    expect(leaves(4000)).toEqual({ withIt: 3500, without: -1600 });
    // None saved is not the same as not told.
    expect(leaves(0)).toEqual({ withIt: -500, without: -5600 });
    expect(leaves(null)).toBeNull();
  });
  it('and where savings were not told, what one loss can take', () => {
    const { inputs, facts } = covered(hit());
    const untold = coverView({ ...inputs, household: { ...inputs.household, savings: null } }, facts);
    expect(untold?.parts[0]?.worst).toEqual({ withIt: 500, without: 5600 });
  });
  it('has the own part of a loss in every way that has a vehicle: 6 % of 500 a year is 2.50 a month', () => {
    for (const option of results(covered(hit()))) {
      const borne = option.ledger.filter(({ what }) => what.startsWith('own part of a loss, collision'));
      expect([option.id, borne.reduce((sum, { amount }) => sum + amount.cash, 0)]).toEqual([
        option.id,
        60 * 250,
      ]);
      // And so is a premium, whichever vehicle it is.
      expect(sumOf(option, 'insurance')).toBeGreaterThan(60 * 250);
    }
  });
  it('off the road there is no loss to bear: three months of it, then 2.50 a month', () => {
    const option = named(results(covered(rebuilt({ monthsOff: 3 }))), 'claim/rebuild/keep');
    const months = option.ledger
      .filter(({ what }) => what.startsWith('own part of a loss, collision'))
      .map(({ month, amount }) => [month, amount.cash]);
    expect(months.slice(0, 2)).toEqual([
      [4, 250],
      [5, 250],
    ]);
  });
});

describe('the lender’s demand for cover', () => {
  it('closes going without, and only while one asks for it', () => {
    const { inputs, facts } = covered(hit({}, {}, 3000));
    expect(coverView(inputs, { ...facts, lenderRequiresCover: true })?.mustKeep).toMatch(/until the debt is/);
    expect(coverView(inputs, facts)?.mustKeep).toBeNull();
  });
  it('is taken for granted where something is owed and nobody said otherwise', () => {
    const owing = (more: object) =>
      scenarioOf((file) => {
        Object.assign(file.vehicle, { loan: { owed: 1200, apr: 7, months_left: 12 }, ...more });
      }).facts.lenderRequiresCover;
    expect(owing({})).toBe(true);
    expect(owing({ lender_requires_cover: 'no' })).toBe(false);
    expect(scenarioOf().facts.lenderRequiresCover).toBe(false);
  });
});

describe('a lender between the household and the insurer’s money', () => {
  const lender = { name: 'the bank', paidFirst: true, requiresRepair: null, cheque: null } as const;
  it('no cash is planned with before it was asked about the cheque', () => {
    const one = hit({}, { lender }, 2000);
    for (const id of ['claim/own-repair', 'claim/safe-only', 'claim/left', 'claim/sold-damaged'])
      expect([id, whyOf(one, id)]).toEqual([id, expect.stringMatching(/nobody has asked/)]);
    expect(named(results(one), 'claim/shop-repair/keep').cashOnTheDay).toBe(50_000);
  });
  it('that wants the repair closes leaving the damage on own money too', () => {
    const one = hit({}, { lender: { ...lender, requiresRepair: true } }, 2000);
    expect(whyOf(one, 'claim/no-claim-left')).toMatch(/requires the repair/);
    expect(whyOf(one, 'claim/no-claim-safe')).toMatch(/requires the repair/);
  });
  it('is paid before the owner, and the debt outlives the vehicle: 7,000 - 6,020 = 980 is still to be paid', () => {
    const option = named(results(hit({}, { place: strict, lender }, 7000)), 'claim/total-loss');
    expect(rows(option, 'insurer pays the lender')).toEqual([[0, -602_000]]);
    expect(rows(option, 'insurer pays the owner')).toEqual([]);
    expect(rows(option, 'shortfall is paid')).toEqual([[0, 98_000]]);
  });
});

describe('salvage way wins on paper', () => {
  const cheap = { titleFactor: 1, insuranceAYear: 300 };
  const confirmed = rebuilt(cheap);
  it('and is first where all is confirmed', () => {
    const best = results(confirmed).reduce((a, b) =>
      b.netPresentCost.counted < a.netPresentCost.counted ? b : a,
    );
    expect(best.id).toMatch(/^claim\/rebuild/);
  });
  it('but is held until an insurer has quoted and the retitling is confirmed', () => {
    const held = { insuranceQuoted: true, retitlingConfirmed: true, inspected: true };
    const unquoted = rebuilt(cheap, { rebuild: { ...held, insuranceQuoted: false } });
    const untitled = rebuilt(cheap, { rebuild: { ...held, retitlingConfirmed: false } });
    expect(whyOf(unquoted, 'claim/rebuild')).toMatch(/no insurer has quoted/);
    expect(whyOf(untitled, 'claim/rebuild')).toMatch(/retitled/);
    for (const one of [unquoted, untitled])
      expect(results(one).some(({ id }) => id.startsWith('claim/rebuild'))).toBe(false);
  });
  it('and some damage can never be retitled: 2,004 of 6,000 is 33.4 %, over 33 and under 34', () => {
    const never = (percent: number) =>
      rebuilt(cheap, {
        place: {
          ...strict,
          neverAgain: { source: 'invented', evidence: 'stated', percent, operator: '>=' },
        },
      });
    expect(whyOf(never(33), 'claim/rebuild')).toMatch(/never lets/);
    expect(whyOf(never(34), 'claim/rebuild')).toBeUndefined();
  });
  it('nor is it open without a bid for the wreck', () => {
    expect(whyOf(hit({ salvage: null }, { place: strict }), 'claim/rebuild')).toMatch(/no bid/);
  });
  it('months off the road cost getting about: 35 x 365.25 / 12 = 1,065.31 a month, half of it for half a one', () => {
    const option = named(results(rebuilt({ monthsOff: 2.5 })), 'claim/rebuild/keep');
    // 1,065.3125, and half of it 532.65625.
    expect(rows(option, 'off the road')).toEqual([
      [1, 106_531],
      [2, 106_531],
      [3, 53_266],
    ]);
  });
  it('and in those months it burns nothing and wears nothing; before its months and after them it does', () => {
    const driven = (monthsOff: number) => [
      ...new Set(
        named(results(rebuilt({ monthsOff })), 'claim/rebuild/keep')
          .ledger.filter(({ category }) => ['energy', 'upkeep', 'repairs'].includes(category))
          .filter(({ month }) => month <= 5)
          .map(({ category, month }) => `${category} ${month}`),
      ),
    ];
    expect(driven(0)).toContain('energy 1');
    expect(driven(0)).toContain('repairs 1');
    expect(driven(2.5).filter((one) => /[123]$/.test(one))).toEqual([]);
    expect(driven(2.5)).toContain('energy 4');
    expect(driven(2.5)).toContain('repairs 4');
  });
  it('branded, it is insured at its own price and brings seven tenths of a clean one', () => {
    const at = (titleFactor: number) => named(results(rebuilt({ titleFactor })), 'claim/rebuild/keep');
    expect(at(0.7).ledger.find((r) => r.category === 'insurance' && r.month === 12)?.amount.cash).toBe(
      90_000,
    );
    // 6,000 x 0.851^5 = 2,677.93, paid a month later: x 1.04^(-1/12) = 2,669.19; less three weeks of insurance
    // while it is sold, 900 x 1.04^4 x 3 / 52 = 60.74.
    expect(at(1).valueAtEnd).toBe(260_845);
    // 0.7 x 2,669.19 = 1,868.43, less 60.74.
    expect(at(0.7).valueAtEnd).toBe(180_769);
  });
});

describe('flooded, airbag deployed', () => {
  const inspected = { insuranceQuoted: true, retitlingConfirmed: true, inspected: true };
  const cases: readonly (readonly [string, Partial<ClaimFacts>])[] = [
    ['flooded', { flooded: true }],
    ['airbag', { airbagsDeployed: true }],
  ];
  it.each(cases)('%s: own hands are closed until it is inspected', (word, facts) => {
    const before = hit({}, { ...facts, rebuild: { ...inspected, inspected: false } });
    for (const id of ['own-repair', 'safe-only', 'no-claim-own', 'no-claim-safe'])
      expect([id, whyOf(before, `claim/${id}`)]).toEqual([id, expect.stringContaining(word)]);
    expect(whyOf(before, 'claim/shop-repair')).toBeUndefined();
    const after = hit({}, { ...facts, rebuild: inspected });
    expect(whyOf(after, 'claim/own-repair')).toBeUndefined();
    const wreck = { ...facts, place: strict };
    expect(
      whyOf(hit({}, { ...wreck, rebuild: { ...inspected, inspected: false } }), 'claim/rebuild'),
    ).toMatch(word);
    expect(whyOf(hit({}, wreck), 'claim/rebuild')).toBeUndefined();
  });
  it.each(cases)('%s: driving on with the damage left is closed, inspected or not', (_word, facts) => {
    expect(whyOf(hit({}, { ...facts, rebuild: inspected }), 'claim/left')).toMatch(/not safe to drive/);
  });
});

describe('unsafe now', () => {
  it.each([
    ['a structure nobody looked at', {}, { structure: 'not checked' }, /nobody qualified/],
    ['a structure that is not sound', {}, { structure: 'damaged' }, /not sound/],
    ['belts', { belts: { costs: 180, inEstimate: false } }, {}, /seat belts/],
    ['sensors', { calibration: { costs: 220, inEstimate: false } }, {}, /sensors/],
  ] as readonly [string, Partial<Claim>, Partial<ClaimFacts>, RegExp][])('%s', (_what, more, facts, said) => {
    expect(whyOf(hit(more, facts), 'claim/left')).toMatch(said);
    expect(whyOf(hit(more, facts), 'claim/no-claim-left')).toMatch(said);
  });
  it('no way to mend it is without what makes it safe: belts 180 and sensors 220 are in each', () => {
    const extra = (costs: number) => ({ costs, inEstimate: false });
    const all = results(hit({ belts: extra(180), calibration: extra(220) }));
    for (const id of ['shop-repair', 'own-repair', 'safe-only', 'no-claim-shop', 'no-claim-own'])
      expect([
        id,
        rows(named(all, `claim/${id}/keep`), 'seat belts'),
        rows(named(all, `claim/${id}/keep`), 'sensors set anew'),
      ]).toEqual([id, [[0, 18_000]], [[0, 22_000]]]);
  });
});

describe('more found once opened', () => {
  it('is counted where it is opened, and said where it stays hidden: 25 % of 432', () => {
    const estimate = { ...claim.estimate, supplement: { chance: 0.25, amount: 400, paid: 0 } };
    const { courses } = viewOf(hit({ estimate }));
    const risks = (id: string) => courses.find((each) => each.id.startsWith(id))?.risks.join(', ');
    expect(rows(named(results(hit({ estimate })), 'claim/own-repair/keep'), 'more damage found')).toEqual([
      [0, 10_800],
    ]);
    expect(risks('claim/own-repair')).toMatch(/shows once it is opened.*total loss/);
    expect(risks('claim/left')).toMatch(/stays hidden/);
  });
});

describe('advice that shades into misstatement', () => {
  it('tells to tell the truth, and that waiving the own share may break the law', () => {
    const words = read(render(afterCollision)).querySelector('#before-signing')?.textContent ?? '';
    for (const caution of [STRAIGHT.truth, STRAIGHT.waive, STRAIGHT.brand]) expect(words).toContain(caution);
    expect(STRAIGHT.truth).toMatch(/Tell the insurer the truth/);
    expect(STRAIGHT.waive).toMatch(/may break the law/);
  });
  it('damage from before is not paid for: 5,300 + 424 tax + 40 - 500', () => {
    const { courses } = viewOf(hit({ damageBefore: 700 }, { place: strict }));
    expect(courses.find(({ id }) => id.startsWith('claim/total-loss'))?.statement?.payment).toBe(526_400);
  });
  it('money taken and not spent on the repair says what it gives up later', () => {
    const left = viewOf(hit({}, { place })).courses.find(({ id }) => id.startsWith('claim/left'));
    expect(left?.forecloses.join(', ')).toMatch(/comes off a later claim/);
  });
});

describe('somebody else may pay', () => {
  it('no claim stands beside the claim, with no payment and no dearer insurance', () => {
    const dear = hit({ surcharge: { aYear: 400, years: 3 } });
    const option = named(results(dear), 'claim/no-claim-own/keep');
    expect(sumOf(option, 'settlement')).toBe(0);
    expect(rows(option, 'dearer after the claim')).toEqual([]);
    // 400 at the yearly bill of the first year, for who claims.
    expect(rows(named(results(dear), 'claim/own-repair/keep'), 'dearer after the claim')[0]).toEqual([
      12, 40_000,
    ]);
  });
});
