/** The kernel by tables: see model.mjs. The C version beside it is the same, line by line. */
import { GUIDE_BITS, MONTHS, PARTS, QUANTILE_BITS, ROW, TO_A_VEHICLE } from './model.mjs';

const PART_COUNT = PARTS.length;
const GUIDE_SHIFT = 31 - GUIDE_BITS;
const BILL_SHIFT = 32 - QUANTILE_BITS;
const FRACTION = 2 ** BILL_SHIFT - 1;
const STEP = 2 ** -BILL_SHIFT;

/**
 * Draws so many futures, both vehicles in each. The generator is written out in place, its state in four variables.
 *
 * @param {ReturnType<typeof import('./model.mjs').tablesOf>} tables
 * @param {number} n
 * @param {Int32Array} state moved on
 * @param {Float64Array} cost by future: the first vehicle's and the second's
 * @returns {number} how many numbers were drawn
 */
export const drawByTables = ({ last, guide, quantiles, worth, spreadAt }, n, state, cost) => {
  let s0 = /** @type {number} */ (state[0]) | 0;
  let s1 = /** @type {number} */ (state[1]) | 0;
  let s2 = /** @type {number} */ (state[2]) | 0;
  let s3 = /** @type {number} */ (state[3]) | 0;
  let events = 0;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < PART_COUNT; j += 1) {
      if (j === TO_A_VEHICLE) {
        cost[2 * i] = sum;
        sum = 0;
      }
      let row = 2 * j * ROW;
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
      let m = /** @type {number} */ (guide[((2 * j) << GUIDE_BITS) | (u >>> GUIDE_SHIFT)]);
      while (u > /** @type {number} */ (last[row + m])) m = (m + 1) | 0;
      row += ROW;
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
        const at = spread + (w >>> BILL_SHIFT);
        const low = /** @type {number} */ (quantiles[at]);
        const bill = low + (w & FRACTION) * STEP * /** @type {number} */ ((quantiles[at + 1]) - low);
        sum += bill * /** @type {number} */ (worth[j * ROW + month]);
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
        m = /** @type {number} */ (guide[((2 * j + 1) << GUIDE_BITS) | (u >>> GUIDE_SHIFT)]);
        while (u > /** @type {number} */ (last[row + m])) m = (m + 1) | 0;
        month = (month + m) | 0;
      }
    }
    cost[2 * i + 1] = sum;
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
  return n * PART_COUNT + 2 * events;
};
