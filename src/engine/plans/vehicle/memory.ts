/** Something worked out once, and in which particulars. */
interface Recalled {
  readonly particulars: Particulars;
  readonly result: unknown;
}

/** Told apart by identity: words and numbers, or the very same object. */
export type Particulars = readonly unknown[];
export type Memory = Map<unknown, Recalled[]>;

const alike = (a: Particulars, b: Particulars): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
};

/** The result in these particulars, worked out where it is not kept yet. */
const recalledIn = <T>(kept: Recalled[], particulars: Particulars, compute: () => T): T => {
  for (const one of kept) if (alike(one.particulars, particulars)) return one.result as T;
  const result = compute();
  kept.push({ particulars, result });
  return result;
};

/**
 * @param thing an object, or words that stand for one. With the first particular it names what is kept, which is put
 *   there by one caller alone, so its type is known. Words put together anew each time are slow to look up; what they
 *   would be put together from are particulars.
 */
export const recalledFrom = <T>(
  memory: Memory,
  thing: unknown,
  particulars: Particulars,
  compute: () => T,
): T => {
  let kept = memory.get(thing);
  if (kept === undefined) {
    kept = [];
    memory.set(thing, kept);
  }
  return recalledIn(kept, particulars, compute);
};
