/**
 * Bills so big that they end what they fall on, unless they are paid. How they spread follows from how giving up answers
 * to what going on is worth: a tenth more, some 7 % fewer give up (Jacobsen & van Benthem, American Economic Review
 * 105(3), 2015), and a chance of a bill above a limit that falls as limit^-0.7 is a Pareto tail.
 */

/** The tail's exponent: the elasticity of giving up to worth, its sign changed. */
export const TAIL = 0.7;
/** Bills beyond so many times the scale are bills for what nobody mends: a fifth of all. */
const FARTHEST = 10;
/** That share: 10^-0.7. */
const BEYOND_MENDING = FARTHEST ** -TAIL;

/** One big bill that is paid up to a limit, expected. */
export interface AtLimit {
  /** Chance that it is above the limit. */
  readonly givesUp: number;
  /** What is paid: its mean up to the limit, nothing above; so much on average for each big bill, paid or not. */
  readonly paid: number;
  /** The lesser of bill and limit, on average. */
  readonly lesser: number;
}

/**
 * @param limit the biggest bill that is paid, currency units; may be below nil, then every bill is above it
 * @param scale the smallest big bill, above nil, in the same units
 */
export const atLimit = (limit: number, scale: number): AtLimit => {
  const ratio = Math.min(FARTHEST, Math.max(1, limit / scale));
  const givesUp = ratio ** -TAIL;
  const paid = (scale * TAIL * (ratio ** (1 - TAIL) - 1)) / (1 - TAIL);
  return { givesUp, paid, lesser: paid + givesUp * limit };
};

/** The bill that the share u of big bills is smaller than; Infinity: not to be mended at any price. */
export const billAt = (scale: number, u: number): number => {
  const above = 1 - u;
  return above <= BEYOND_MENDING ? Number.POSITIVE_INFINITY : scale * above ** (-1 / TAIL);
};

/**
 * Big bills of one month, of which at most one is above the limit: nothing follows it that month.
 *
 * @param rate big bills expected in the month
 * @returns how many count, paid or not, and the chance of one above the limit
 */
export const inAMonth = (
  rate: number,
  { givesUp }: AtLimit,
): { readonly bills: number; readonly ends: number } => {
  const ends = -Math.expm1(-rate * givesUp);
  return { bills: ends / givesUp, ends };
};
