import { type Context, contextOf, type Future, type Turns } from '../plans/vehicle/context.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';

/** What was read while something was worked out: dotted keys of numbers and words of the inputs, and any luck. */
export interface Reads {
  readonly keys: ReadonlySet<string>;
  readonly luck: boolean;
}

/** A result, and all that it can hang on: what it did not read cannot change it, whichever way its branches went. */
export interface Recorded<T> {
  readonly result: T;
  readonly reads: Reads;
}

/** Put together for the turns of a future, which it may not have asked for: then it is the same whatever they are. */
export interface PlanRecorded<T> extends Recorded<T> {
  readonly asksTurns: boolean;
}

type Tree = Readonly<Record<string, unknown>>;

/** Hears of every number and word that is read, by its dotted key. */
type Hear = (key: string) => void;

/** What stands behind a part of the inputs that tells what is read of it. */
interface Behind {
  readonly node: Tree;
  readonly path: string;
  readonly hear: Hear;
  readonly children: Map<string, unknown>;
}

const BEHIND = Symbol('behind');
type Telling = { readonly [BEHIND]: Behind };

const readOf = ({ node, path, hear, children }: Behind, key: string): unknown => {
  const value = node[key];
  if (typeof value !== 'object' || value === null) {
    hear(path + key);
    return value;
  }
  const child = children.get(key) ?? tellingNode(value as Tree, `${path}${key}.`, hear);
  children.set(key, child);
  return child;
};

/**
 * One getter for each name, whatever it is read of: to a compiler two objects with the same getters in the same order are
 * of one kind. A `Proxy` tells as much, but code that has met one is never as quick again.
 */
const getters = new Map<string, (this: Telling) => unknown>();
const getterOf = (key: string): ((this: Telling) => unknown) => {
  const known = getters.get(key);
  if (known) return known;
  const getter = function (this: Telling): unknown {
    return readOf(this[BEHIND], key);
  };
  getters.set(key, getter);
  return getter;
};

const tellingNode = (node: Tree | readonly unknown[], path: string, hear: Hear): unknown => {
  if (Array.isArray(node)) {
    hear(`${path}length`);
    return node.map((item: unknown, i) => {
      if (typeof item === 'object' && item !== null) return tellingNode(item as Tree, `${path}${i}.`, hear);
      hear(path + String(i));
      return item;
    });
  }
  const behind: Behind = { node: node as Tree, path, hear, children: new Map() };
  const telling = Object.defineProperty({}, BEHIND, { value: behind });
  for (const key of Object.keys(node))
    Object.defineProperty(telling, key, { get: getterOf(key), enumerable: true });
  return telling;
};

/** The same future, which tells when luck is asked of it. What is remembered within it would hide what it came from. */
const telling = (future: Future, tell: () => void): Future =>
  future.kind === 'expected'
    ? future
    : {
        ...future,
        luckOf: (vehicle, component) => {
          tell();
          return future.luckOf(vehicle, component);
        },
        turnsOut: (what) => {
          tell();
          return future.turnsOut(what);
        },
        get givenUpIn() {
          tell();
          return future.givenUpIn;
        },
        recall: new Map(),
      };

/** Inputs that tell what is read of them. */
const toldOf = (inputs: Inputs, hear: Hear): Inputs =>
  tellingNode(inputs as unknown as Tree, '', hear) as Inputs;

/** What `from` gives at these numbers, and what it read of them. All that it ever reads it has to read by then. */
export const recorded = <T>(
  from: (ctx: Context) => T,
  { inputs, facts, future, rounding }: Context,
): Recorded<T> => {
  const keys = new Set<string>();
  let luck = false;
  // Made anew each time: what is remembered by the objects it was read from would hide what it read.
  const told = toldOf(inputs, (key) => keys.add(key));
  const hearing = telling(future, () => {
    luck = true;
  });
  const result = from(contextOf(told, facts, hearing, rounding));
  return { result, reads: { keys, luck } };
};

const noLuck = (): never => {
  throw new Error('a plan is put together for all futures that take the same turns: luck is for its pieces');
};

/**
 * A plan put together at these numbers for every future that takes these turns, and what it read. What it hands on is
 * worked out from other numbers later: whatever still holds on to these throws.
 */
export const planRecorded = <T>(
  build: (ctx: Context) => T,
  turns: Turns,
  { inputs, facts, future, rounding }: Context,
): PlanRecorded<T> => {
  const keys = new Set<string>();
  let closed = false;
  let asksTurns = false;
  const heard: Turns = {
    get ends() {
      asksTurns = true;
      return turns.ends;
    },
    get refused() {
      asksTurns = true;
      return turns.refused;
    },
  };
  const told = toldOf(inputs, (key) => {
    if (closed) throw new Error(`${key} was read of a plan after it was put together`);
    keys.add(key);
  });
  const settled: Future =
    future.kind === 'expected'
      ? future
      : { ...future, luckOf: noLuck, turnsOut: noLuck, recall: new Map(), givenUpIn: null, turns: heard };
  const result = build(contextOf(told, facts, settled, rounding));
  closed = true;
  return { result, reads: { keys, luck: false }, asksTurns };
};

/** Every number and word within a part of the inputs, as `recorded` would note it. */
const leavesOf = (node: unknown, path: string): string[] =>
  typeof node === 'object' && node !== null
    ? [
        ...(Array.isArray(node) ? [`${path}.length`] : []),
        ...Object.entries(node).flatMap(([key, value]) =>
          leavesOf(value, path === '' ? key : `${path}.${key}`),
        ),
      ]
    : [path];

/**
 * The inputs in which other numbers differ from these, as `recorded` notes what is read: whatever read none of them comes to
 * the same at both.
 */
export const keysApart = (these: unknown, others: unknown, path = ''): string[] => {
  if (these === others || (Number.isNaN(these) && Number.isNaN(others))) return [];
  const alike =
    typeof these === 'object' &&
    these !== null &&
    typeof others === 'object' &&
    others !== null &&
    Array.isArray(these) === Array.isArray(others);
  if (!alike) return leavesOf(these, path);
  const keys = Object.keys(these);
  if (keys.length !== Object.keys(others).length || !keys.every((key) => Object.hasOwn(others, key)))
    return leavesOf(these, path);
  return keys.flatMap((key) =>
    keysApart((these as Tree)[key], (others as Tree)[key], path === '' ? key : `${path}.${key}`),
  );
};
