import { lawOf } from '../plans/vehicle/rangeLaws.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import { copyOf } from '../scenario/inputs/lens.ts';
import type { Quantity } from '../scenario/inputs/scenario.ts';

type Tree = Record<string, unknown>;

/**
 * Inputs whose ranged numbers can be set again and again, in place: a copy made for one run of draws and read by nobody
 * else, for copying the tree anew would take longer than evaluating it.
 */
export interface JointInputs {
  readonly inputs: Inputs;
  /** Sets every ranged number to the value at its place in its range. */
  readonly setTo: (places: Float64Array) => void;
  /** Dotted keys of every number that is set. */
  readonly moved: readonly string[];
}

/** Where a number stands: the object that holds it, and its key there. */
const holderOf = (inputs: Inputs, key: string): { readonly holder: Tree; readonly last: string } => {
  const steps = key.split('.');
  const last = steps.pop() ?? '';
  let holder = inputs as unknown as Tree;
  for (const step of steps) holder = holder[step] as Tree;
  return { holder, last };
};

/** Numbers outside what a field allows are held at its limit; whole numbers are rounded. */
const allowed = ({ min, max, integer }: Quantity, value: number): number =>
  Math.min(max, Math.max(min, integer ? Math.round(value) : value));

/** The places that a number moves: where no file says more, its own. */
const movesOf = ({ key, moves }: Quantity): Quantity['moves'] =>
  moves.length > 0 ? moves : [{ key, times: 1, plus: 0 }];

/** A private copy of the inputs with its ranged numbers at hand. */
export const jointInputs = (base: Inputs, ranged: readonly Quantity[]): JointInputs => {
  const inputs = copyOf(base);
  const each = ranged.map((quantity) => ({
    quantity,
    law: lawOf(quantity.range as NonNullable<Quantity['range']>),
    places: movesOf(quantity).map(({ key, times, plus }) => ({ ...holderOf(inputs, key), times, plus })),
  }));
  const moved = ranged.flatMap((quantity) => movesOf(quantity).map(({ key }) => key));
  return {
    inputs,
    moved,
    setTo: (at) => {
      each.forEach(({ quantity, law, places }, r) => {
        const value = allowed(quantity, law.quantile(at[r] as number));
        for (const { holder, last, times, plus } of places) holder[last] = value * times + plus;
      });
    },
  };
};
