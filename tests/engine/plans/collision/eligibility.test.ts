import { describe, expect, it } from 'vitest';
import { presentCostOf } from '../../../../src/engine/evaluation/project.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { COURSES, type Course, laterCourse } from '../../../../src/engine/plans/collision/retention.ts';
import { unrounded } from '../../../../src/engine/plans/vehicle/context.ts';
import type { ClaimFacts, Rebuild } from '../../../../src/engine/scenario/inputs/claim.ts';
import type { Job } from '../../../../src/engine/scenario/inputs/inputs.ts';
import type { PlaceRule } from '../../../../src/engine/scenario/places/placeRule.ts';
import { claimForm } from '../../../support/claim.ts';
import { scenarioOf } from '../../../support/file.ts';
import { factsOf, inputs as plain } from '../../../support/household.ts';
import { ctxOf, named, results, sumOf, viewOf, waysFor, whyOf } from './asked.ts';
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
    const all = { insuranceQuoted: true, retitlingConfirmed: true, inspected: true };
    const asked = (rebuilt: ClaimFacts['rebuild'], plan: Rebuild | null = rebuild): string | undefined =>
      whyOf(
        hit({ rebuild: plan }, { pays: 'nobody', place: strict, rebuild: rebuilt }),
        'claim/no-claim-rebuild',
      );
    expect(asked(all)).toBeUndefined();
    expect(asked({ ...all, insuranceQuoted: false })).toMatch(/no insurer has quoted/);
    expect(asked({ ...all, retitlingConfirmed: false })).toMatch(/retitled/);
    expect(asked(all, null)).toMatch(/no plan/);
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

  it('half a month off is half a month of rides, told day by day or by the month; insurance is paid in any', () => {
    const about = (monthsOff: number, without: boolean): (number | undefined)[] => {
      const { inputs, facts } = hit({ rebuild: { ...rebuild, monthsOff } }, { place: strict });
      const household = { ...inputs.household, dayWithout: 8 };
      const doingWithout = without ? { aDay: 10, daysAMonth: 20 } : null;
      const all = results({ inputs: { ...inputs, household, doingWithout }, facts });
      const option = named(all, 'claim/rebuild/keep');
      // 900 a year as rebuilt, its first bill at month 12 at the prices of the day.
      expect(sumOf(option, 'insurance', 12)).toBe(90_000);
      return [0, 1, 2, 3, 4].map((month) => sumOf(option, 'getting about without it', month));
    };
    // 30.4375 days x 8 = 243.50, and half of it; 20 days x 10 = 200.
    expect(about(2.5, false)).toEqual([0, 24_350, 24_350, 12_175, 0]);
    expect(about(3, true)).toEqual([0, 20_000, 20_000, 20_000, 0]);
    expect(about(13, false).slice(1)).toEqual([24_350, 24_350, 24_350, 24_350]);
  });

  it('is not sold as rebuilt before it is, nor rebuilt for longer than is looked at', () => {
    const months = waysFor(hit({ rebuild: { ...rebuild, monthsOff: 7 } }, { place: strict }))
      .open.filter(({ id }) => id.startsWith('claim/rebuild/later/'))
      .map(({ id }) => Number(id.split('/').at(-1)));
    expect(Math.min(...months)).toBeGreaterThan(7);
    const { inputs } = hit();
    const forever = { ...rebuild, monthsOff: inputs.household.lookAhead };
    expect(whyOf(hit({ rebuild: forever }, { place: strict }), 'claim/rebuild')).toMatch(/off the road/);
    // A month less: back for one month, and no later date is left.
    const nearly = hit({ rebuild: { ...rebuild, monthsOff: forever.monthsOff - 1 } }, { place: strict });
    expect(openIn(nearly, 'claim/rebuild')).toBe(true);
    expect(openIn(nearly, 'claim/rebuild/later')).toBe(false);
  });
});

