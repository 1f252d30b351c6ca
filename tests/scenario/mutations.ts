import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** Text that stands in a file as it is, unquoted. */
class Bare {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** A mapping as its pairs: so that a key can stand there twice, or be one that an object keeps for itself. */
class Pairs {
  readonly pairs: readonly (readonly [key: string, value: Node])[];
  constructor(pairs: readonly (readonly [key: string, value: Node])[]) {
    this.pairs = pairs;
  }
}

export type Node = string | number | boolean | null | Bare | Pairs | readonly Node[];
type Place = readonly (string | number)[];

const nodeOf = (plain: unknown): Node => {
  if (Array.isArray(plain)) return plain.map(nodeOf);
  if (plain === null || typeof plain !== 'object') return plain as Node;
  return new Pairs(Object.entries(plain).map(([key, value]) => [key, nodeOf(value)] as const));
};

/** A file as text: YAML in braces and brackets. */
export const textOf = (node: Node): string => {
  if (node instanceof Bare) return node.text;
  if (node instanceof Pairs)
    return `{${node.pairs.map(([key, value]) => `${JSON.stringify(key)}: ${textOf(value)}`).join(', ')}}`;
  return Array.isArray(node) ? `[${node.map(textOf).join(', ')}]` : JSON.stringify(node);
};

const childrenOf = (node: Node): (readonly [string | number, Node])[] =>
  node instanceof Pairs ? [...node.pairs] : Array.isArray(node) ? node.map((one: Node, i) => [i, one]) : [];

/** Every place in a file, the file itself first. */
export const placesOf = (node: Node, at: Place = []): Place[] => [
  at,
  ...childrenOf(node).flatMap(([step, child]) => placesOf(child, [...at, step])),
];

/** What becomes of one node: the nodes that stand in its place; none where it goes. */
type Change = (node: Node, siblings: readonly Node[]) => readonly Node[];

/** A file changed at one place; as it was where the place is gone. */
export const changed = (node: Node, at: Place, change: Change, siblings: readonly Node[] = []): Node => {
  const [step, ...rest] = at;
  if (step === undefined) return change(node, siblings)[0] ?? null;
  const beside = childrenOf(node).flatMap(([name, child]) => (name === step ? [] : [child]));
  const become = (child: Node): readonly Node[] =>
    rest.length === 0 ? change(child, beside) : [changed(child, rest, change, beside)];
  if (node instanceof Pairs)
    return new Pairs(
      node.pairs.flatMap(([key, child]) =>
        key === step ? become(child).map((one) => [key, one] as const) : [[key, child] as const],
      ),
    );
  if (Array.isArray(node)) return node.flatMap((child: Node, i) => (i === step ? become(child) : [child]));
  return node;
};

const mapped = (...pairs: (readonly [string, Node])[]): Pairs => new Pairs(pairs);
/** Names that every object answers to, whatever it holds. */
const PROTOTYPE = ['toString', 'length', 'constructor', '__proto__', 'hasOwnProperty'];
const put =
  (...nodes: Node[]): Change =>
  () =>
    nodes;

/** Slips of a hand and of a program, and things no one would write. */
export const CHANGES: Readonly<Record<string, Change>> = {
  gone: put(),
  nothing: put(null),
  'no text': put(''),
  'an empty list': put([]),
  'an empty mapping': put(mapped()),
  'a mapping in a mapping': put(mapped(['a', mapped(['b', 1])])),
  'a list in a list': put([[1]]),
  nil: put(0),
  negative: put(-1),
  'a little': put(new Bare('1e-300')),
  huge: put(new Bare('1e300')),
  'not a number': put(new Bare('.nan')),
  'without end': put(new Bare('.inf')),
  yes: put(true),
  no: put(new Bare('no')),
  'a day': put(new Bare('2027-02-03')),
  'a day that never is': put(new Bare('2027-02-30')),
  'a long text': put('word '.repeat(500)),
  'a name of every object': put('toString'),
  'a wrong unit': put('12 furlongs'),
  'a range': put(mapped(['low', 1], ['likely', 2], ['high', 4])),
  'a range without its middle': put(mapped(['low', 1], ['high', 4])),
  'words about no figure': put(mapped(['how', 'measured'])),
  'a value that is none': put(mapped(['value', mapped(['value', 1])])),
  'names of every object as keys': put(mapped(...PROTOTYPE.map((name) => [name, 4] as const))),
  'a mapping with a length': put(mapped(['length', mapped(['a', 1])])),
  twice: (node) => [node, node],
  'in a list twice': (node) => [[node, node]],
  'below a key': (node) => [mapped(['value', node])],
  'with a strange key': (node) => [
    node instanceof Pairs
      ? new Pairs([...node.pairs, ...PROTOTYPE.slice(0, 2).map((name) => [name, mapped(['a', 1])] as const)])
      : node,
  ],
  'as its neighbour': (_, siblings) => [siblings[0] ?? null],
  'as another neighbour': (_, siblings) => [siblings.at(-1) ?? null],
};

type Keys = Record<string, unknown>;

const FORM = parse(readFileSync(new URL('./full-form.yaml', import.meta.url), 'utf8')) as Keys & {
  vehicle: Keys;
  replacement: unknown[];
  claim: Keys;
};

const some = (from: Keys, ...keys: string[]): Keys =>
  Object.fromEntries(Object.entries(from).filter(([key]) => keys.includes(key)));
const without = (from: Keys, ...keys: string[]): Keys =>
  Object.fromEntries(Object.entries(from).filter(([key]) => !keys.includes(key)));

const VEHICLE = {
  what: '2011 van',
  kind: 'suv',
  odometer: 190000,
  price_when_new: 24000,
  sells_for: { running: 4200, as_it_stands: 1500 },
  insurance_a_year: 540,
  components: FORM.vehicle.components,
};
const HEAD = {
  date: '2026-10-01',
  currency: 'EUR',
  per_dollar: 0.9,
  km_a_year: 14000,
  household: { look_ahead: 4 },
  vehicle: VEHICLE,
  replacement: FORM.replacement.at(-1),
};
/** What else a claim may hold: what is made of the vehicle afterwards. */
const AFTERWARDS = ['own_repair', 'safe_only', 'rebuild', 'also_needed', 'refunds', 'lost_value', 'rental'];
const SECTIONS = ['vehicle', 'work_needed', 'replacement', 'claim'];

/** The full form in parts, each a scenario of its own: small files are read faster than a large one. */
export const FORMS: Readonly<Record<string, Node>> = {
  household: nodeOf({
    ...without(FORM, ...SECTIONS),
    vehicle: { ...VEHICLE, ...some(FORM.vehicle, 'year', 'fuel', 'seats', 'towing', 'offers') },
    replacement: HEAD.replacement,
  }),
  vehicle: nodeOf({ ...HEAD, vehicle: FORM.vehicle }),
  'work needed': nodeOf({ ...HEAD, work_needed: FORM.work_needed }),
  replacement: nodeOf({ ...HEAD, replacement: FORM.replacement, needs: FORM.needs }),
  claim: nodeOf({
    ...HEAD,
    vehicle: { ...VEHICLE, loan: FORM.vehicle.loan },
    claim: without(FORM.claim, ...AFTERWARDS),
  }),
  'after a claim': nodeOf({
    ...HEAD,
    claim: {
      ...some(FORM.claim, 'what', 'happened', 'pays', 'place', 'value', 'deductible', ...AFTERWARDS),
      estimate: { lines: [{ what: 'bumper', kind: 'parts', amount: 380.4 }] },
    },
  }),
};
