import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LedgerRow, ledgerTotal } from '../../src/engine/cashflow/ledger.ts';
import { READINGS } from '../../src/engine/cashflow/posting.ts';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { resultOf } from '../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { addCents, inUnits, NIL } from '../../src/engine/quantity/money.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

describe('law 1: the ledger adds up', () => {
  it('every total is the sum of its rows to the cent, by category and by year, in every reading', () => {
    fc.assert(
      fc.property(anyInputs, (inputs) => {
        const ctx = contextOf(inputs, factsOf(inputs), EXPECTED, 'to the cent');
        for (const way of waysOf(ctx).open) {
          const result = resultOf(way.build(ctx), ctx);
          for (const reading of READINGS) {
            const parts = (key: (row: LedgerRow) => string) => {
              const groups = new Set(result.ledger.map(key));
              const totals = [...groups].map((group) =>
                ledgerTotal(
                  result.ledger.filter((row) => key(row) === group),
                  'present',
                  reading,
                ),
              );
              return addCents(NIL, ...totals);
            };
            expect(parts((row) => row.category)).toBe(result.netPresentCost[reading]);
            expect(parts((row) => String(Math.ceil(row.month / 12)))).toBe(result.netPresentCost[reading]);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('agrees with the unrounded evaluation of the same contracts within half a cent a row', () => {
    fc.assert(
      fc.property(anyInputs, (inputs) => {
        const facts = factsOf(inputs);
        const ctx = contextOf(inputs, facts, EXPECTED, 'to the cent');
        const plain = evaluate(inputs, EXPECTED, { facts, rounding: 'to the cent' });
        waysOf(ctx).open.forEach((way, i) => {
          const result = resultOf(way.build(ctx), ctx);
          for (const reading of READINGS) {
            const gap =
              inUnits(result.netPresentCost[reading]) - (plain[i]?.netPresentCost[reading] as number);
            expect(Math.abs(gap)).toBeLessThanOrEqual(0.005 * result.ledger.length + 1e-6);
          }
        });
      }),
      { numRuns: 30 },
    );
  });

  it('with loans unrounded too, within a cent a row', () => {
    fc.assert(
      fc.property(anyInputs, (inputs) => {
        const facts = factsOf(inputs);
        const ctx = contextOf(inputs, facts, EXPECTED, 'to the cent');
        const plain = evaluate(inputs, EXPECTED, { facts, rounding: 'unrounded' });
        waysOf(ctx).open.forEach((way, i) => {
          const result = resultOf(way.build(ctx), ctx);
          const gap = inUnits(result.netPresentCost.counted) - (plain[i]?.netPresentCost.counted as number);
          expect(Math.abs(gap)).toBeLessThanOrEqual(0.01 * result.ledger.length + 0.01 * ctx.horizon);
        });
      }),
      { numRuns: 30 },
    );
  });
});
