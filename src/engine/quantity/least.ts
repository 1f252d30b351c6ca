/** The one that costs least; the first of equals, so that the order in which they are settled decides. Null of none. */
export const leastOf = <T>(all: readonly T[], cost: (one: T) => number): T | null => {
  let best: T | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const one of all) {
    const its = cost(one);
    if (best !== null && !(its < least)) continue;
    best = one;
    least = its;
  }
  return best;
};
