import { FIXED } from '../cashflow/levels.ts';
import type { Contract } from '../cashflow/posting.ts';
import { remember } from '../quantity/remember.ts';
import { coverCost, lossesOf } from '../valuation/cover.ts';
import type { Context } from './context.ts';
import type { Span } from './span.ts';

/**
 * What cover for the vehicle itself leaves its owner to pay, on average: the chance of a loss times its part up to the
 * deductible, every month it is driven. The chances are the household's, so a replacement carries them too, with the
 * deductible of today; its premium is in its own quote. Without it, cover would look dearer than going without.
 * A deductible is fixed by the contract: it grows with no prices.
 *
 * @param worthAt what it would bring in a month, at least 0: no loss is more than that
 */
export const deductibles = (worthAt: (month: number) => number, span: Span, ctx: Context): Contract[] => {
  const { collision, comprehensive } = ctx.inputs.vehicle.ownDamage;
  if (!collision && !comprehensive) return [];
  // One and the same for both kinds of loss.
  const worthIn = remember(worthAt, ([a], [b]) => a === b);
  return (['collision', 'comprehensive'] as const).flatMap((kind): Contract[] => {
    const part = kind === 'collision' ? collision : comprehensive;
    if (!part || part.chanceAYear === 0) return [];
    const line = {
      category: 'insurance',
      what: `own part of a loss, ${kind}, ${span.name}`,
      path: `vehicle.cover.${kind}.deductible`,
      reason: 'on average: its chance, times what the deductible leaves to pay',
    } as const;
    const losses = lossesOf(part.totalShare, part.meanLoss);
    return [
      (sink) => {
        for (let first = span.start + span.idle; first < span.end; first += 12) {
          const aYear = coverCost(
            { premium: 0, deductible: part.deductible },
            { claims: part.chanceAYear, losses, value: worthIn(first) },
          );
          const until = Math.min(first + 12, span.end);
          sink.series(line, first + 1, until, FIXED, aYear / 12, aYear / 12, aYear / 12);
        }
      },
    ];
  });
};
