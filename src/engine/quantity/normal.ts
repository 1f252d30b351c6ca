/**
 * The normal distribution, to nearly the precision of a double.
 *
 * Two short published approximations rather than a library: what the registry offers with full precision brings some
 * hundred packages for these two functions, and every report carries the engine. The tests hold both against a library.
 */

/** The polynomial with these coefficients, constant first. */
const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + (coefficients[i] as number);
  return sum;
};

/** Numerators and denominators of algorithm AS 241, PPND16, for the middle, the shoulder and the tail. */
const MIDDLE = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
    67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
    28729.085735721943, 5226.495278852854,
  ],
] as const;
const SHOULDER = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
    0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
    0.0005475938084995345, 1.0507500716444169e-9,
  ],
] as const;
const TAIL = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
    0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
  ],
] as const;

const ratio = ([above, below]: readonly [readonly number[], readonly number[]], x: number): number =>
  polynomial(above, x) / polynomial(below, x);

/**
 * The z that a standard normal stays below with chance u; -Infinity at 0, Infinity at 1, NaN outside.
 * Wichura, algorithm AS 241 (PPND16), Applied Statistics 37(3), 1988: about 1 part in 10^16.
 */
export const normalQuantile = (u: number): number => {
  const q = u - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(MIDDLE, 0.180625 - q * q);
  const tail = q < 0 ? u : 1 - u;
  if (!(tail >= 0)) return Number.NaN;
  if (tail === 0) return q < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-Math.log(tail));
  const z = r <= 5 ? ratio(SHOULDER, r - 1.6) : ratio(TAIL, r - 5);
  return q < 0 ? -z : z;
};

/** Numerators and denominators of Cody's approximation: near the middle, on the shoulder, in the tail. */
const NEAR = [
  [18154.98125334356, 1067.6894854603709, 161.02823106855587, 2.2352520354606837, 0.06568233791820745],
  [45507.78933502673, 10260.932208618979, 976.0985517377767, 47.202581904688245, 1],
] as const;
const SIDE = [
  [
    9842.714838383978, 11602.65143764735, 6848.190450536283, 2494.5375852903726, 597.2702763948002,
    93.50665613217785, 8.883149794388377, 0.39894151208813466, 1.0765576773720192e-8,
  ],
  [
    19685.429676859992, 38912.00328609327, 34900.95272114598, 18615.571640885097, 6485.558298266761,
    1519.3775994075547, 235.387901782625, 22.266688044328117, 1,
  ],
] as const;
const FAR = [
  [
    2.911287495116879e-5, 0.0014216191932278934, 0.022235277870649807, 0.12740116116024736, 0.215898534057957,
    0.023073441764940174,
  ],
  [
    7.297515550839662e-5, 0.0037823963320275824, 0.06598813786892856, 0.4682382124808651, 1.284260096144911,
    1,
  ],
] as const;
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;

/** exp(-y^2/2) without losing the digits that y^2 itself would round away. */
const bell = (y: number): number => {
  const coarse = Math.trunc(y * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(y - coarse) * (y + coarse)) / 2);
};

/**
 * The chance that a standard normal is below z; its relative error stays small far into the lower tail.
 * Cody, "Rational Chebyshev Approximation for the Error Function", Mathematics of Computation 23(107), 1969, with the
 * coefficients of algorithm 715 (ACM Transactions on Mathematical Software 19(1), 1993).
 */
export const normalChance = (z: number): number => {
  const y = Math.abs(z);
  if (y <= 0.67448975) return 0.5 + z * ratio(NEAR, z * z);
  let beyond: number;
  if (y <= Math.sqrt(32)) beyond = bell(y) * ratio(SIDE, y);
  else if (y < 40) {
    const square = 1 / (y * y);
    beyond = (bell(y) * (ONE_BY_ROOT_TWO_PI - square * ratio(FAR, square))) / y;
  } else beyond = Number.isNaN(z) ? z : 0;
  return z < 0 ? beyond : 1 - beyond;
};
