import type { ClaimView, CourseView } from '../../../engine/analysis/collisionViews.ts';
import type { Cents } from '../../../engine/quantity/money.ts';
import { ledgerCents, number } from '../../format.ts';
import type { Html } from '../../markup/html.ts';
import { type Cell, table } from '../../tables/table.ts';
import { itemWords, splitWords } from '../../words/claim/statement.ts';
import { capital, listed } from '../../words/sentence.ts';
import type { Page } from '../page.ts';

/** An amount in currency units as the ledger prints it. */
const exact = (units: number): string => ledgerCents(Math.round(units * 100) as Cents);

/** Vehicles like it, each carried to its own distance, so that every line can be disputed; null without any. */
export const comparablesTable = ({ d }: Page): Html | null => {
  const facts = d.facts.claim;
  if (facts === null || facts.comparablesSay === null) return null;
  return table({
    caption: 'What it was worth, by vehicles like it',
    kind: 'ways',
    stacks: true,
    head: [
      'Vehicle',
      'Price',
      `Run (${d.facts.distanceUnit})`,
      'For the distance',
      'For what differs',
      'Says',
    ],
    rows: facts.comparables.map((one): Cell[] => [
      capital(one.what),
      exact(one.price),
      number(one.odometer),
      exact(one.forDistance),
      exact(one.adjustment),
      exact(one.says),
    ]),
    foot: [['Their average', '', '', '', '', exact(facts.comparablesSay)]],
  });
};

/** The estimate as it was written, added up. */
export const estimateTable = ({ estimate }: ClaimView): Html => {
  const newer = estimate.lines.some(({ betterment }) => betterment > 0);
  const row = (...cells: [string, string, string, string]): Cell[] => (newer ? cells : cells.slice(0, 3));
  return table({
    caption: 'The estimate, line by line',
    kind: 'wordy',
    words: 2,
    head: row('Line', 'For', 'Amount', 'Of it not paid, being newer'),
    rows: estimate.lines.map(({ what, kind, part, amount, betterment }) =>
      row(
        capital(what),
        part === 'not said' ? kind : `${kind}, ${part}`,
        ledgerCents(amount),
        betterment > 0 ? ledgerCents(betterment) : '',
      ),
    ),
    foot: [
      row('Sales tax', '', ledgerCents(estimate.totals.tax), ''),
      row('The estimate', '', ledgerCents(estimate.totals.total), ledgerCents(estimate.totals.betterment)),
    ],
  });
};

/** What they leave unpaid for a part that is newer than the old one, by line, and how to answer; null without any. */
export const newerSentence = ({ estimate }: ClaimView): string | null => {
  const lines = estimate.lines.filter(({ betterment }) => betterment > 0);
  if (lines.length === 0) return null;
  const each = lines.map(({ what, betterment }) => `${ledgerCents(betterment)} of "${what}"`);
  return `Not paid, because a new part takes the place of a worn one: ${listed(each)}. It comes off the payment, and it is yours if the part is fitted. Ask which age and wear they counted: a part that does not wear, such as a panel, gives little ground for it.`;
};

/** What is paid, and who gets it, as one would send it to an adjuster; null where no claim is made. */
export const statementTable = ({ id, statement, split, atMost }: CourseView, what: string): Html | null =>
  statement &&
  table({
    caption: `The offer: ${what} (${id})`,
    head: ['Line', 'Amount'],
    rows: statement.lines.map(({ item, amount }) => [capital(itemWords[item]), ledgerCents(amount)]),
    foot: [
      ['The insurer pays', ledgerCents(statement.payment)],
      ...(atMost === null ? [] : [['Or, as the rule may also be read', ledgerCents(atMost)]]),
      ...splitWords(split).map(([words, amount]): Cell[] => [capital(words), ledgerCents(amount)]),
    ],
  });
