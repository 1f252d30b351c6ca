import { byNearness, nearestTip } from '../analysis/breakEven.ts';
import { FIFTH, HALF } from '../analysis/relativeDistance.ts';
import type { BreakEven, Swing } from '../analysis/sensitivityView.ts';
import { isFelt } from '../analysis/swings.ts';
import type { ByReading } from '../cashflow/posting.ts';
import type { Best } from '../evaluation/optionResult.ts';
import { readingsDisagree } from '../evaluation/results.ts';
import type { Cents } from '../quantity/money.ts';
import type { Verdict } from './decision.ts';

const isGuess = ({ quantity }: BreakEven): boolean => quantity.mark === 'guess' || quantity.mark === 'table';

/**
 * Who is cheaper, whether that can be said, and which numbers it hangs on: an unquoted number that tips the answer within
 * a fifth of its value leaves it too close to call, one that does within half of it is one of those that decide.
 *
 * @param grain what is no difference, in currency units
 */
export const verdictOf = (
  { keep, replace }: Best,
  difference: ByReading<Cents> | null,
  breakEvens: readonly BreakEven[],
  swings: readonly Swing[],
  grain: number,
): Verdict => {
  const byDistance = [...breakEvens].sort(byNearness);
  // How far ahead to look is chosen, not found out: it decides nothing that anybody could settle.
  const deciding = byDistance.filter((one) => nearestTip(one) <= HALF && one.quantity.mark !== 'choice');
  const counts = {
    count: deciding.length,
    guesses: deciding.filter(isGuess).length,
    of: swings.filter((swing) => isFelt(swing, grain)).length,
  };
  if (!difference) {
    const kind = keep ? 'keepOnly' : replace ? 'replaceOnly' : 'none';
    const cheaper = kind === 'keepOnly' ? 'keep' : kind === 'replaceOnly' ? 'replace' : 'same';
    return { kind, cheaper, settledBy: [], readingsDisagree: false, deciding: counts };
  }
  const cheaper = difference.counted > 0 ? 'keep' : difference.counted < 0 ? 'replace' : 'same';
  const settledBy = byDistance.filter((one) => isGuess(one) && nearestTip(one) <= FIFTH);
  return {
    kind: settledBy.length > 0 || cheaper === 'same' ? 'close' : cheaper,
    cheaper,
    settledBy,
    readingsDisagree: readingsDisagree(difference),
    deciding: counts,
  };
};
