import { describe, expect, it } from 'vitest';
import { cardOwed } from '../../../src/engine/cashflow/contracts/card.ts';
import {
  type LeaseTerms,
  lease,
  leasePayment,
  overDistanceCharge,
} from '../../../src/engine/cashflow/contracts/lease.ts';
import {
  brokenValue,
  marketValue,
  netOfSelling,
} from '../../../src/engine/cashflow/contracts/marketValue.ts';
import { type PurchaseTerms, purchaseFigures } from '../../../src/engine/cashflow/contracts/purchase.ts';
import { dueMonths } from '../../../src/engine/cashflow/contracts/upkeep.ts';
import type { Contract, Line } from '../../../src/engine/cashflow/posting.ts';
import { monthlySink } from '../../../src/engine/cashflow/sinks.ts';
import { mostCredited } from '../../../src/engine/scenario/places/placeRule.ts';
import { placeByCode } from '../../../src/engine/scenario/places/places.ts';

const line: Line = { category: 'lease', what: 'a test', path: 'nowhere', reason: 'to see' };
const leaseLine = (): Line => line;
const flowsOf = (contract: Contract, horizon: number): number[] => {
  const sink = monthlySink(horizon);
  contract(sink);
  return [...sink.flows.counted];
};

describe('scheduled upkeep', () => {
  const item = { everyMonths: null, everyDistance: 5000, sinceMonths: 0, sinceDistance: 0 };

  it('falls due by distance or months, whichever comes first', () => {
    expect(dueMonths(item, 1000, 24)).toEqual([5, 10, 15, 20]);
    expect(dueMonths({ ...item, everyMonths: 4 }, 1000, 12)).toEqual([4, 8, 12]);
  });

  it('counts from when it was last done; what is overdue falls in month 1', () => {
    expect(dueMonths({ ...item, sinceDistance: 3000 }, 1000, 12)).toEqual([2, 7, 12]);
    expect(dueMonths({ ...item, sinceDistance: 9000 }, 1000, 8)).toEqual([1, 6]);
  });

  it('of a vehicle that stands still keeps to the calendar, or never comes', () => {
    expect(dueMonths(item, 0, 60)).toEqual([]);
    expect(dueMonths({ ...item, everyMonths: 12 }, 0, 30)).toEqual([12, 24]);
  });
});

describe('a market value', () => {
  it('declines compound, and by distance in money, down to its floor', () => {
    const terms = {
      now: 10000,
      law: { kind: 'decline', perYear: 0.2, perDistance: 0.05, downTo: 0 },
      floor: 300,
      brandFactor: 1,
    } as const;
    expect(marketValue(terms, 24, 0)).toBeCloseTo(6400, 9);
    expect(marketValue(terms, 24, 20000)).toBeCloseTo(5400, 9);
    expect(marketValue(terms, 240, 0)).toBe(300);
    expect(marketValue({ ...terms, brandFactor: 0.7 }, 0, 0)).toBeCloseTo(7000, 9);
  });

  it('falls no lower than a running one of any age brings, and one that is below that already stays', () => {
    const law = { kind: 'decline', perYear: 0.2, perDistance: 0.05, downTo: 2000 } as const;
    const terms = { now: 10000, law, floor: 300, brandFactor: 1 };
    expect(marketValue(terms, 24, 0)).toBeCloseTo(6400, 9);
    expect(marketValue(terms, 24, 100_000)).toBe(2000);
    expect(marketValue({ ...terms, now: 1500 }, 120, 100_000)).toBe(1500);
    expect(marketValue({ ...terms, now: 100 }, 120, 0)).toBe(300);
  });

  it('from a table is linear between its points and flat after the last', () => {
    const points = [
      { month: 12, value: 4000 },
      { month: 36, value: 1000 },
    ];
    const terms = { now: 5000, law: { kind: 'points', points }, floor: 0, brandFactor: 1 } as const;
    expect([0, 6, 12, 24, 36, 60].map((m) => marketValue(terms, m, 0))).toEqual([
      5000, 4500, 4000, 2500, 1000, 1000,
    ]);
  });

  it('broken keeps its share of the running value, but not less than scrap', () => {
    expect(brokenValue(2000, 4000, 1000, 200)).toBe(500);
    expect(brokenValue(400, 4000, 1000, 200)).toBe(200);
  });

  it('net of selling is never less than what the yard would pay', () => {
    expect(netOfSelling(3000, 100, 6, 20, 400)).toBe(2780);
    expect(netOfSelling(500, 100, 10, 30, 400)).toBe(400);
  });
});

