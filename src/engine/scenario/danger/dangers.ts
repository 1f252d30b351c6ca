import type { Danger } from '../inputs/scenario.ts';
import { careWords, type DangerWords, unsafeWords } from './dangerWords.ts';

const QUALIFIED: readonly Danger[] = ['airbag', 'high-voltage', 'structure'];

/** Small letters, one space between words, nothing but letters and digits. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** One word as a pattern: a plural counts too, and "*" is any ending in letters. */
const patternOf = (word: string): string => {
  const pattern = word.replaceAll("'", ' ').replaceAll('*', '[^ ,\\d]*');
  return word.endsWith('*') ? pattern : `${pattern}(?:e?s)?`;
};

/**
 * Whole words of a plain text, in which only a space or a comma is no letter or digit. To ask for any letter there is
 * would say the same, and compiling that for every row takes four times as long: a sixth of a cold check.
 */
const anyOf = (words: readonly string[], flags?: string): RegExp =>
  new RegExp(`(?<![^ ,])(?:${words.map(patternOf).join('|')})(?![^ ,])`, flags);

/** A row made ready to read with. */
interface Reader extends DangerWords {
  readonly named: RegExp;
  readonly beside: RegExp | null;
  readonly harmless: RegExp | null;
}

const reader = (row: DangerWords): Reader => ({
  ...row,
  named: anyOf(row.words),
  beside: row.with && anyOf(row.with),
  harmless: row.not ? anyOf(row.not, 'g') : null,
});

let ready: { readonly unsafe: readonly Reader[]; readonly care: readonly Reader[] } | undefined;
/** Made ready when the first job is read, and once. */
const readers = () => {
  ready ??= { unsafe: unsafeWords().map(reader), care: careWords().map(reader) };
  return ready;
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
  const { unsafe, care } = readers();
  const found = new Set([...unsafe, ...care].flatMap((row) => (wordsFor(row, job) ? row.dangers : [])));
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
  for (const row of readers().unsafe) {
    const words = wordsFor(row, job);
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
