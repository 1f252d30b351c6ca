import type { LedgerRow, OptionResult } from '../../engine/answer/decision.ts';
import type { Cents } from '../../engine/quantity/money.ts';
import { ledgerYear } from '../../engine/quantity/month.ts';
import { ledgerCents } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { byCategoryAndYear, byLine, type LineRow } from './rollup.ts';
import { type Cell, table } from './table.ts';

const yearHead = (year: number): string => (year === 0 ? 'The day' : `Year ${year}`);

/** Nothing is printed where nothing was posted: a ledger's blanks are easier to read than its noughts. */
const blankNil = (cents: Cents): string => (cents === 0 ? '' : ledgerCents(cents));

const sum = (cents: readonly Cents[]): Cents => cents.reduce((a, b) => a + b, 0) as Cents;

/** Years that fit across a page; beyond them years go down and categories across. */
const ACROSS = 9;

/** Every category by year, with both totals: as posted, and in today's money. */
export const ledgerByYear = (option: OptionResult, horizon: number): Html => {
  const rows = byCategoryAndYear(option.ledger, horizon);
  const years = Array.from({ length: ledgerYear(horizon) + 1 }, (_, i) => i);
  const ofYear = (y: number): Cents => sum(rows.map((r) => r.years[y] as Cents));
  const presentOf = (y: number): Cents =>
    sum(option.ledger.filter((r) => ledgerYear(r.month) === y).map((r) => r.present.counted));
  const [amount, present] = [sum(rows.map((r) => r.amount)), sum(rows.map((r) => r.present))];
  const both = ['Together', "In today's money"];
  const shape = { caption: `Every cost by year: ${option.label}`, kind: 'ledger' };
  return years.length <= ACROSS
    ? table({
        ...shape,
        head: ['For', ...years.map(yearHead), ...both],
        rows: rows.map((r): Cell[] => [
          r.category,
          ...r.years.map(blankNil),
          ledgerCents(r.amount),
          ledgerCents(r.present),
        ]),
        foot: [
          [
            'Together',
            ...years.map((y) => ledgerCents(ofYear(y))),
            ledgerCents(amount),
            ledgerCents(present),
          ],
        ],
      })
    : table({
        ...shape,
        kind: 'ledger years',
        head: ['When', ...rows.map((r) => r.category), ...both],
        rows: years.map((y): Cell[] => [
          yearHead(y),
          ...rows.map((r) => blankNil(r.years[y] as Cents)),
          ledgerCents(ofYear(y)),
          ledgerCents(presentOf(y)),
        ]),
        foot: [
          ['Together', ...rows.map((r) => ledgerCents(r.amount)), ledgerCents(amount), ledgerCents(present)],
        ],
      });
};

const months = (line: LineRow): string =>
  line.first === line.last
    ? `month ${line.first}`
    : `${line.postings} times, months ${line.first} to ${line.last}`;

/** The lines the categories are made of, numbered, each with the reason it is there and the scenario path it comes from. */
export const ledgerLines = (option: OptionResult): Html =>
  table({
    caption: `The lines behind the totals: ${option.label}`,
    kind: 'ledger lines',
    words: 4,
    head: ['Line', 'What', 'Why, and from where', 'When', 'Together', "In today's money"],
    rows: byLine(option.ledger).map((l, i): Cell[] => [
      i + 1,
      html`${l.what}<br><small>${l.category}</small>`,
      html`${l.reason}<br><code>${l.path}</code>`,
      months(l),
      ledgerCents(l.amount),
      ledgerCents(l.present),
    ]),
  });

const sameLine = (l: LineRow, r: LedgerRow): boolean =>
  l.category === r.category && l.what === r.what && l.path === r.path && l.reason === r.reason;

/** Every posting by month, each with the number of its line; the last row is what the way costs. */
export const ledgerByMonth = (option: OptionResult): Html => {
  const lines = byLine(option.ledger);
  const rows = option.ledger.map((r): Cell[] => {
    return [
      r.month,
      lines.findIndex((l) => sameLine(l, r)) + 1,
      r.what,
      ledgerCents(r.amount.counted),
      ledgerCents(r.present.counted),
    ];
  });
  return table({
    caption: `Every cost, line by line: ${option.label}`,
    kind: 'ledger postings',
    words: 3,
    head: ['Month', 'Line', 'What', 'Amount', "In today's money"],
    rows,
    foot: [
      [
        'Together',
        '',
        '',
        ledgerCents(sum(option.ledger.map((r) => r.amount.counted))),
        ledgerCents(option.netPresentCost.counted),
      ],
    ],
  });
};
