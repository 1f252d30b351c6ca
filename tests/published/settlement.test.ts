import { describe, expect, it } from 'vitest';
import { TO_THE_CENT } from '../../src/engine/cashflow/contracts/settlement/arithmetic.ts';
import {
  type LossTerms,
  totalLossPayment,
  underRule,
} from '../../src/engine/cashflow/contracts/settlement/insurerPayment.ts';
import { splitTotalLoss } from '../../src/engine/cashflow/contracts/settlement/lossPayee.ts';
import { totalLossUnder } from '../../src/engine/cashflow/contracts/settlement/totalLoss.ts';
import { tradeInTax } from '../../src/engine/cashflow/contracts/settlement/tradeInTax.ts';
import { type Cents, inUnits, NIL, toCents } from '../../src/engine/quantity/money.ts';
import type {
  PlaceRule,
  TaxOrder,
  TotalLossTest,
  TradeInCredit,
} from '../../src/engine/scenario/places/placeRule.ts';
import { placeByCode } from '../../src/engine/scenario/places/places.ts';
import { type Inputs, publishedCases } from './cases.ts';

const cents = (given: Inputs, name: string): Cents => toCents(given.num(name));

const placeOf = (given: Inputs): PlaceRule => {
  const place = placeByCode(given.get<string>('place'));
  if (!place) throw new Error('no such place');
  return place;
};

const termsOf = (given: Inputs): LossTerms => ({
  value: cents(given, 'value'),
  damageFromBefore: NIL,
  taxRate: given.num('taxRate'),
  fees: cents(given, 'fees'),
  taxOnlyWhenIncurred: false,
  deductible: cents(given, 'deductible'),
});
const kept = (given: Inputs) => ({ salvage: cents(given, 'salvage'), replaced: false });

/** Every figure of the cases is decided; one that is not would be a difference of its own. */
const isTotal = (
  rule: PlaceRule['totalLoss'],
  value: number,
  repair: number,
  salvage: number | null,
): boolean => {
  const found = totalLossUnder(rule, {
    repair: toCents(repair),
    value: toCents(value),
    salvage: salvage === null ? null : toCents(salvage),
    modelYears: 5,
    insured: true,
  });
  if (found.status === 'undecided') throw new Error(found.reason);
  return found.status === 'total loss';
};

const ruleWith = (test: TotalLossTest): PlaceRule['totalLoss'] => ({
  test,
  leftOut: [],
  reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
  note: null,
  source: 'as the case has it',
  evidence: 'stated',
});

const taxOf = (given: Inputs, year: number, credit: TradeInCredit): number => {
  const tax = tradeInTax(
    TO_THE_CENT,
    {
      price: cents(given, 'price'),
      tradeIn: cents(given, 'tradeIn'),
      taxRate: given.num('taxRate'),
      year,
    },
    credit,
  );
  if (tax.status === 'not known') throw new Error('not known');
  return inUnits(tax.tax);
};

describe('settlements', () => {
  publishedCases('settlement.json', {
    keptUnder: (given) => {
      const found = underRule(placeOf(given).settlement, (reading) =>
        totalLossPayment(TO_THE_CENT, termsOf(given), kept(given), reading),
      );
      const statements =
        found.status === 'known' ? [found.statement] : found.readings.map((r) => r.statement);
      return { payments: statements.map(({ payment }) => inUnits(payment)) };
    },
    keptInOrder: (given) => ({
      payment: inUnits(
        totalLossPayment(TO_THE_CENT, termsOf(given), kept(given), {
          tax: given.get<TaxOrder>('tax'),
          fees: 'paid',
        }).payment,
      ),
    }),
    thresholds: (given) => ({
      total: given
        .nums('repairs')
        .map((repair) => isTotal(placeOf(given).totalLoss, given.num('value'), repair, null)),
    }),
    formula: (given) => ({
      total: given
        .nums('repairs')
        .map((repair) => isTotal(placeOf(given).totalLoss, given.num('value'), repair, given.num('salvage'))),
    }),
    threeTests: (given) => {
      const by = (test: TotalLossTest): boolean =>
        isTotal(ruleWith(test), given.num('value'), given.num('repair'), given.num('salvage'));
      const percent = given.num('percent');
      return {
        byFormula: by({ kind: 'formula', operator: '>=' }),
        byPercentInclusive: by({ kind: 'percent', percent, operator: '>=' }),
        byPercentStrict: by({ kind: 'percent', percent, operator: '>' }),
      };
    },
    tradeIn: (given) => ({
      tax: given.nums('years').map((year) => taxOf(given, year, placeOf(given).tradeIn.credit)),
      noCredit: taxOf(given, 2026, { kind: 'none' }),
      fullCredit: taxOf(given, 2026, { kind: 'full' }),
    }),
    lenderFirst: (given) => {
      const payment = (cents(given, 'settlement') - cents(given, 'deductible')) as Cents;
      const { lender, owner, stillOwed } = splitTotalLoss(payment, cents(given, 'owed'), null);
      return { lender: inUnits(lender), owner: inUnits(owner), stillOwed: inUnits(stillOwed) };
    },
    shortfall: (given) => ({
      stillOwed: inUnits(splitTotalLoss(cents(given, 'paid'), cents(given, 'owed'), null).stillOwed),
    }),
  });

  it('Michigan has no cap once it has passed 14,000, and no known one before 2019', () => {
    const credit = placeByCode('US-MI')?.tradeIn.credit ?? { kind: 'not known' };
    const at = (year: number) =>
      tradeInTax(
        TO_THE_CENT,
        { price: toCents(30_000), tradeIn: toCents(20_000), taxRate: 0.06, year },
        credit,
      );
    expect(at(2028)).toEqual({ status: 'known', tax: 96_000, credited: 1_400_000 });
    expect(at(2029)).toEqual({ status: 'known', tax: 60_000, credited: 2_000_000 });
    expect(at(2018)).toEqual({ status: 'not known', least: 60_000, most: 180_000 });
  });
});
