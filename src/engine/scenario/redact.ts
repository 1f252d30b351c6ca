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

/** Money of the household's own that no cost rests on: it may be private. */
export const PRIVATE_MONEY: readonly string[] = [
  'savings_for_this',
  'spare_each_month',
  'chance.set_aside_each_month',
];

/** What stands where something private stood. */
const REDACTED = '(private)';

/**
 * A scenario's text without what is private, for everything that may be passed on. `isPrivate` is asked for the dotted
 * path of every value ("work_needed.0.parts"). Private values become "(private)", and private words are taken out of
 * the other texts too. Comments go as well, because nobody can tell what they tell. The rest keeps its order.
 * Where nothing is private the text comes back untouched, comments and all.
 */
export const redactScenario = (text: string, isPrivate: (path: string) => boolean): string => {
  const doc = parseDocument(text);
  expandAliases(doc);
  const leaves = leavesOf(doc.contents, '').filter(({ path }) => isPrivate(path));
  if (leaves.length === 0) return text;
  dropComments(doc);
  dropOwnMoney(doc, isPrivate);
  const words = [...new Set(leaves.map(({ scalar }) => scalar.value).filter(isWord))];
  for (const { scalar } of leaves) rewrite(scalar, REDACTED);
  for (const { scalar } of leavesOf(doc.contents, '')) {
    if (typeof scalar.value !== 'string') continue;
    const without = words.reduce((rest, word) => rest.replaceAll(wholeWord(word), REDACTED), scalar.value);
    if (without !== scalar.value) rewrite(scalar, without);
  }
  return doc.toString({ lineWidth: 0 });
};

const rewrite = (scalar: Scalar, value: string): void => {
  scalar.value = value;
  // How the old value was written (a quoted text, a number with its digits) says nothing about the new one.
  delete scalar.type;
  delete scalar.source;
  delete scalar.tag;
};

/**
 * Private money is taken out with its key, and out of the list of what is private: a file that says nothing of it is
 * read as the household's own file is, which leaves private money out of its figures.
 */
const dropOwnMoney = (doc: Document, isPrivate: (path: string) => boolean): void => {
  if (!isMap(doc.contents)) return;
  for (const key of PRIVATE_MONEY) if (isPrivate(key)) doc.deleteIn(key.split('.'));
  const list = doc.get('private');
  if (!isSeq(list)) return;
  list.items = list.items.filter((item) => !(isScalar(item) && PRIVATE_MONEY.includes(String(item.value))));
  if (list.items.length === 0) doc.delete('private');
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

interface Leaf {
  readonly path: string;
  readonly scalar: Scalar;
}

const leavesOf = (node: unknown, path: string): Leaf[] => {
  const within = (step: string): string => (path === '' ? step : `${path}.${step}`);
  if (isScalar(node)) return [{ path, scalar: node }];
  if (isSeq(node)) return node.items.flatMap((item, i) => leavesOf(item, within(String(i))));
  if (!isMap(node)) return [];
  return node.items.flatMap(({ key, value }) =>
    leavesOf(value, within(isScalar(key) ? String(key.value) : '')),
  );
};

/** Texts long enough to be known again elsewhere. A bare number is not: it would take other numbers with it. */
const isWord = (value: unknown): value is string => typeof value === 'string' && /\p{L}.*\p{L}/u.test(value);

const wholeWord = (word: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}(?![\\p{L}\\p{N}])`, 'giu');
