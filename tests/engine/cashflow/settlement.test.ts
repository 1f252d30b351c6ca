import { describe, expect, it } from 'vitest';
import { TO_THE_CENT } from '../../../src/engine/cashflow/contracts/settlement/arithmetic.ts';
import { comparedValue } from '../../../src/engine/cashflow/contracts/settlement/comparedValue.ts';
import {
  type Estimate,
  estimateTotals,
  labourRateGap,
  testedRepairCost,
} from '../../../src/engine/cashflow/contracts/settlement/estimate.ts';
import {
  type LossTerms,
  repairPayment,
  statementOf,
  totalLossPayment,
  underRule,
} from '../../../src/engine/cashflow/contracts/settlement/insurerPayment.ts';
import {
  firstDay,
  splitRepair,
  splitTotalLoss,
} from '../../../src/engine/cashflow/contracts/settlement/lossPayee.ts';
import {
  claimOnOther,
  recoverableShare,
  shareCollected,
} from '../../../src/engine/cashflow/contracts/settlement/otherInsurer.ts';
import { unusedRefund } from '../../../src/engine/cashflow/contracts/settlement/refund.ts';
import {
  type DamagedVehicle,
  neverRebuilt,
  totalLossFrom,
  totalLossUnder,
} from '../../../src/engine/cashflow/contracts/settlement/totalLoss.ts';
import { tradeInTax } from '../../../src/engine/cashflow/contracts/settlement/tradeInTax.ts';
import { NIL, toCents } from '../../../src/engine/quantity/money.ts';
import type { PlaceRule } from '../../../src/engine/scenario/places/placeRule.ts';
import { placeByCode } from '../../../src/engine/scenario/places/places.ts';

const place = (code: string): PlaceRule => {
  const found = placeByCode(code);
  if (!found) throw new Error(`${code} is not listed`);
  return found;
};

/** A rear panel, a lamp and a bumper cover: 1,200 of parts, 7.5 hours at 60.10, 300 of paint, a tow. */
const ESTIMATE: Estimate = {
  lines: [
    { what: 'bumper cover', kind: 'parts', amount: toCents(800), betterment: toCents(100), taxed: true },
    { what: 'lamp', kind: 'parts', amount: toCents(400), betterment: NIL, taxed: true },
    { what: 'body', kind: 'labour', hours: 7.5, ratePerHour: toCents(60.1), betterment: NIL, taxed: false },
    { what: 'respray', kind: 'paint', amount: toCents(300), betterment: NIL, taxed: true },
    { what: 'tow', kind: 'towing', amount: toCents(120), betterment: NIL, taxed: false },
    { what: 'bent bracket', kind: 'supplement', amount: toCents(75.55), betterment: NIL, taxed: true },
  ],
  taxRate: 0.07,
  taxOnlyWhenIncurred: true,
};

const TERMS: LossTerms = {
  value: toCents(5000),
  damageFromBefore: NIL,
  taxRate: 0.07,
  fees: toCents(40),
  taxOnlyWhenIncurred: false,
  deductible: toCents(500),
};
const PLAIN = { tax: 'not paid', fees: 'not paid' } as const;

describe('an estimate', () => {
  it('adds up line by line, with tax once and only when the work is done', () => {
    const done = estimateTotals(TO_THE_CENT, ESTIMATE, true);
    expect(done.amounts).toEqual([80_000, 40_000, 45_075, 30_000, 12_000, 7_555]);
    // 7 % of 1,575.55 is 110.2885.
    expect([done.beforeTax, done.tax, done.total, done.betterment]).toEqual([
      214_630, 11_029, 225_659, 10_000,
    ]);
    expect(estimateTotals(TO_THE_CENT, ESTIMATE, false)).toMatchObject({ tax: 0, total: 214_630 });
  });

  it('rounds half up where a binary fraction would fall short', () => {
    const lines = [
      { what: 'clip', kind: 'parts', amount: toCents(0.5), betterment: NIL, taxed: true },
    ] as const;
    // 0.5 x 0.29 = 0.145: 14.499999999999998 cents in floating point.
    expect(estimateTotals(TO_THE_CENT, { lines, taxRate: 0.29, taxOnlyWhenIncurred: false }, true).tax).toBe(
      15,
    );
  });

  it('counts under a rule without what the place leaves out', () => {
    expect(testedRepairCost(TO_THE_CENT, ESTIMATE, [])).toBe(225_659);
    expect(testedRepairCost(TO_THE_CENT, ESTIMATE, place('US-NV').totalLoss.leftOut)).toBe(172_630 + 8_929);
    expect(testedRepairCost(TO_THE_CENT, ESTIMATE, place('US-TX').totalLoss.leftOut)).toBe(184_630);
    expect(testedRepairCost(TO_THE_CENT, ESTIMATE, place('US-VA').totalLoss.leftOut)).toBe(213_659);
  });

  it('shows what a dearer shop asks beyond it, and nothing for a cheaper one', () => {
    expect(labourRateGap(TO_THE_CENT, ESTIMATE, toCents(95))).toBe(71_250 - 45_075);
    expect(labourRateGap(TO_THE_CENT, ESTIMATE, toCents(50))).toBe(0);
  });

  it('refuses what has a sign, and betterment above its line', () => {
    const one = (amount: number, betterment: number): Estimate => ({
      ...ESTIMATE,
      lines: [
        {
          what: 'lamp',
          kind: 'parts',
          amount: toCents(amount),
          betterment: toCents(betterment),
          taxed: true,
        },
      ],
    });
    expect(() => estimateTotals(TO_THE_CENT, one(-1, 0), true)).toThrow('lamp must be 0 or more');
    expect(() => estimateTotals(TO_THE_CENT, one(1, 2), true)).toThrow('lamp less its betterment');
    expect(() => estimateTotals(TO_THE_CENT, { ...ESTIMATE, taxRate: -0.1 }, true)).toThrow('tax rate');
  });
});

