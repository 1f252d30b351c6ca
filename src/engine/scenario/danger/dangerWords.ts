/** Words of a job that tell of a danger, from facts/dangerWords.json, which says how they are written there. */
import data from '../facts/dangerWords.json' with { type: 'json' };
import type { AsRead, Sourced } from '../facts/fact.ts';
import type { Danger } from '../inputs/scenario.ts';

export interface DangerWords {
  /** What they speak of, as a person would say it. */
  readonly what: string;
  /** Any of these: whole words; a plural counts too, "*" is any ending. */
  readonly words: readonly string[];
  /** Any of these must stand in it as well; null: the words alone will do. */
  readonly with: readonly string[] | null;
  /** What is taken out of the job's words first, because it means something else. */
  readonly not?: readonly string[];
  /** The cautions for whoever works on it. */
  readonly dangers: readonly Danger[];
}

/** A row as it is written: each text a list of words. */
type WrittenRow = Omit<DangerWords, 'with'> & { readonly with?: readonly string[] };

export interface DangerFile extends Sourced {
  readonly about: string;
  readonly date: string;
  /** Lists that several rows have in common. */
  readonly lists: Readonly<Record<string, readonly string[]>>;
  /** What may be unsafe to leave undone, and what whoever works on it is to take care of then. */
  readonly unsafe: readonly WrittenRow[];
  /** What else whoever works on it is to take care of; leaving it undone is not said to be unsafe. */
  readonly care: readonly WrittenRow[];
}

const { lists, unsafe, care } = data satisfies AsRead<DangerFile> as DangerFile;

/** "{a, b} c" as "a c" and "b c". */
const spread = (entry: string): readonly string[] => {
  const [whole, choices] = /\{([^}]*)\}/.exec(entry) ?? [];
  if (whole === undefined || choices === undefined) return [entry];
  return choices.split(', ').flatMap((choice) => spread(entry.replace(whole, choice)));
};

/** Every word of a list as it is written, in its order; "@name" is a list by its name. */
const wordsOf = (written: readonly string[]): readonly string[] =>
  written
    .flatMap((text) => text.split(/, (?![^{]*\})/))
    .flatMap((entry) => (entry.startsWith('@') ? wordsOf(lists[entry.slice(1)] ?? []) : spread(entry)));

const rowOf = ({ words, with: beside, not, ...row }: WrittenRow): DangerWords => ({
  ...row,
  words: wordsOf(words),
  with: beside ? wordsOf(beside) : null,
  ...(not && { not: wordsOf(not) }),
});

/** Read when they are first asked for. */
export const unsafeWords = (): readonly DangerWords[] => unsafe.map(rowOf);
export const careWords = (): readonly DangerWords[] => care.map(rowOf);
