/**
 * Remembers the latest results of a pure function by a key of its arguments. A solver asks for the same renewal
 * increments thousands of times while it moves something else; the answer cannot differ, only come sooner.
 */
export const remember = <A extends readonly unknown[], R>(
  compute: (...args: A) => R,
  keyOf: (...args: A) => string | number,
  most = 256,
): ((...args: A) => R) => {
  const kept = new Map<string | number, R>();
  return (...args) => {
    const key = keyOf(...args);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const result = compute(...args);
    if (kept.size >= most) kept.delete(kept.keys().next().value as string | number);
    kept.set(key, result);
    return result;
  };
};
