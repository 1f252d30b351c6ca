import type { Estimate } from '../../engine/analysis/chances.ts';
import type { ComponentLimit, WalkAway } from '../../engine/analysis/repairLimitView.ts';
import type { Decision } from '../../engine/answer/decision.ts';
import { type Formats, span, stepOf } from '../format.ts';
import { capital } from './sentence.ts';

/** Named parts, the dearest bill first, then whatever nobody named. */
export const dearestFirst = (w: WalkAway): readonly ComponentLimit[] =>
  w.components.toSorted(
    (a, b) =>
      Number(a.position === null) - Number(b.position === null) ||
      b.usualBill - a.usualBill ||
      (a.position ?? 0) - (b.position ?? 0),
  );

/** The part the first sentence is about: the one with the dearest bill. */
export const mainComponent = (w: WalkAway): ComponentLimit | null => dearestFirst(w)[0] ?? null;

/** A part inside a sentence: "the gearbox"; what nobody named is "any other repair" beside named ones. */
export const partName = (c: ComponentLimit, w: WalkAway): string =>
  c.position !== null
    ? `the ${c.component}`
    : w.components.some((other) => other.position !== null)
      ? 'any other repair'
      : 'any repair';

/** Too small to be worth a visit: no bill is worth paying. */
const NOTHING = 5;

/** A limit is said to half of what prose is known to: $1,450, not $1,400 or $1,500; "none" where it is nil. */
export const limitSaid = (limit: number, format: Formats): string =>
  limit < NOTHING ? 'none' : format.round(limit, Math.max(5, stepOf(limit) / 2));

/** The months a limit is said for: today, a year from now, two years from now. */
export const SAID_AT = [0, 12, 24] as const;

/** The limit of a bill that comes in a month, today's (0) being the one a bill is held against. */
export const limitWords = (c: ComponentLimit, month: number, format: Formats): string =>
  limitSaid(c.byMonth.find((p) => p.month === month)?.limit ?? 0, format);

/** What a limit is held against. Stands wherever one does. */
export const WHAT_COUNTS =
  'Parts, labour, own hours and the days without it count as the bill; the tow and the diagnosis, owed either way, do not.';

/** "Pay up to about $1,450 for the gearbox today, $1,100 a year from now; above that, walk away." */
export const payUpTo = (c: ComponentLimit, w: WalkAway, format: Formats): string => {
  const [now, next] = [limitWords(c, 0, format), limitWords(c, 12, format)];
  const what = partName(c, w);
  if (now === 'none')
    return next === 'none'
      ? `No bill for ${what} is worth paying, today or a year from now: walk away.`
      : `No bill for ${what} is worth paying today; a year from now pay up to about ${next}.`;
  if (next === 'none')
    return `Pay up to about ${now} for ${what} today; above that, and for any bill a year from now, walk away.`;
  return now === next
    ? `Pay up to about ${now} for ${what}, today or a year from now; above that, walk away.`
    : `Pay up to about ${now} for ${what} today, ${next} a year from now; above that, walk away.`;
};

/** "Today it is $2,300 for the timing chain and $2,050 for the alternator and the brake lines." */
export const todaySentence = (of: readonly ComponentLimit[], w: WalkAway, format: Formats): string | null => {
  const each = of.map((c) => {
    const amount = limitWords(c, 0, format);
    return { amount: amount === 'none' ? 'nothing' : amount, name: partName(c, w) };
  });
  return each.length === 0 ? null : `Today it is ${grouped(each)}.`;
};

/** "a, b or c". */
const either = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

/** Whether the usual bill for a part is worth paying: always, never, until or from about a month, or now and then. */
const usualWorth = (c: ComponentLimit): string => {
  const worth = c.byMonth.map((p) => p.limit >= c.usualBill);
  const turns = worth.flatMap((now, i) => (i > 0 && now !== worth[i - 1] ? [i] : []));
  const [turn] = turns;
  if (turn === undefined) return worth[0] ? 'is worth paying' : 'is too big to be worth paying';
  if (turns.length > 1) return 'is worth paying in some months and not in others';
  const month = c.byMonth[turn]?.month ?? 0;
  return worth[0]
    ? `is worth paying until about month ${month}`
    : `is worth paying from about month ${month} on`;
};

