import type { Decision, LedgerRow, OptionResult } from '../../engine/answer/decision.ts';
import { centsText } from '../../engine/quantity/money.ts';
import { ledgerYear } from '../../engine/quantity/month.ts';
import { plain } from '../markup/html.ts';
import { withoutPrivate } from '../privacy.ts';

const HEAD = [
  'way',
  'month',
  'year',
  'category',
  'what',
  'own time counted',
  'cash alone',
  'shop doing everything',
  "own time counted, in today's money",
  "cash alone, in today's money",
  "shop doing everything, in today's money",
  'own hours',
  'scenario path',
  'reason',
];

/** Characters at which a spreadsheet starts to compute, their full-width twins too. */
const STARTS_FORMULA = /^[\s'"]*[=+\-@\uff1d\uff0b\uff0d\uff20|%]/;

/**
 * A cell of text: always quoted, on one line, and never the beginning of a formula; an apostrophe in front is what
 * spreadsheets read as "this is text".
 */
export const textCell = (text: string): string => {
  const line = plain(text).replace(/[\s\u2028\u2029]+/g, ' ');
  return `"${(STARTS_FORMULA.test(line) ? `'${line}` : line).replaceAll('"', '""')}"`;
};

const hoursText = (hours: number): string => String(Math.round(hours * 100) / 100);

const row = (option: OptionResult, r: LedgerRow): string =>
  [
    textCell(option.id),
    r.month,
    ledgerYear(r.month),
    textCell(r.category),
    textCell(r.what),
    centsText(r.amount.counted),
    centsText(r.amount.cash),
    centsText(r.amount.shop),
    centsText(r.present.counted),
    centsText(r.present.cash),
    centsText(r.present.shop),
    hoursText(r.hours),
    textCell(r.path),
    textCell(r.reason),
  ].join(',');

/**
 * Every posting of every open way as CSV (RFC 4180: commas, CRLF, a head): amounts as plain decimals, costs positive,
 * receipts negative; year 0 is the day itself. Summing the "today's money" column of one way gives what it costs.
 */
export const costsCsv = (decision: Decision): string => {
  const d = withoutPrivate(decision);
  const rows = d.options.flatMap((option) => option.ledger.map((r) => row(option, r)));
  return [HEAD.map(textCell).join(','), ...rows, ''].join('\r\n');
};
