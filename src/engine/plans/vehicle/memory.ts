import type { Household, Inputs } from '../../scenario/inputs/inputs.ts';

/** Something worked out once, and in which particulars. */
export interface Recalled {
  readonly particulars: Particulars;
  readonly result: unknown;
}

/** Told apart by identity: words and numbers, or the very same object. */
export type Particulars = readonly unknown[];
export type Memory = Map<unknown, Recalled[]>;

/** Fields of an object that is no list. */
type FieldsIn<T> = T extends readonly unknown[] ? never : T extends object ? keyof T & string : never;

/** A field, or one of its own: "estimate", "estimate.lines". */
type Field<T> = { [K in keyof T & string]: K | `${K}.${FieldsIn<NonNullable<T[K]>>}` }[keyof T & string];

/**
 * By which inputs something is worked out: fields of what it is about, of the household and of the present vehicle, and
 * whole parts of the inputs. A range on none of them leaves it as it is.
 */
export interface Reads<T extends object> {
  readonly own: readonly Field<T>[];
  readonly household: readonly Field<Household>[];
  readonly vehicle?: readonly Field<Inputs['vehicle']>[];
  readonly inputs?: readonly Field<Inputs>[];
}

/** The same, of whatever it is about. */
export type ReadsOfAny = { readonly [K in keyof Reads<object>]: readonly string[] };

const alike = (a: Particulars, b: Particulars): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
};

/**
 * The result in these particulars, worked out where it is not kept yet; no more than `most` are kept.
 *
 * @param compute hears whether its result is kept
 */
export const recalledIn = <T>(
  kept: Recalled[],
  particulars: Particulars,
  compute: (isKept: boolean) => T,
  most = Number.POSITIVE_INFINITY,
): T => {
  for (const one of kept) if (alike(one.particulars, particulars)) return one.result as T;
  if (kept.length >= most) return compute(false);
  const result = compute(true);
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
