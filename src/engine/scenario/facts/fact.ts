/**
 * What the files of data beside this have in common. They hold what others have published or what custom has it, and no
 * code; each is read in one place, which gives it its type.
 */

/**
 * How well a fact is known. `read`: in the source itself (a law, an agency's file), some through republishers.
 * `secondary`: in a chart or summary that names the source. `memory`: recalled. `stated`: written in the household's
 * own file.
 */
export type Evidence = 'read' | 'secondary' | 'memory' | 'stated';

/** Where a fact comes from, and how well that is known. */
export interface Sourced {
  readonly source: string;
  readonly evidence: Evidence;
}

/** A published table or figure. */
export interface Fact<Value> extends Sourced {
  /** What it is. */
  readonly about: string;
  readonly unit: string;
  /** The year or month it speaks of or was published in: "2019", "2025-07". */
  readonly date: string;
  /** What a reader should know of it. */
  readonly note?: string;
  readonly value: Value;
}

/**
 * A type as the compiler sees it in a file of data, where any text is a `string`. So `data satisfies AsRead<T>` holds
 * fields and numbers to T; the words a field may have, and fields that T does not know, are held to it by a test.
 */
export type AsRead<T> = T extends string
  ? string
  : T extends object
    ? { readonly [Key in keyof T]: AsRead<T[Key]> }
    : T;
