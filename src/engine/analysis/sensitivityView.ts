import type { Quantity } from '../scenario/inputs/scenario.ts';

export type BreakEvenStatus = 'never' | 'always' | 'one' | 'several';

/** Where the answer tips when one number moves and all others stay. */
export interface BreakEven {
  readonly quantity: Quantity;
  /** never: the answer stays the same over the whole range; always: D is nil everywhere. */
  readonly status: BreakEvenStatus;
  /** In the quantity's unit, nearest to today's value first. */
  readonly roots: readonly {
    readonly at: number;
    readonly kind: 'root' | 'jump' | 'touch';
    /** How far from today's value: ln(at / today); at nil or below, steps of the number's own (see `howFar`). */
    readonly distance: number;
    /** Which side is cheaper just above it. */
    readonly above: 'keep' | 'replace';
  }[];
  /** D per unit at today's value, for pictures; currency units per unit. */
  readonly slope: number;
}

/** D when one number is moved down and up, all others held. */
export interface Swing {
  readonly quantity: Quantity;
  readonly low: { readonly value: number; readonly difference: number };
  readonly high: { readonly value: number; readonly difference: number };
}

/** The zero contour of D over two inputs. */
export interface BreakEvenLine {
  readonly x: Quantity;
  readonly y: Quantity;
  /** For each x the y at which D is nil; null where there is none within y's range. */
  readonly points: readonly { readonly x: number; readonly y: number | null }[];
  readonly today: { readonly x: number; readonly y: number };
  readonly keepIs: 'above' | 'below';
}
