import type { CourseView } from '../../../engine/analysis/collisionViews.ts';
import type { ClosedWay, Decision } from '../../../engine/answer/decision.ts';
import type { ClaimFacts, Payer } from '../../../engine/scenario/inputs/claim.ts';
import { day, type Formats, inWords, span } from '../../format.ts';
import { capital } from '../sentence.ts';

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What is had on the day, never with a bare minus: "$4,310", "$500 to pay". */
export const inHandWords = (cents: number, format: Formats): string =>
  cents >= 0 ? format.money(Math.round(cents / 100)) : `${format.money(Math.round(-cents / 100))} to pay`;

const PAYER: Readonly<Record<Payer, string>> = {
  own: 'Your own insurer pays, less your share of the bill',
  other: "The other side's insurer pays, with no share of the bill for you",
  nobody: "Nobody's insurer pays",
};

/** What happened, and when. */
export const happenedSentence = ({ what, happened }: ClaimFacts): string =>
  what === '' ? '' : `${capital(what.replace(/\.$/, ''))}${happened === '' ? '' : `, on ${day(happened)}`}.`;

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
  return `Cheapest: ${small(best.label)}. That costs about ${format.round(best.cost.counted / 100)} over ${span(d.horizon)}, in today's money, ${inHandAfter(best, format)} the day it is settled.`;
};

const inHandAfter = ({ inHand }: CourseView, format: Formats): string =>
  `with ${inHandWords(inHand, format)}${inHand >= 0 ? ' in hand' : ''}`;

/** Each way with the money by the cheapest that may follow on it, and what else may follow. */
export const bestOfEach = (
  courses: readonly CourseView[],
): { readonly best: readonly CourseView[]; readonly others: readonly CourseView[] } => {
  const way = ({ id }: CourseView): string => id.split('/').slice(0, 2).join('/');
  const seen = new Set<string>();
  const best = courses.filter((course) => !seen.has(way(course)) && seen.add(way(course)));
  return { best, others: courses.filter((course) => !best.includes(course)) };
};

/** The closed ways, those with one reason together. */
export const closedByReason = (
  closed: readonly ClosedWay[],
): readonly { readonly why: string; readonly labels: readonly string[] }[] => {
  const reasons = new Map<string, string[]>();
  for (const { label, why } of closed) reasons.set(why, [...(reasons.get(why) ?? []), label]);
  return [...reasons].map(([why, labels]) => ({ why, labels }));
};

/** "3 ways with it are closed to you"; '' where none is. */
export const closedCount = (d: Decision): string => {
  const count = d.claim?.closed.length ?? 0;
  return count === 0
    ? ''
    : ` ${capital(inWords(count))} ${count === 1 ? 'way is' : 'ways are'} closed to you.`;
};

/** The finding of the picture: most in hand is seldom least in cost. */
export const handAgainstCost = (courses: readonly CourseView[]): string => {
  const [best] = courses;
  const most = courses.toSorted((a, b) => b.inHand - a.inHand)[0];
  if (!best || !most) return 'No way is open.';
  return most.inHand === best.inHand
    ? `Cheapest, and most in hand that day: ${small(best.label)}.`
    : `Most in hand that day: ${small(most.label)}. Cheapest in the end: ${small(best.label)}.`;
};

/** The line for a terminal, where there was a collision. */
export const claimLine = (d: Decision, format: Formats): string | null => {
  const [best] = coursesCheapestFirst(d);
  return best
    ? `Cheapest after the collision: ${small(best.label)}, ${inHandAfter(best, format)} the day it is settled.${closedCount(d)}`
    : null;
};
