/** Sales tax on the next vehicle where one is traded in. */
import type { Cents } from '../../../quantity/money.ts';
import { mostCredited, type TradeInCredit } from '../../../scenario/places/placeRule.ts';
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
  if (credit.kind === 'no sales tax') return { status: 'known', tax: 0 as N, credited: 0 as N };
  const most = mostCredited(credit, year);
  if (most === null) return { status: 'not known', least: taxed(whole), most: taxed(0 as N) };
  const credited = most === Number.POSITIVE_INFINITY ? whole : lesser(whole, money.units(most));
  return { status: 'known', tax: taxed(credited), credited };
};
