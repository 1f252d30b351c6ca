import type { CourseView } from '../../../engine/decision/claim/view.ts';
import type { Decision } from '../../../engine/decision/decision.ts';
import type { ClaimFacts, Payer } from '../../../engine/scenario/claim.ts';
import { type Formats, span } from '../../format.ts';

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What is had on the day, never with a bare minus: "$4,310", "$500 to pay". */
export const inHandWords = (cents: number, format: Formats): string =>
  cents >= 0 ? format.money(Math.round(cents / 100)) : `${format.money(Math.round(-cents / 100))} to pay`;

const PAYER: Readonly<Record<Payer, string>> = {
  own: 'Your own insurer pays, less your share of the bill',
  other: "The other side's insurer pays, with no share of the bill for you",
  nobody: "Nobody's insurer pays",
};

/** Whose insurer pays comes first: everything else hangs on it. */
export const payerSentence = ({ pays, insurer }: ClaimFacts): string =>
  `${PAYER[pays]}${insurer === '' || pays === 'nobody' ? '' : ` (${insurer})`}.`;

/** Cheapest first, as everywhere on the page. */
export const coursesCheapestFirst = (d: Decision): readonly CourseView[] =>
  (d.claim?.courses ?? []).toSorted((a, b) => a.cost.counted - b.cost.counted || (a.id < b.id ? -1 : 1));

/** Which way with the money costs least, and what it puts in hand; null where none is open. */
export const moneySentence = (d: Decision, format: Formats): string | null => {
  const [best] = coursesCheapestFirst(d);
  if (!best) return null;
  return `${best.label} costs least: about ${format.round(best.cost.counted / 100)} over ${span(d.horizon)}, in today's money, with ${inHandWords(best.inHand, format)}${best.inHand >= 0 ? ' in hand' : ''} the day it is settled.`;
};

/** "3 ways with it are closed"; '' where none is. */
export const closedCount = (d: Decision): string => {
  const count = d.claim?.closed.length ?? 0;
  return count === 0
    ? ''
    : ` ${count} ${count === 1 ? 'way with it is' : 'ways with it are'} closed to you; why stands below.`;
};

/** The finding of the picture: most in hand is seldom least in cost. */
export const handAgainstCost = (courses: readonly CourseView[]): string => {
  const [best] = courses;
  const most = courses.toSorted((a, b) => b.inHand - a.inHand)[0];
  if (!best || !most) return 'No way is open.';
  return most.inHand === best.inHand
    ? `${best.label} costs least, and nothing puts more in hand that day.`
    : `${most.label} puts the most in hand that day; ${small(best.label)} costs least.`;
};

/** The line for a terminal, where there was a collision. */
export const claimLine = (d: Decision, format: Formats): string | null => {
  const said = moneySentence(d, format);
  return said && `After the collision: ${small(said)}`;
};
