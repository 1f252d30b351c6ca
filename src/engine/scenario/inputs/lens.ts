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

/** Inputs, or a part of them, copied all the way down; what stood in two places at once stands in each by itself. */
export const copyOf = <T>(value: T): T => {
  if (Array.isArray(value)) return value.map(copyOf) as T;
  return isNode(value)
    ? (Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copyOf(inner)])) as T)
    : value;
};

const copyWith = (node: unknown, steps: readonly string[], value: number, key: string): unknown => {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const below = copyWith(child(node, step, key), rest, value, key);
  if (Array.isArray(node)) return node.map((item: unknown, i) => (String(i) === step ? below : item));
  return { ...(node as Tree), [step]: below };
};

/** The same inputs with one number changed; what is not on the way to it is shared. Throws where there is no number. */
export const withInput = (inputs: Inputs, key: string, value: number): Inputs => {
  inputAt(inputs, key);
  return copyWith(inputs, key.split('.'), value, key) as Inputs;
};
