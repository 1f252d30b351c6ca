import { visible } from '../engine/scenario/text/problems.ts';
import type { Effects } from './effects.ts';

/** Effects whose output a terminal only shows: what it would obey comes from nobody but us. */
export interface Screen extends Effects {
  /** Writes to standard output; the heading stands in a line of its own before the text and stands out. */
  readonly out: (text: string, heading?: string) => Promise<void>;
  /** The files written so far, by the names they were given. */
  readonly written: readonly string[];
}

/** A text of several lines, each of them safe and their ends as they are. */
const lines = (text: string): string =>
  text
    .split(/(\r?\n)/)
    .map((piece, i) => (i % 2 === 1 ? piece : visible(piece)))
    .join('');

/**
 * The one place where text goes to the terminal. Names, titles, labels and paths come from files and arguments and may
 * hold anything: escape sequences, bells, marks that reverse what follows. They are shown as escapes here (which in JSON
 * mean the very same). Whoever prints a name within a line of its own making takes care of line ends by `visible`.
 */
export const screenOver = (effects: Effects): Screen => {
  const written: string[] = [];
  const { files } = effects;
  return {
    version: effects.version,
    today: effects.today,
    out: (text, heading) =>
      effects.out(
        heading === undefined ? lines(text) : `${strong(lines(heading), effects.colour)}\n${lines(text)}`,
      ),
    err: (text) => effects.err(lines(text)),
    colour: effects.colour,
    columns: effects.columns,
    files: {
      read: files.read,
      readInput: files.readInput,
      standing: files.standing,
      same: files.same,
      writeWhole: async (path, text, replace) => {
        await files.writeWhole(path, text, replace);
        written.push(path);
      },
    },
    later: effects.later,
    now: effects.now,
    // Asked when it is wanted: looking at standard error opens it.
    get progress() {
      const { progress } = effects;
      return progress && ((line: string): void => progress(visible(line)));
    },
    onStop: effects.onStop,
    crew: effects.crew,
    written,
  };
};

const strong = (text: string, colour: boolean): string => (colour ? `\u001b[1m${text}\u001b[22m` : text);
