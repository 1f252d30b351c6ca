import type { Tree } from '../text/document.ts';
import type { Path } from '../text/problems.ts';

/** Money of the household's own that no cost rests on: it may be private, and the figures then do without it. */
export const PRIVATE_MONEY: readonly string[] = [
  'savings_for_this',
  'spare_each_month',
  'chance.set_aside_each_month',
];

/** Whether a dotted path is another, or stands within it. */
export const isWithin = (path: string, other: string): boolean =>
  path === other || path.startsWith(`${other}.`);

const entries = (tree: Tree | undefined): readonly Tree[] => (Array.isArray(tree) ? tree : []);

/**
 * What goes with private money: the number itself, a line between it and another, and which ranges go with it. The rest
 * of the file is then read as if nobody had told it.
 */
export const goesWith = (file: { readonly [key: string]: Tree }, money: readonly string[]): Path[] => {
  const of = (path: unknown): boolean =>
    typeof path === 'string' && money.some((one) => isWithin(path, one) || isWithin(one, path));
  const pairs = entries(file.go_together).flatMap((pair, i): Path[] => {
    const { a, b } = (pair ?? {}) as { readonly [key: string]: Tree };
    return of(a) || of(b) ? [['go_together', i]] : [];
  });
  return [
    ...money.map((one) => one.split('.')),
    ...(entries(file.two_way).some(of) ? [['two_way']] : []),
    ...pairs.reverse(),
  ];
};
