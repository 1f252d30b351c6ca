/** Who gets the money when a lender is named in the policy, what gap cover adds, and what the first day costs. */
import type { Cents } from '../../../quantity/money.ts';
import { atLeastNil, less, lesser, noSign, sum, turned } from './arithmetic.ts';

/** Gap cover: pays a lender what a total loss leaves owing. */
export interface GapCover<N extends number = Cents> {
  /** The most it pays; null: no such limit. */
  readonly limit: N | null;
  /** Of the debt, what it never pays: missed payments, late fees, a deductible it does not cover. */
  readonly excluded: N;
}

/** Every part positive. lender + owner + shop = payment; lender + refund + gap + stillOwed = what was owed. */
export interface Split<N extends number = Cents> {
  readonly payment: N;
  readonly owed: N;
  readonly lender: N;
  readonly owner: N;
  /** Of a cheque that may only be spent on the repair. */
  readonly shop: N;
  /** Of what was paid ahead and comes back, what goes to the lender: before gap cover pays anything. */
  readonly refund: N;
  /** From gap cover, to the lender. */
  readonly gap: N;
  /** The shortfall: the owner's to pay, though the vehicle is gone. */
  readonly stillOwed: N;
}

const checkedSplit = <N extends number>(payment: N, owed: N): void =>
  noSign({ 'the payment': payment, 'the balance of the loan': owed });

/**
 * A total loss with a lender as loss payee: the lender first, up to its balance; the owner the rest. Of what is short,
 * refunds of what was paid ahead come first, then gap cover, if any. Nothing owed: all the owner's. Exact; nothing is
 * rounded.
 * Source: loss-payable clause of auto policies, general insurance texts; gap cover: common practice, no source.
 */
export const splitTotalLoss = <N extends number>(
  payment: N,
  owed: N,
  cover: GapCover<N> | null,
  refunds: N = 0 as N,
): Split<N> => {
  checkedSplit(payment, owed);
  const lender = lesser(payment, owed);
  const refund = lesser(refunds, less(owed, lender));
  const short = less(less(owed, lender), refund);
  const covered = cover === null ? (0 as N) : atLeastNil(less(short, cover.excluded));
  const gap = cover === null || cover.limit === null ? covered : lesser(covered, cover.limit);
  return {
    payment,
    owed,
    lender,
    owner: less(payment, lender),
    shop: 0 as N,
    refund,
    gap,
    stillOwed: less(short, gap),
  };
};

/** What becomes of a cheque for a repair that names the lender too: to be asked before anything is planned. */
export type JointCheque = 'released to the owner' | 'only for the repair' | 'put to the loan';

/**
 * A repair's payment with a lender named on the cheque: released to the owner, paid over to the shop, or put to the
 * loan, up to its balance. Gap cover has no part in a repair, and the loan goes on with what is still owed.
 * Source: joint payment is common where a lender is loss payee; common practice, no source.
 */
export const splitRepair = <N extends number>(payment: N, owed: N, cheque: JointCheque): Split<N> => {
  checkedSplit(payment, owed);
  const lender = cheque === 'put to the loan' ? lesser(payment, owed) : (0 as N);
  const shop = cheque === 'only for the repair' ? payment : (0 as N);
  return {
    payment,
    owed,
    lender,
    owner: less(less(payment, lender), shop),
    shop,
    refund: 0 as N,
    gap: 0 as N,
    stillOwed: less(owed, lender),
  };
};

/** A line of the first day: cost positive, receipt negative. */
export type FirstDayLine<N extends number = Cents> = {
  readonly item:
    | 'insurer pays the owner'
    | 'insurer pays the lender'
    | 'insurer pays the shop'
    | 'gap cover pays the lender'
    | 'lender is paid'
    | 'shortfall is paid';
  readonly amount: N;
};

/**
 * The settlement as flows of month 0, lines of nothing left out. What the insurer pays is a receipt in full, whoever
 * gets it: the owner's and the lender's parts together are the payment, so a payment higher by x costs x less. What
 * reaches the lender, refunds among it, repays the loan, a cost of the same day (a refund itself is posted by its own
 * line); `payOff` says whether the shortfall falls due too, as it
 * does when the vehicle is gone, or the loan goes on. With gap cover, a payment higher by x lowers what the gap cover
 * pays by as much for as long as there is a shortfall, and the first day costs the same.
 */
export const firstDay = <N extends number>(split: Split<N>, payOff: boolean): readonly FirstDayLine<N>[] => {
  const lines: readonly FirstDayLine<N>[] = [
    { item: 'insurer pays the owner', amount: turned(split.owner) },
    { item: 'insurer pays the lender', amount: turned(split.lender) },
    { item: 'insurer pays the shop', amount: turned(split.shop) },
    { item: 'gap cover pays the lender', amount: turned(split.gap) },
    { item: 'lender is paid', amount: sum([split.lender, split.refund, split.gap]) },
    { item: 'shortfall is paid', amount: payOff ? split.stillOwed : (0 as N) },
  ];
  return lines.filter(({ amount }) => amount !== 0);
};
