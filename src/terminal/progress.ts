import type { Effects } from './effects.ts';

/** Whoever waits no longer than this from the start of the program is told nothing. In milliseconds. */
const SOON = 500;

export interface Progress {
  /** Says what is being done now, if the run has taken long enough to be told about. */
  readonly say: (line: string) => void;
  /** Clears the line, for good. */
  readonly end: () => void;
}

/** One line on standard error about a run that takes more than half a second; nothing where that is no terminal. */
export const startProgress = ({
  later,
  now,
  progress,
}: Pick<Effects, 'later' | 'now' | 'progress'>): Progress => {
  if (progress === null) return { say: () => {}, end: () => {} };
  let line = '';
  let shown = false;
  const forget = later(Math.max(0, SOON - now()), () => {
    shown = true;
    progress(line);
  });
  return {
    say: (next) => {
      line = next;
      if (shown) progress(line);
    },
    end: () => {
      forget();
      if (shown) progress('');
      shown = false;
    },
  };
};
