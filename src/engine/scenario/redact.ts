import {
  type Document,
  isCollection,
  isNode,
  isScalar,
  type Node,
  parseDocument,
  type Scalar,
  visit,
} from 'yaml';

/** What stands where something private stood. */
export const REDACTED = '(private)';

/**
 * A scenario's text without what it marks private, for everything that may be passed on. Values at the private
 * `paths` (dotted, as in the file) become "(private)", whole branches leaf by leaf, and private words are taken out of
 * the other texts too. Comments go as well, because nobody can tell what they tell. The rest keeps its order.
 * With no private paths the text comes back untouched, comments and all. A path that is not there changes nothing.
 */
export const redactScenario = (text: string, paths: readonly string[]): string => {
  if (paths.length === 0) return text;
  const doc = parseDocument(text);
  expandAliases(doc);
  dropComments(doc);
  const leaves = paths.flatMap((path) => leavesAt(doc, path));
  const words = [...new Set(leaves.map(({ value }) => value).filter(isWord))];
  for (const leaf of leaves) redact(leaf, REDACTED);
  visit(doc, {
    Scalar: (key, scalar) => {
      if (key === 'key' || typeof scalar.value !== 'string') return;
      const without = words.reduce((rest, word) => rest.replaceAll(wholeWord(word), REDACTED), scalar.value);
      if (without !== scalar.value) redact(scalar, without);
    },
  });
  return doc.toString({ lineWidth: 0 });
};

const redact = (scalar: Scalar, value: string): void => {
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
      const copy = alias.resolve(doc)?.clone();
      return isNode(copy) ? (copy as Node) : undefined;
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

const leavesAt = (doc: Document, path: string): Scalar[] => {
  const steps = path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
  const found = doc.getIn(steps, true);
  if (!isNode(found)) return [];
  const leaves: Scalar[] = [];
  visit(found, { Scalar: (key, scalar) => void (key === 'key' || leaves.push(scalar)) });
  return leaves;
};

/** Texts long enough to be known again elsewhere. A bare number is not: it would take other numbers with it. */
const isWord = (value: unknown): value is string => typeof value === 'string' && /\p{L}.*\p{L}/u.test(value);

const wholeWord = (word: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}(?![\\p{L}\\p{N}])`, 'giu');
