import type { Fee } from '../../scenario/inputs/inputs.ts';
import type { LineOf } from '../lines.ts';
import { type Contract, postMoney } from '../posting.ts';

/** The terms of buying a vehicle, in currency units at the prices of the month it is bought. */
export interface PurchaseTerms {
  readonly price: number;
  readonly salesTax: number;
  /** At most so much of the trade-in lowers what is taxed; 0: none of it; null: all of it. */
  readonly tradeInCredit: number | null;
  readonly rebate: number;
  readonly extras: readonly Fee[];
  /** Given for the present vehicle against this purchase; 0 when it goes another way. Posted by the sale, not here. */
  readonly tradeIn: number;
  /** Of a present loan's payoff, what is rolled into the new loan. */
  readonly payoffRolledIn: number;
  /** Null: paid in cash. */
  readonly loan: { readonly downPayment: number } | null;
}

/** What follows from the terms. Every amount positive. */
export interface PurchaseFigures {
  readonly tax: number;
  /** Amount borrowed: price + tax + financed extras + payoff rolled in - rebate - cash down - trade-in, at least 0. */
  readonly advance: number;
  /** Finance charges among the financed extras: prepaid, so not part of the amount financed by Regulation Z. */
  readonly prepaidFinanceCharge: number;
}

/** What of the trade-in lowers what is taxed. */
const creditOf = ({ tradeIn, tradeInCredit }: PurchaseTerms): number =>
  tradeInCredit === null ? tradeIn : Math.min(tradeIn, tradeInCredit);

/**
 * Tax and loan of a purchase. A trade-in lowers the loan once, is no part of the cash down, and lowers only the tax
 * where the place allows. The rebate comes after tax (common practice, no source).
 */
export const purchaseFigures = (terms: PurchaseTerms): PurchaseFigures => {
  const taxed = Math.max(0, terms.price - creditOf(terms));
  const tax = terms.salesTax * taxed;
  let rolledIn = 0;
  let prepaidFinanceCharge = 0;
  for (const { amount, financed, financeCharge } of terms.extras) {
    if (financed) rolledIn += amount;
    if (financeCharge) prepaidFinanceCharge += amount;
  }
  const advance = terms.loan
    ? terms.price +
      tax +
      rolledIn +
      terms.payoffRolledIn -
      terms.rebate -
      terms.loan.downPayment -
      terms.tradeIn
    : 0;
  return {
    tax,
    advance: Math.max(0, advance),
    prepaidFinanceCharge,
  };
};

/** Buying a vehicle in `month`: price + tax + fees - rebate - loan advance. The sale of the old one is its own contract. */
export const purchase =
  (line: LineOf, terms: PurchaseTerms, month: number): Contract =>
  (sink) => {
    const { tax, advance } = purchaseFigures(terms);
    const post = (what: string, at: string, reason: string, amount: number): void => {
      if (amount !== 0) postMoney(sink, line('buying', what, at, reason), month, amount);
    };
    post('price', 'price', 'paid on the day it is bought', terms.price);
    post(
      'sales tax',
      'sales_tax',
      terms.tradeInCredit === 0
        ? 'on the price'
        : terms.tradeInCredit === null || terms.tradeInCredit >= terms.tradeIn
          ? 'on the price less the trade-in'
          : 'on the price less part of the trade-in',
      tax,
    );
    for (const extra of terms.extras)
      post(extra.name, 'fees', extra.financed ? 'part of the loan' : 'paid in cash', extra.amount);
    post('rebate', 'rebate', 'taken off the price', -terms.rebate);
    if (advance > 0) {
      const borrowed = line('buying', 'borrowed', 'loan', 'the lender pays this part on the day');
      postMoney(sink, borrowed, month, -advance);
    }
  };
