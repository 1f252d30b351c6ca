/** What the yearly table of a way comes to is what the page says that the way costs, whatever it is paid for. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decideAtAverage } from '../../src/engine/answer/decide.ts';
import type { Decision, LedgerRow } from '../../src/engine/answer/decision.ts';
import { CATEGORIES, type Category } from '../../src/engine/cashflow/posting.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { ledgerCents } from '../../src/report/format.ts';
import { ledgerByYear } from '../../src/report/tables/ledger.ts';
import { byCategoryAndYear } from '../../src/report/tables/rollup.ts';
import { read } from '../report/page.ts';
import { claimForm } from '../support/claim.ts';
import { scenarioOf, shortForm } from '../support/file.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

const demo = (file: string): Decision => {
  const parsed = parseScenario(readFileSync(new URL(file, folder), 'utf8'), { file, today: '2026-11-25' });
  if (!('scenario' in parsed)) throw new Error(JSON.stringify(parsed.problems));
  return decideAtAverage(parsed.scenario, '0.0.0');
};

/** A household that meets every kind of money there is in one way or another. */
const everything = (): Decision =>
  decideAtAverage(
    scenarioOf((file) => {
      Object.assign(file.vehicle, {
        registration_a_year: 80,
        inspection_a_year: 30,
        parking_a_month: 25,
      });
      const [first] = file.work_needed;
      Object.assign(first ?? {}, { days_without: 6 });
      const { loan: _, down_payment: __, ...bought } = shortForm().replacement;
      Object.assign(file, {
        big_bills: 1,
        claim: claimForm(),
        doing_without: { a_day: 30, days_a_month: 20 },
        replacement: [
          file.replacement,
          {
            ...bought,
            what: '2023 estate on lease',
            lease: {
              starts_from: 21000,
              residual: 11000,
              money_factor: 0.0021,
              months: 36,
              miles_a_year: 9000,
              over_a_mile: 0.2,
            },
          },
        ],
      });
    }),
    '0.0.0',
  );

const sum = (cents: readonly number[]): number => cents.reduce((a, b) => a + b, 0);

/** The last two figures at the foot of the printed table: as posted, and in today's money. */
const foot = (markup: string): string[] =>
  [...read(`<html><body>${markup}</body></html>`).querySelectorAll('tfoot td')]
    .map((cell) => cell.textContent)
    .slice(-2);

const holdsFor = ({ options, horizon }: Decision): void => {
  expect(options.length).toBeGreaterThan(0);
  for (const option of options) {
    const headline = option.netPresentCost.counted;
    const posted = sum(option.ledger.map(({ amount }) => amount.counted));
    const rows = byCategoryAndYear(option.ledger, horizon);
    expect(sum(rows.map(({ present }) => present)), option.id).toBe(headline);
    expect(sum(rows.flatMap(({ years }) => years)), option.id).toBe(posted);
    expect(foot(ledgerByYear(option, horizon).markup), option.id).toEqual([
      ledgerCents(posted as Cents),
      ledgerCents(headline),
    ]);
  }
};

describe('the yearly table comes to what the way costs', () => {
  it.each(demos)('for every way of %s', (file) => {
    holdsFor(demo(file));
  });

  it('for a household that pays and receives of every kind there is', () => {
    const decision = everything();
    const met = new Set<Category>(
      decision.options.flatMap(({ ledger }) => ledger.map(({ category }) => category)),
    );
    expect(CATEGORIES.filter((category) => !met.has(category))).toEqual([]);
    holdsFor(decision);
  });

  it.each(CATEGORIES)('for a ledger of nothing but "%s"', (category) => {
    const cents = { counted: 1234, cash: 1234, shop: 1234 } as LedgerRow['amount'];
    const row: LedgerRow = {
      category,
      what: 'it',
      path: 'vehicle',
      reason: 'it is so',
      month: 7,
      amount: cents,
      present: cents,
      hours: 0,
    };
    expect(byCategoryAndYear([row], 12).map((one) => [one.category, one.present])).toEqual([
      [category, 1234],
    ]);
  });
});
