/**
 * Chance without a state: each number is a function of where it stands, so that nothing drawn before it can move it.
 * Philox 4x32-10: Salmon, Moraes, Dror and Shaw, "Parallel Random Numbers: As Easy as 1, 2, 3", SC'11, 2011.
 */

/** The upper 32 bits of a times b, both taken as unsigned, in 16-bit pieces: no sum below reaches 2^32. */
const highProduct = (a: number, b: number): number => {
  const al = a & 0xffff;
  const ah = a >>> 16;
  const bl = b & 0xffff;
  const bh = b >>> 16;
  const low = al * bl;
  const middle = ah * bl + (low >>> 16);
  const other = al * bh + (middle & 0xffff);
  return ah * bh + (middle >>> 16) + (other >>> 16);
};

const ROUNDS = 10;
const M0 = 0xd2511f53;
const M1 = 0xcd9e8d57;
const WEYL0 = 0x9e3779b9;
const WEYL1 = 0xbb67ae85;

/**
 * The block of four 32-bit words at a counter of four words under a key of two, written into `out` (unsigned). All
 * words are taken modulo 2^32.
 */
export const philox = (
  c0: number,
  c1: number,
  c2: number,
  c3: number,
  k0: number,
  k1: number,
  out: Uint32Array,
): void => {
  let x0 = c0 | 0;
  let x1 = c1 | 0;
  let x2 = c2 | 0;
  let x3 = c3 | 0;
  let key0 = k0 | 0;
  let key1 = k1 | 0;
  for (let round = 0; round < ROUNDS; round++) {
    const high0 = highProduct(M0, x0);
    const low0 = Math.imul(M0, x0);
    const high1 = highProduct(M1, x2);
    const low1 = Math.imul(M1, x2);
    x0 = high1 ^ x1 ^ key0;
    x1 = low1;
    x2 = high0 ^ x3 ^ key1;
    x3 = low0;
    key0 = (key0 + WEYL0) | 0;
    key1 = (key1 + WEYL1) | 0;
  }
  out[0] = x0;
  out[1] = x1;
  out[2] = x2;
  out[3] = x3;
};

const block = new Uint32Array(4);
const TWO_32 = 2 ** 32;

/**
 * The i-th number of a stream in a draw: uniform, strictly between 0 and 1, with 52 random bits.
 *
 * @param seed a whole number from 0 to 2^53 - 1, all of whose bits count
 * @param draw a whole number from 0 to 2^53 - 1
 * @param stream 32 bits, see `streamOf`
 * @param i which number of the stream, below 2^32
 */
export const uniformAt = (seed: number, draw: number, stream: number, i: number): number => {
  // Each taken modulo 2^32 here already: given one kind of number alone, the optimizing compiler compiles it once.
  philox(i, stream | 0, draw | 0, (draw / TWO_32) | 0, seed | 0, (seed / TWO_32) | 0, block);
  // 52 bits and a half, for with 53 the largest would round to 1.
  return ((block[0] as number) * 2 ** 20 + ((block[1] as number) >>> 12) + 0.5) / 2 ** 52;
};

/**
 * The 32-bit number of the stream with this name, the same on every machine: FNV-1a over the name's UTF-16 units
 * (Fowler, Noll and Vo), then the finisher of MurmurHash3 (Appleby), because FNV's low bits mix late. Streams are
 * found by name, never by order in a file.
 */
export const streamOf = (name: string): number => {
  let h = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) {
    const unit = name.charCodeAt(i);
    h = Math.imul(h ^ (unit & 0xff), 0x01000193);
    h = Math.imul(h ^ (unit >>> 8), 0x01000193);
  }
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};
