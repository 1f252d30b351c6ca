import type { StatementItem } from '../../../engine/cashflow/contracts/settlement/insurerPayment.ts';
import type { Split } from '../../../engine/cashflow/contracts/settlement/lossPayee.ts';
import type { Cents } from '../../../engine/quantity/money.ts';

/** The lines of an offer in words anyone has. */
export const itemWords: Readonly<Record<StatementItem, string>> = {
  repair: 'the repair, by the estimate',
  'tax on the repair': 'sales tax on the repair',
  value: 'what the insurer says it was worth that day',
  'damage from before': 'damage it had before',
  'tax on the value': 'sales tax on what it was worth',
  'fees of the papers': 'fees of the papers',
  'beyond the value': 'what the repair costs beyond its worth',
  betterment: "the part they won't pay because it's newer than yours",
  deductible: 'your share of the bill',
  'salvage kept': "the wreck's value, as you keep it",
  'not below nil': 'written off: no payment is below nil',
  damage: 'the damage',
  'lost market value': 'what buyers pay less for it from now on',
  'loss of use': 'the days without it',
  'tow and storage': 'tow and storage',
  'own share of the fault': 'your share of the fault',
  'beyond the limit': "beyond the other policy's limit",
};

/** Who gets the payment, and what stays owed, where a lender is named; nothing to say without one. */
export const splitWords = (split: Split | null): readonly (readonly [string, Cents])[] => {
  if (split === null || split.owed === 0) return [];
  const all: readonly (readonly [string, Cents])[] = [
    ['of it to the lender', split.lender],
    ['of it to the shop', split.shop],
    ['of it to you', split.owner],
    ['what was paid ahead and comes back, to the lender', split.refund],
    ['gap cover pays the lender', split.gap],
    ['still owed to the lender', split.stillOwed],
  ];
  return all.filter(([words, amount]) => amount !== 0 || words === 'still owed to the lender');
};
