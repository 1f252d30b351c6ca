import { normalChance, normalQuantile } from './normal.ts';

/** Two quantities, by their place, and the rank correlation (Spearman's) they shall have, from -1 to 1. */
export interface RankCorrelation {
  readonly a: number;
  readonly b: number;
  readonly rank: number;
}

/** Makes independent uniforms dependent, each of them staying uniform. */
export interface Copula {
  /** In place, on the first entries; each must lie strictly between 0 and 1. Later entries are left alone. */
  readonly apply: (u: Float64Array) => void;
}

/** A pivot below this is none: the matrix is not positive definite, or so nearly not that rounding decides. */
const LEAST_PIVOT = 1e-10;

/** Far out the chance would round to 0 or 1, where a quantile has no value. */
const inside = (u: number): number => Math.min(Math.max(u, Number.MIN_VALUE), 1 - Number.EPSILON / 2);

/** Pearson's correlation of the normals behind ranks that correlate by `rank`: rho = 2 sin(pi rank/6). */
const normalCorrelation = (rank: number): number => 2 * Math.sin((Math.PI * rank) / 6);

/** The lower Cholesky factor of the correlation matrix, row by row; null when it is not positive definite. */
const factorOf = (size: number, entries: readonly RankCorrelation[]): Float64Array[] | null => {
  const rows = Array.from({ length: size }, (_, i) => {
    const row = new Float64Array(size);
    row[i] = 1;
    return row;
  });
  for (const { a, b, rank } of entries)
    (rows[Math.max(a, b)] as Float64Array)[Math.min(a, b)] = normalCorrelation(rank);
  for (let i = 0; i < size; i++) {
    const row = rows[i] as Float64Array;
    for (let j = 0; j <= i; j++) {
      const other = rows[j] as Float64Array;
      let rest = row[j] as number;
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * (other[k] as number);
      if (j < i) row[j] = rest / (other[j] as number);
      else if (rest < LEAST_PIVOT) return null;
      else row[i] = Math.sqrt(rest);
    }
  }
  return rows;
};

/** Entries that make no sense alone or beside another: of one quantity with itself, out of range, said twice. */
const senseless = (size: number, entries: readonly RankCorrelation[]): RankCorrelation[] => {
  const isPlace = (x: number): boolean => Number.isInteger(x) && x >= 0 && x < size;
  const pair = ({ a, b }: RankCorrelation): string => `${Math.min(a, b)} ${Math.max(a, b)}`;
  return entries.filter(
    (one) =>
      !(isPlace(one.a) && isPlace(one.b) && one.a !== one.b && Math.abs(one.rank) <= 1) ||
      entries.some((other) => other !== one && pair(other) === pair(one)),
  );
};

/**
 * The entries among a smallest set of quantities whose correlations cannot hold together: without any one of these
 * quantities the others' can. Does not depend on the order of the entries.
 */
const atFault = (size: number, entries: readonly RankCorrelation[]): readonly RankCorrelation[] => {
  let kept = entries;
  for (let place = size - 1; place >= 0; place--) {
    const without = kept.filter(({ a, b }) => a !== place && b !== place);
    if (factorOf(size, without) === null) kept = without;
  }
  return kept;
};

/**
 * The Gaussian copula with these rank correlations; pairs not named are independent before the named ones. A quantity
 * of which nothing is said keeps its uniforms to the last bit, and so does the first of a correlated set.
 *
 * @param size how many uniforms there are
 * @param entries each pair once, in any order, 0 <= a, b < size
 * @returns the copula, or the entries at fault: senseless ones, else those among a smallest set of quantities that is not
 * positive definite after rho = 2 sin(pi rank/6) (a correlation of exactly 1 or -1 is not)
 */
export const copulaOf = (
  size: number,
  entries: readonly RankCorrelation[],
): Copula | { readonly refused: readonly RankCorrelation[] } => {
  const wrong = senseless(size, entries);
  if (wrong.length > 0) return { refused: wrong };
  const rows = factorOf(size, entries);
  if (rows === null) return { refused: atFault(size, entries) };
  // Only rows with something left of the diagonal move; only columns that such a row reads need a normal.
  const moved = rows.flatMap((row, i) => {
    const reads = [...row.keys()].filter((j) => j <= i && row[j] !== 0);
    return reads.length > 1 ? [{ i, reads, weights: reads.map((j) => row[j] as number) }] : [];
  });
  const read = [...new Set(moved.flatMap(({ reads }) => reads))];
  const z = new Float64Array(size);
  return {
    apply: (u) => {
      for (const j of read) z[j] = normalQuantile(u[j] as number);
      for (const { i, reads, weights } of moved) {
        let sum = 0;
        for (let k = 0; k < reads.length; k++)
          sum += (weights[k] as number) * (z[reads[k] as number] as number);
        u[i] = inside(normalChance(sum));
      }
    },
  };
};
