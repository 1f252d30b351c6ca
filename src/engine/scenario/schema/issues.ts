import type * as z from 'zod/mini';
import { nearest } from '../text/nearest.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import type { FaultParams } from './fields.ts';
import { keysAt } from './keys.ts';

type Issue = z.core.$ZodIssue;

const pathOf = (base: Path, issue: Pick<Issue, 'path'>): Path => [
  ...base,
  ...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step)),
];

const unknownKey = (schema: unknown, parent: Path, key: string): Finding => {
  const keys = keysAt(schema, parent);
  const near = nearest(key, keys);
  const split = /^\d{3}(\.\d+)?$/.test(key);
  const listed = `Keys here: ${keys.join(', ')}.`;
  const comma = parent.length > 0 && /\s/.test(key);
  return {
    kind: 'unknown key',
    path: [...parent, key],
    message: `"${showValue(key)}" is not a key here.`,
    remedy: split
      ? 'Within braces a comma ends the entry: write thousands without it.'
      : near
        ? `Did you mean "${near}"?`
        : comma
          ? `${listed} Within braces a comma ends the entry: a text that holds one goes in quotation marks, a number has a decimal point.`
          : listed,
  };
};

const SHAPES: Readonly<Record<string, string>> = {
  object: 'Write keys below it, indented: "key: value".',
  record: 'Write keys below it, indented: "key: value".',
  array: 'Write a list: each entry on its own line, after "- ".',
};

const wrongShape = (path: Path, expected: string, value: unknown): Finding => ({
  kind: value === undefined ? 'missing' : 'wrong shape',
  path,
  ...(value === null ? {} : { value }),
  message:
    value === undefined
      ? 'This is missing.'
      : value === null
        ? 'Nothing is written here.'
        : `${showValue(value)} is not what belongs here.`,
  remedy: SHAPES[expected] ?? `Expected: ${expected}.`,
});

const params = (issue: Issue): FaultParams | undefined =>
  issue.code === 'custom' ? (issue.params as FaultParams | undefined) : undefined;

/** True when a branch of a union is of another shape altogether than what was written. */
const otherShape = (issues: readonly Issue[]): boolean =>
  issues.some(
    (issue) =>
      issue.path.length === 0 &&
      (issue.code === 'invalid_type' || params(issue)?.fault.kind === 'wrong shape'),
  );

const valueAt = (tree: unknown, path: Path): unknown =>
  path.reduce<unknown>((node, step) => {
    if (node === null || typeof node !== 'object') return undefined;
    return Object.hasOwn(node, step) ? (node as Record<string | number, unknown>)[step] : undefined;
  }, tree);

/** How near a branch of a union came: a key that is known but wrong says more than one that is not known. */
const strangeness = (issues: readonly Issue[]): number =>
  issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 0), 0);

const branch = (issue: z.core.$ZodIssueInvalidUnion): readonly Issue[] | undefined => {
  const fitting = issue.errors.filter((issues) => !otherShape(issues));
  return [...fitting].sort((a, b) => strangeness(a) - strangeness(b))[0];
};

/** The findings behind the issues of the schema: each at its place, with the nearest key or what is allowed. */
export const findingsOf = (
  schema: unknown,
  tree: unknown,
  issues: readonly Issue[],
  base: Path = [],
): Finding[] =>
  issues.flatMap((issue): Finding[] => {
    const path = pathOf(base, issue);
    const fault = params(issue)?.fault;
    if (fault) return [{ ...fault, path }];
    if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(schema, path, key));
    if (issue.code === 'invalid_type') return [wrongShape(path, issue.expected, valueAt(tree, path))];
    if (issue.code === 'too_big')
      return [
        {
          kind: 'too large',
          path,
          message: 'This list is too long.',
          remedy: `At most ${issue.maximum} entries.`,
        },
      ];
    if (issue.code === 'too_small')
      return [{ kind: 'empty', path, message: 'This list is empty.', remedy: 'Give at least one entry.' }];
    if (issue.code === 'invalid_union') {
      const best = branch(issue);
      if (best) return findingsOf(schema, tree, best, path);
      return [wrongShape(path, 'object', valueAt(tree, path))];
    }
    return [
      {
        kind: 'wrong shape',
        path,
        value: valueAt(tree, path),
        message: 'This does not belong here.',
        remedy: '',
      },
    ];
  });
