import type { Contract } from '../../cashflow/posting.ts';
import type { Context } from './context.ts';

/** What a recipe may be told: plain data, and other recipes. */
export type Ingredient =
  | string
  | number
  | boolean
  | null
  | undefined
  | readonly Ingredient[]
  | { readonly [key: string]: Ingredient }
  | Recipe<unknown>;

/**
 * How something is worked out from the numbers, before there are any: a function and what it is told besides them. It is
 * the same one wherever function and arguments are, so what it gives can be shared, and kept while nothing that it read
 * has changed.
 */
export interface Recipe<T> {
  /** Tells it from every other one. */
  readonly id: number;
  /** What it gives at these numbers; asked again it is not worked out again. */
  readonly from: (ctx: Context) => T;
  /** The function behind it. */
  readonly by: object;
  /** As it stands among the arguments of another. */
  readonly toJSON: () => string;
}

/** Recipes by function and arguments; those of a function that is gone go with it. */
const known = new WeakMap<object, Map<string, Recipe<unknown>>>();
let last = 0;

/**
 * @param of a pure function. One that stands in a module gives the same recipe again for the same arguments; one made on
 *   the spot is another one each time
 * @param args plain data, no number that was worked out from inputs
 */
export const recipe = <T, A extends readonly Ingredient[]>(
  of: (ctx: Context, ...args: A) => T,
  ...args: A
): Recipe<T> => {
  const byArguments = known.get(of) ?? new Map<string, Recipe<unknown>>();
  known.set(of, byArguments);
  const told = JSON.stringify(args);
  const before = byArguments.get(told);
  if (before) return before as Recipe<T>;
  last += 1;
  const id = last;
  let at: Context | null = null;
  let latest: T;
  const made: Recipe<T> = {
    id,
    from: (ctx) => {
      if (at !== ctx) {
        latest = of(ctx, ...args);
        at = ctx;
      }
      return latest;
    },
    by: of,
    toJSON: () => `#${id}`,
  };
  byArguments.set(told, made);
  return made;
};

/** Contracts to be put together from numbers. */
export type Piece = Recipe<readonly Contract[]>;

/** The contracts of pieces, in order. */
export const contractsOf = (pieces: readonly Piece[], ctx: Context): Contract[] =>
  pieces.flatMap((piece) => piece.from(ctx));
