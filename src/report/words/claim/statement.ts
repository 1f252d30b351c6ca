import type { FirstDayLine } from '../../../engine/cashflow/contracts/settlement/lossPayee.ts';
import type { StatementItem } from '../../../engine/cashflow/contracts/settlement/payment.ts';

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

/** Who hands what to whom on the day it is settled. */
export const firstDayWords: Readonly<Record<FirstDayLine['item'], string>> = {
  'insurer pays the owner': 'the insurer pays you',
  'insurer pays the lender': 'the insurer pays the lender',
  'insurer pays the shop': 'the insurer pays the shop',
  'gap cover pays the lender': 'gap cover pays the lender',
  'lender is paid': 'the loan goes down by',
  'shortfall is paid': 'still owed, and due from you',
};
