import { remember } from '../quantity/remember.ts';
import { aboveBest, bestInEach, bestOfAll, sumsByScramble, sumsOfGroups, worthOf } from './aboveBest.ts';
import { streamOf, uniformAt } from './counter.ts';
import { average, type Estimate, meanOf, standardDeviation } from './estimates.ts';

/**
 * What it is worth to find something out before choosing: the best choice on average against the best choice once it is
 * known (Raiffa and Schlaifer, Applied Statistical Decision Theory, 1961). Costs are one array an option, the same
 * future at the same place in each, scramble-major; worths are in the costs' unit and never below nil.
 *
 * All by what each option costs *above* the one that is cheapest on average: what all share drops out, and a choice that
 * nothing can change is worth nil exactly.
 */

/** At most so many groups of draws, and no group of fewer draws than this: its means would be luck. */
const GROUPS = 20;
const LEAST_IN_A_GROUP = 25;
/** Random groupings of the same sizes: what grouping by nothing at all seems to be worth. */
const SHUFFLES = 20;

/**
 * Expected value of perfect information: what it would save to know everything first, over all options. It is the
 * expected regret of the option that is cheapest on average. Nil for one option.
 */
export const perfectInformation = (costs: readonly Float64Array[], scrambles: number): Estimate => {
  const { draws, others, above } = aboveBest(costs);
  // Of each scramble: sums of the options, then the sum of the cheapest in each draw.
  const points = draws / scrambles;
  const each = Array.from({ length: scrambles }, (_, s) => {
    const sums = new Float64Array(others + 1);
    for (let k = s * points; k < (s + 1) * points; k++) {
      let least = 0;
      for (let a = 0; a < others; a++) {
        const cost = above[k * others + a] as number;
        sums[a] = (sums[a] as number) + cost;
        if (cost < least) least = cost;
      }
      sums[others] = (sums[others] as number) + least;
    }
    return sums;
  });
  return worthOf(
    each,
    draws,
    (sums) => bestOfAll(sums.subarray(0, others), others) - (sums[others] as number),
  );
};

/** The least number of each group but the first; a yes or no makes two groups, however rare it is. */
const edgesOf = (about: Float64Array): number[] => {
  if (about.every((value) => value === 0 || value === 1)) return [1];
  const most = Math.max(1, Math.min(GROUPS, Math.floor(about.length / LEAST_IN_A_GROUP)));
  const sorted = about.slice().sort();
  return Array.from(
    { length: most - 1 },
    (_, g) => sorted[Math.floor(((g + 1) * about.length) / most)] as number,
  );
};

/** Groups of equal count by the size of a number, at most GROUPS; equal numbers share one, so there may be fewer. */
const groupsBySize = (about: Float64Array): { groupOf: Uint8Array; sizes: number[] } => {
  const edges = edgesOf(about);
  const most = edges.length + 1;
  const sizes = Array<number>(most).fill(0);
  const groupOf = new Uint8Array(about.length);
  about.forEach((value, k) => {
    let [low, high] = [0, edges.length];
    while (low < high) {
      const mid = (low + high) >> 1;
      if ((edges[mid] as number) <= value) low = mid + 1;
      else high = mid;
    }
    groupOf[k] = low;
    sizes[low] = (sizes[low] as number) + 1;
  });
  return { groupOf, sizes };
};

/**
 * Random orders of `n` draws (Fisher and Yates): each draw's place in the order. They are kept, so whoever waits for
 * draws can have them made meanwhile.
 */
export const shuffles = remember(
  (n: number, seed: number): Uint32Array[] => {
    const stream = streamOf('groups by nothing at all');
    return Array.from({ length: SHUFFLES }, (_, order) => {
      const places = Uint32Array.from({ length: n }, (_, k) => k);
      for (let k = n - 1; k > 0; k--) {
        const other = Math.floor(uniformAt(seed, order, stream, k) * (k + 1));
        const place = places[k] as number;
        places[k] = places[other] as number;
        places[other] = place;
      }
      return places;
    });
  },
  (a, b) => a[0] === b[0] && a[1] === b[1],
  2,
);

