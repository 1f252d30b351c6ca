import { LONGEST_WORDS } from '../schema/fields.ts';
import type { Tree } from '../text/document.ts';
import type { Path } from '../text/problems.ts';
import { isNeedKey, needNames } from './needNames.ts';
import { goesWith, isWithin, PRIVATE_MONEY } from './privateMoney.ts';
import { readOutOf } from './readOut.ts';
import { knownBy, standInFor } from './standIns.ts';
import { isIndex, isOwnKey, isWords, leavesOf, namesAComponent, ownKeysOf, type Text } from './texts.ts';
import { type Change, toldApart } from './toldApart.ts';
import { type Hidden, withoutWords } from './wholeWords.ts';

type File = { readonly [key: string]: Tree };

/** Whether a tree can be a scenario's at all. */
export const isFile = (tree: Tree): tree is File =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** What has to be done to a file before anybody but the household may see it, in this order. */
export interface Edits {
  readonly set: readonly Text[];
  /** What was read out of a text that has changed. */
  readonly add: readonly { readonly path: Path; readonly value: Tree }[];
  readonly rename: readonly { readonly path: Path; readonly to: string }[];
  readonly remove: readonly Path[];
}

const dotted = (path: Path): string => path.join('.');

const hasAt = (file: File, path: Path): boolean =>
  path.reduce<Tree | undefined>(
    (node, step) =>
      typeof node === 'object' && node !== null && Object.hasOwn(node, step)
        ? (node as File)[String(step)]
        : undefined,
    file,
  ) !== undefined;

/** Every word that is private with what stands in for it, what does so already aside. */
const hiddenWords = (
  texts: readonly Text[],
  keys: readonly Path[],
  isMarked: (path: Path) => boolean,
): Hidden[] => [
  ...texts
    .filter(({ path, text }) => isMarked(path) && text.trim() !== standInFor(path))
    .flatMap(({ path, text }) => knownBy(path, text).map((word) => ({ word, instead: standInFor(path) }))),
  ...keys
    .filter(isMarked)
    .map((key) => ({ word: String(key.at(-1)), instead: 'something needed' }))
    .filter(({ word }) => !isNeedKey(word)),
];

/** What was read out of texts that change, where it is not read out of them any more. */
const readBefore = (changes: readonly Change[], file: File): Edits['add'] =>
  changes.flatMap(({ path, text, now }) =>
    readOutOf(path, (at) => hasAt(file, at)).flatMap(({ key, read }) => {
      const value = read(text);
      const same = JSON.stringify(value) === JSON.stringify(read(now));
      return value === null || same ? [] : [{ path: [...path.slice(0, -1), key], value }];
    }),
  );

/** A component is named by what it is called now; what names none has no private word in it either. */
const namedAnew = (
  leaves: readonly Text[],
  changes: readonly Change[],
  clear: (text: string) => string,
): Text[] =>
  leaves
    .filter(({ path }) => namesAComponent(path))
    .map(({ path, text }) => {
      const vehicle = path[0] !== 'replacement' ? ['vehicle'] : path.slice(0, isIndex(path[1]) ? 2 : 1);
      const parts = dotted([...vehicle, 'components']);
      const part = changes.find(
        (one) =>
          one.path.at(-1) === 'name' && isWithin(dotted(one.path), parts) && one.text.trim() === text.trim(),
      );
      return { path, text, now: part?.now ?? clear(text) };
    })
    .filter(({ text, now }) => text !== now)
    .map(({ path, now }) => ({ path, text: now }));

/** A private path that leads through a need is written with what the need is called now. */
const pathNow = (path: string, names: ReadonlyMap<string, string>): string => {
  const steps = path.split('.');
  return dotted(steps.map((step, s) => (isOwnKey(steps.slice(0, s + 1)) ? (names.get(step) ?? step) : step)));
};

/**
 * What to change in a file so that nothing it marks private can be found in it, and so that it still gives the figures
 * it gave: private words have something neutral in their place, other texts lose them wherever they stand as whole
 * words, what was read out of a text that has changed is written beside it, and private money is gone with what hangs on
 * it. Only what the household wrote in its own words changes: no number, no unit, none of our keys and choices. Null
 * where nothing is private.
 */
export const editsOf = (file: File): Edits | null => {
  const listed: readonly string[] = Array.isArray(file.private)
    ? file.private.map((path: Tree) => (typeof path === 'string' ? path : ''))
    : [];
  if (listed.length === 0) return null;
  const money = PRIVATE_MONEY.filter((path) => listed.includes(path));
  const isMoney = (path: string): boolean => money.some((one) => isWithin(path, one));
  const isMarked = (path: Path): boolean => listed.some((one) => isWithin(dotted(path), one));
  const leaves = leavesOf(file).filter(({ path }) => !isMoney(dotted(path)));
  const texts = leaves.filter(({ path }) => isWords(path));
  const keys = ownKeysOf(file);
  const clear = withoutWords(hiddenWords(texts, keys, isMarked));
  const changes = toldApart(
    texts.map(({ path, text }) => ({
      path,
      text,
      now: isMarked(path) ? standInFor(path) : clear(text).slice(0, LONGEST_WORDS),
    })),
  ).filter(({ text, now }) => text !== now);
  const names = needNames(keys, isMarked, clear);
  const kept = listed.filter((path) => !isMoney(path));
  const positions = listed.flatMap((path, i): Path[] => (isMoney(path) ? [['private', i]] : []));
  return {
    set: [
      ...changes.map(({ path, now }) => ({ path, text: now })),
      ...namedAnew(leaves, changes, clear),
      ...listed
        .map((path, i) => ({ path: ['private', i], was: path, text: pathNow(path, names) }))
        .filter(({ was, text }) => was !== text),
    ],
    add: readBefore(
      changes.filter(({ path }) => !isMarked(path)),
      file,
    ),
    rename: keys.flatMap((path) => {
      const to = names.get(String(path.at(-1))) ?? '';
      return to === path.at(-1) ? [] : [{ path, to }];
    }),
    remove: [...goesWith(file, money), ...(kept.length === 0 ? [['private']] : positions.reverse())],
  };
};