describe('damage that stays', () => {
  const end = (id: string, lookAhead: number): number => {
    const { inputs, facts } = hit();
    const household = { ...inputs.household, lookAhead };
    return named(results({ inputs: { ...inputs, household }, facts }), id).valueAtEnd;
  };

  it('comes off what it brings later in full, and not in proportion', () => {
    // 6,000 x 0.851^2 = 4,345.206, paid a month later: x 1.04^(-1/12) = 4,331.03; less three weeks of the second
    // year's 620 x 1.04, 37.20 = 4,293.83.
    expect(end('claim/shop-repair/keep', 24)).toBe(429_383);
    // 300 and 900 stay visible; left as it is, all of 6,000 - 3,600 does.
    expect(end('claim/own-repair/keep', 24)).toBe(399_481);
    expect(end('claim/safe-only/keep', 24)).toBe(339_676);
    expect(end('claim/left/keep', 24)).toBe(190_166);
  });

  it('never takes it below scrap', () => {
    // 6,000 x 0.851^5 = 2,677.93; 2,400 less leaves 277.93, and scrap is 400.
    expect(end('claim/left/keep', 60)).toBe(40_000);
  });

  it('and what a buyer pays less for it though it was repaired, which is not asked twice where it was not', () => {
    const two = (id: string): number => {
      const { inputs, facts } = hit({ lostValue: { lost: 350, claimed: 0, paid: 0 } });
      const household = { ...inputs.household, lookAhead: 24 };
      return named(results({ inputs: { ...inputs, household }, facts }), id).valueAtEnd;
    };
    expect(two('claim/shop-repair/keep')).toBe(394_497);
    expect(two('claim/own-repair/keep')).toBe(364_595);
    expect(two('claim/left/keep')).toBe(190_166);
  });

  it('under branded papers is what it takes off a branded one: 60 % of 2,400, as when it is sold today', () => {
    const { inputs, facts } = hit();
    const household = { ...inputs.household, lookAhead: 24 };
    const vehicle = { ...inputs.vehicle, brandFactor: 0.6 };
    const all = results({ inputs: { ...inputs, household, vehicle }, facts });
    // 0.6 x 4,345.206 = 2,607.12, less 1,440 and a month's wait: 1,163.32; less three weeks, 37.20.
    expect(named(all, 'claim/left/keep').valueAtEnd).toBe(112_612);
    // 0.6 x 3,600 = 2,160, less three weeks of the first year's, 35.77.
    expect(sumOf(named(all, 'claim/sold-damaged/replace'), 'selling the old one')).toBe(-212_423);
  });

  it('beside other work takes its part of the gap, by what a shop asks: 2,004 of 3,000', () => {
    const { inputs, facts } = hit();
    const household = { ...inputs.household, lookAhead: 24 };
    const job = { ...(plain.workNeeded[0] as Job), shopPrice: 996, canWait: 12, mayBeDriven: 'yes' as const };
    const with_ = { ...inputs, household, workNeeded: [job] };
    const one = { inputs: with_, facts: { ...factsOf(with_), claim: facts.claim } };
    // 0.668 x 2,400 = 1,603.20 off 4,345.206, paid a month later, less 37.20; the work is done by then.
    expect(named(results(one), 'claim/left/keep').valueAtEnd).toBe(269_586);
    // Repaired, and replaced while the work still waits: that takes the other 796.80 of 6,000, 13.28 %.
    const ctx = ctxOf(one);
    const [shop] = COURSES;
    const later = resultOf(laterCourse(shop as Course, 0, 6, 'shop/later', '', ctx), ctx);
    // 6,000 x 0.851^(1/2) = 5,534.98, of it 86.72 % = 4,799.93, a month later; three weeks take 35.77.
    expect(sumOf(later, 'selling the old one', 6)).toBe(3577);
    expect(sumOf(later, 'selling the old one', 7)).toBe(-479_993);
  });
});

