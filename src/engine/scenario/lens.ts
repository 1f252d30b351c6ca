import type { Inputs } from './inputs.ts';
import type { Quantity } from './scenario.ts';

type Node = Readonly<Record<string, unknown>> | readonly unknown[];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

const child = (node: unknown, step: string, key: string): unknown => {
  if (!isNode(node) || !Object.hasOwn(node, step)) throw new RangeError(`No input "${key}"`);
  return (node as Readonly<Record<string, unknown>>)[step];
};

/** The number at a dotted key of the inputs, such as "replacement.0.payment.apr". Throws where there is none. */
export const inputAt = (inputs: Inputs, key: string): number => {
  const value = key.split('.').reduce<unknown>((node, step) => child(node, step, key), inputs);
  if (typeof value !== 'number') throw new RangeError(`Input "${key}" is not a number`);
  return value;
};

const copyWith = (node: unknown, steps: readonly string[], value: number, key: string): unknown => {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  const below = copyWith(child(node, step, key), rest, value, key);
  if (Array.isArray(node)) return node.map((item, i) => (String(i) === step ? below : item));
  return { ...(node as Readonly<Record<string, unknown>>), [step]: below };
};

/** The same inputs with one number changed; what is not on the way to it is shared. Throws where there is no number. */
export const withInput = (inputs: Inputs, key: string, value: number): Inputs => {
  inputAt(inputs, key);
  return copyWith(inputs, key.split('.'), value, key) as Inputs;
};

/** The same inputs with a quantity at another value, wherever that number stands. */
export const withQuantity = (
  inputs: Inputs,
  { key, also }: Pick<Quantity, 'key' | 'also'>,
  value: number,
): Inputs =>
  also.reduce(
    (changed, other) => withInput(changed, other.key, value * other.times),
    withInput(inputs, key, value),
  );
