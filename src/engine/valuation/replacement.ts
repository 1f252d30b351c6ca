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

/** The least present cost and every way to reach it: the times at which a new one is bought, earlier ones first. */
export type ReplacementAnswer = { readonly cost: number; readonly purchases: readonly (readonly number[])[] };

/**
 * Solved backwards over (time, age). Trade-ins and the sale at the horizon are receipts, so the cost may be
 * negative. Plans within a billionth of the least count as equal. Meant for tens of periods: all ties are listed.
 * A start age above maxAge has to be replaced at once.
 */
export const replacementProgramme = (given: ReplacementProgramme): ReplacementAnswer => {
  const { horizon, maxAge, startAge, price, costAtAge, tradeIn, ratePerPeriod } = given;
  const solved = new Map<string, ReplacementAnswer>();

  const run = (time: number, age: number): ReplacementAnswer => {
    const after = from(time + 1, age + 1);
    return { cost: costAtAge(age) + after.cost / (1 + ratePerPeriod), purchases: after.purchases };
  };
  const buy = (time: number, received: number): ReplacementAnswer => {
    const plan = run(time, 0);
    return { cost: price - received + plan.cost, purchases: plan.purchases.map((times) => [time, ...times]) };
  };
  const from = (time: number, age: number): ReplacementAnswer => {
    if (time === horizon) return { cost: -tradeIn(age), purchases: [[]] };
    const key = `${time} ${age}`;
    const known = solved.get(key);
    if (known) return known;
    const replaced = buy(time, tradeIn(age));
    const answer = age < maxAge ? cheaper(replaced, run(time, age)) : replaced;
    solved.set(key, answer);
    return answer;
  };
  return startAge === null ? buy(0, 0) : from(0, startAge);
};

const cheaper = (a: ReplacementAnswer, b: ReplacementAnswer): ReplacementAnswer => {
  const tie = 1e-9 * Math.max(1, Math.abs(a.cost), Math.abs(b.cost));
  if (Math.abs(a.cost - b.cost) > tie) return a.cost < b.cost ? a : b;
  return { cost: Math.min(a.cost, b.cost), purchases: [...a.purchases, ...b.purchases] };
};
