import type { Tree } from '../text/document.ts';
import type { Path } from '../text/problems.ts';

/** Keys whose contents are words of the household's own. */
const WORDS: ReadonlySet<string> = new Set([
  'title',
  'note',
  'notes',
  'source',
  'what',
  'job',
  'name',
  'mechanic',
  'partner',
  'someone_else_pays',
  'why',
  'insurer',
  'not_money',
]);

/** Keys whose contents name a component of the vehicle. */
const NAMES_A_COMPONENT: ReadonlySet<string> = new Set(['renews', 'component']);

/** Mappings whose keys are the household's own words, save those that the schema knows. */
const OWN_KEYS: ReadonlySet<string> = new Set(['needs', 'offers']);
const KNOWN_NEEDS: ReadonlySet<string> = new Set(['seats', 'towing', 'child_seats', 'range', 'winter']);

export const isIndex = (step: string | number | undefined): boolean =>
  step !== undefined && /^\d+$/.test(String(step));

/** The path without the position of an entry at its end. */
const listOf = (path: Path): Path => (isIndex(path.at(-1)) ? path.slice(0, -1) : path);

/** Whether the key at the end of a path is one that the household chose itself: a need, and what offers it. */
export const isOwnKey = (path: Path): boolean =>
  OWN_KEYS.has(String(path.at(-2))) && !KNOWN_NEEDS.has(String(path.at(-1)));

/** Whether words stand at a path, or in each entry of the list there. */
export const isWords = (path: Path): boolean => {
  const at = listOf(path);
  return WORDS.has(String(at.at(-1))) && !OWN_KEYS.has(String(at.at(-2)));
};

export const namesAComponent = (path: Path): boolean => NAMES_A_COMPONENT.has(String(listOf(path).at(-1)));

/** A text of the file, whatever it stands for. */
export interface Text {
  readonly path: Path;
  readonly text: string;
}

/** Every text and number of a file that holds no more below it, in its order. */
export const leavesOf = (tree: Tree, path: Path = []): Text[] => {
  if (typeof tree === 'string' || typeof tree === 'number') return [{ path, text: String(tree) }];
  if (typeof tree !== 'object' || tree === null) return [];
  return Array.isArray(tree)
    ? tree.flatMap((item: Tree, i) => leavesOf(item, [...path, i]))
    : Object.entries(tree).flatMap(([key, value]) => leavesOf(value, [...path, key]));
};

/** Keys that the household chose itself, each by every path it stands at. */
export const ownKeysOf = (tree: Tree, path: Path = []): Path[] => {
  if (typeof tree !== 'object' || tree === null) return [];
  const entries: (readonly [string | number, Tree])[] = Array.isArray(tree)
    ? tree.map((item: Tree, i) => [i, item] as const)
    : Object.entries(tree);
  return entries.flatMap(([key, value]) => {
    const at = [...path, key];
    return [...(isOwnKey(at) ? [at] : []), ...ownKeysOf(value, at)];
  });
};