describe('a purchase', () => {
  const terms: PurchaseTerms = {
    price: 20000,
    salesTax: 0.06,
    tradeInCredit: null,
    rebate: 1000,
    extras: [
      { name: 'papers', amount: 400, financed: true, financeCharge: false },
      { name: 'loan fee', amount: 150, financed: true, financeCharge: true },
      { name: 'plates', amount: 90, financed: false, financeCharge: false },
    ],
    tradeIn: 3000,
    payoffRolledIn: 500,
    loan: { downPayment: 2000 },
  };

  it('borrows price + tax + financed extras + payoff rolled in - rebate - cash down - trade-in', () => {
    const figures = purchaseFigures(terms);
    expect(figures.tax).toBeCloseTo(0.06 * 17000, 9);
    expect(figures.advance).toBeCloseTo(20000 + 1020 + 550 + 500 - 1000 - 2000 - 3000, 9);
    expect(figures.prepaidFinanceCharge).toBe(150);
  });

  it('a trade-in lowers the tax only where the place allows, and never below nil', () => {
    expect(purchaseFigures({ ...terms, tradeInCredit: 0 }).tax).toBeCloseTo(1200, 9);
    expect(purchaseFigures({ ...terms, tradeIn: 25000 }).tax).toBe(0);
    expect(purchaseFigures({ ...terms, tradeIn: 25000 }).advance).toBe(0);
  });

  // Michigan's tax on the difference (RAB 2022-17) with full credit: 6 % on 30,000 less 12,000.
  it('taxes the difference, or the whole price (published rule, retrieved)', () => {
    const deal = { ...terms, price: 30000, tradeIn: 12000 };
    expect(purchaseFigures(deal).tax).toBeCloseTo(1080, 9);
    expect(purchaseFigures({ ...deal, tradeInCredit: 0 }).tax).toBeCloseTo(1800, 9);
    // The same bulletin's cap for 2022, 8,000 of the 12,000, from the shipped row.
    const michigan = placeByCode('US-MI')?.tradeIn.credit;
    const cap = michigan ? mostCredited(michigan, 2022) : null;
    expect(cap).toBe(8000);
    expect(purchaseFigures({ ...deal, tradeInCredit: cap }).tax).toBeCloseTo(1320, 9);
  });
});

describe('a lease', () => {
  const terms: LeaseTerms = {
    startsFrom: 26000,
    residual: 14000,
    moneyFactor: 0.002,
    months: 36,
    dueAtSigning: 2000,
    distanceAYear: 12000,
    overDistance: 0.2,
    acquisitionFee: 600,
    dispositionFee: 350,
    taxOnPayment: 0.05,
    purchaseFee: 250,
    earlyTermination: null,
  };

  it('costs depreciation and rental charge a month, tax on both', () => {
    expect(leasePayment(terms)).toBeCloseTo(((24000 - 14000) / 36 + (24000 + 14000) * 0.002) * 1.05, 9);
  });

  it('charges the distance over its allowance, at its end', () => {
    expect(overDistanceCharge(terms, 1250, 36)).toBeCloseTo(250 * 36 * 0.2, 9);
    expect(overDistanceCharge(terms, 900, 36)).toBe(0);
  });

  it('runs its term: signing, payments, and on leaving either the fees or the purchase', () => {
    const left = flowsOf(lease(leaseLine, terms, 0, 36, 1000, false), 36);
    expect(left[0]).toBe(2600);
    expect(left[36]).toBeCloseTo(leasePayment(terms) + 350, 9);
    const kept = flowsOf(lease(leaseLine, terms, 0, 36, 1000, true), 36);
    expect(kept[36]).toBeCloseTo(leasePayment(terms) + 14250, 9);
  });

  it('broken off by the horizon is charged what is given, or else prorated', () => {
    const prorated = flowsOf(lease(leaseLine, terms, 0, 18, 1000, false), 18);
    expect(prorated[18]).toBeCloseTo(leasePayment(terms) + 175 - 1300, 9);
    const charged = flowsOf(lease(leaseLine, { ...terms, earlyTermination: 1500 }, 0, 18, 1000, false), 18);
    expect(charged[18]).toBeCloseTo(leasePayment(terms) + 350 + 1500, 9);
  });
});

describe('the card', () => {
  it('owes everything at first and nothing after two years', () => {
    expect(cardOwed(0.22, 0)).toBe(1);
    expect(cardOwed(0.22, 24)).toBe(0);
    expect(cardOwed(0, 12)).toBeCloseTo(0.5, 12);
  });
});
