import { toCents } from '../../quantity/money.ts';
import { roundedCents } from '../inputs/cents.ts';
import * as CLAIM from '../inputs/claimInputs.ts';
import { asYesNo } from '../schema/fields.ts';
import type { Finding, Path } from '../text/problems.ts';
import type { Raw } from './rawView.ts';

const LINES: Path = ['claim', 'estimate', 'lines'];
const TOTAL: Path = ['claim', 'estimate', 'total'];

/** The line in cents, each rounded half up as a printout does; undefined where it cannot be read. */
const centsOf = (raw: Raw, line: Path): number | undefined => {
  const amount = raw.num([...line, 'amount'], CLAIM.LINE.amount);
  if (amount !== undefined) return roundedCents(amount);
  const hours = raw.num([...line, 'hours'], CLAIM.LINE.hours);
  const rate = raw.num([...line, 'rate'], CLAIM.LINE.rate);
  return hours === undefined || rate === undefined ? undefined : roundedCents(hours * rate);
};

const isTaxed = (raw: Raw, line: Path): boolean => {
  const kind = raw.word([...line, 'kind']);
  return asYesNo(raw.at([...line, 'taxed'])) ?? (kind === 'parts' || kind === 'paint');
};

/** An amount, or hours at a rate: one of the two, whole; betterment within its line. */
export const linesPriced = (raw: Raw): Finding[] =>
  raw.each(LINES).flatMap((line): Finding[] => {
    const has = (key: string): boolean => raw.has([...line, key]);
    if (has('amount') && (has('hours') || has('rate')))
      return [
        {
          kind: 'either or',
          path: [...line, 'amount'],
          message: 'This line has an amount, and hours at a rate as well.',
          remedy: 'Keep one: hours and rate for labour, an amount for the rest.',
        },
      ];
    if (!has('amount') && !(has('hours') && has('rate')))
      return [
        {
          kind: 'missing',
          path: [...line, has('hours') ? 'rate' : has('rate') ? 'hours' : 'amount'],
          message: 'What this line comes to is missing.',
          remedy: 'Write "amount:", or "hours:" and "rate:".',
        },
      ];
    const cents = centsOf(raw, line);
    const betterment = raw.num([...line, 'betterment'], CLAIM.LINE.betterment);
    if (cents === undefined || betterment === undefined || betterment * 100 <= cents) return [];
    return [
      {
        kind: 'contradiction',
        path: [...line, 'betterment'],
        value: raw.at([...line, 'betterment']),
        message: `More is taken off this line than the ${(cents / 100).toFixed(2)} it comes to.`,
        remedy: 'Betterment is a part of its line.',
      },
    ];
  });

/** Kinds of line that have a place of their own in a claim, and what stands there. */
const ELSEWHERE = [
  ['towing', 'tow', 'The tow'],
  ['storage', 'storage', 'Storage'],
  ['rental', 'rental', 'A rental'],
] as const;

/** Nothing is paid twice: what a claim tells by itself is no line of the estimate too. */
export const linesOnce = (raw: Raw): Finding[] =>
  raw.each(LINES).flatMap((line): Finding[] => {
    const kind = raw.word([...line, 'kind']);
    const twice = ELSEWHERE.find(([of, key]) => of === kind && raw.has(['claim', key]));
    if (!twice) return [];
    return [
      {
        kind: 'either or',
        path: [...line, 'kind'],
        message: `${twice[2]} is on the estimate, and under "${twice[1]}:" of the claim as well.`,
        remedy: 'Keep one of the two: it would be paid twice.',
      },
    ];
  });

/** There is something on the estimate, and its lines and tax come to the total that stands on it, to the cent. */
export const estimateSums = (raw: Raw): Finding[] => {
  if (!raw.has(['claim', 'estimate'])) return [];
  const lines = raw.each(LINES);
  if (raw.has(LINES) && lines.length === 0)
    return [
      {
        kind: 'empty',
        path: LINES,
        message: 'The estimate has no lines.',
        remedy: 'Give at least one: a single amount will do.',
      },
    ];
  const total = raw.num(TOTAL, CLAIM.ESTIMATE.total);
  const cents = lines.map((line) => centsOf(raw, line));
  if (total === undefined || cents.some((one) => one === undefined)) return [];
  const known = cents.map((one) => one ?? 0);
  const before = known.reduce((sum, one) => sum + one, 0);
  const taxed = lines.reduce((sum, line, i) => sum + (isTaxed(raw, line) ? (known[i] ?? 0) : 0), 0);
  const rate = raw.num(['claim', 'estimate', 'tax'], CLAIM.ESTIMATE.tax) ?? 0;
  const tax = roundedCents((taxed * rate) / 100);
  if (before + tax === toCents(total)) return [];
  const text = (amount: number): string => (amount / 100).toFixed(2);
  return [
    {
      kind: 'contradiction',
      path: TOTAL,
      value: raw.at(TOTAL),
      message: `The lines come to ${text(before)} and their tax to ${text(tax)}: ${text(before + tax)}, not ${total.toFixed(2)}.`,
      remedy: 'Mend the line that is wrong (or what is taxed), or take "total:" out.',
    },
  ];
};
