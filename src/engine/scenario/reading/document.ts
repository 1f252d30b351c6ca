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
import { type Path, type Problem, pathText, showValue } from '../problems.ts';
import { nulIn, tooLarge } from './decode.ts';
import { tooDeep } from './depth.ts';

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
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

const WORDS: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: 'Indent with spaces; YAML does not allow tabs.',
  MULTIPLE_DOCS: 'Keep one scenario in one file: take out the line "---" and what follows it.',
  BAD_INDENT: 'Line up the keys that belong together.',
  MISSING_CHAR: 'Close the bracket, brace or quotation mark.',
  BLOCK_AS_IMPLICIT_KEY: 'Put a text that holds a colon in quotation marks.',
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

const syntaxProblems = (doc: Document, counter: LineCounter): Problem[] =>
  [...doc.errors, ...doc.warnings].slice(0, 20).map((error) => ({
    ...place(counter, error.pos[0]),
    path: '',
    kind: 'syntax' as const,
    message: `This is not YAML as it should be: ${showSentence(error.message)}`,
    remedy: WORDS[error.code] ?? 'See the line and the one above it.',
  }));

const showSentence = (text: string): string => {
  const line = text.split('\n')[0] ?? '';
  return /[.!?]$/.test(line) ? line : `${line}.`;
};

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
    const message = `This is not a scenario: it unfolds into more than ${MOST_NODES} entries.`;
    problems.push({
      line: 1,
      column: 1,
      path: '',
      kind: 'too large',
      message,
      remedy: 'Write it out, shorter.',
    });
  }
  return { tree, problems };
};

/** Aliases that contain themselves never end; the library finds them only while converting. */
const aliasLoop = (doc: Document, counter: LineCounter): Problem | null => {
  let found: Problem | null = null;
  visit(doc, {
    Alias: (_, alias, ancestors) => {
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
    const loop = aliasLoop(doc, counter);
    if (loop) return refused(loop);
    return { ...plant(doc, counter), locate };
  } catch (error) {
    const message = `This cannot be read as YAML: ${showSentence(error instanceof Error ? error.message : 'too deep')}`;
    return refused({ line: 1, column: 1, path: '', kind: 'syntax', message, remedy: 'Write it simpler.' });
  }
};
