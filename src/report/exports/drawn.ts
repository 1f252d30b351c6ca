import type { Chances } from '../../engine/analysis/chances.ts';

/** More digits than any drawn figure has; the last ones of a float differ from machine to machine. */
const DIGITS = 9;

/** The same data with every number cut to nine significant digits; what has fewer stays as it is. */
export const significant = <T>(value: T): T => {
  if (typeof value === 'number') return Number(value.toPrecision(DIGITS)) as T;
  if (Array.isArray(value)) return value.map(significant) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, significant(v)])) as T;
};

/**
 * All that drawn futures say, as plain data: the ranged numbers by key (they stand in full among the quantities), all
 * else as the engine has it. `setAside`: whether what is put by each month may be told; the fund needed rests on it.
 */
export const drawnJson = (c: Chances, setAside: boolean) =>
  significant({
    ...c,
    ranged: c.ranged.map((q) => q.key),
    lumpy: c.lumpy.map((way) => {
      const { aMonth, needed, ...fund } = way.fund;
      return { ...way, fund: setAside ? way.fund : fund };
    }),
  });
