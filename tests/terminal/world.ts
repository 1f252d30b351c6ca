import type { Effects, Standing } from '../../src/terminal/effects.ts';

/** A world for commands to run in: what they print and write is kept, what stands there is given. */
export interface World {
  readonly effects: Effects;
  /** Files by path; a folder is `null`, anything else that is no ordinary file `undefined`. */
  readonly files: Map<string, string | null | undefined>;
  printed: string;
  told: string;
}

export interface Given {
  readonly files?: Record<string, string | null | undefined>;
  readonly input?: string;
  readonly colour?: boolean;
  readonly columns?: number;
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

export const world = (given: Given = {}): World => {
  const files = new Map(Object.entries(given.files ?? {}));
  const bytes = (text: string, most: number): Uint8Array => new TextEncoder().encode(text).subarray(0, most);
  const standing = (path: string): Standing => {
    if (!files.has(path)) return 'nothing';
    const content = files.get(path);
    if (content === null) return 'folder';
    return content === undefined ? 'other' : 'file';
  };
  const made: World = {
    files,
    printed: '',
    told: '',
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
