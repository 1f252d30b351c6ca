/** What is said of a claim: where the answer turns, how far it is to the line, and what signing and keeping foreclose. */
import { describe, expect, it } from 'vitest';
import { presentCostOf } from '../../../src/engine/evaluation/project.ts';
import {
  COURSES,
  type Course,
  keepCourse,
  laterCourse,
} from '../../../src/engine/plans/collision/retention.ts';
import { type Context, unrounded } from '../../../src/engine/plans/vehicle/context.ts';
import type { Plan } from '../../../src/engine/plans/vehicle/plan.ts';
import type { ClaimFacts, Rebuild } from '../../../src/engine/scenario/inputs/claim.ts';
import { ctxOf, named, viewOf, whyOf } from '../plans/collision/asked.ts';
import { claim, hit, place, strict } from '../plans/collision/collision.ts';

const rebuild = claim.rebuild as Rebuild;

describe('the line', () => {
  it('is 2,311.11 of parts away, which are 2,496.00 with tax: 4,500 - 2,004', () => {
    expect(viewOf(hit()).threshold.left).toBe(231_111);
    expect(viewOf(hit({}, { place: strict })).threshold.left).toBeNull();
  });
  it('is drawn on the value less damage from before: 2,004 is under 35 % of 6,000, and over it of 5,600', () => {
    const rule = {
      ...place,
      totalLoss: { ...place.totalLoss, test: { kind: 'percent', percent: 35, operator: '>=' } },
    } as const;
    expect(viewOf(hit({}, { place: rule })).threshold.result.status).toBe('repair');
    expect(viewOf(hit({ damageBefore: 400 }, { place: rule })).threshold.result.status).toBe('total loss');
  });
  it('beyond which it is never rebuilt closes that too where it is not known whether the line itself counts', () => {
    const never = (percent: number) =>
      hit(
        {},
        {
          place: {
            ...strict,
            neverAgain: { source: 'invented', evidence: 'stated', percent, operator: 'not known' },
          },
        },
      );
    // 2,004 of 6,000 is 33.4 %.
    expect(whyOf(never(33.4), 'claim/rebuild')).toMatch(/never lets/);
    expect(whyOf(never(33.5), 'claim/rebuild')).toBeUndefined();
  });
});

describe('what closes mending and driving on', () => {
  it('a structure that is damaged leaves own hands only with qualified work in the plan, or a shop doing the plan', () => {
    const own = claim.ownRepair as NonNullable<typeof claim.ownRepair>;
    const why = (plan: Partial<typeof own>) =>
      whyOf(hit({ ownRepair: { ...own, ...plan } }, { structure: 'damaged' }), 'claim/own-repair');
    expect(why({})).toMatch(/qualified work/);
    expect(why({ qualified: 400 })).toBeUndefined();
    expect(why({ by: 'shop', shopPrice: 900 })).toBeUndefined();
  });
  it('not to be driven as it stands: it is not left so', () => {
    const { inputs, facts } = hit();
    expect(whyOf({ inputs, facts: { ...facts, mayBeDriven: false } }, 'claim/left')).toMatch(
      /not to be driven/,
    );
    expect(whyOf({ inputs, facts }, 'claim/left')).toBeUndefined();
  });
});

