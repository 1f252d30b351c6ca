import type { Crew, Effects, Standing } from '../../src/terminal/effects.ts';

/** A world for commands to run in: what they print and write is kept, what stands there is given. */
export interface World {
  readonly effects: Effects;
  /** Files by path; a folder is `null`, anything else that is no ordinary file `undefined`. */
  readonly files: Map<string, string | null | undefined>;
  printed: string;
  told: string;
  /** Every line of progress, as it was shown; '' where it was cleared. */
  readonly progress: string[];
  /** Lets the clock go on by so many milliseconds. */
  readonly wait: (milliseconds: number) => void;
  /** Tells the program to stop. */
  readonly stop: () => void;
}

export interface Given {
  readonly files?: Record<string, string | null | undefined>;
  readonly input?: string;
  readonly colour?: boolean;
  readonly columns?: number;
  /** Standard error is a terminal. */
  readonly terminal?: boolean;
  /** Those who draw futures; unless given nobody comes, and they are drawn here. */
  readonly crew?: Crew;
  /** The system error that writing meets. */
  readonly writeFails?: string;
  /** The system error that reading meets. */
  readonly readFails?: string;
  /** The system error that printing meets. */
  readonly printFails?: string;
}

/** An error as the system gives it. */
const systemError = (code: string): Error =>
  Object.assign(new Error(`${code}: made up`), { code, syscall: 'made up' });

/** A crew of nobody, as where no thread can start. */
export const NOBODY: Crew = { draw: async () => {}, end: () => {} };

/** A clock that stands still until it is told to go on; what is due at once happens at once, but not within the call. */
const clock = () => {
  let now = 0;
  const due = new Map<() => void, number>();
  return {
    now: (): number => now,
    later: (milliseconds: number, act: () => void): (() => void) => {
      if (milliseconds === 0) void Promise.resolve().then(act);
      else due.set(act, now + milliseconds);
      return () => void due.delete(act);
    },
    wait: (milliseconds: number): void => {
      now += milliseconds;
      for (const [act, at] of due) {
        if (at > now) continue;
        due.delete(act);
        act();
      }
    },
  };
};

export const world = (given: Given = {}): World => {
  const files = new Map(Object.entries(given.files ?? {}));
  const bytes = (text: string, most: number): Uint8Array => new TextEncoder().encode(text).subarray(0, most);
  const standing = (path: string): Standing => {
    if (!files.has(path)) return 'nothing';
    const content = files.get(path);
    if (content === null) return 'folder';
    return content === undefined ? 'other' : 'file';
  };
  const progress: string[] = [];
  const stops = new Set<() => void>();
  const { later, now, wait } = clock();
  const made: World = {
    files,
    printed: '',
    told: '',
    progress,
    wait,
    stop: () => {
      for (const clean of stops) clean();
    },
    effects: {
      version: '1.2.3',
      today: () => '2026-11-25',
      colour: given.colour ?? false,
      columns: given.columns ?? null,
      out: async (text) => {
        if (given.printFails !== undefined) throw systemError(given.printFails);
        made.printed += text;
      },
      err: async (text) => {
        made.told += text;
      },
      later,
      now,
      progress: given.terminal === true ? (line) => void progress.push(line) : null,
      onStop: (clean) => {
        stops.add(clean);
        return () => void stops.delete(clean);
      },
      crew: () => given.crew ?? NOBODY,
      files: {
        read: async (path, most) => {
          if (given.readFails !== undefined) throw systemError(given.readFails);
          const content = files.get(path);
          if (content === null) throw systemError('EISDIR');
          if (content === undefined) throw systemError('ENOENT');
          return bytes(content, most);
        },
        readInput: async (most) => bytes(given.input ?? '', most),
        standing: async (path) => standing(path),
        same: async (a, b) => a === b,
        writeWhole: async (path, text, replace) => {
          if (given.writeFails !== undefined) throw systemError(given.writeFails);
          if (!replace && files.has(path)) throw systemError('EEXIST');
          files.set(path, text);
        },
      },
    },
  };
  return made;
};