/** "The usual bill is worth paying for the alternator; for the gearbox it is worth paying until about month 12." */
export const usualSentence = (of: readonly ComponentLimit[], w: WalkAway): string => {
  const kinds = [...new Set(of.map(usualWorth))];
  const each = kinds.map((kind) => {
    const names = of.filter((c) => usualWorth(c) === kind).map((c) => partName(c, w));
    return `for ${either(names)} it ${kind}`;
  });
  return `The usual bill: ${each.join('; ')}.`;
};

/** Handing it on today is the answer, or no dearer than keeping it: a limit is for whoever keeps it all the same. */
export const letGoToday = (d: Decision): boolean =>
  d.verdict.cheaper === 'replace' || (d.chances?.rule?.today ?? d.walkAway?.letGoToday ?? false);

/** Said of such a vehicle wherever a limit of it stands. */
export const LET_GO = 'Handing it on today already costs no more, on average, than keeping it.';

/** Stands before a limit where handing it on today is the answer. */
export const ALL_THE_SAME = 'If it is kept all the same';

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** The first sentence of the chapter, where there is a limit to say. */
export const payUpToSentence = (d: Decision, format: Formats): string | null => {
  const w = d.walkAway;
  const main = w && mainComponent(w);
  if (!w || !main) return null;
  const words = payUpTo(main, w, format);
  return letGoToday(d) ? `${ALL_THE_SAME}, ${lower(words)}` : words;
};

/**
 * What bounds it, where another one like ours is what would be got instead: "Another 2009 wagon, running, would cost about
 * $6,300 with all that finding one takes, and ours broken down brings $850." Null elsewhere, and where nothing is paid.
 */
export const whyThatMuch = (d: Decision, format: Formats): string | null => {
  const w = d.walkAway;
  const main = w && mainComponent(w);
  if (!w?.likeOurs || !main || limitWords(main, 0, format) === 'none') return null;
  const { name, costs, brings } = w.likeOurs;
  const limit = main.byMonth[0]?.limit ?? 0;
  const apart = limit - (costs - brings);
  const instead = `${capital(name)}, running, would cost about ${format.round(costs)} with all that finding one in a hurry takes, and ours broken down brings about ${format.round(Math.max(0, brings))}`;
  if (Math.abs(apart) < Math.max(1, 0.05 * limit)) return `${instead}: the difference is the limit.`;
  return apart > 0
    ? `${instead}; the rest, about ${format.round(apart)}, is what ours, once mended, costs less than that one over ${span(w.horizon)}.`
    : `${instead}; from that goes about ${format.round(-apart)}, which ours, even mended, costs more than that one over ${span(w.horizon)}.`;
};

/** "about $2,450 for the gearbox or the particle filter", looking twice as far, where the limit hangs on that. */
export const lookingTwice = (w: WalkAway, format: Formats): string | null => {
  const of = dearestFirst(w).flatMap((c) => {
    const twice = c.hangsOnHorizon ? (c.byMonth[0]?.lookingTwice ?? null) : null;
    return twice === null ? [] : [{ amount: limitSaid(twice, format), name: partName(c, w) }];
  });
  return of.length === 0 ? null : grouped(of, 'about ');
};

/** Names that share an amount, said together. */
const grouped = (of: readonly { readonly amount: string; readonly name: string }[], before = ''): string =>
  [...new Set(of.map(({ amount }) => amount))]
    .map(
      (amount) =>
        `${before}${amount} for ${either(of.filter((o) => o.amount === amount).map((o) => o.name))}`,
    )
    .join('; ');

/** How much less or more the rule costs than another way; null where that can't be told, within two errors of nil. */
export const savesWords = ({ value, error }: Estimate, format: Formats): string | null => {
  if (error < 0.5 && Math.abs(value) < 0.5) return 'the same';
  if (Math.abs(value) <= 2 * error) return null;
  return `about ${format.about({ value: Math.abs(value), error })} ${value > 0 ? 'less' : 'more'}`;
};

/** What to ask the shop before saying yes. */
export const SHOP_QUESTIONS: readonly string[] = [
  'Is the diagnosis included in this price?',
  'What else did you see?',
  'Is it safe to drive as it is?',
  'What guarantee is there on parts and labour?',
  'How long will it take?',
  'May I have that in writing?',
];

/** Stands wherever a limit does, if a failure makes it unsafe. */
export const unsafeSentence = (parts: readonly string[]): string =>
  `Safety is never traded: with ${parts.join(' or ')} failed it is not driven until that is mended, whatever the bill. The figure only says whether to mend or to hand it on.`;
