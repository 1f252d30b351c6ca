/** The cheapest times to replace something over a fixed number of periods: the textbook replacement programme. */

export type ReplacementProgramme = {
  readonly horizon: number;
  /** The age at which it must go; ages are whole periods, 0 is new. */
  readonly maxAge: number;
  /** The age of the one owned at time 0, or null: none is owned and one must be bought at once. */
  readonly startAge: number | null;
  readonly price: number;
  /** What running it for one period costs, by its age at the period's start; paid at that start. */
  readonly costAtAge: (age: number) => number;
  /** What it brings, by age, when it is traded in and at the horizon. */
  readonly tradeIn: (age: number) => number;
  /** Interest per period as a fraction; 0 for the plain sum. */
  readonly ratePerPeriod: number;
};

export type ReplacementAnswer = {
  /** The least present cost. */
  readonly cost: number;
  /** The ways to reach it: the times at which a new one is bought, earlier ones first; at most 1,000 of them. */
  readonly purchases: readonly (readonly number[])[];
  /** Whether there are more ways than are listed. */
  readonly more: boolean;
};

/** More ways than these nobody reads, and where nothing costs anything there are 2 to the power of the horizon. */
const MOST_WAYS = 1000;

/** The least cost from a time and an age on, and which of the two choices reach it. */
type State = { readonly cost: number; readonly buy: boolean; readonly run: boolean };

/**
 * Solved backwards over (time, age). Trade-ins and the sale at the horizon are receipts, so the cost may be
 * negative. Choices within a billionth of the least count as equal.
 * A start age above maxAge has to be replaced at once.
 */
export const replacementProgramme = (given: ReplacementProgramme): ReplacementAnswer => {
  const { horizon, maxAge, startAge, price, costAtAge, tradeIn, ratePerPeriod } = given;
  const solved = new Map<string, State>();

  const run = (time: number, age: number): number =>
    costAtAge(age) + stateAt(time + 1, age + 1).cost / (1 + ratePerPeriod);
  const stateAt = (time: number, age: number): State => {
    if (time === horizon) return { cost: -tradeIn(age), buy: false, run: false };
    const key = `${time} ${age}`;
    const known = solved.get(key);
    if (known) return known;
    const bought = price - tradeIn(age) + run(time, 0);
    const state = age < maxAge ? cheaper(bought, run(time, age)) : { cost: bought, buy: true, run: false };
    solved.set(key, state);
    return state;
  };
  const start: State =
    startAge === null ? { cost: price + run(0, 0), buy: true, run: false } : stateAt(0, startAge);

  const purchases: number[][] = [];
  const list = (time: number, age: number, state: State, times: readonly number[]): void => {
    if (purchases.length > MOST_WAYS) return;
    if (time === horizon) {
      purchases.push([...times]);
      return;
    }
    if (state.buy) list(time + 1, 1, stateAt(time + 1, 1), [...times, time]);
    if (state.run) list(time + 1, age + 1, stateAt(time + 1, age + 1), times);
  };
  list(0, startAge ?? 0, start, []);
  return {
    cost: start.cost,
    purchases: purchases.slice(0, MOST_WAYS),
    more: purchases.length > MOST_WAYS,
  };
};

const cheaper = (buy: number, run: number): State => {
  const tie = 1e-9 * Math.max(1, Math.abs(buy), Math.abs(run));
  const equal = Math.abs(buy - run) <= tie;
  return { cost: Math.min(buy, run), buy: equal || buy < run, run: equal || run < buy };
};
