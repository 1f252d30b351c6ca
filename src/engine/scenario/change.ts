import type { Inputs } from './inputs.ts';

type Tree = { readonly [key: string]: unknown } | readonly unknown[];

const childOf = (tree: unknown, step: string): unknown =>
  tree !== null && typeof tree === 'object' ? (tree as { readonly [key: string]: unknown })[step] : undefined;

/** The number at a dotted key of the inputs, such as "replacement.0.payment.apr". Throws RangeError where there is none. */
export const inputAt = (inputs: Inputs, key: string): number => {
  const found = key.split('.').reduce<unknown>(childOf, inputs);
  if (typeof found !== 'number') throw new RangeError(`there is no number at ${key}`);
  return found;
};

const changed = (tree: Tree, steps: readonly string[], value: number): Tree => {
  const [step, ...rest] = steps as [string, ...string[]];
  const child = childOf(tree, step);
  const next = rest.length === 0 ? value : changed(child as Tree, rest, value);
  return Array.isArray(tree)
    ? tree.map((item, i) => (String(i) === step ? next : item))
    : { ...tree, [step]: next };
};

/**
 * The same inputs with another number at a dotted key; everything off that path is shared, nothing is changed in place.
 * Throws RangeError where there is no number.
 */
export const withInput = (inputs: Inputs, key: string, value: number): Inputs => {
  inputAt(inputs, key);
  return changed(inputs as unknown as Tree, key.split('.'), value) as unknown as Inputs;
};
