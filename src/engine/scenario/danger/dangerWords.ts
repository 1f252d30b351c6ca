import type { Danger } from '../inputs/scenario.ts';

/** Words of a job that tell of a danger. */
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

/** Every first word with every last one, each list written with commas. */
export const each = (firsts: string, lasts: string): string[] =>
  firsts.split(', ').flatMap((first) => lasts.split(', ').map((last) => `${first} ${last}`));
