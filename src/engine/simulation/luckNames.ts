import { type Content, contentOf, inOrder } from '../plans/vehicle/contents.ts';
import { remember } from '../quantity/remember.ts';
import type { Component } from '../scenario/inputs/inputs.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';

/** Gives the name that luck goes by to a place of the inputs: "replacement.#1.components.#3.parts". */
export type LuckNames = (key: string) => string;

type Tree = Readonly<Record<string, unknown>>;

const entriesOf = (list: unknown): readonly unknown[] => (Array.isArray(list) ? list : []);

/** What is said of the number at each key besides its value: its range, and what it goes together with. */
const besideOf = ({ quantities, facts }: Scenario): ((key: string) => Content) => {
  const said = new Map<string, Content[]>();
  const add = (key: string, more: Content): void => void said.set(key, [...(said.get(key) ?? []), more]);
  for (const { key, moves, range } of quantities) {
    if (range === null) continue;
    const { low, likely, high, min, max } = range;
    for (const one of new Set([key, ...moves.map((move) => move.key)]))
      add(one, [low, likely, high, min, max]);
  }
  const kind = (key: string): string => key.replaceAll(/\d+/g, '#');
  for (const { a, b, rank } of facts.chance.correlations) {
    add(a, [kind(b), rank]);
    add(b, [kind(a), rank]);
  }
  return (key) => (said.get(key) ?? []).toSorted(inOrder);
};

/** What else of the file is about a component of the present vehicle: tests of it, and work that renews it. */
const aboutPart = ({ inputs, facts }: Scenario, part: number, content: (of: unknown) => Content): Content => {
  const renewing = [...inputs.workNeeded, ...inputs.vehicle.upkeep].filter(({ renews }) =>
    renews.includes(part),
  );
  const looks = facts.chance.looks.filter(({ component }) => component === part);
  const apart = [...renewing.map((work) => ({ ...work, renews: [] })), ...looks].map((one) =>
    content({ ...one, component: null }),
  );
  return apart.toSorted(inOrder);
};

const namesFor = (scenario: Scenario): LuckNames => {
  const { inputs } = scenario;
  const beside = besideOf(scenario);
  const nothing = () => null;
  const plain = (of: unknown): Content => contentOf(of, '', nothing, nothing);
  const partContent = (part: Component | undefined, at: string): Content =>
    contentOf(part, at, beside, nothing);
  /** Work renews components by position: it is told apart by which they are. */
  const pointed = (at: string, positions: readonly number[]): readonly Content[] | null => {
    if (!at.endsWith('.renews')) return null;
    const bought = /^replacement\.(\d+)\./.exec(at);
    const [vehicle, of] = bought
      ? [inputs.replacement[Number(bought[1])], bought[0]]
      : [inputs.vehicle, 'vehicle.'];
    return positions.map((i) => partContent(vehicle?.components[i], `${of}components.${i}`));
  };
  const contentAt = (list: readonly unknown[], at: string, i: number): Content => {
    const own = contentOf(list[i], `${at}.${i}`, beside, pointed);
    return at === 'vehicle.components' ? [own, aboutPart(scenario, i, plain)] : own;
  };
  const known = new Map<string, readonly number[]>();
  /** The place of each entry of a list once they are in the order of their contents; of equals the first is first. */
  const placesOf = (list: readonly unknown[], at: string): readonly number[] => {
    const found = known.get(at);
    if (found) return found;
    const contents = list.map((_, i) => contentAt(list, at, i));
    const order = list
      .map((_, i) => i)
      .toSorted((a, b) => inOrder(contents[a] as Content, contents[b] as Content));
    const places = list.map((_, i) => order.indexOf(i));
    known.set(at, places);
    return places;
  };
  return (key) => {
    let held: unknown = inputs;
    let at = '';
    const steps = key.split('.').map((step) => {
      const list = Array.isArray(held) ? entriesOf(held) : null;
      const place = list ? placesOf(list, at)[Number(step)] : undefined;
      held = (held as Tree | undefined)?.[step];
      at = at === '' ? step : `${at}.${step}`;
      return place === undefined ? step : `#${place + 1}`;
    });
    return steps.join('.');
  };
};

/**
 * Names that luck goes by: the same whatever things are called and in whatever order the file lists them. Entries of a
 * list are told apart by what is said of them, words aside, and numbered in that order. So a name that is private, or new,
 * moves no figure, and none can be guessed from one. Entries of which all the same is said are alike to chance too.
 */
export const luckNamesOf: (scenario: Scenario) => LuckNames = remember(namesFor, ([a], [b]) => a === b, 2);
