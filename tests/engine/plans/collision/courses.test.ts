import { describe, expect, it } from 'vitest';
import { claimView } from '../../../../src/engine/analysis/claimView.ts';
import type { OptionResult } from '../../../../src/engine/answer/decision.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { EXPECTED, type Future } from '../../../../src/engine/plans/vehicle/context.ts';
import type { ClaimFacts } from '../../../../src/engine/scenario/inputs/claim.ts';
import { ctxOf, type Hit, named, results, sumOf, viewOf, waysFor, whyOf } from './asked.ts';
import { claim, hit, place, strict } from './collision.ts';

describe('a parked vehicle that a trailer hit, by hand', () => {
  const view = viewOf(hit());

  it('pays the repair less the own share: 2,004 - 500, and 1,900 - 500 where tax is paid only once it is due', () => {
    expect(named(view.courses, 'claim/shop-repair/keep').statement?.payment).toBe(150_400);
    expect(named(view.courses, 'claim/own-repair/keep').statement?.payment).toBe(140_000);
  });

  it('has in hand what is left of the money once the day is paid', () => {
    expect(named(view.courses, 'claim/shop-repair/keep').inHand).toBe(-50_000);
    expect(named(view.courses, 'claim/own-repair/keep').inHand).toBe(100_000);
    expect(named(view.courses, 'claim/safe-only/keep').inHand).toBe(132_000);
    expect(named(view.courses, 'claim/left/keep').inHand).toBe(140_000);
    expect(named(view.courses, 'claim/no-claim-shop/keep').inHand).toBe(-200_400);
  });

  it('draws the line at three quarters of 6,000', () => {
    expect(view.threshold).toMatchObject({ tested: 200_400, from: 450_000, result: { status: 'repair' } });
    expect(view.tips.find(({ what }) => what === 'estimate')?.at).toBe(4500);
  });

  it('pays a total loss with tax before salvage, and keeps 900 and other papers off where the wreck is kept', () => {
    const total = viewOf(hit({}, { place: strict }));
    // 6,000 + 480 tax + 40 title - 500; and 6,000 + 480 + 25 - 500 - 900.
    expect(named(total.courses, 'claim/total-loss').statement?.payment).toBe(602_000);
    expect(named(total.courses, 'claim/rebuild/keep').statement?.payment).toBe(510_500);
    // 5,105 less 650 of parts and paint, 120 inspection, 60 papers.
    expect(named(total.courses, 'claim/rebuild/keep').inHand).toBe(427_500);
  });

  it('takes what stays visible, or the damage itself, off what it brings in the end', () => {
    const all = results(hit());
    const gross = (id: string): number => named(all, id).valueAtEnd;
    expect(gross('claim/shop-repair/keep')).toBeGreaterThan(gross('claim/own-repair/keep'));
    expect(gross('claim/own-repair/keep')).toBeGreaterThan(gross('claim/safe-only/keep'));
    expect(gross('claim/safe-only/keep')).toBeGreaterThan(gross('claim/left/keep'));
  });
});

describe('laws of the courses', () => {
  it('a payment lower by x costs exactly x more on the day in each course that takes it, and nothing elsewhere', () => {
    for (const facts of [{}, { place: strict }]) {
      const before = results(hit({}, facts));
      const after = results(hit({ deductible: 617.35 }, facts));
      for (const option of before) {
        const moved = named(after, option.id).cashOnTheDay - option.cashOnTheDay;
        expect([option.id, moved]).toEqual([option.id, option.id.includes('no-claim') ? 0 : 11_735]);
      }
    }
  });

  it('a higher deductible never helps a claim', () => {
    for (const [low, high] of [
      [0, 250],
      [500, 501],
      [1000, 1200],
    ] as const) {
      const [before, after] = [results(hit({ deductible: low })), results(hit({ deductible: high }))];
      for (const option of after)
        expect(option.netPresentCost.counted).toBeGreaterThanOrEqual(
          named(before, option.id).netPresentCost.counted,
        );
    }
  });

  it('the order of the estimate’s lines decides nothing', () => {
    const turned = { ...claim.estimate, lines: claim.estimate.lines.toReversed() };
    expect(results(hit({ estimate: turned })).map(({ netPresentCost }) => netPresentCost)).toEqual(
      results(hit()).map(({ netPresentCost }) => netPresentCost),
    );
  });

  it('money in is money out: what insurer and gap cover pay, whoever gets it, to the cent', () => {
    for (const one of [
      hit(),
      hit({}, { place: strict }),
      hit({ gap: { limit: null, notCovered: 0 } }, { place: strict }, 8123.45),
      hit(
        {},
        {
          lender: {
            name: 'the credit union',
            paidFirst: true,
            requiresRepair: false,
            cheque: 'put to the loan',
          },
        },
        900.1,
      ),
    ]) {
      const all = results(one);
      for (const course of claimView(waysFor(one), all, ctxOf(one)).courses) {
        const { split } = course;
        const paid = 0 - sumOf(named(all, course.id), 'settlement', 0);
        expect([course.id, paid]).toEqual([course.id, split ? split.payment + split.gap : 0]);
        if (!split) continue;
        expect(split.lender + split.owner + split.shop).toBe(split.payment);
        expect(split.lender + split.gap + split.stillOwed).toBe(split.owed);
      }
    }
  });

  it('nothing is sold twice: given up it is not sold; sold damaged it is sold once and owned no more; kept, neither', () => {
    for (const option of [...results(hit()), ...results(hit({}, { place: strict }))]) {
      const sales = option.ledger.filter(
        ({ category, what }) => category === 'selling the old one' && what.startsWith('sold'),
      ).length;
      const once = /sold-damaged|scrapped|\/later\//.test(option.id) ? 1 : 0;
      expect([option.id, sales]).toEqual([option.id, once]);
    }
  });

  it('ledgers’ rows sum to the totals', () => {
    for (const option of results(hit({}, { place: strict }, 3000)))
      expect(option.ledger.reduce((sum, row) => sum + row.present.counted, 0)).toBe(
        option.netPresentCost.counted,
      );
  });
});

