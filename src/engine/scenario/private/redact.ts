import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  parseDocument,
  type Scalar,
  visit,
} from 'yaml';
import { readDocument } from '../text/document.ts';
import type { Path } from '../text/problems.ts';
import { type Edits, editsOf, isFile } from './edits.ts';

/**
 * A scenario's text without what it marks private: the text that is read for the figures, and the one that may be
 * passed on, so that both give the same. Comments go as well, because nobody can tell what they tell. The rest keeps
 * its order. Where nothing is private the text comes back untouched, comments and all.
 */
export const redactScenario = (text: string): string => {
  const { tree } = readDocument(text);
  const edits = isFile(tree) ? editsOf(tree) : null;
  if (edits === null) return text;
  const doc = parseDocument(text.replace(/^\ufeff/, ''), { uniqueKeys: false });
  expandAliases(doc);
  dropComments(doc);
  carryOut(edits, doc);
  return doc.toString({ lineWidth: 0 });
};

const pairAt = (node: unknown, step: string | number | undefined) =>
  isMap(node) ? node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step)) : undefined;

const nodeAt = (doc: Document, path: Path): unknown =>
  path.reduce<unknown>(
    (node, step) => (isSeq(node) ? node.items[Number(step)] : pairAt(node, step)?.value),
    doc.contents,
  );

const carryOut = ({ set, add, rename, remove }: Edits, doc: Document): void => {
  for (const { path, text } of set) {
    const scalar = nodeAt(doc, path);
    if (isScalar(scalar)) rewrite(scalar, text);
  }
  for (const { path, value } of add) {
    const map = nodeAt(doc, path.slice(0, -1));
    if (isMap(map)) map.set(path.at(-1), doc.createNode(value, { flow: true }));
  }
  for (const { path, to } of rename) {
    const key = pairAt(nodeAt(doc, path.slice(0, -1)), path.at(-1))?.key;
    if (isScalar(key)) rewrite(key, to);
  }
  for (const path of remove) doc.deleteIn(path);
};

const rewrite = (scalar: Scalar, value: string): void => {
  scalar.value = value;
  // How the old value was written (a quoted text, a number with its digits) says nothing about the new one.
  delete scalar.type;
  delete scalar.source;
  delete scalar.tag;
};

/** An alias would bring back what its anchor held, so each becomes a copy. */
const expandAliases = (doc: Document): void => {
  visit(doc, {
    Alias: (_, alias) => {
      const copy: unknown = alias.resolve(doc)?.clone();
      return isNode(copy) && !isAlias(copy) ? copy : undefined;
    },
  });
  visit(doc, {
    Node: (_, node) => {
      if (isScalar(node) || isCollection(node)) delete node.anchor;
    },
  });
};

const dropComments = (doc: Document): void => {
  doc.commentBefore = null;
  doc.comment = null;
  visit(doc, {
    Node: (_, node) => {
      node.commentBefore = null;
      node.comment = null;
    },
  });
};
