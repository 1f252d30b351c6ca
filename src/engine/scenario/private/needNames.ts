import { LONGEST_KEY } from '../schema/fields.ts';
import type { Path } from '../text/problems.ts';

const nameOf = (key: Path): string => String(key.at(-1));

/** What stands in for the name of a need, by its place among them from 0. */
const needKey = (place: number): string => `need_${place + 1}`;

/** Whether a name stands in for another already. */
export const isNeedKey = (name: string): boolean => /^need_\d+$/.test(name);

/**
 * What the household's own needs are to be called, by what they are called: private ones by number, others without the
 * words that are private. No two that differed become one.
 *
 * @param clear takes private words out of a text
 */
export const needNames = (
  keys: readonly Path[],
  isMarked: (path: Path) => boolean,
  clear: (text: string) => string,
): ReadonlyMap<string, string> => {
  const marked = new Set(keys.filter(isMarked).map(nameOf));
  const taken = new Set(keys.map(nameOf));
  return new Map(
    [...taken].map((name, place) => {
      const cleared = marked.has(name) ? needKey(place) : clear(name);
      if (cleared === name) return [name, name];
      const key = cleared.replaceAll(/[^\p{L}\p{N}]+/gu, '_').slice(0, LONGEST_KEY - 3);
      let to = key;
      for (let n = 2; taken.has(to); n++) to = `${key}_${n}`;
      taken.add(to);
      return [name, to];
    }),
  );
};
