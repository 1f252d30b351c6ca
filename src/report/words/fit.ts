/** Does it fit: the regular month of each way, beside today's and what is spare. */
import type { Decision, MonthlyFit } from '../../engine/answer/decision.ts';
import { counted, type Formats } from '../format.ts';

/** A month's money is said to this step; less than it is the same. */
const STEP = 5;

const whoOf = (d: Decision, { id }: MonthlyFit): string => {
  const side = d.options.find((one) => one.id === id)?.side;
  if (side === 'keep') return 'Kept';
  if (side === 'replace') return 'Handed on';
  return side === 'like' ? `With another ${d.facts.vehicleName}` : 'Without one';
};

/** ": $260 more than today", ", as today". */
const besideToday = ({ more }: MonthlyFit, format: Formats): string =>
  Math.abs(more) < STEP
    ? ', as today'
    : `: ${format.round(Math.abs(more), STEP)} ${more > 0 ? 'more' : 'less'} than today`;

const shortWords = (
  { more, short, months, savingsLast }: MonthlyFit,
  horizon: number,
  format: Formats,
): string => {
  if (short === null) return '';
  if (short === 0) return Math.abs(more) < STEP ? ', so it fits' : '. It fits';
  const how = months >= horizon ? 'for as long as we look' : `for ${counted(months, 'month')}`;
  const lack = `. It doesn't fit: ${format.round(short, STEP)} a month short of what is spare, ${how}`;
  if (savingsLast === null) return lack;
  if (savingsLast >= months) return `${lack}; savings carry that`;
  return savingsLast < 1
    ? `${lack}, and no savings are left to make up for it`
    : `${lack}; savings make up for it for ${counted(savingsLast, 'month')}`;
};

/** A month's big bills below this are not worth a word. */
const FELT = 25;

/** "; with big bills spread over the year about $425". */
const withBigBills = ({ regular, bigBills }: MonthlyFit, format: Formats): string =>
  bigBills < FELT
    ? ''
    : `; on average about ${format.round(regular + bigBills, STEP)} with the big bills that most months don't bring`;

/**
 * "Handed on, a regular month takes about $740, $397 of it the payment: $260 more than today. It doesn't fit: $110 a month
 * short of what is spare, for 66 months; savings make up for it for 11 months."
 */
const fitSentence = (d: Decision, fit: MonthlyFit, format: Formats): string => {
  const payment = fit.payment >= 1 ? `, ${format.money(Math.round(fit.payment))} of it the payment` : '';
  return `${whoOf(d, fit)}, a regular month takes about ${format.round(fit.regular, STEP)}${payment}${besideToday(fit, format)}${shortWords(fit, d.horizon, format)}${withBigBills(fit, format)}.`;
};

/** Of the best way of each side, and of the answer where it is neither; before any chance. */
export const fitSentences = (d: Decision, format: Formats): readonly string[] => {
  const ids = new Set([d.bestKeep, d.bestReplace, d.answer].flatMap((way) => way?.id ?? []));
  return [...ids].flatMap((id) => {
    const fit = d.fits.find((one) => one.id === id);
    return fit ? [fitSentence(d, fit, format)] : [];
  });
};
