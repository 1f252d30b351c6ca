import type { Text } from './texts.ts';
import { isIndex } from './texts.ts';

/** A text as it was and as it is to be. */
export interface Change extends Text {
  readonly now: string;
}

/** What the entries of a list are told apart by. */
const NAMES: ReadonlySet<unknown> = new Set(['what', 'job', 'name']);

/** Whether it says the same as before, spaces around it aside. */
const stays = ({ text, now }: Change): boolean => text.trim() === now.trim();

/** Names of one list that were told apart before are told apart after: one of them gets a number. */
export const toldApart = (changes: readonly Change[]): Change[] => {
  const lists = new Map<string, Map<string, string>>();
  const listOf = ({ path }: Change): Map<string, string> | null => {
    if (!NAMES.has(path.at(-1)) || !isIndex(path.at(-2))) return null;
    const id = path.slice(0, -2).join('.');
    const list = lists.get(id) ?? new Map<string, string>();
    lists.set(id, list);
    return list;
  };
  for (const change of changes.filter(stays)) listOf(change)?.set(change.now.trim(), change.now.trim());
  return changes.map((change) => {
    const list = listOf(change);
    if (list === null || stays(change)) return change;
    const was = change.text.trim();
    let { now } = change;
    for (let n = 2; (list.get(now) ?? was) !== was; n++) now = `${change.now} ${n}`;
    list.set(now, was);
    return { ...change, now };
  });
};
