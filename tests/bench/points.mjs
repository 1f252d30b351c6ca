/**
 * What the scrambled points bring over plain pseudo-random numbers at the same count of futures, drawn by the product's
 * own code: for the mean of D and for P(D > 0), as the equivalent number of draws, which is the ratio of the variances.
 * Besides, a control variate: failures of each part less their expected number, by the renewal function, at the draw's
 * own ranged numbers; what they are worth is fitted to the draws. Prints; judges nothing.
 */
import { drawing, onlyWays } from './draws.mjs';

const SCRAMBLES = Number(process.argv[2] ?? 24);
/** Plain draws need no scrambles for their error; these only show that both draw the same. */
const PLAIN = Math.max(4, Math.round(SCRAMBLES / 3));
const FUTURES = 4096;
const SEED = 1;
const DEMOS = ['wagon-weekend', 'van-gearbox', 'knife-edge'];
const { demo, subjectOf, drawFutures, drawerOf, expectedOf, jointInputs, contextOf } = await drawing();

/** @typedef {import('../../src/engine/simulation/studyDesign.ts').Subject} Subject */

/** @param {ArrayLike<number>} all */
const mean = (all) => {
  let sum = 0;
  for (let i = 0; i < all.length; i += 1) sum += Number(all[i]);
  return sum / all.length;
};
/** @param {ArrayLike<number>} all */
const variance = (all) => {
  const middle = mean(all);
  let sum = 0;
  for (let i = 0; i < all.length; i += 1) sum += (Number(all[i]) - middle) ** 2;
  return sum / (all.length - 1);
};

/**
 * Failures of each counted part less their expected number at the draw's ranged numbers; columns by part.
 *
 * @param {Subject} subject
 * @param {ReturnType<typeof drawFutures>} drawn
 */
const surplus = (subject, drawn) => {
  const { inputs, facts } = subject.scenario;
  const joint = jointInputs(inputs, subject.unknowns.ranged);
  const places = new Float64Array(subject.unknowns.ranged.length);
  // Inputs that are moved in place are read as a future's, whose remembered figures go by the mean ones.
  const future = drawerOf(subject.scenario, subject.unknowns, 0, 0).moveTo(0, null);
  const counted = subject.counted.flatMap((one, p) => (one ? [{ one, p }] : []));
  const columns = counted.map(({ p }) => Float64Array.from(drawn.failures[p] ?? []));
  for (let i = 0; i < FUTURES; i += 1) {
    for (let r = 0; r < places.length; r += 1) places[r] = Number(drawn.ranged[r]?.[i]);
    joint.setTo(places);
    const ctx = contextOf(joint.inputs, facts, future, 'unrounded');
    counted.forEach(({ one }, c) => {
      const column = /** @type {Float64Array} */ (columns[c]);
      column[i] = Number(column[i]) - expectedOf(one, ctx);
    });
  }
  return columns;
};

/**
 * Least squares of y on columns, all about their means, by the normal equations.
 *
 * @param {Float64Array} y
 * @param {readonly Float64Array[]} columns
 */
const fitted = (y, columns) => {
  const middle = mean(y);
  const middles = columns.map(mean);
  const rows = columns.map((a, i) => {
    /** @type {(b: ArrayLike<number>, of: number) => number} */
    const together = (b, of) => {
      let sum = 0;
      for (let k = 0; k < a.length; k += 1) sum += (Number(a[k]) - Number(middles[i])) * (Number(b[k]) - of);
      return sum;
    };
    return [...columns.map((b, j) => together(b, Number(middles[j]))), together(y, middle)];
  });
  const n = rows.length;
  for (let i = 0; i < n; i += 1) {
    const pivot = /** @type {number[]} */ (rows[i]);
    for (let r = 0; r < n; r += 1) {
      const row = /** @type {number[]} */ (rows[r]);
      const times = r === i || pivot[i] === 0 ? 0 : Number(row[i]) / Number(pivot[i]);
      if (times !== 0) for (let c = i; c <= n; c += 1) row[c] = Number(row[c]) - times * Number(pivot[c]);
    }
  }
  return rows.map((row, i) => (row[i] === 0 ? 0 : Number(row[n]) / Number(row[i])));
};

/** @type {(all: readonly Float64Array[]) => Float64Array} */
const joined = (all) => Float64Array.from(all.flatMap((one) => [...one]));

/** Draws scrambles one after the other. @type {(subject: Subject, most: number, scrambles: number) => { d: Float64Array[], left: Float64Array[] }} */
const drawn = (subject, most, scrambles) => {
  const { scenario, unknowns } = subject;
  const runs = Array.from({ length: scrambles }, (_, scramble) => {
    const setting = { seed: SEED, scramble, from: 0, to: FUTURES };
    const one = drawFutures(subject, setting, drawerOf(scenario, unknowns, SEED, scramble, { most }));
    const [keep, replace] = one.costs;
    return {
      d: Float64Array.from({ length: FUTURES }, (_, i) => Number(replace?.[i]) - Number(keep?.[i])),
      columns: surplus(subject, one),
    };
  });
  const d = runs.map((run) => run.d);
  const parts = runs[0]?.columns.map((_, c) =>
    joined(runs.map((run) => run.columns[c] ?? new Float64Array(0))),
  );
  const worth = fitted(joined(d), parts ?? []);
  const left = runs.map((run) =>
    run.d.map(
      (x, i) => x - run.columns.reduce((sum, column, c) => sum + Number(worth[c]) * Number(column[i]), 0),
    ),
  );
  return { d, left };
};

/** @param {number} x */
const times = (x) => `${x >= 100 ? x.toFixed(0) : x.toFixed(1)}`.padStart(7);

console.log(
  `points: ${SCRAMBLES} scrambles of ${FUTURES} futures; so many plain draws are worth one (a ratio is good to about ` +
    `${Math.round(100 * Math.sqrt(2 / (SCRAMBLES - 1)))} %)`,
);
for (const name of DEMOS) {
  const full = subjectOf(demo(name));
  if (full.keep === null || full.replace === null) continue;
  const subject = onlyWays(full, [full.keep, full.replace]);
  const points = drawn(subject, 128, SCRAMBLES);
  const plain = drawn(subject, 0, PLAIN);
  const all = joined(points.d);
  const p = mean(all.map((x) => (x > 0 ? 1 : 0)));
  // What the mean of as many independent draws would vary by.
  const ofMean = variance(joined(plain.d)) / FUTURES;
  const ofChance = (p * (1 - p)) / FUTURES;
  const apart = Math.abs(mean(all) - mean(joined(plain.d))) / Math.sqrt(ofMean / PLAIN);
  console.log(
    `  ${name}: D ${mean(all).toFixed(1)}, standard deviation ${Math.sqrt(variance(all)).toFixed(0)}, ` +
      `P(D > 0) ${p.toFixed(3)}; the means by points and by plain draws are ${apart.toFixed(1)} errors apart`,
  );
  const chance = variance(points.d.map((d) => mean(d.map((x) => (x > 0 ? 1 : 0)))));
  const line = (/** @type {string} */ what, /** @type {number} */ ratio, /** @type {string} */ more) =>
    console.log(`    ${what.padEnd(34)} mean of D ${times(ratio)}${more}`);
  const sure = p < 0.01 || p > 0.99 ? '   P as good as settled' : `   P ${times(ofChance / chance)}`;
  line('points', ofMean / variance(points.d.map(mean)), sure);
  line('plain, with the control variate', (ofMean * FUTURES) / variance(joined(plain.left)), '');
  line('points, with the control variate', ofMean / variance(points.left.map(mean)), '');
}
