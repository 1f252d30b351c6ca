import type { BillAnswer } from '../engine/analysis/repairLimitView.ts';
import type { Facts } from '../engine/scenario/inputs/scenario.ts';
import { counted, type Formats } from './format.ts';
import { capital, listed } from './words/sentence.ts';
import {
  ALL_THE_SAME,
  LET_GO,
  limitSaid,
  SHOP_QUESTIONS,
  unsafeSentence,
  WHAT_COUNTS,
} from './words/walk.ts';

/** Stands wherever own hands are the answer. */
const AT_HOME =
  "At home the maker's procedure comes first: proper stands under a lifted vehicle, nothing on brakes, steering, fuel or airbags that you have not learnt to do. What is beyond you stays with the shop.";

/** "the gearbox"; what nobody named stays "any other repair". */
const part = (component: string): string => (component.startsWith('any ') ? component : `the ${component}`);

/** "$4,000 for parts, 9 hours of your own and the tow home". */
const ownWords = (
  { parts, hours, tow, days }: NonNullable<BillAnswer['ownHands']>,
  format: Formats,
): string =>
  listed([
    `${format.money(Math.round(parts))} for parts`,
    `${counted(Math.max(1, Math.round(hours)), 'hour')} of your own`,
    ...(days > 0 ? [`${counted(Math.round(days), 'day')} without it`] : []),
    ...(tow > 0 ? [`${format.money(Math.round(tow))} for a tow home`] : []),
  ]);

/** What each of the three comes to, the answer in capitals first. */
const verdict = (answer: BillAnswer, vehicle: string, format: Formats): string => {
  const { paying, amount, ownHands: own, limit } = answer;
  const besides = paying - amount;
  const days =
    besides < 0.5
      ? ''
      : `, ${format.money(Math.round(paying))} with ${format.money(Math.round(besides))} for days without it`;
  const shop = `the shop asks ${format.money(amount)} for ${part(answer.component)}${days}`;
  const most = limitSaid(limit, format);
  const held =
    most === 'none'
      ? `no bill for it is worth paying for ${vehicle}`
      : `the limit for ${vehicle} is about ${most} today`;
  const home = own && `own hands come to about ${format.round(own.costs, 5)} (${ownWords(own, format)})`;
  const both = [shop, home].filter((words) => words !== null).join('; ');
  const by = `about ${format.round(answer.by)} less`;
  switch (answer.answer) {
    case 'pay':
      return `PAY: ${held}. ${capital(both)}. Paying costs ${by} than letting it go.`;
    case 'own hands':
      return `OUR OWN HANDS: ${held}. ${capital(both)}. Bringing it home and mending it there costs ${by} than letting it go, and about ${format.round(paying - (own?.costs ?? 0))} less than the shop.`;
    case 'walk away':
      return `LET IT GO: ${held}. ${capital(both)}. Letting it go costs ${by} than mending it.`;
    case 'even':
      return `EVEN: ${held}. ${capital(both)}. Mending it and letting it go cost about the same.`;
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
    answer.answer === 'own hands' &&
      `${answer.ownHands?.tow === 0 ? 'If it cannot be driven home, a tow comes on top. ' : ''}${AT_HOME}`,
    answer.otherwiseLookingTwice &&
      'Looking twice as far ahead the answer is the other one, so it hangs on how long it is meant to last.',
    WHAT_COUNTS,
    `Before saying yes, ask: ${SHOP_QUESTIONS.join(' ')}`,
    'Information, not advice.',
  ];
  return lines.filter((line) => line !== false);
};
