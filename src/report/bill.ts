import type { BillAnswer } from '../engine/analysis/repairLimitView.ts';
import type { Facts } from '../engine/scenario/inputs/scenario.ts';
import type { Formats } from './format.ts';
import {
  ALL_THE_SAME,
  LET_GO,
  limitSaid,
  SHOP_QUESTIONS,
  unsafeSentence,
  WHAT_COUNTS,
} from './words/walk.ts';

/** "the gearbox"; what nobody named stays "any other repair". */
const part = (component: string): string => (component.startsWith('any ') ? component : `the ${component}`);

const verdict = (answer: BillAnswer, vehicle: string, format: Formats): string => {
  const besides = answer.paying - answer.amount;
  const all =
    besides < 0.5
      ? ''
      : `, or ${format.money(Math.round(answer.paying))} in all with ${format.money(Math.round(besides))} for days without it,`;
  const bill = `A bill of ${format.money(answer.amount)} for ${part(answer.component)}${all}`;
  const most = limitSaid(answer.limit, format);
  const limit =
    most === 'none' ? 'no bill for it is worth paying' : `the biggest worth paying today is about ${most}`;
  switch (answer.answer) {
    case 'pay':
      return `Pay. ${bill} is worth paying for ${vehicle}: ${limit}. Paying costs about ${format.round(answer.by)} less than walking away.`;
    case 'walk away':
      return `Walk away. ${bill} is too big for ${vehicle}: ${limit}. Walking away costs about ${format.round(answer.by)} less than paying.`;
    case 'even':
      return `Even. ${bill} is as much as it is worth paying for ${vehicle}: ${limit}. Either way costs about the same.`;
  }
};

/**
 * The answer to a shop's phone call, a line each: what is unsafe first, then pay or walk away and by how much with
 * what is counted beside the bill, whether looking further ahead turns it, and what to ask before saying yes. Money in currency units.
 */
export const billLines = (answer: BillAnswer, facts: Facts, format: Formats): readonly string[] => {
  const vehicle = `the ${facts.vehicleName}`;
  const lines: readonly (string | false)[] = [
    answer.unsafe && unsafeSentence([part(answer.component)]),
    answer.letGoToday && `${LET_GO} ${ALL_THE_SAME}:`,
    verdict(answer, vehicle, format),
    answer.otherwiseLookingTwice &&
      'Looking twice as far ahead the answer is the other one, so it hangs on how long it is meant to last.',
    WHAT_COUNTS,
    `Before saying yes, ask: ${SHOP_QUESTIONS.join(' ')}`,
    'Information, not advice.',
  ];
  return lines.filter((line) => line !== false);
};
