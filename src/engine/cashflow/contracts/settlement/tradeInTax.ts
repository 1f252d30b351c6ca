/** Sales tax on the next vehicle where one is traded in. */
import type { Cents } from '../../../quantity/money.ts';
import type { TradeInCredit } from '../../../scenario/placeRule.ts';
import { type Arithmetic, atLeastNil, less, lesser, noSign } from './arithmetic.ts';

export interface TaxedPurchase<N extends number = Cents> {
  readonly price: N;
  readonly tradeIn: N;
  readonly taxRate: number;
  /** Calendar year of the purchase: caps rise with it. */
  readonly year: number;
}

/** The tax, and what of the trade-in lowered what is taxed; or both ends where the rule is not known. */
export type TradeInTax<N extends number = Cents> =
  | { readonly status: 'known'; readonly tax: N; readonly credited: N }
  | { readonly status: 'not known'; readonly least: N; readonly most: N };

/** The cap of a year in currency units; null where it is not known. */
const capIn = (
  { from, cap, risesAYear, lastCap }: Extract<TradeInCredit, { kind: 'capped' }>,
  year: number,
): number | 'none' | null => {
  if (year < from) return null;
  const inYear = cap + risesAYear * (year - from);
  return inYear > lastCap ? 'none' : inYear;
};

/**
 * The tax on a purchase with a trade-in, rounded half up once: on the price less what of the trade-in the place
 * credits. Positive; 0 where there is no sales tax. Not known: from full credit to none. A capped credit is not known
 * before the first year its caps are given for. A trade-in above the price is credited up to the price.
 * Source: MCL 205.51, Revenue Administrative Bulletin 2022-17 (caps by year); CDTFA Regulation 1654 (no credit).
 */
export const tradeInTax = <N extends number>(
  money: Arithmetic<N>,
  { price, tradeIn, taxRate, year }: TaxedPurchase<N>,
  credit: TradeInCredit,
): TradeInTax<N> => {
  noSign({ 'the price': price, 'the trade-in': tradeIn, 'the tax rate': taxRate });
  const whole = lesser(tradeIn, price);
  const taxed = (credited: N): N => money.times(atLeastNil(less(price, credited)), taxRate);
  const known = (credited: N): TradeInTax<N> => ({ status: 'known', tax: taxed(credited), credited });
  const unknown: TradeInTax<N> = { status: 'not known', least: taxed(whole), most: taxed(0 as N) };
  switch (credit.kind) {
    case 'full':
      return known(whole);
    case 'none':
      return known(0 as N);
    case 'no sales tax':
      return { status: 'known', tax: 0 as N, credited: 0 as N };
    case 'not known':
      return unknown;
    case 'capped': {
      const cap = capIn(credit, year);
      if (cap === null) return unknown;
      return known(cap === 'none' ? whole : lesser(whole, money.units(cap)));
    }
  }
};
