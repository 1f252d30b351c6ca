import { remember } from '../quantity/remember.ts';
import { philox, streamOf } from './counter.ts';
import { BITS, directionNumbers } from './directions.ts';

/** Points of the unit cube by index. */
export interface Points {
  /** Writes the point's coordinates, each strictly between 0 and 1, into the first places of `out`. */
  readonly fill: (index: number, out: Float64Array) => void;
}

/** The bits of a word from the other end. */
const reversed = (word: number): number => {
  let x = word;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return (x >>> 16) | (x << 16);
};

/** The direction numbers from the other end, by bit, then by dimension: one step reads one stretch. */
const reversedDirections = remember(
  (dimensions: number): Int32Array => {
    const table = new Int32Array(BITS * dimensions);
    directionNumbers(dimensions).forEach((words, d) => {
      words.forEach((word, bit) => {
        table[bit * dimensions + d] = reversed(word);
      });
    });
    return table;
  },
  ([a], [b]) => a === b,
  4,
);

/**
 * Walks the sequence in Gray code order: the state at an index is the exclusive or of the direction numbers at the
 * bits of index ^ (index >>> 1), so that the next index changes one of them. The state is kept with its bits reversed,
 * for the scramble wants them so.
 */
const walk = (
  dimensions: number,
): { readonly state: Int32Array; readonly moveTo: (index: number) => void } => {
  const state = new Int32Array(dimensions);
  const table = reversedDirections(dimensions);
  let at = 0;
  const moveTo = (index: number): void => {
    let changed = (at ^ (at >>> 1) ^ index ^ (index >>> 1)) >>> 0;
    at = index >>> 0;
    while (changed !== 0) {
      const bit = 31 - Math.clz32(changed);
      changed = (changed ^ (1 << bit)) >>> 0;
      const from = bit * dimensions;
      for (let d = 0; d < dimensions; d++) state[d] = (state[d] as number) ^ (table[from + d] as number);
    }
  };
  return { state, moveTo };
};

const TWO_32 = 2 ** 32;
/** A point stands in the middle of its 2^-32, so that it is never 0 or 1. */
const inside = (word: number): number => ((word >>> 0) + 0.5) / TWO_32;

/**
 * Sobol points without a scramble, in Gray code order from the origin (which is moved, like every point, by 2^-33).
 * Sobol (1967) in the form of Antonov and Saleev (1979), direction numbers of Joe and Kuo (2008).
 *
 * @param dimensions 0 to 128
 */
export const plainSobol = (dimensions: number): Points => {
  const { state, moveTo } = walk(dimensions);
  return {
    fill: (index, out) => {
      moveTo(index);
      for (let d = 0; d < dimensions; d++) out[d] = inside(reversed(state[d] as number));
    },
  };
};

const SCRAMBLE = streamOf('scramble of points');

/** For each dimension one word that chooses its scramble. */
const scrambleSeeds = (dimensions: number, seed: number, scramble: number): Int32Array => {
  const words = new Uint32Array(4);
  return Int32Array.from({ length: dimensions }, (_, d) => {
    philox(d, SCRAMBLE | 0, scramble, 0, seed | 0, (seed / TWO_32) | 0, words);
    return words[0] as number;
  });
};

/**
 * Sobol points under a nested uniform scramble: of the first 2^k points each interval of length 2^-k still holds one in
 * every dimension, yet each point alone is uniform, so that a mean over them has no bias and the spread over scrambles
 * tells its error (Owen, "Randomly Permuted (t,m,s)-Nets and (t,s)-Sequences", 1995).
 *
 * Each bit is flipped by a hash of the bits above it, as by Laine and Karras (2011) and Burley, "Practical Hash-based
 * Owen Scrambling", Journal of Computer Graphics Techniques 9(4), 2020; the hash is the better mixing one of Vegdahl,
 * "Building a Better LK Hash" (2021). On reversed bits a product carries only upwards, from more to less significant.
 *
 * @param dimensions 0 to 128; a dimension's coordinates do not depend on how many follow it
 * @param seed a whole number from 0 to 2^53 - 1
 * @param scramble which of the independent scrambles under this seed, from 0
 * @returns points by index (0 to 2^32 - 1), in any order; a step to the next index is the quickest
 */
export const scrambledSobol = (dimensions: number, seed: number, scramble: number): Points => {
  const { state, moveTo } = walk(dimensions);
  const seeds = scrambleSeeds(dimensions, seed, scramble);
  return {
    fill: (index, out) => {
      moveTo(index);
      for (let d = 0; d < dimensions; d++) {
        const own = seeds[d] as number;
        let x = state[d] as number;
        x ^= Math.imul(x, 0x3d20adea);
        x = (x + own) | 0;
        x = Math.imul(x, (own >>> 16) | 1);
        x ^= Math.imul(x, 0x05526c56);
        x ^= Math.imul(x, 0x53a22864);
        out[d] = inside(reversed(x));
      }
    },
  };
};
