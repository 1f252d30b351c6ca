/**
 * Remembers the latest results of a pure function. A solver asks for the same loan or the same renewal increments
 * thousands of times while it moves something else; the answer cannot differ, only come sooner.
 *
 * @param same whether two lists of arguments give the same result
 * @param most how many results are kept; few, for they are looked through one by one
 */
export const remember = <A extends readonly unknown[], R>(
  compute: (...args: A) => R,
  same: (a: A, b: A) => boolean,
  most = 24,
): ((...args: A) => R) => {
  const kept: { readonly args: A; readonly result: R }[] = [];
  let next = 0;
  return (...args) => {
    for (const one of kept) if (same(one.args, args)) return one.result;
    const result = compute(...args);
    kept[next] = { args, result };
    next = (next + 1) % most;
    return result;
  };
};

/** The same of one number, for who asks for the same one several times on end. */
export const latest = <T>(compute: (at: number) => T): ((at: number) => T) => {
  let known: { readonly at: number; readonly result: T } | null = null;
  return (at) => {
    if (known?.at !== at) known = { at, result: compute(at) };
    return known.result;
  };
};