/** The group that each draw gets from its place in an order. */
const dealt = (groupAt: Uint8Array, places: Uint32Array): Uint8Array => {
  const groupOf = new Uint8Array(places.length);
  for (let k = 0; k < places.length; k++) groupOf[k] = groupAt[places[k] as number] as number;
  return groupOf;
};

/**
 * What is the same for every question about one set of costs, worked out once: costs side by side, and what random
 * groups of given sizes seem to be worth (most questions have groups of one size).
 */
const prepared = remember(
  (costs: readonly Float64Array[], seed: number) => {
    const data = aboveBest(costs);
    const byNothing = remember(
      (sizes: readonly number[]) => {
        const groupAt = Uint8Array.from(sizes.flatMap((size, group) => Array<number>(size).fill(group)));
        const largest = sizes.indexOf(Math.max(...sizes));
        const worths = shuffles(data.draws, seed).map((places) => {
          const sums = sumsOfGroups(data, dealt(groupAt, places), sizes.length, largest);
          return -bestInEach(sums, data.others) / data.draws;
        });
        return { worth: average(worths), error: standardDeviation(worths) };
      },
      ([a], [b]) => a.length === b.length && a.every((size, group) => size === b[group]),
      8,
    );
    return { data, byNothing };
  },
  (a, b) => a[0] === b[0] && a[1] === b[1],
  2,
);

/**
 * Expected value of perfect information about one number: the draws in groups of equal count by its size, the best
 * choice in each against the best on average, less what random groups of the same sizes seem to be worth (choosing the
 * best of means that are luck always looks worth something), floored at nil.
 *
 * @param costs as perfectInformation; hand in the *same array* for every question, then the work on it is done once
 * @param about the number, draw by draw
 * @returns its worth, and whether it stands more than two standard errors above nil
 */
export const partialInformation = (
  costs: readonly Float64Array[],
  about: Float64Array,
  scrambles: number,
  seed: number,
): { readonly worth: Estimate; readonly measurable: boolean } => {
  const { data, byNothing } = prepared(costs, seed);
  const { groupOf, sizes } = groupsBySize(about);
  const sums = sumsByScramble(data, groupOf, sizes.length, scrambles);
  const seen = worthOf(sums, data.draws, (of) => bestOfAll(of, data.others) - bestInEach(of, data.others));
  const luck = byNothing(sizes);
  // An error below the spread that random groups show would call luck a finding.
  const error = Math.hypot(Math.max(seen.error, luck.error), luck.error / Math.sqrt(SHUFFLES));
  const value = Math.max(0, seen.value - luck.worth);
  return { worth: { value, error }, measurable: value > 2 * error };
};

/**
 * Expected value of an imperfect test for an event of the draw: min over options of the mean cost, less the sum over the
 * test's two results of min over options of mean(P(result | event) x cost). Worth buying if above its price.
 *
 * @param event 1 in draws where it happens, 0 where not
 * @param sees chance that the test says yes when the event happens (sensitivity)
 * @param clears chance that it says no when it does not (specificity)
 * @returns the test's worth, that of a test that is never wrong, and the chance of the event
 */
export const testInformation = (
  costs: readonly Float64Array[],
  event: Uint8Array,
  sees: number,
  clears: number,
  scrambles: number,
): { readonly worth: Estimate; readonly perfect: Estimate; readonly event: Estimate } => {
  const data = aboveBest(costs);
  const { others } = data;
  const sums = sumsByScramble(data, event, 2, scrambles);
  const worth = (yes: number, no: number) =>
    worthOf(sums, data.draws, (of) => {
      const byResult = new Float64Array(2 * others);
      for (let a = 0; a < others; a++) {
        const without = of[a] as number;
        const withIt = of[others + a] as number;
        byResult[a] = yes * withIt + (1 - no) * without;
        byResult[others + a] = (1 - yes) * withIt + no * without;
      }
      return bestOfAll(of, others) - bestInEach(byResult, others);
    });
  return {
    worth: worth(sees, clears),
    perfect: worth(1, 1),
    event: meanOf(Float64Array.from(event), scrambles),
  };
};