describe('a payment', () => {
  it('for a repair takes off betterment and the deductible, and never pays more than the value', () => {
    const cash = estimateTotals(TO_THE_CENT, ESTIMATE, false);
    expect(repairPayment(TO_THE_CENT, TERMS, cash, PLAIN)).toEqual({
      lines: [
        { item: 'repair', amount: 214_630 },
        { item: 'betterment', amount: -10_000 },
        { item: 'deductible', amount: -50_000 },
      ],
      payment: 154_630,
    });
    const cheap = { ...TERMS, value: toCents(2000), damageFromBefore: toCents(400) };
    expect(repairPayment(TO_THE_CENT, cheap, cash, PLAIN).payment).toBe(160_000 - 60_000);
    const taxed = { tax: 'before salvage', fees: 'paid' } as const;
    expect(repairPayment(TO_THE_CENT, cheap, cash, taxed).payment).toBe(171_200 - 60_000);
    const later = { ...cheap, taxOnlyWhenIncurred: true };
    expect(repairPayment(TO_THE_CENT, later, cash, taxed).payment).toBe(160_000 - 60_000);
  });

  it('for a total loss says every line, and pays tax and fees when they are due', () => {
    const taxed = { tax: 'after salvage', fees: 'paid' } as const;
    const kept = { salvage: toCents(900), replaced: false };
    expect(totalLossPayment(TO_THE_CENT, TERMS, kept, taxed).lines).toEqual([
      { item: 'value', amount: 500_000 },
      { item: 'tax on the value', amount: 28_700 },
      { item: 'fees of the papers', amount: 4_000 },
      { item: 'deductible', amount: -50_000 },
      { item: 'salvage kept', amount: -90_000 },
    ]);
    const later = { ...TERMS, taxOnlyWhenIncurred: true };
    const gone = (replaced: boolean) =>
      totalLossPayment(TO_THE_CENT, later, { salvage: null, replaced }, taxed).payment;
    expect([gone(false), gone(true)]).toEqual([450_000, 489_000]);
  });

  it('is nil, and says so, where nothing is left of it', () => {
    expect(
      statementOf([
        ['value', toCents(100)],
        ['deductible', toCents(-500)],
      ]),
    ).toEqual({
      lines: [
        { item: 'value', amount: 10_000 },
        { item: 'deductible', amount: -50_000 },
        { item: 'not below nil', amount: 40_000 },
      ],
      payment: 0,
    });
  });

  it('under an unknown rule is every amount it may be, and one where the rule changes nothing', () => {
    const kept = { salvage: toCents(1000), replaced: false };
    const pay = (terms: LossTerms) =>
      underRule(place('US-WY').settlement, (as) => totalLossPayment(TO_THE_CENT, terms, kept, as));
    const open = pay(TERMS);
    if (open.status === 'known') throw new Error('the place has a rule now');
    expect(
      open.readings.map(({ reading, statement }) => [reading.tax, reading.fees, statement.payment]),
    ).toEqual([
      ['not paid', 'not paid', 350_000],
      ['not paid', 'paid', 354_000],
      ['after salvage', 'not paid', 378_000],
      ['after salvage', 'paid', 382_000],
      ['before salvage', 'not paid', 385_000],
      ['before salvage', 'paid', 389_000],
    ]);
    expect(pay({ ...TERMS, taxRate: 0, fees: NIL })).toMatchObject({ status: 'known' });
  });
});