describe('a lender', () => {
  const lender = { name: 'the credit union', paidFirst: true, requiresRepair: false, cheque: null } as const;

  it('is paid first after a total loss, and what is short is still paid', () => {
    const all = viewOf(hit({}, { place: strict, lender }, 7000));
    expect(named(all.courses, 'claim/total-loss').split).toMatchObject({
      lender: 602_000,
      owner: 0,
      stillOwed: 98_000,
    });
    const option = named(results(hit({}, { place: strict, lender }, 7000)), 'claim/total-loss');
    expect(sumOf(option, 'loan', 0)).toBe(700_000);
  });

  it('that gap cover pays leaves nothing owing', () => {
    const gap = { limit: null, notCovered: 0 };
    const split = named(
      viewOf(hit({ gap }, { place: strict, lender }, 7000)).courses,
      'claim/total-loss',
    ).split;
    expect(split).toMatchObject({ gap: 98_000, stillOwed: 0 });
  });

  it('lowers the loan by a cheque that is put to it', () => {
    const put = { ...lender, cheque: 'put to the loan' } as const;
    const released = { ...lender, cheque: 'released to the owner' } as const;
    const [kept, free] = [put, released].map((one) =>
      named(results(hit({}, { lender: one }, 3000)), 'claim/own-repair/keep'),
    ) as [OptionResult, OptionResult];
    expect(kept.cashOnTheDay - free.cashOnTheDay).toBe(140_000);
    expect(sumOf(kept, 'loan')).toBeLessThan(sumOf(free, 'loan'));
  });
});

describe('a course that is not open says why', () => {
  const lender = { name: 'the credit union', paidFirst: true, requiresRepair: null, cheque: null } as const;
  const cases: readonly [string, string, Partial<ClaimFacts>, RegExp][] = [
    ['the lender is paid first', 'claim/own-repair', { lender }, /must be paid first/],
    [
      'the lender wants it repaired',
      'claim/left',
      { lender: { ...lender, requiresRepair: true } },
      /requires the repair/,
    ],
    [
      'the cheque is for the repair',
      'claim/safe-only',
      { lender: { ...lender, cheque: 'only for the repair' } },
      /only for the repair/,
    ],
    ['over the line', 'claim/shop-repair', { place: strict }, /over the line/],
    ['below the line', 'claim/total-loss', {}, /below the line/],
    [
      'an airbag',
      'claim/own-repair',
      {
        airbagsDeployed: true,
        rebuild: { insuranceQuoted: true, retitlingConfirmed: true, inspected: false },
      },
      /airbag/,
    ],
    [
      'a flood',
      'claim/own-repair',
      { flooded: true, rebuild: { insuranceQuoted: true, retitlingConfirmed: true, inspected: false } },
      /flooded/,
    ],
    ['structure not looked at', 'claim/safe-only', { structure: 'not checked' }, /structure/],
    [
      'no quote for a rebuilt one',
      'claim/rebuild',
      { place: strict, rebuild: { insuranceQuoted: false, retitlingConfirmed: true, inspected: true } },
      /no insurer has quoted/,
    ],
    [
      'papers not confirmed',
      'claim/rebuild',
      { place: strict, rebuild: { insuranceQuoted: true, retitlingConfirmed: false, inspected: true } },
      /retitled/,
    ],
    [
      'never again',
      'claim/rebuild',
      {
        place: {
          ...strict,
          neverAgain: { source: 'invented', evidence: 'stated', percent: 33, operator: '>=' },
        },
      },
      /never lets/,
    ],
    ['nobody pays', 'claim/own-repair', { pays: 'nobody' }, /insurer pays/],
  ];
  it.each(cases)('%s', (_what, id, facts, why) => {
    expect(whyOf(hit({}, facts, facts.lender ? 2000 : 0), id)).toMatch(why);
  });

  it('below the deductible there is nothing to claim', () => {
    expect(whyOf(hit({ deductible: 2500 }), 'claim/own-repair')).toMatch(/nothing to claim/);
  });

  it('and with all said, only total losses are closed below the line', () => {
    expect(waysFor(hit()).closed.map(({ id }) => id)).toEqual(['claim/rebuild', 'claim/total-loss']);
    expect(whyOf(hit({}, { place }), 'claim/shop-repair')).toBeUndefined();
  });
});

