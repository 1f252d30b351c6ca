import type { Spec } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { type Stated, stated } from '../reading/stated.ts';
import type { Tree } from '../text/document.ts';
import type { Finding, Path } from '../text/problems.ts';

type Mapping = { readonly [key: string]: Tree };

export const isMapping = (tree: Tree | undefined): tree is Mapping =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** What a rule finds: problems stop the run, warnings are said beside the answer. */
export interface Verdict {
  readonly problems: readonly Finding[];
  readonly warnings: readonly Finding[];
}

/**
 * A lenient view of the file for rules that look at several places at once. It reads what is well written and stays
 * silent about the rest, which the schema reports: so rules and schema report everything together.
 */
export interface Raw {
  readonly tree: Tree;
  readonly units: Units;
  /** ISO date of the decision. */
  readonly date: string;
  /** ISO date of the day the file is read. */
  readonly today: string;
  /** What is there; undefined when nothing is. */
  readonly at: (path: Path) => Tree | undefined;
  readonly has: (path: Path) => boolean;
  /** The words there as they will be read, a bare number too (`name: 3`); undefined where there are none. */
  readonly text: (path: Path) => string | undefined;
  /** The same as one of a few words, whose capitals do not count. */
  readonly word: (path: Path) => string | undefined;
  /** The number there in the household's unit; undefined when there is none, or none that can be read. */
  readonly num: (path: Path, spec: Spec) => number | undefined;
  /** The same with all that is said about it. */
  readonly stated: (path: Path, spec: Spec) => Stated | undefined;
  /** Paths of a list's entries, none where there is no list. */
  readonly each: (path: Path) => Path[];
  /** The paths of the replacements, whether there is one or a list. */
  readonly replacements: readonly Path[];
}

const step = (tree: Tree | undefined, key: string | number): Tree | undefined => {
  if (tree === undefined || tree === null || typeof tree !== 'object') return undefined;
  return Object.hasOwn(tree, key) ? (tree as { readonly [key: string]: Tree })[key] : undefined;
};

const wordsOf = (tree: Tree | undefined): string | undefined => {
  if (typeof tree !== 'string' && typeof tree !== 'number') return undefined;
  return String(tree).trim() || undefined;
};

export const rawView = (tree: Tree, units: Units, date: string, today: string): Raw => {
  const at = (path: Path): Tree | undefined => path.reduce<Tree | undefined>(step, tree);
  const read = (path: Path, spec: Spec): Stated | undefined => {
    const value = at(path);
    if (value === undefined) return undefined;
    const found = stated(value, spec, units);
    return Array.isArray(found) ? undefined : (found as Stated);
  };
  const each = (path: Path): Path[] => {
    const list = at(path);
    return Array.isArray(list) ? list.map((_, i) => [...path, i]) : [];
  };
  const list = each(['replacement']);
  return {
    tree,
    units,
    date,
    today,
    at,
    has: (path) => at(path) !== undefined,
    text: (path) => wordsOf(at(path)),
    word: (path) => wordsOf(at(path))?.toLowerCase(),
    num: (path, spec) => read(path, spec)?.value,
    stated: read,
    each,
    replacements: list.length > 0 ? list : isMapping(at(['replacement'])) ? [['replacement']] : [],
  };
};
