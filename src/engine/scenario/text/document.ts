import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from 'yaml';
import { nulIn, tooLarge } from './decode.ts';
import { tooDeep } from './depth.ts';
import { type Path, type Problem, pathText, showValue } from './problems.ts';

/** A plain tree without prototypes: what the file says, before anything is known about it. */
export type Tree = string | number | boolean | null | readonly Tree[] | { readonly [key: string]: Tree };

/** The 1-based place of a path in the text: of its value, of its key, or of the nearest parent that exists. */
export type Locate = (path: Path, what: 'value' | 'key') => { line: number; column: number };

export interface ReadDocument {
  readonly tree: Tree;
  readonly locate: Locate;
  readonly problems: readonly Problem[];
}

/** More nodes than this is no scenario but an attempt to be expanded: aliases count each time they are used. */
const MOST_NODES = 20_000;
const MOST_ALIASES = 100;
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

/** Our words for what the library reports by code: what is wrong, what to do. */
const WORDS: Readonly<Record<string, readonly [message: string, remedy: string]>> = {
  TAB_AS_INDENT: ['This line is indented with a tab.', 'Indent with spaces.'],
  MULTIPLE_DOCS: [
    'A second document begins here.',
    'Keep one scenario in one file: take out the line "---" and what follows it.',
  ],
  BAD_INDENT: ['This line is not indented as its neighbours are.', 'Line up the keys that belong together.'],
  BLOCK_AS_IMPLICIT_KEY: [
    'There is a second colon in this line, or a key below one that has a value.',
    'Put a text that holds a colon in quotation marks.',
  ],
  MULTILINE_IMPLICIT_KEY: ['A key runs over several lines.', 'Look for a missing colon in the line above.'],
  MISSING_CHAR: [
    'Something is missing here.',
    'Close the bracket, brace or quotation mark; put a colon after each key.',
  ],
  TAG_RESOLVE_FAILED: ['Tags such as "!this" are not used here.', 'Take it out.'],
};

const place = (counter: LineCounter, offset: number): { line: number; column: number } => {
  const { line, col } = counter.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col) };
};

const pairOf = (node: unknown, key: string | number): Pair<Node, Node | null> | undefined => {
  if (!isMap<Node, Node | null>(node)) return undefined;
  return node.items.find((pair) => isScalar(pair.key) && String(pair.key.value) === String(key));
};

const locator =
  (doc: Document, counter: LineCounter): Locate =>
  (path, what) => {
    let node: unknown = doc.contents;
    let at = doc.contents?.range?.[0] ?? 0;
    for (const [i, step] of path.entries()) {
      if (isAlias(node)) node = node.resolve(doc);
      const pair = pairOf(node, step);
      const item: unknown = pair ? pair.value : isSeq(node) ? node.items[Number(step)] : undefined;
      if (!pair && item === undefined) break;
      const last = i === path.length - 1;
      const keyAt = pair?.key.range?.[0];
      const valueAt = (item as Node | null)?.range?.[0];
      // A key whose value is not there, or whose value is a parent of the missing one, is where to look.
      at = (last && what === 'value' ? (valueAt ?? keyAt) : (keyAt ?? valueAt)) ?? at;
      node = item;
    }
    return place(counter, at);
  };

/** The first syntax error of each line, at most five: one slip breaks many lines, and tabs break all that follow. */
const syntaxProblems = (doc: Document, counter: LineCounter): Problem[] => {
  const all = [...doc.errors, ...doc.warnings];
  const tabs = all.filter((error) => error.code === 'TAB_AS_INDENT');
  const lines = new Map<number, Problem>();
  for (const error of tabs.length > 0 ? tabs : all) {
    const at = place(counter, error.pos[0]);
    const [message, remedy] = WORDS[error.code] ?? [
      `This is not YAML as it should be: ${showSentence(error.message)}`,
      'See this line and the one above it.',
    ];
    if (!lines.has(at.line)) lines.set(at.line, { ...at, path: '', kind: 'syntax', message, remedy });
  }
  return [...lines.values()].slice(0, 5);
};

const showSentence = (text: string): string => {
  const line = showValue(text.split('\n')[0] ?? '');
  return /[.!?]$/.test(line) ? line : `${line}.`;
};

