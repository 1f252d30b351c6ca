import type { Inputs } from './inputs.ts';

type Tree = Readonly<Record<string, unknown>>;
type Node = Tree | readonly unknown[];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

const child = (node: unknown, step: string, key: string): unknown => {
  if (!isNode(node) || !Object.hasOwn(node, step)) throw new RangeError(`No input "${key}"`);
  return (node as Tree)[step];
};

/** The number at a dotted key of the inputs, such as "replacement.0.payment.apr". Throws where there is none. */
export const inputAt = (inputs: Inputs, key: string): number => {
  const value = key.split('.').reduce<unknown>((node, step) => child(node, step, key), inputs);
  if (typeof value !== 'number') throw new RangeError(`Input "${key}" is not a number`);
  return value;
};

/** What stands in a place before its value does. */
const BLANK = {};

/** A list anew, of the kind that may hold anything: an empty one would count as one of whole numbers. */
const list = (items: readonly unknown[], change: (item: unknown, i: number) => unknown): unknown[] => {
  const copy: unknown[] = [BLANK];
  copy.length = 0;
  items.forEach((item, i) => void copy.push(change(item, i)));
  return copy;
};

/**
 * An object anew, key by key, and every field twice, a number (or none) as a fraction first. What reads inputs runs tens of thousands
 * of times, and a compiler tells objects apart by how they were put together, by whether a number was ever more than a
 * whole one, and by whether a field was ever written again: all that it has compiled is thrown away whenever one of another
 * kind turns up. Built here they are all of one kind.
 */
const rebuilt = (node: Tree, change: (value: unknown, name: string) => unknown): Tree => {
  const copy: Record<string, unknown> = {};
  for (const name in node) {
    const value = change(node[name], name);
    copy[name] = typeof value === 'number' || value === null ? 0.5 : BLANK;
    copy[name] = value;
  }
  return copy;
};

/** Inputs, or a part of them, copied all the way down; of the same kind as what `withInput` makes of them. */
export const copyOf = <T>(value: T): T => {
  if (Array.isArray(value)) return list(value, copyOf) as T;
  return isNode(value) ? (rebuilt(value as Tree, copyOf) as T) : value;
};

const copyWith = (node: unknown, steps: readonly string[], value: number, key: string): unknown => {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const below = copyWith(child(node, step, key), rest, value, key);
  if (Array.isArray(node)) return list(node, (item, i) => (String(i) === step ? below : item));
  return rebuilt(node as Tree, (value, name) => (name === step ? below : value));
};

/** The same inputs with one number changed; what is not on the way to it is shared. Throws where there is no number. */
export const withInput = (inputs: Inputs, key: string, value: number): Inputs => {
  inputAt(inputs, key);
  return copyWith(inputs, key.split('.'), value, key) as Inputs;
};
