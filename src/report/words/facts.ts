import { nearestTip } from '../../engine/analysis/breakEven.ts';
import { HALF } from '../../engine/analysis/relativeDistance.ts';
import type { Decision, Notice, OptionResult } from '../../engine/answer/decision.ts';
import { type Cents, NIL } from '../../engine/quantity/money.ts';
import { type Formats, formatsFor, inWords, number, saidDates } from '../format.ts';
import { isPrivate } from '../privacy.ts';
import { tipAt, tipsNearestFirst, tipWords } from './tipping.ts';

/** What the decision has to say at one place of the page. */
export const noticesAt = (d: Decision, place: Notice['place']): readonly string[] =>
  d.notices.filter((n) => n.place === place).map((n) => saidDates(costed(n, d)));

/** The notice with what the work it names costs, before its full stop. */
const costed = ({ text, cost }: Notice, d: Decision): string =>
  cost === null || cost === 0
    ? text
    : text.replace(/\.$/, ` (${formatsFor(d.facts).money(Math.round(cost / 100))}).`);

/** What must be said above the money. Where nobody wrote it out, what is known of the vehicle says it. */
export const safetyFirst = (d: Decision): readonly string[] => {
  const said = noticesAt(d, 'first');
  if (said.length > 0) return said;
  if (d.facts.recallStop) return ['An open recall says not to drive it: call the maker; the remedy is free.'];
  return d.facts.mayBeDriven === false ? ['It is not to be driven as it stands.'] : [];
};

/** "3 of 21 numbers decide this; one is a guess." */
export const decidingSentence = (d: Decision): string => {
  const { count, guesses, of } = d.verdict.deciding;
  if (count === 0) return `None of ${number(of)} numbers decides this alone.`;
  const which =
    guesses === 0 ? 'none is a guess' : guesses === 1 ? 'one is a guess' : `${inWords(guesses)} are guesses`;
  return `${number(count)} of ${number(of)} numbers ${count === 1 ? 'decides' : 'decide'} this; ${which}.`;
};

/** Savings after a way, never with a bare minus: "$1,100", "none, $400 borrowed". */
export const savingsWords = (left: Cents, format: Formats): string =>
  left >= 0 ? format.round(left / 100) : `none, ${format.round(-left / 100)} borrowed`;

/**
 * Savings the day after, and how low they get within three months where that is lower: a price is paid weeks after it is
 * agreed.
 */
export const savingsLeftWords = (
  { savingsAfter, savingsLowest }: Pick<OptionResult, 'savingsAfter' | 'savingsLowest'>,
  format: Formats,
): string => {
  const [after, lowest] = [savingsWords(savingsAfter, format), savingsWords(savingsLowest, format)];
  return after === lowest ? after : `${after} (at the lowest in three months: ${lowest})`;
};

/** Whether the page may and can speak of savings: they were given, and are not private. */
export const savingsShown = (d: Decision): boolean =>
  !isPrivate(d.facts, 'savings_for_this') &&
  d.quantities.some((q) => q.key === 'household.savings' && !q.isDefault);

/** "Savings left the day after: $1,100 or none, …"; null when savings are private or no way is open. */
export const savingsSentence = (d: Decision, format: Formats): string | null => {
  if (!savingsShown(d)) return null;
  const each = [
    d.bestKeep && `${savingsLeftWords(d.bestKeep, format)} if kept`,
    d.bestReplace && `${savingsLeftWords(d.bestReplace, format)} if handed on`,
  ].filter((s) => s !== null);
  return each.length === 0 ? null : `Savings left the day after: ${each.join('; ')}.`;
};

/** "What would tip it first: …"; says so where nothing does. */
export const tipSentence = (d: Decision, format: Formats): string | null => {
  if (!d.difference) return null;
  const [first] = tipsNearestFirst(d);
  if (!first) return 'No single number tips it anywhere in its range.';
  // What would have to be two or three times what it is tips nothing that anybody need look into.
  return nearestTip(first) > HALF
    ? `Nothing near today's numbers tips it; the nearest would be ${tipWords(first, format)}.`
    : `What would tip it first: ${tipWords(first, format)}.`;
};

export const notMoneySentence = (d: Decision): string | null =>
  d.facts.notMoney.length === 0
    ? null
    : `Not counted: ${d.facts.notMoney.map((text) => text.trim().replace(/[.;]$/, '')).join('; ')}.`;

/** What one's own time does to the answer; null where no own hours are at stake. */
export const ownHoursSentence = (d: Decision, format: Formats): string | null => {
  if (!d.bestKeep || !d.bestReplace || d.bestKeep.hours.total + d.bestReplace.hours.total === 0) return null;
  const priced = d.facts.hoursPriced ? '' : 'Own hours count as nothing here. ';
  if (d.ownHourTips === null) return `${priced}At no price of an own hour does the answer tip.`;
  const hour = d.breakEvens.find(({ quantity }) => quantity.key === 'household.priceOfOwnHour')?.quantity;
  const at = hour ? tipAt(hour, d.ownHourTips, format) : format.round(d.ownHourTips);
  // Nobody goes on working at a price at which a shop is cheaper.
  const shop = d.difference && d.difference.shop > 0 === d.difference.counted > 0;
  const then = shop
    ? `; but long before that a shop would do it, and with a shop for everything ${differenceWords(d.difference?.shop ?? NIL, format)}`
    : '';
  return `${priced}It tips when an own hour is worth about ${at}${then}.`;
};

/** Cash on the day, never with a bare minus: "$1,380", "$900 comes in". */
export const cashWords = (cash: Cents, format: Formats): string =>
  cash >= 0 ? format.money(Math.round(cash / 100)) : `${format.money(Math.round(-cash / 100))} comes in`;

/** "keeping costs about $4,200 less", for a signed difference in cents. */
export const differenceWords = (difference: Cents, format: Formats): string => {
  if (difference === 0) return 'both cost the same';
  return `${difference > 0 ? 'keeping' : 'replacing'} costs about ${format.round(Math.abs(difference) / 100)} less`;
};

/** What is already spent, which no way can get back. */
export const sunkSentence = (d: Decision, format: Formats): string | null => {
  if (d.sunk.spent === 0) return null;
  const back =
    d.sunk.returns === 0 ? '' : ` Returned, it would bring back ${format.money(d.sunk.returns / 100)}.`;
  return `Already spent, doesn't count: ${format.money(d.sunk.spent / 100)}.${back}`;
};