describe('chances', () => {
  const drawn = (u: number): Future => ({
    kind: 'drawn',
    luckOf: () => ({ exponential: () => 1e9, quantile: () => 0.5 }),
    recall: new Map(),
    turns: null,
    turnsOut: () => u,
    givenUpIn: null,
    atMean: null,
  });
  const dayOf = (one: Hit, id: string, u: number): number => {
    const ctx = ctxOf(one, drawn(u));
    return resultOf(named(waysFor(one).open, id).build(ctx), ctx).cashOnTheDay;
  };

  it('more damage: 400 and tax, of which the insurer pays half at a shop, and half too while the claim stays open', () => {
    const estimate = { ...claim.estimate, supplement: { chance: 0.3, amount: 400, paid: 0.5 } };
    const extra = (id: string, facts: Partial<ClaimFacts> = {}): number =>
      dayOf(hit({ estimate }, facts), id, 0.1) - dayOf(hit({ estimate }, facts), id, 0.9);
    expect(extra('claim/shop-repair/keep')).toBe(43_200 - 21_600);
    expect(extra('claim/own-repair/keep')).toBe(43_200 - 20_000);
    expect(extra('claim/own-repair/keep', { signingCloses: true })).toBe(43_200);
    expect(extra('claim/left/keep')).toBe(0);
  });

  it('expected, they count by their chance', () => {
    const estimate = { ...claim.estimate, supplement: { chance: 0.25, amount: 400, paid: 0.5 } };
    const day = (one: Hit) => named(results(one), 'claim/shop-repair/keep').cashOnTheDay;
    expect(day(hit({ estimate })) - day(hit())).toBe(5_400);
  });

  it('papers refused: it goes for scrap and another is bought, and expected costs lie between', () => {
    const refused = hit(
      { rebuild: { ...(claim.rebuild as NonNullable<typeof claim.rebuild>), refused: 0.5 } },
      { place: strict },
    );
    const cost = (u: number | null): number => {
      const ctx = ctxOf(refused, u === null ? EXPECTED : drawn(u));
      return resultOf(named(waysFor(refused).open, 'claim/rebuild/keep').build(ctx), ctx).netPresentCost
        .counted;
    };
    const [no, yes] = [cost(0.9), cost(0.1)];
    expect(yes).toBeGreaterThan(no);
    expect(cost(null)).toBeGreaterThan(no);
  });
});

describe('where the answer turns', () => {
  it('the payout at which own repair costs what the next best does is where they meet', () => {
    const { courses, tips } = viewOf(hit());
    const cost = (ids: RegExp): number =>
      Math.min(...courses.filter(({ id }) => ids.test(id)).map((one) => one.cost.counted / 100));
    // What takes no cash does not move with the payout of 1,400; own repair does, dollar for dollar.
    const other = cost(/shop-repair|no-claim/);
    expect(tips.find(({ what }) => what === 'payout')?.at).toBeCloseTo(
      1400 - (other - cost(/claim\/own-repair/)),
      0,
    );
  });

  it('own hours: at their price, a shop is as good where they make up the rest', () => {
    const one = hit();
    const priced = {
      ...one,
      inputs: { ...one.inputs, household: { ...one.inputs.household, priceOfOwnHour: 20 } },
    };
    const tip = viewOf(priced).tips.find(({ what }) => what === 'hours');
    // Own: 400 + 20 h + value lost; the shop: 500 and nothing lost. Without the value lost: 400 - 1,400 against 500.
    expect(tip?.at).toBeGreaterThan(50);
    expect(tip?.at).toBeLessThan(75);
  });
});
