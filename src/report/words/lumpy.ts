import type { LumpyWay } from '../../engine/analysis/chances.ts';
import type { Decision, LoanView, OptionResult } from '../../engine/answer/decision.ts';
import { type Formats, inWords, ofHundred, roundTo } from '../format.ts';
import { isPrivate } from '../privacy.ts';
import { capital } from './sentence.ts';

/** The lumpy ways by what they are on the page; null where a way is not open. */
export interface LumpyWays {
  readonly keep: LumpyWay | null;
  readonly replace: LumpyWay | null;
  readonly walk: LumpyWay | null;
}

/** Drawn futures may find another way cheapest on average than the ledger does, so each is known by its side. */
export const lumpyWays = (d: Decision): LumpyWays => {
  const find = (side: OptionResult['side']): LumpyWay | null =>
    d.chances?.lumpy.find((w) => optionOf(d, w.id)?.side === side) ?? null;
  const walk = d.chances?.lumpy.find((w) => w.id === 'right-to-walk') ?? null;
  return { keep: find('keep'), replace: find('replace'), walk };
};

export const optionOf = (d: Decision, id: string | undefined): OptionResult | null =>
  d.options.find((o) => o.id === id) ?? null;

/** A chance given without an error, as ways out of a hundred. */
const plainly = (chance: number): string => ofHundred({ value: chance, error: 0 });

/** "if kept", "if handed on", with what each has; ways that are not open are left out. */
export const each = (
  { keep, replace }: Pick<LumpyWays, 'keep' | 'replace'>,
  words: (w: LumpyWay) => string,
): readonly string[] =>
  [keep && `${words(keep)} if kept`, replace && `${words(replace)} if handed on`].filter((s) => s !== null);

/** What is in the fund is known, and may be told. */
export const fundShown = (d: Decision, way: LumpyWay): boolean =>
  way.fund.start !== null && way.fund.dry.length > 0 && !isPrivate(d.facts, 'savings_for_this');

/** What is put by each month may be told. */
export const setAsideShown = (d: Decision): boolean =>
  !isPrivate(d.facts, 'spare_each_month') && !isPrivate(d.facts, 'chance.set_aside_each_month');

export const everDry = (way: LumpyWay): number => way.fund.dry.at(-1)?.chance ?? 0;

/** The fund to hold back, no finer than its error. */
const fundNeeded = ({ fund }: LumpyWay, format: Formats): string =>
  fund.needed.value < 0.5 ? 'nothing' : `about ${format.about(fund.needed)}`;

/** "5 of 100": the chance that the fund may run dry with. */
export const levelWords = (d: Decision): string => `${roundTo(d.facts.chance.mayRunDry * 100, 0.1)} of 100`;

/** How many payments a bill is, as people count them: "six payments", "less than one payment". */
export const paymentsWords = (payments: number): string => {
  const whole = Math.round(payments);
  if (payments < 0.75) return 'less than one payment';
  return `${inWords(whole)} ${whole === 1 ? 'payment' : 'payments'}`;
};

/** "$1,800 if kept (eight payments not made)"; without payments to count in, the bill alone. */
export const worstBillWords = ({ worstBill }: LumpyWay, format: Formats, where: string): string => {
  if (worstBill.bad < 0.5) return `none ${where}`;
  const payments = worstBill.payments === null ? '' : ` (${paymentsWords(worstBill.payments)} not made)`;
  return `${format.round(worstBill.bad)} ${where}${payments}`;
};

/** Which way can run the fund dry and how likely; null where nobody knows what is in it. */
export const drySentence = (d: Decision): string | null => {
  const { keep, replace } = lumpyWays(d);
  const shown = [keep, replace].filter((w) => w !== null && fundShown(d, w)) as readonly LumpyWay[];
  if (shown.length === 0) return null;
  const said = (w: LumpyWay, i: number): string =>
    `${plainly(everDry(w))}${i === 0 ? ' ways it could go' : ''} ${w === keep ? 'if kept' : 'if handed on'}`;
  const risky = shown.filter((w) => everDry(w) > d.facts.chance.mayRunDry);
  const chances = `${shown.map(said).join(', ')}`;
  if (risky.length === 0)
    return `What is put by carries ${shown.length > 1 ? 'either way' : 'it'}: the fund runs dry in ${chances}.`;
  const often = `runs the fund dry in more than ${levelWords(d)}`;
  const who =
    shown.length === 1
      ? 'It can run the fund dry'
      : risky.length === 2
        ? 'Either way can run the fund dry'
        : risky[0] === keep
          ? `Keeping it ${often}, handing it on doesn't`
          : `Handing it on ${often}, keeping it doesn't`;
  return `${who}: in ${chances}.`;
};

/** How much to hold back so that the fund lasts, for each way. */
const holdBack = (d: Decision, format: Formats): string =>
  `${each(lumpyWays(d), (w) => fundNeeded(w, format)).join(', ')}`;

/** "Hold back about $2,800 if kept, about $1,500 if handed on." */
export const holdBackSentence = (d: Decision, format: Formats): string =>
  `${capital(`hold back ${holdBack(d, format)}`)}, after what the first day takes${putByWords(d, format)}: then it runs dry in at most ${levelWords(d)}.`;

/** ", with $300 put by each month": what goes in, where it may be told; and where nobody said, what stands in for it. */
const putByWords = (d: Decision, format: Formats): string => {
  const { keep } = lumpyWays(d);
  if (!keep || !setAsideShown(d)) return '';
  const amount = format.round(Math.max(0, keep.fund.aMonth));
  return d.facts.chance.setAside === null
    ? `, with ${amount} put by each month (nobody said, so what repairs and upkeep come to if kept)`
    : `, with ${amount} put by each month`;
};

/** Both in a line or two, for the terminal: the bad-case bill in payments, and the fund to hold back; null undrawn. */
export const lumpyLine = (d: Decision, format: Formats): string | null => {
  const { keep } = lumpyWays(d);
  if (!keep) return null;
  return `Bad-case bill within two years: ${worstBillWords(keep, format, 'if kept')}. ${holdBackSentence(d, format)}`;
};

/** What it costs to be out of a loan after so many months: owed less what it would bring; below nil, that is left over. */
export const wayOut = (loan: LoanView): readonly { readonly month: number; readonly toPay: number }[] =>
  loan.balance.map((b) => ({ month: b.month, toPay: (b.owed - b.value) / 100 }));

/** "$900 to pay in", "$300 left over". */
export const wayOutWords = (toPay: number, money: (units: number) => string): string =>
  toPay > 0 ? `${money(toPay)} to pay in` : `${money(-toPay)} left over`;
