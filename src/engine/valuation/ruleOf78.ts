/**
 * The rule of 78, for comparison only: an older way of refunding interest on early payoff, dearer for the borrower
 * than the actuarial method that this program uses everywhere else (payoffAt). Amounts unrounded, in currency units.
 */

/** The part of a finance charge not yet earned with k of n payments still to come: F · k(k+1)/(n(n+1)). */
export const unearnedByRuleOf78 = (financeCharge: number, payments: number, remaining: number): number =>
  (financeCharge * remaining * (remaining + 1)) / (payments * (payments + 1));

/** What settles the loan after `paid` of `payments` level payments: those still to come less the unearned charge. */
export const payoffByRuleOf78 = (
  loan: { readonly amountFinanced: number; readonly payment: number; readonly payments: number },
  paid: number,
): number => {
  const financeCharge = loan.payment * loan.payments - loan.amountFinanced;
  const remaining = loan.payments - paid;
  return loan.payment * remaining - unearnedByRuleOf78(financeCharge, loan.payments, remaining);
};
