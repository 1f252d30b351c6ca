/**
 * Everything a command may do to the world, handed in: a test hands in a world of its own.
 */
export interface Effects {
  /** The program's version, which is printed and goes into every report. */
  readonly version: string;
  /** The day of the run as an ISO date, for scenarios that do not state theirs. */
  readonly today: () => string;
  /** Writes to standard output; rejects when it cannot. */
  readonly out: (text: string) => Promise<void>;
  /** Writes to standard error; rejects when it cannot. */
  readonly err: (text: string) => Promise<void>;
  /** Whether standard output is a terminal that shows colour and nobody asked for none. */
  readonly colour: boolean;
  /** How many characters a line of the terminal holds; null where standard output is none. */
  readonly columns: number | null;
  readonly files: Files;
}

/** What stands at a path. `other` is anything a report must never replace: a device, a pipe, a socket. */
export type Standing = 'nothing' | 'file' | 'folder' | 'other';

/** Failures are the system's own errors, with a `code` such as ENOENT; `trouble.ts` puts them into words. */
export interface Files {
  /** The first `most` bytes of a file; enough to see that it is too long without reading all of it. */
  readonly read: (path: string, most: number) => Promise<Uint8Array>;
  /** The first `most` bytes of standard input. */
  readonly readInput: (most: number) => Promise<Uint8Array>;
  readonly standing: (path: string) => Promise<Standing>;
  /** Whether two paths lead to the same file. */
  readonly same: (a: string, b: string) => Promise<boolean>;
  /** Writes a file whole or not at all. With `replace` false it fails with EEXIST if something is there. */
  readonly writeWhole: (path: string, text: string, replace: boolean) => Promise<void>;
}
