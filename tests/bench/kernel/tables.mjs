/**
 * The kernel by tables: see model.mjs. The C version beside it is the same, line by line. The sizes are those of
 * model.mjs, written as numbers, for an imported constant is read anew each time.
 */

const MONTHS = 120;
const TO_A_VEHICLE = 12;
const PARTS = 24;
/** A part's two rows of 128 months, and its two of 2,048 places to start from. */
const ROW = 7;
const ROWS = 8;
const NEW = 128;
const GUIDES = 12;
const NEW_GUIDE = 2048;
const GUIDE_SHIFT = 31 - 11;
const BILL_SHIFT = 32 - 12;
const FRACTION = 2 ** 20 - 1;
const STEP = 2 ** -20;

/**
 * The kernel over one set of tables, which the compiled code then holds as constants: they are read before the loops
 * begin, for a table first read within one is looked up anew each time, where it lies and how long it is. It draws so
 * many futures, both vehicles in each; the generator is written out in place, its state in four variables.
 *
 * @param {ReturnType<typeof import('./model.mjs').tablesOf>} tables
 * @returns {(n: number, state: Int32Array, cost: Float64Array, from: number) => number} moves the state on, writes each
 *   future's two costs from place `from` on, and says how many numbers were drawn
 */
export const byTables = (tables) => (n, state, cost, from) => {
  const { last, guide, quantiles, worth, spreadAt } = tables;
  let s0 = /** @type {number} */ (state[0]) | 0;
  let s1 = /** @type {number} */ (state[1]) | 0;
  let s2 = /** @type {number} */ (state[2]) | 0;
  let s3 = /** @type {number} */ (state[3]) | 0;
  let events = 0;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < PARTS; j += 1) {
      if (j === TO_A_VEHICLE) {
        cost[from + 2 * i] = sum;
        sum = 0;
      }
      let row = j << ROWS;
      const spread = /** @type {number} */ (spreadAt[j]);
      // The part that is in.
      let t = (s0 + s3) | 0;
      let u = (((t << 7) | (t >>> 25)) + s0) >>> 1;
      t = s1 << 9;
      s2 ^= s0;
      s3 ^= s1;
      s1 ^= s2;
      s0 ^= s3;
      s2 ^= t;
      s3 = (s3 << 11) | (s3 >>> 21);
      let m = /** @type {number} */ (guide[(j << GUIDES) | (u >>> GUIDE_SHIFT)]);
      while (u > /** @type {number} */ (last[row | m])) m = (m + 1) | 0;
      row |= NEW;
      let month = m;
      while (month <= MONTHS) {
        events = (events + 1) | 0;
        // What it costs.
        t = (s0 + s3) | 0;
        const w = (((t << 7) | (t >>> 25)) + s0) | 0;
        t = s1 << 9;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = (s3 << 11) | (s3 >>> 21);
        const at = (spread + (w >>> BILL_SHIFT)) | 0;
        const low = /** @type {number} */ (quantiles[at]);
        const high = /** @type {number} */ (quantiles[at + 1]);
        const bill = low + (w & FRACTION) * STEP * (high - low);
        sum += bill * /** @type {number} */ (worth[(j << ROW) | month]);
        // The new part.
        t = (s0 + s3) | 0;
        u = (((t << 7) | (t >>> 25)) + s0) >>> 1;
        t = s1 << 9;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = (s3 << 11) | (s3 >>> 21);
        m = /** @type {number} */ (guide[(j << GUIDES) | NEW_GUIDE | (u >>> GUIDE_SHIFT)]);
        while (u > /** @type {number} */ (last[row | m])) m = (m + 1) | 0;
        month = (month + m) | 0;
      }
    }
    cost[from + 2 * i + 1] = sum;
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
  return n * PARTS + 2 * events;
};
