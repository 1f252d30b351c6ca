import { cumulativeHazard, type WeibullLife } from './weibull.ts';

/** The luck of one part in one future: for its i-th failure an exponential of mean 1, and how dear the bill is. */
export interface Luck {
  readonly exponential: (i: number) => number;
  /** In (0, 1): the share of bills that are smaller. */
  readonly quantile: (i: number) => number;
}

/** How the part that is in goes on: by a Weibull life it has run a part of, or by a law of its own in months. */
export interface PartLife {
  readonly life: WeibullLife;
  /** Already run, in the life's unit; the life used up in one month. */
  readonly run: number;
  readonly pace: number;
  /** A patch leaves the clock running; a renewal restarts it. */
  readonly patch: boolean;
  /** Months until the part that is in fails, as a quantile and its inverse; null: by its Weibull life. */
  readonly another: {
    readonly quantile: (u: number) => number;
    readonly chanceBelow: (months: number) => number;
  } | null;
}

/**
 * When a part fails in one future, in months from the start (real numbers, rising). Each part lives through a unit of
 * hazard after the other: the i-th failure comes when the hazard met since the last one reaches the i-th exponential. A
 * restart (scheduled renewal) puts a new part in and leaves the hazard still to be met: given that it has not failed,
 * that rest is exponential again. So the same luck serves every way that holds the vehicle, whatever work it has done.
 *
 * @param restarts months in which work renews the part, rising; 0 for the first day
 * @param months how far to look, from the start
 */
export const failureTimes = (
  part: PartLife,
  restarts: readonly number[],
  months: number,
  luck: Luck,
): number[] => {
  const { life, pace, another } = part;
  const times: number[] = [];
  let at = 0;
  let clock = part.run;
  let own = another !== null;
  let restart = 0;
  let rest = luck.exponential(0);
  for (;;) {
    const until = restart < restarts.length ? (restarts[restart] as number) : Number.POSITIVE_INFINITY;
    // The first stretch of a law of its own counts its hazard from the start, which is where `at` is nil.
    const met = own && another ? -Math.log1p(-another.chanceBelow(at)) : cumulativeHazard(life, clock);
    const fails =
      own && another
        ? another.quantile(-Math.expm1(-(met + rest)))
        : pace > 0
          ? at + (life.scale * (met + rest) ** (1 / life.shape) - clock) / pace
          : Number.POSITIVE_INFINITY;
    if (until < fails && until < months) {
      const later =
        own && another
          ? -Math.log1p(-another.chanceBelow(until))
          : cumulativeHazard(life, clock + (until - at) * pace);
      rest = Math.max(0, rest - (later - met));
      at = until;
      clock = 0;
      own = false;
      restart += 1;
      continue;
    }
    if (!(fails <= months)) return times;
    times.push(fails);
    clock = part.patch ? clock + (fails - at) * pace : 0;
    own = false;
    at = fails;
    rest = luck.exponential(times.length);
  }
};

/**
 * When repairs come that follow no clock: at random, at a rate that may change each month, in months from the start.
 *
 * @param inYear repairs expected in a month of year y = 0, 1, ..., of which a share comes
 * @param shares that share in month m = 1, 2, ..., at index m - 1; as many as are looked at
 */
export const arrivalTimes = (
  inYear: (year: number) => number,
  shares: ArrayLike<number>,
  luck: Luck,
): number[] => {
  const times: number[] = [];
  let rest = luck.exponential(0);
  let all = 0;
  for (let before = 0; before < shares.length; before++) {
    if (before % 12 === 0) all = inYear(before / 12);
    const rate = all * (shares[before] as number);
    let at = before;
    while (rate > 0 && rate * (before + 1 - at) >= rest) {
      at = Math.min(before + 1, at + rest / rate);
      times.push(at);
      rest = luck.exponential(times.length);
    }
    rest -= rate * (before + 1 - at);
  }
  return times;
};
