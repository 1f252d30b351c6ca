import { describe, expect, it } from 'vitest';
import type { OptionResult } from '../../src/engine/answer/decision.ts';
import { ledgerByYear } from '../../src/report/tables/ledger.ts';
import { byCategoryAndYear, byLine } from '../../src/report/tables/rollup.ts';
import { decision } from './fixture.ts';
import { read } from './page.ts';

const keep = decision.bestKeep as OptionResult;

describe('rolling up the ledger', () => {
  it('agrees with plain addition, category by category, year by year, to the cent', () => {
    for (const option of decision.options) {
      for (const row of byCategoryAndYear(option.ledger, decision.horizon)) {
        const own = option.ledger.filter((r) => r.category === row.category);
        expect(row.amount).toBe(own.reduce((s, r) => s + r.amount.counted, 0));
        expect(row.present).toBe(own.reduce((s, r) => s + r.present.counted, 0));
        row.years.forEach((cents, year) => {
          const inYear = own.filter((r) =>
            year === 0 ? r.month === 0 : r.month > year * 12 - 12 && r.month <= year * 12,
          );
          expect(cents).toBe(inYear.reduce((s, r) => s + r.amount.counted, 0));
        });
      }
    }
  });

  it('loses no posting: the lines sum to what the way costs', () => {
    for (const option of decision.options) {
      const lines = byLine(option.ledger);
      expect(lines.reduce((n, l) => n + l.postings, 0)).toBe(option.ledger.length);
      expect(lines.reduce((s, l) => s + l.present, 0)).toBe(option.netPresentCost.counted);
    }
  });
});

describe('the ledger by year', () => {
  const last = (horizon: number): string[] =>
    [...read(`<html><body>${ledgerByYear(keep, horizon).markup}</body></html>`).querySelectorAll('tfoot td')]
      .map((cell) => cell.textContent)
      .slice(-2);

  it('turns on its side when the years no longer fit across, with the same totals', () => {
    expect(ledgerByYear(keep, 240).markup).toContain('class="ledger years"');
    expect(ledgerByYear(keep, 60).markup).not.toContain('years"');
    expect(last(240)).toEqual(last(60));
  });
});
