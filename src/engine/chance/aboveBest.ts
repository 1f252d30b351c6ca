import { average, type Estimate, leaveOneOut } from './estimates.ts';

/** Costs above the option that is cheapest on average: the others' side by side, draw after draw. */
export interface Above {
  readonly draws: number;
  readonly others: number;
  readonly above: Float64Array;
  /** Sum over all draws of each of the others. */
  readonly totals: Float64Array;
}

/** From one array of costs an option, draw by draw; at least one option. Throws a RangeError where one is short. */
export const aboveBest = (costs: readonly Float64Array[]): Above => {
  const best = costs.reduce((a, b) => (average(b) < average(a) ? b : a));
  const dearer = costs.filter((cost) => cost !== best);
  if (dearer.some((cost) => cost.length !== best.length))
    throw new RangeError('every option needs its cost in every draw');
  const above = new Float64Array(best.length * dearer.length);
  dearer.forEach((cost, a) => {
    for (let k = 0; k < best.length; k++)
      above[k * dearer.length + a] = (cost[k] as number) - (best[k] as number);
  });
  const data = { draws: best.length, others: dearer.length, above };
  const totals = new Float64Array(dearer.length);
  addUp(data, new Uint8Array(best.length), 0, best.length, totals);
  return { ...data, totals };
};

/** Adds draws `from` to `to` into `sums`, by group and option. */
const addUp = (
  { above, others }: Pick<Above, 'above' | 'others'>,
  groupOf: Uint8Array,
  from: number,
  to: number,
  sums: Float64Array,
) => {
  let at = from * others;
  for (let k = from; k < to; k++) {
    const row = (groupOf[k] as number) * others;
    for (let a = 0; a < others; a++) sums[row + a] = (sums[row + a] as number) + (above[at++] as number);
  }
};

/** Sums by group and option over all draws. What is in the largest group is what all the others leave of the totals. */
export const sumsOfGroups = (
  { draws, others, above, totals }: Above,
  groupOf: Uint8Array,
  groups: number,
  largest: number,
): Float64Array => {
  const sums = new Float64Array(groups * others);
  const rest = largest * others;
  sums.set(totals, rest);
  for (let k = 0; k < draws; k++) {
    const row = (groupOf[k] as number) * others;
    if (row === rest) continue;
    const at = k * others;
    for (let a = 0; a < others; a++) sums[row + a] = (sums[row + a] as number) + (above[at + a] as number);
  }
  for (let row = 0; row < sums.length; row += others)
    if (row !== rest)
      for (let a = 0; a < others; a++)
        sums[rest + a] = (sums[rest + a] as number) - (sums[row + a] as number);
  return sums;
};

/** Sum over groups of what the best choice in each costs, from sums by group and option; nil for the best on average. */
export const bestInEach = (sums: Float64Array, others: number): number => {
  let total = 0;
  for (let row = 0; row < sums.length; row += others) {
    let least = 0;
    for (let a = 0; a < others; a++) least = Math.min(least, sums[row + a] as number);
    total += least;
  }
  return total;
};

/** What the one best choice for all groups costs, from the same sums; never above nil. */
export const bestOfAll = (sums: Float64Array, others: number): number => {
  let least = 0;
  for (let a = 0; a < others; a++) {
    let sum = 0;
    for (let at = a; at < sums.length; at += others) sum += sums[at] as number;
    least = Math.min(least, sum);
  }
  return least;
};

/** A worth from sums by scramble: over all of them, and with its error by leaving one out at a time. */
export const worthOf = (
  each: readonly Float64Array[],
  draws: number,
  saved: (sums: Float64Array) => number,
): Estimate => {
  const all = new Float64Array((each[0] as Float64Array).length);
  for (const sums of each)
    for (let k = 0; k < all.length; k++) all[k] = (all[k] as number) + (sums[k] as number);
  const { value, error } = leaveOneOut((without) => {
    const left = without === null ? null : (each[without] as Float64Array);
    const kept = left ? all.map((sum, k) => sum - (left[k] as number)) : all;
    return saved(kept) / (left ? (draws / each.length) * (each.length - 1) : draws);
  }, each.length);
  return { value: Math.max(0, value), error };
};

/** Sums by group and option, of each scramble. */
export const sumsByScramble = (
  data: Above,
  groupOf: Uint8Array,
  groups: number,
  scrambles: number,
): Float64Array[] => {
  const points = data.draws / scrambles;
  if (!Number.isInteger(points))
    throw new RangeError(`${data.draws} draws do not make ${scrambles} scrambles`);
  return Array.from({ length: scrambles }, (_, s) => {
    const sums = new Float64Array(groups * data.others);
    addUp(data, groupOf, s * points, (s + 1) * points, sums);
    return sums;
  });
};