describe('the place and the tax on the next one', () => {
  const creditOf = (place: unknown, date = '2026-11-25', stated: string | null = null): number | null => {
    const { inputs } = scenarioOf((file) => {
      file.date = date;
      file.replacement.what = '2016 hatchback';
      file.claim = { ...claimForm(), place };
      if (stated !== null) file.replacement.trade_in_lowers_tax = stated;
    });
    return inputs.replacement[0]?.tradeInCredit as number | null;
  };
  const written = (credit: string) => ({ name: 'Lowmere', total_loss: 75, trade_in_credit: credit });

  it('lets all of a trade-in lower it (null), none, or so much by the year; not known: none', () => {
    expect([creditOf(written('full')), creditOf(written('none'))]).toEqual([null, 0]);
    expect([creditOf('US-MD'), creditOf('US-CA')]).toEqual([null, 0]);
    expect(creditOf({ name: 'Lowmere', total_loss: 75 })).toBe(0);
    // 5,000 in 2019 and 1,000 more each year, to 14,000 in 2028; then no cap.
    expect([2019, 2026, 2028].map((year) => creditOf('US-MI', `${year}-06-01`))).toEqual([
      5000, 12_000, 14_000,
    ]);
    expect(creditOf('US-MI', '2029-06-01')).toBeNull();
  });

  it('gives way to what the file says of the replacement itself', () => {
    expect(creditOf('US-MD', '2026-11-25', 'no')).toBe(0);
    expect(creditOf('US-CA', '2026-11-25', 'yes')).toBeNull();
    expect(creditOf('US-MI', '2026-11-25', 'yes')).toBeNull();
  });

  it('reaches the purchase: 6 % of the 600 it is taken for is 36', () => {
    const taxed = (credit: string): number => {
      const scenario = scenarioOf((file) => {
        file.claim = { ...claimForm(), place: written(credit) };
        file.replacement = { ...file.replacement, price: 17800, sales_tax: 6 };
        delete file.replacement.price_with_all_fees;
      });
      const { ledger } = named(results(scenario), 'claim/no-claim-traded-in/replace');
      return ledger.filter(({ what }) => /tax/.test(what)).reduce((sum, row) => sum + row.amount.cash, 0);
    };
    // 17,800 x 6 % = 1,068; 17,200 x 6 % = 1,032.
    expect([taxed('none'), taxed('full')]).toEqual([106_800, 103_200]);
  });
});

describe('lost market value', () => {
  it('is claimed for what was repaired, and for nothing else', () => {
    const one = hit({ lostValue: { lost: 200, claimed: 500, paid: 1 } }, { pays: 'other' });
    const brings = (id: string): number =>
      named(results(one), id)
        .ledger.filter(({ what }) => what === 'lost market value')
        .reduce((sum, { amount }) => sum - amount.cash, 0);
    expect([brings('claim/shop-repair/keep'), brings('claim/own-repair/keep')]).toEqual([50_000, 50_000]);
    expect([brings('claim/safe-only/keep'), brings('claim/no-claim-own/keep')]).toEqual([0, 0]);
  });
});

describe('replacing it later', () => {
  const usual = hit({ surcharge: { aYear: 300, years: 3 } });
  const { vehicle } = usual.inputs;
  /** Its own insurance is dear, and falls due first in month 26. */
  const dear = {
    ...usual,
    inputs: { ...usual.inputs, vehicle: { ...vehicle, cover: { aYear: 6000, nextDue: 26 } } },
  };
  const costAt = (one: typeof usual, course: Course): ((month: number) => number) => {
    const ctx = unrounded(ctxOf(one));
    return (month) => presentCostOf(laterCourse(course, 0, month, '', '', ctx), ctx).counted;
  };

  it('is offered for the cheapest month near the best of about a dozen dates', () => {
    for (const course of COURSES.filter(({ id }) => openIn(dear, `${id}/later`))) {
      const cost = costAt(dear, course);
      const cheapest = (months: readonly number[]): number =>
        months.reduce((best, month) => (cost(month) < cost(best) ? month : best));
      // 60 months looked at every 5: then the 4 on either side of the best.
      const coarse = cheapest([5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55]);
      const near = cheapest([-4, -3, -2, -1, 0, 1, 2, 3, 4].map((away) => coarse + away));
      const [found] = waysFor(dear).open.filter(({ id }) => id.startsWith(`${course.id}/later/`));
      expect(found?.id).toBe(`${course.id}/later/2021-hatchback/${near}`);
      // Before that bill, that is.
      expect(near).toBeLessThan(26);
    }
    expect(openIn(dear, 'claim/own-repair/later')).toBe(true);
  });

  it('is not offered where each date is dearer than the one after it: that is to keep it', () => {
    for (const course of COURSES.filter(({ id }) => openIn(usual, `${id}/keep`))) {
      const cost = costAt(usual, course);
      expect(cost(59)).toBeLessThan(cost(58));
      expect(openIn(usual, `${course.id}/later`), course.id).toBe(false);
    }
  });
});