const unfolds = (message: string): Problem => ({
  line: 1,
  column: 1,
  path: '',
  kind: 'too large',
  message,
  remedy: 'Write it out, shorter.',
});

/** Turns nodes into a plain tree, noting duplicate and forbidden keys; `null` for the tree once it grows too large. */
const plant = (doc: Document, counter: LineCounter): { tree: Tree; problems: Problem[] } => {
  const problems: Problem[] = [];
  let nodes = 0;
  const note = (node: Node | undefined, path: Path, rest: Pick<Problem, 'kind' | 'message' | 'remedy'>) =>
    problems.push({ ...place(counter, node?.range?.[0] ?? 0), path: pathText(path), ...rest });
  const grow = (node: unknown, path: Path): Tree => {
    if (++nodes > MOST_NODES) return null;
    if (isAlias(node)) return grow(node.resolve(doc) ?? null, path);
    if (isScalar(node)) return typeof node.value === 'object' ? null : (node.value as Tree);
    if (isSeq(node)) return node.items.map((item, i) => grow(item, [...path, i]));
    if (!isMap<Node, Node | null>(node)) return null;
    const tree: Record<string, Tree> = Object.create(null);
    for (const { key, value } of node.items) {
      const name = isScalar(key) ? String(key.value) : '';
      const here = [...path, name];
      if (!isScalar(key) || key.value === null)
        note(key, path, {
          kind: 'syntax',
          message: 'A key must be a word.',
          remedy: 'Write "key: value".',
        });
      else if (FORBIDDEN.has(name))
        note(key, here, {
          kind: 'forbidden key',
          message: `"${name}" cannot be a key.`,
          remedy: 'Take it out.',
        });
      else if (name in tree)
        note(key, here, {
          kind: 'duplicate key',
          message: `"${showValue(name)}" is given twice.`,
          remedy: 'Keep one of the two.',
        });
      else tree[name] = grow(value, here);
    }
    return tree;
  };
  const tree = grow(doc.contents, []);
  if (nodes > MOST_NODES) {
    problems.push(unfolds(`This is not a scenario: it unfolds into more than ${MOST_NODES} entries.`));
  }
  return { tree, problems };
};

/** Aliases that contain themselves never end, and each is looked for through the whole text: both are found first. */
const badAlias = (doc: Document, counter: LineCounter): Problem | null => {
  let found: Problem | null = null;
  let aliases = 0;
  visit(doc, {
    Alias: (_, alias, ancestors) => {
      if (++aliases > MOST_ALIASES) {
        found = unfolds(`This is not a scenario: it uses more than ${MOST_ALIASES} aliases.`);
        return visit.BREAK;
      }
      const target = alias.resolve(doc);
      if (!target || !ancestors.includes(target)) return undefined;
      const message = `"*${showValue(alias.source)}" stands for something it is itself a part of.`;
      found = {
        ...place(counter, alias.range?.[0] ?? 0),
        path: '',
        kind: 'syntax',
        message,
        remedy: 'Write it out.',
      };
      return visit.BREAK;
    },
  });
  return found;
};

const refused = (problem: Problem): ReadDocument => ({
  tree: null,
  locate: () => problem,
  problems: [problem],
});

/**
 * Reads YAML 1.2 into a plain tree and a way to find the place of any path. Never throws: what cannot be read, or
 * would unfold without end, is a problem. Problems here mean that the tree must not be used.
 */
export const readDocument = (text: string): ReadDocument => {
  const early = tooLarge(text.length) ?? nulIn(text) ?? tooDeep(text);
  if (early) return refused(early);
  const counter = new LineCounter();
  try {
    const doc = parseDocument(text.replace(/^\ufeff/, ''), {
      lineCounter: counter,
      prettyErrors: false,
      uniqueKeys: false,
      version: '1.2',
      merge: false,
    });
    const locate = locator(doc, counter);
    const syntax = syntaxProblems(doc, counter);
    if (syntax.length > 0) return { tree: null, locate, problems: syntax };
    const loop = badAlias(doc, counter);
    if (loop) return refused(loop);
    return { ...plant(doc, counter), locate };
  } catch (error) {
    const message = `This cannot be read as YAML: ${showSentence(error instanceof Error ? error.message : 'too deep')}`;
    return refused({ line: 1, column: 1, path: '', kind: 'syntax', message, remedy: 'Write it simpler.' });
  }
};