describe('a total-loss test', () => {
  const vehicle: DamagedVehicle = {
    repair: toCents(3750),
    value: toCents(5000),
    salvage: toCents(1250),
    modelYears: 12,
    insured: true,
  };
  const under = (code: string, changes: Partial<DamagedVehicle> = {}) =>
    totalLossUnder(place(code).totalLoss, { ...vehicle, ...changes });

  it('is decided on every cent, and left open on the line where a chart does not say', () => {
    const onLine = 'exactly on the line, and whether that counts is not known';
    const below = { repair: toCents(3749.99) };
    const above = { repair: toCents(3750.01) };
    expect([under('US-AL', below), under('US-AL')]).toEqual([{ status: 'repair' }, { status: 'total loss' }]);
    expect([under('US-MD'), under('US-MD', above)]).toEqual([{ status: 'repair' }, { status: 'total loss' }]);
    for (const code of ['US-NY', 'US-CA']) {
      expect(under(code)).toEqual({ status: 'undecided', reason: onLine });
      expect(under(code, below)).toEqual({ status: 'repair' });
      expect(under(code, above)).toEqual({ status: 'total loss' });
    }
  });

  it('is left open where the rule leaves it, or does not reach the vehicle', () => {
    expect(under('US-ME')).toEqual({ status: 'undecided', reason: 'the insurer decides' });
    expect(under('US-CA', { salvage: null })).toEqual({
      status: 'undecided',
      reason: 'no bid for the wreck',
    });
    const old = { status: 'undecided', reason: 'the vehicle may be too old for the rule' };
    expect([under('US-MI'), under('US-OK'), under('US-OK', { modelYears: null })]).toEqual([old, old, old]);
    expect(under('US-OK', { modelYears: 10 })).toEqual({ status: 'total loss' });
    const cheap = { value: toCents(499.99), repair: toCents(499.99) };
    expect(under('US-IA', cheap)).toEqual({ status: 'undecided', reason: 'worth too little for the rule' });
    expect(under('US-IA', { value: toCents(500) })).toEqual({ status: 'total loss' });
    expect(under('US-FL', { repair: toCents(5000) })).toEqual({
      status: 'undecided',
      reason: 'the insurer decides',
    });
    expect(under('US-FL', { repair: toCents(4000), insured: false })).toEqual({ status: 'total loss' });
  });

  it('says from which cent, fractions of a cent included', () => {
    const from = (code: string, value: number, salvage: number | null) =>
      totalLossFrom(place(code).totalLoss.test, toCents(value), salvage === null ? null : toCents(salvage));
    expect(from('US-AL', 10_000, null)).toBe(750_000);
    expect(from('US-MD', 10_000, null)).toBe(750_001);
    expect([from('US-AL', 99.99, null), from('US-MD', 99.99, null)]).toEqual([7_500, 7_500]);
    expect([from('US-VA', 10_000, 3000), from('US-VA', 10_000, null)]).toEqual([700_001, null]);
    expect(from('US-ME', 10_000, 3000)).toBeNull();
  });

  it('knows where a wreck can never be rebuilt', () => {
    const at = (code: string, repair: number) => neverRebuilt(place(code), toCents(repair), toCents(1000));
    expect([at('US-MI', 909.99), at('US-MI', 910)]).toEqual([{ status: 'repair' }, { status: 'total loss' }]);
    expect([at('US-VA', 900), at('US-VA', 900.01)]).toEqual([{ status: 'repair' }, { status: 'total loss' }]);
    expect(at('US-AL', 5000)).toBeNull();
  });
});

describe("the other driver's insurer", () => {
  it('pays by the fault, as the place has it', () => {
    const shares = (fault: number) =>
      (['in proportion', 'nothing from half', 'nothing above half', 'nothing if any'] as const).map((rule) =>
        recoverableShare(fault, rule),
      );
    expect(shares(0)).toEqual([1, 1, 1, 1]);
    expect(shares(0.1)).toEqual([0.9, 0.9, 0.9, 0]);
    expect(shares(0.5)).toEqual([0.5, 0, 0.5, 0]);
    expect(shares(0.9)).toEqual([0.1, 0, 0, 0]);
    expect(() => shares(1.1)).toThrow(RangeError);
  });

  it('pays lost market value as well, up to its limit', () => {
    const claim = {
      damage: toCents(4000),
      lostMarketValue: toCents(600),
      lossOfUse: toCents(300),
      towAndStorage: toCents(100),
      share: 0.8,
      limit: toCents(3500),
    };
    expect(claimOnOther(TO_THE_CENT, claim)).toEqual({
      lines: [
        { item: 'damage', amount: 400_000 },
        { item: 'lost market value', amount: 60_000 },
        { item: 'loss of use', amount: 30_000 },
        { item: 'tow and storage', amount: 10_000 },
        { item: 'own share of the fault', amount: -100_000 },
        { item: 'beyond the limit', amount: -50_000 },
      ],
      payment: 350_000,
    });
    expect(claimOnOther(TO_THE_CENT, { ...claim, limit: null }).payment).toBe(400_000);
  });

  it('gives the deductible back, in proportion or first', () => {
    const given = { collected: toCents(2000), insurerPaid: toCents(3500), deductible: toCents(500) };
    expect(shareCollected(TO_THE_CENT, given, 'in proportion')).toEqual({ owner: 25_000, insurer: 175_000 });
    expect(shareCollected(TO_THE_CENT, given, 'owner first')).toEqual({ owner: 50_000, insurer: 150_000 });
    const nothing = { collected: NIL, insurerPaid: NIL, deductible: NIL };
    expect(shareCollected(TO_THE_CENT, nothing, 'in proportion')).toEqual({ owner: 0, insurer: 0 });
  });
});

