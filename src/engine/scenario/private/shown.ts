import type { Scenario } from '../inputs/scenario.ts';
import { readDocument, type Tree } from '../text/document.ts';
import { type Finding, findingId, type Problem } from '../text/problems.ts';
import { PRIVATE_MONEY } from './privateMoney.ts';
import { redactScenario } from './redact.ts';

type File = { readonly [key: string]: Tree };

/**
 * A file as it may be shown: what figures and words are read from. The same tree where nothing is private; problems
 * where it has become too long.
 */
export const shownOf = (
  text: string,
  tree: File,
): { readonly tree: Tree; readonly problems: readonly Problem[] } =>
  tree.private === undefined ? { tree, problems: [] } : readDocument(redactScenario(text));

/** What holds paths and no words; entries of it may be gone. */
const HOLDS_PATHS: ReadonlySet<unknown> = new Set(['private', 'go_together', 'two_way']);

/** Findings in the words they have where private words are out of the file. */
export const asTold = (written: readonly Finding[], told: readonly Finding[]): readonly Finding[] => {
  const words = new Map(
    told.filter(({ path }) => !HOLDS_PATHS.has(path[0])).map((finding) => [findingId(finding), finding]),
  );
  return written.map((finding) => words.get(findingId(finding)) ?? finding);
};

/** The scenario with private money still listed as such, though it was read as if nobody had told it. */
export const withoutMoney = (scenario: Scenario, { private: listed }: File): Scenario => {
  const money = PRIVATE_MONEY.filter((path) => Array.isArray(listed) && listed.includes(path));
  const { facts } = scenario;
  return money.length === 0
    ? scenario
    : { ...scenario, facts: { ...facts, private: [...facts.private, ...money] } };
};

const names = (tree: Tree): readonly string[] => {
  const components = ((tree as File).vehicle as File).components;
  return Array.isArray(components) ? components.map((part: File) => String(part.name).trim()) : [];
};

/** Names of the vehicle's components that are shown under another, by the file's. Both files are in order. */
export const renamedParts = (written: Tree, shown: Tree): ReadonlyMap<string, string> => {
  const now = names(shown);
  return new Map(
    names(written).flatMap((name, i) => (name === now[i] ? [] : [[name, now[i] ?? name] as const])),
  );
};
