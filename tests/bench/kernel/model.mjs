/**
 * The model of the kernel: two vehicles of twelve components each over 120 months, lives and bills drawn, discounted by
 * the month. Whole-month lives: a part put in at the end of month t fails at the end of month t + life, its life being
 * a Weibull life rounded up, so that the chance of each month is exact; of the part that is in, given its age. What it
 * costs is lognormal, by a table of quantiles. This file writes every table; all who run the model read them.
 */

export const MONTHS = 120;
/** Places kept for a part's months: 0..121, the last meaning later than the horizon. */
const ROW = 128;
const LATER = MONTHS + 1;
const GUIDE_BITS = 11;
const GUIDE = 2 ** GUIDE_BITS;
const QUANTILE_BITS = 12;
const QUANTILES = 2 ** QUANTILE_BITS;
const TWO_31 = 2 ** 31;

/** Shape, scale in months, mean bill, and which of the spreads below its bills have. */
const TWELVE = [
  [2.6, 95, 640, 0],
  [3.1, 130, 380, 0],
  [1.8, 110, 290, 1],
  [2.2, 150, 520, 1],
  [2.9, 190, 1450, 2],
  [3.4, 240, 2900, 2],
  [1.5, 140, 210, 1],
  [2.0, 170, 760, 1],
  [2.4, 75, 160, 0],
  [1.3, 200, 450, 2],
  [2.7, 120, 330, 0],
  [3.0, 210, 1150, 2],
];
export const SPREADS = [0.3, 0.45, 0.6];

/** The present vehicle's parts, each with a different age, then those of its replacement: young, and longer-lived. */
export const PARTS = [
  ...TWELVE.map(([shape, scale, bill, spread], j) => ({
    shape: Number(shape),
    scale: Number(scale),
    bill: Number(bill),
    spread: Number(spread),
    age: 35 + ((j * 37) % 90),
  })),
  ...TWELVE.map(([shape, scale, bill, spread]) => ({
    shape: Number(shape),
    scale: Number(scale) * 1.15,
    bill: Number(bill),
    spread: Number(spread),
    age: 24,
  })),
];
export const TO_A_VEHICLE = TWELVE.length;

/** What 1 at the end of month m is worth today, at 4.5 % a year. */
export const discount = Float64Array.from({ length: ROW }, (_, m) => 1.045 ** (-m / 12));

/** Chance that a part of this age fails within m months. @type {(part: typeof PARTS[number], age: number, m: number) => number} */
const failsBy = ({ shape, scale }, age, m) =>
  -Math.expm1((age / scale) ** shape - ((age + m) / scale) ** shape);

/**
 * Of each part two rows, the part that is in and new ones: the largest 31-bit number that fails by the end of month m,
 * and where to start looking for the first bits of a number.
 */
const lives = () => {
  const last = new Int32Array(PARTS.length * 2 * ROW).fill(TWO_31 - 1);
  const guide = new Uint8Array(PARTS.length * 2 * GUIDE);
  PARTS.forEach((part, j) => {
    for (const which of [0, 1]) {
      const row = (2 * j + which) * ROW;
      last[row] = -1;
      for (let m = 1; m <= MONTHS; m += 1)
        last[row + m] = Math.round(failsBy(part, which === 0 ? part.age : 0, m) * TWO_31) - 1;
      for (let g = 0, m = 1; g < GUIDE; g += 1) {
        while (m < LATER && g * (TWO_31 / GUIDE) > Number(last[row + m])) m += 1;
        guide[(2 * j + which) * GUIDE + g] = m;
      }
    }
  });
  return { last, guide };
};

/**
 * Quantiles of bills of mean 1, by spread; a straight line between two, and the mean of that exactly 1.
 *
 * @param {(u: number) => number} normalQuantile
 */
const bills = (normalQuantile) => {
  const all = new Float64Array(SPREADS.length * (QUANTILES + 1));
  SPREADS.forEach((sigma, s) => {
    const row = all.subarray(s * (QUANTILES + 1), (s + 1) * (QUANTILES + 1));
    for (let i = 0; i <= QUANTILES; i += 1) {
      const u = Math.min(Math.max(i / QUANTILES, 0.25 / QUANTILES), 1 - 0.25 / QUANTILES);
      row[i] = Math.exp(sigma * normalQuantile(u) - (sigma * sigma) / 2);
    }
    let sum = 0;
    for (let i = 0; i < QUANTILES; i += 1) sum += (Number(row[i]) + Number(row[i + 1])) / 2;
    for (let i = 0; i <= QUANTILES; i += 1) row[i] = (Number(row[i]) * QUANTILES) / sum;
  });
  return all;
};

/** @param {(u: number) => number} normalQuantile */
export const tablesOf = (normalQuantile) => ({
  ...lives(),
  quantiles: bills(normalQuantile),
  /** The mean bill at each month's discount. */
  worth: Float64Array.from(
    { length: PARTS.length * ROW },
    (_, i) => Number(PARTS[Math.floor(i / ROW)]?.bill) * Number(discount[i % ROW]),
  ),
  spreadAt: Int32Array.from(PARTS, ({ spread }) => spread * (QUANTILES + 1)),
  numbers: Float64Array.from(
    PARTS.flatMap(({ shape, scale, age, bill, spread }) => [
      shape,
      scale,
      age,
      bill,
      Number(SPREADS[spread]),
    ]),
  ),
  discount,
});

/** Everything in one run of bytes, for the other languages. @param {ReturnType<typeof tablesOf>} tables */
export const bytesOf = ({ quantiles, worth, numbers, discount: factors, last, spreadAt, guide }) =>
  Buffer.concat(
    [quantiles, worth, numbers, factors, last, spreadAt, guide].map((one) =>
      Buffer.from(one.buffer, one.byteOffset, one.byteLength),
    ),
  );

/**
 * What the two vehicles cost on average, by the renewal equation of whole months: h(m) = g(m) + sum of h(m - l) f(l).
 * Exact for the tables, to rounding.
 *
 * @param {ReturnType<typeof tablesOf>} tables
 */
export const expected = ({ last, worth }) => {
  const cost = [0, 0];
  let failures = 0;
  PARTS.forEach((_, j) => {
    /** @type {(which: number, m: number) => number} */
    const chance = (which, m) =>
      (Number(last[(2 * j + which) * ROW + m]) - Number(last[(2 * j + which) * ROW + m - 1])) / TWO_31;
    const h = new Float64Array(MONTHS + 1);
    for (let m = 1; m <= MONTHS; m += 1) {
      let sum = chance(0, m);
      for (let l = 1; l < m; l += 1) sum += Number(h[m - l]) * chance(1, l);
      h[m] = sum;
      failures += sum;
      const vehicle = j < TO_A_VEHICLE ? 0 : 1;
      cost[vehicle] = Number(cost[vehicle]) + sum * Number(worth[j * ROW + m]);
    }
  });
  return { keep: Number(cost[0]), replace: Number(cost[1]), failures };
};
