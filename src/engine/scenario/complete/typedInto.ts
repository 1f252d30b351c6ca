import type { Quantity } from '../inputs/scenario.ts';
import type { Units } from '../inputs/units.ts';
import { rangeAround } from '../reading/figure.ts';
import { measure } from '../reading/measure.ts';
import type { Clocked } from '../schema/fields.ts';
import type { Sparse } from '../schema/scenarioSchema.ts';

type Node = Readonly<Record<string, unknown>> | readonly unknown[];

/** What of a quantity decides how it is typed. */
type Typable = Pick<Quantity, 'path' | 'unit' | 'suffix' | 'value' | 'range' | 'onlyRange'>;

/** A number of the file as it was read: it holds no further keys. */
const isStated = (node: object): boolean => 'value' in node && 'range' in node;

/**
 * The same tree with something else at a path, what is missing on the way put there; null where the path leads through
 * something that has no keys. What is not on the way is shared.
 */
export const putAt = (node: unknown, steps: readonly string[], value: unknown): unknown => {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (node === undefined || node === null) node = {};
  if (typeof node !== 'object' || isStated(node as object)) return null;
  if (Array.isArray(node) && !(Number(step) < node.length)) return null;
  const there = Object.hasOwn(node as Node, step) ? (node as Record<string, unknown>)[step] : undefined;
  const below = putAt(there, rest, value);
  if (below === null) return null;
  if (Array.isArray(node)) return node.map((item, i) => (String(i) === step ? below : item));
  return { ...(node as object), [step]: below };
};

/** A number as the schema reads it once it is typed. */
const statedAs = (quantity: Typable, value: number, units: Units): Clocked => {
  const { unit, suffix, range, onlyRange } = quantity;
  const energy = unit === 'economy' || unit === 'money per energy';
  const read = energy
    ? measure(`1${suffix}`, { unit, min: 0, max: 1, mark: 'guess', words: '' }, units)
    : null;
  return {
    value,
    range: onlyRange && range ? rangeAround(range, value) : null,
    unit: read && 'unit' in read ? read.unit : '',
    how: null,
    source: '',
    note: '',
    clock: unit === 'months' ? 'months' : 'distance',
  };
};

/** The file with another number typed in at the quantity's place; null where nothing can be typed there. */
export const typedInto = (file: Sparse, quantity: Typable, value: number, units: Units): Sparse | null =>
  putAt(file, quantity.path.split('.'), statedAs(quantity, value, units)) as Sparse | null;
