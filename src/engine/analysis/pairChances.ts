import { meanOf, quantilesOf } from '../chance/estimates.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { cheapestOf, type Subject } from '../simulation/studyDesign.ts';
import type { Bar, PairChances } from './chances.ts';
import { minus } from './columns.ts';

/** About so many bars between the ends of the density. */
const BARS = 30;

/** Bars of equal width between the 0.5 and 99.5 % points, an edge at nil where it lies within. */
const barsOf = (values: Float64Array, low: number, high: number): Bar[] => {
  if (!(high > low)) return [];
  const width = (high - low) / BARS;
  const from = low < 0 && high > 0 ? Math.floor(low / width) * width : low;
  const counts = new Array<number>(Math.ceil((high - from) / width - 1e-9)).fill(0);
  for (const value of values) {
    const at = Math.floor((value - from) / width);
    if (at >= 0 && at < counts.length) counts[at] = (counts[at] as number) + 1;
  }
  return counts.map((count, i) => ({
    from: from + i * width,
    to: from + (i + 1) * width,
    share: count / values.length,
  }));
};

/**
 * The scenario with the pair that is best by mean cost over the futures, where that is not the pair they were drawn for;
 * null where it is.
 */
export const pairMoved = (
  { scenario, options, keep, replace }: Subject,
  costs: readonly Float64Array[],
): Scenario | null => {
  const means = options.map((_, w) => meanOf(costs[w] as Float64Array, 1).value);
  const best = { keep: cheapestOf(options, means, 'keep'), replace: cheapestOf(options, means, 'replace') };
  const cheaper = (side: 'keep' | 'replace', now: number | null): boolean =>
    now !== null && best[side] !== null && (means[best[side]] as number) < (means[now] as number);
  if (!cheaper('keep', keep) && !cheaper('replace', replace)) return null;
  const id = (w: number | null): string => options[w ?? -1]?.id ?? '';
  const pair = {
    keep: id(cheaper('keep', keep) ? best.keep : keep),
    replace: id(cheaper('replace', replace) ? best.replace : replace),
  };
  return { ...scenario, facts: { ...scenario.facts, chance: { ...scenario.facts.chance, pair } } };
};

/** Keeping against replacing over all futures; null where a side has no open way. */
export const pairOf = (
  subject: Subject,
  costs: readonly Float64Array[],
  atAverageInputs: number,
  grain: number,
  scrambles: number,
): PairChances | null => {
  const { keep, replace, options } = subject;
  if (keep === null || replace === null) return null;
  const D = minus(costs[replace] as Float64Array, costs[keep] as Float64Array);
  // Where the two cost the same to the last digit neither is ahead: half of such futures go to each.
  const half = D.map((d) => (d > 0 ? 1 : d < 0 ? 0 : 0.5));
  const mean = meanOf(D, scrambles);
  const keepCheaper = meanOf(half, scrambles);
  const [least, low, middle, high, most] = quantilesOf(D, [0.005, 0.1, 0.5, 0.9, 0.995], scrambles);
  const sides = [
    [mean.value, mean.error],
    [keepCheaper.value - 0.5, keepCheaper.error],
  ] as const;
  const ahead = sides.map(([value, error]) => (Math.abs(value) <= 2 * error ? 0 : Math.sign(value)));
  return {
    keep: options[keep]?.id ?? '',
    replace: options[replace]?.id ?? '',
    keepCheaper,
    mean,
    low: low ?? mean,
    middle: middle ?? mean,
    high: high ?? mean,
    atAverageInputs,
    gapMatters: Math.abs(mean.value - atAverageInputs) > 2 * mean.error + grain,
    likelier:
      ahead[0] === 0 || ahead[0] !== ahead[1] ? 'cannot tell' : (ahead[0] as number) > 0 ? 'keep' : 'replace',
    bars: barsOf(D, (least ?? mean).value, (most ?? mean).value),
  };
};
