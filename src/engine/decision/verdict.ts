import type { ByReading } from '../cashflow/posting.ts';
import type { Cents } from '../quantity/money.ts';
import { nearestTip } from './breakEven.ts';
import type { BreakEven, OptionResult, Swing, Verdict } from './decision.ts';
import { readingsDisagree } from './results.ts';
import { widthOf } from './swings.ts';

/** An unquoted number that tips the answer within this share of its value leaves it too close to call. */
const CLOSE = 0.2;
/** A number that tips the answer within this share of its value is one of those that decide. */
const DECIDES = 0.5;
/** A swing of less than this many money units is no influence worth counting. */
const FELT = 0.5;

const isGuess = ({ quantity }: BreakEven): boolean => quantity.mark === 'guess' || quantity.mark === 'table';

/** Who is cheaper, whether that can be said, and which numbers it hangs on. */
export const verdictOf = (
  bestKeep: OptionResult | null,
  bestReplace: OptionResult | null,
  difference: ByReading<Cents> | null,
  breakEvens: readonly BreakEven[],
  swings: readonly Swing[],
): Verdict => {
  const byDistance = [...breakEvens].sort((a, b) => nearestTip(a) - nearestTip(b));
  // How far ahead to look is chosen, not found out: it decides nothing that anybody could settle.
  const deciding = byDistance.filter((one) => nearestTip(one) <= DECIDES && one.quantity.mark !== 'choice');
  const counts = {
    count: deciding.length,
    guesses: deciding.filter(isGuess).length,
    of: swings.filter((swing) => widthOf(swing) >= FELT).length,
  };
  if (!difference) {
    const kind = bestKeep ? 'keepOnly' : bestReplace ? 'replaceOnly' : 'none';
    const cheaper = kind === 'keepOnly' ? 'keep' : kind === 'replaceOnly' ? 'replace' : 'same';
    return { kind, cheaper, settledBy: [], readingsDisagree: false, deciding: counts };
  }
  const cheaper = difference.counted > 0 ? 'keep' : difference.counted < 0 ? 'replace' : 'same';
  const settledBy = byDistance.filter((one) => isGuess(one) && nearestTip(one) <= CLOSE);
  return {
    kind: settledBy.length > 0 || cheaper === 'same' ? 'close' : cheaper,
    cheaper,
    settledBy,
    readingsDisagree: readingsDisagree(difference),
    deciding: counts,
  };
};
