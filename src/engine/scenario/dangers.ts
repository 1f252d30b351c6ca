import { DANGER_WORDS, type DangerWords } from './dangerWords.ts';
import type { Danger } from './scenario.ts';

const QUALIFIED: readonly Danger[] = ['airbag', 'high-voltage', 'structure'];

/** Small letters, one space between words, nothing but letters and digits. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Whole words of a plain text: a plural counts too, and "*" is any ending. */
const anyOf = (words: readonly string[], flags: string): RegExp => {
  const each = words.map((word) =>
    word
      .split(/[ ']/)
      .map((part) => (part.endsWith('*') ? `${part.slice(0, -1)}\\p{L}*` : part))
      .join(' ')
      .replace(/\p{L}$/u, '$&(?:e?s)?'),
  );
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${each.join('|')})(?![\\p{L}\\p{N}])`, flags);
};

/** A row made ready, once each. */
interface Reader extends DangerWords {
  readonly named: RegExp;
  readonly beside: RegExp | null;
  readonly harmless: RegExp | null;
}

let readers: readonly Reader[] | undefined;
const reading = (): readonly Reader[] => {
  readers ??= DANGER_WORDS.map((row) => ({
    ...row,
    named: anyOf(row.words, 'u'),
    beside: row.with && anyOf(row.with, 'u'),
    harmless: row.not.length > 0 ? anyOf(row.not, 'gu') : null,
  }));
  return readers;
};

/** The words of the job that a row speaks of; null where it has none. */
const wordsFor = (row: Reader, job: string): readonly string[] | null => {
  const text = row.harmless ? job.replace(row.harmless, ' , ') : job;
  const named = row.named.exec(text);
  if (!named) return null;
  if (row.beside === null) return [named[0]];
  const beside = row.beside.exec(text);
  return beside && [named[0], beside[0]];
};

/** The dangers of a job: as listed, else recognised from its words. */
export const dangersOf = (name: string, listed: readonly Danger[] | undefined): readonly Danger[] => {
  if (listed) return [...new Set(listed)];
  const job = plain(name);
  const found = new Set(
    reading().flatMap((row) => (row.dangers.length > 0 && wordsFor(row, job) ? row.dangers : [])),
  );
  // A high-voltage battery is not the starter's.
  if (found.has('high-voltage')) found.delete('battery');
  return [...found];
};

/** What may be unsafe to leave undone, and what tells of it. */
export interface Unsafe {
  readonly what: string;
  /** The words of the job that say so; none where a danger was listed. */
  readonly words: readonly string[];
}

/** Listed dangers that say nothing of driving without the work: they are about doing it. */
const ONLY_FOR_THE_WORK: readonly Danger[] = ['lifting', 'battery'];

/**
 * What may make it unsafe to drive with the job undone, by its words or else by the dangers listed; null where nothing
 * does, and where an empty list says that nothing does.
 */
export const unsafeToLeave = (name: string, listed: readonly Danger[] | undefined): Unsafe | null => {
  if (listed?.length === 0) return null;
  const job = plain(name);
  for (const row of reading()) {
    const words = row.unsafe ? wordsFor(row, job) : null;
    if (words) return { what: row.what, words };
  }
  const danger = listed?.find((one) => !ONLY_FOR_THE_WORK.includes(one));
  return danger === undefined ? null : { what: danger.replace('-', ' '), words: [] };
};

/** Whether own hands are out: as told, else where airbags, high voltage or what carries the vehicle are touched. */
export const needsQualified = (dangers: readonly Danger[], told: boolean | undefined): boolean =>
  told ?? dangers.some((danger) => QUALIFIED.includes(danger));

/** What the file says of it: only qualified work, or own hands, either of which answers the other; undefined: nothing. */
export const qualifiedTold = (
  qualifiedOnly: boolean | undefined,
  ownHands: boolean | undefined,
): boolean | undefined => qualifiedOnly ?? (ownHands === undefined ? undefined : !ownHands);