describe('a lender', () => {
  it('has gap cover pay what is short, less what it leaves out, up to its limit', () => {
    const short = (cover: Parameters<typeof splitTotalLoss>[2]) => {
      const { gap, stillOwed } = splitTotalLoss(toCents(6000), toCents(9000), cover);
      return [gap, stillOwed];
    };
    expect(short(null)).toEqual([0, 300_000]);
    expect(short({ limit: null, excluded: toCents(250) })).toEqual([275_000, 25_000]);
    expect(short({ limit: toCents(2000), excluded: NIL })).toEqual([200_000, 100_000]);
    expect(short({ limit: null, excluded: toCents(4000) })).toEqual([0, 300_000]);
  });

  it('named on a cheque lets it go, has the shop paid, or puts it to the loan', () => {
    const by = (cheque: Parameters<typeof splitRepair>[2]) => {
      const { lender, owner, shop, stillOwed } = splitRepair(toCents(2500), toCents(2000), cheque);
      return [lender, owner, shop, stillOwed];
    };
    expect(by('released to the owner')).toEqual([0, 250_000, 0, 200_000]);
    expect(by('only for the repair')).toEqual([0, 0, 250_000, 200_000]);
    expect(by('put to the loan')).toEqual([200_000, 50_000, 0, 0]);
  });

  it('is paid on the first day, and the shortfall only if the vehicle is gone', () => {
    const split = splitTotalLoss(toCents(6000), toCents(9000), { limit: toCents(2000), excluded: NIL });
    expect(firstDay(split, true)).toEqual([
      { item: 'insurer pays the lender', amount: -600_000 },
      { item: 'gap cover pays the lender', amount: -200_000 },
      { item: 'lender is paid', amount: 800_000 },
      { item: 'shortfall is paid', amount: 100_000 },
    ]);
    expect(firstDay(split, false).map(({ item }) => item)).not.toContain('shortfall is paid');
  });
});

describe('what comes with it', () => {
  it('refunds what was paid ahead in proportion, less the fee', () => {
    const refund = (paid: number, of: number, unused: number, fee: number) =>
      unusedRefund(TO_THE_CENT, { paid: toCents(paid), of, unused, fee: toCents(fee) });
    // 640 x 100/365 = 175.342...
    expect([refund(640, 365, 100, 0), refund(640, 365, 100, 50)]).toEqual([17_534, 12_534]);
    expect([refund(0.01, 2, 1, 0), refund(30, 12, 1, 50), refund(100, 0, 0, 0)]).toEqual([1, 0, 0]);
    expect(() => refund(100, 12, 13, 0)).toThrow(RangeError);
  });

  it('taxes the next vehicle by the place, both ends where it is not known', () => {
    const taxed = { price: toCents(8000), tradeIn: toCents(9000), taxRate: 0.05, year: 2026 };
    const at = (code: string) => tradeInTax(TO_THE_CENT, taxed, place(code).tradeIn.credit);
    expect(at('US-MD')).toEqual({ status: 'known', tax: 0, credited: 800_000 });
    expect(at('US-VA')).toEqual({ status: 'known', tax: 40_000, credited: 0 });
    expect(at('US-OR')).toEqual({ status: 'known', tax: 0, credited: 0 });
    expect(at('US-KY')).toEqual({ status: 'not known', least: 0, most: 40_000 });
  });

  it('values by comparables, each line open', () => {
    const found = comparedValue(
      TO_THE_CENT,
      [
        { price: toCents(5200), distance: 120_000, adjustment: NIL },
        { price: toCents(4800), distance: 150_000, adjustment: toCents(-150) },
        { price: toCents(4999.99), distance: 130_000, adjustment: NIL },
      ],
      { distance: 130_000, perDistance: toCents(0.04) },
    );
    expect(found?.lines).toEqual([
      { forDistance: -40_000, value: 480_000 },
      { forDistance: 80_000, value: 545_000 },
      { forDistance: 0, value: 499_999 },
    ]);
    expect(found?.value).toBe(508_333);
    expect(comparedValue(TO_THE_CENT, [], { distance: 1, perDistance: NIL })).toBeNull();
  });
});
