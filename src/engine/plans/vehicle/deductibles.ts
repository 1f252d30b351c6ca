import { FIXED } from '../../cashflow/levels.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { coverCost, lossesOf } from '../../valuation/cover.ts';
import type { Context } from './context.ts';
import type { Span } from './span.ts';

/** Both kinds of loss that cover of the vehicle itself answers for. */
const KINDS = [
  { kind: 'collision', what: 'own part of a loss, collision', at: 'collision.deductible' },
  { kind: 'comprehensive', what: 'own part of a loss, comprehensive', at: 'comprehensive.deductible' },
] as const;

/**
 * What cover for the vehicle itself leaves its owner to pay, on average: the chance of a loss times its part up to the
 * deductible, every month it is driven. The chances are the household's, so a replacement carries them too, with the
 * deductible of today; its premium is in its own quote. Without it, cover would look dearer than going without.
 * A deductible is fixed by the contract: it grows with no prices.
 *
 * @param worthAt what it would bring in a month, at least 0: no loss is more than that
 */
export const deductibles = (worthAt: (month: number) => number, span: Span, ctx: Context): Contract[] => {
  const { ownDamage } = ctx.inputs.vehicle;
  const from = span.start + span.idle;
  // By year; one and the same for both kinds of loss.
  const worths: number[] = [];
  const contracts: Contract[] = [];
  const lines = linesOf(span.name, 'vehicle.cover');
  for (const { kind, what, at } of KINDS) {
    const part = ownDamage[kind];
    if (!part || part.chanceAYear === 0) continue;
    const why = 'on average: its chance, times what the deductible leaves to pay';
    const line = lines('insurance', what, at, why);
    const cover = { premium: 0, deductible: part.deductible };
    const losses = lossesOf(part.totalShare, part.meanLoss);
    const aMonthIn = (year: number): number => {
      worths[year] ??= worthAt(from + 12 * year);
      return coverCost(cover, { claims: part.chanceAYear, losses, value: worths[year] as number }) / 12;
    };
    contracts.push((sink) => {
      if (from >= span.end) return;
      let since = from;
      let aMonth = aMonthIn(0);
      // Years that cost alike, as nearly all do in which it is worth more than the deductible, make one series.
      for (let year = 1; from + 12 * year < span.end; year += 1) {
        const next = aMonthIn(year);
        if (next === aMonth) continue;
        sink.series(line, since + 1, from + 12 * year, FIXED, aMonth, aMonth, aMonth);
        since = from + 12 * year;
        aMonth = next;
      }
      sink.series(line, since + 1, span.end, FIXED, aMonth, aMonth, aMonth);
    });
  }
  return contracts;
};