describe('before signing', () => {
  const said = (facts: Partial<ClaimFacts>, id: string): string =>
    named(viewOf(hit({}, facts)).courses, id).forecloses.join('; ');
  it('whether it closes the claim is said, and where nobody knows is to be asked', () => {
    expect(said({ signingCloses: true }, 'claim/shop-repair/keep')).toMatch(/signing closes/);
    expect(said({ signingCloses: null }, 'claim/shop-repair/keep')).toMatch(/may close the claim: ask/);
    expect(said({ signingCloses: false }, 'claim/shop-repair/keep')).toBe('');
    expect(said({ signingCloses: null }, 'claim/no-claim-shop/keep')).not.toMatch(/signing/);
  });
  it('an injury is not signed away with the property, unless nobody was hurt', () => {
    for (const injured of [true, null])
      expect(said({ injured }, 'claim/own-repair/keep')).toMatch(/must not give up a claim for an injury/);
    expect(said({ injured: false }, 'claim/own-repair/keep')).not.toMatch(/injury/);
  });
  it('money for damage that stays is only said where money is taken', () => {
    expect(said({}, 'claim/own-repair/keep')).toMatch(/comes off a later claim/);
    expect(said({}, 'claim/shop-repair/keep')).not.toMatch(/comes off a later claim/);
    expect(said({ place: strict }, 'claim/rebuild/keep')).toMatch(/branded, and a buyer must be told/);
  });
});

describe('tax and fees that are paid only once another is bought', () => {
  it('are in the statement of who replaces it, 6,020, and not of who does without: 6,000 - 500', () => {
    const { inputs, facts } = hit({}, { place: strict, taxOnlyWhenBought: true });
    const { courses } = viewOf({ inputs: { ...inputs, doingWithout: { aDay: 12, daysAMonth: 20 } }, facts });
    expect(named(courses, 'claim/total-loss/replace').statement?.payment).toBe(602_000);
    expect(named(courses, 'claim/total-loss/without').statement?.payment).toBe(550_000);
  });
});

describe('the bid above which keeping the wreck has no point', () => {
  it('is today’s, and what keeping saves now: tax falls on all of the value, so each dollar of it costs one', () => {
    const dear = { ...rebuild, inspection: 13_000 };
    const { courses, tips } = viewOf(hit({ rebuild: dear }, { place: strict }));
    const least = (id: string): number =>
      Math.min(...courses.filter((one) => one.id.startsWith(`${id}/`)).map((one) => one.cost.counted / 100));
    const saved = least('claim/total-loss') - least('claim/rebuild');
    expect(saved).toBeGreaterThan(0);
    expect(tips.find(({ what }) => what === 'salvage')?.at).toBeCloseTo(900 + saved, 1);
  });
  it('is none where keeping costs less whatever is bid, or more', () => {
    const tip = (inspection: number) =>
      viewOf(hit({ rebuild: { ...rebuild, inspection } }, { place: strict })).tips.find(
        ({ what }) => what === 'salvage',
      );
    expect(tip(120)).toMatchObject({ at: null, words: expect.stringMatching(/costs less whatever/) });
    expect(tip(25_000)).toMatchObject({ at: null, words: expect.stringMatching(/costs more whatever/) });
  });
});

describe('papers that may be refused', () => {
  const [course] = COURSES.filter(({ id }) => id === 'claim/rebuild') as [Course];
  const cost = (refused: number, build: (ctx: Context) => Plan): number => {
    const one = hit({ rebuild: { ...rebuild, monthsOff: 2, refused } }, { place: strict }, 2500);
    const ctx = unrounded(ctxOf(one));
    return presentCostOf(build(ctx), ctx).counted;
  };
  it.each([
    ['kept', (ctx: Context) => keepCourse(course, 'kept', '', ctx)],
    ['replaced after a year', (ctx: Context) => laterCourse(course, 0, 12, 'later', '', ctx)],
  ] as const)('%s: three in ten refused cost seven tenths of given and three of refused', (_what, build) => {
    expect(cost(1, build)).toBeGreaterThan(cost(0, build));
    expect(cost(0.3, build)).toBeCloseTo(0.7 * cost(0, build) + 0.3 * cost(1, build), 6);
  });
  it('are said as a risk, and only where they may be', () => {
    const risks = (refused: number): readonly string[] =>
      named(viewOf(hit({ rebuild: { ...rebuild, refused } }, { place: strict })).courses, 'claim/rebuild')
        .risks;
    expect(risks(0.3)).toContain('the papers may be refused');
    expect(risks(0)).not.toContain('the papers may be refused');
  });
});
