import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import type { DrawSetting, ScrambleDraws } from '../engine/simulation/draws.ts';

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
  /** The clock: does something once so many milliseconds have gone by. The result takes that back. */
  readonly later: (milliseconds: number, act: () => void) => () => void;
  /** Milliseconds since the program began. */
  readonly now: () => number;
  /** Overwrites the one line that tells how far a long run is; '' clears it. Null where standard error is no terminal. */
  readonly progress: ((line: string) => void) | null;
  /** If the program is told to stop, runs `clean` and stops it. The result takes that back. */
  readonly onStop: (clean: () => void) => () => void;
  /** Calls in those who draw futures beside this thread. */
  readonly crew: () => Crew;
}

/** What is to be drawn, and the count, shared by all who draw, of the sets that somebody has taken already. */
export interface Asked {
  readonly scenario: Scenario;
  readonly settings: readonly DrawSetting[];
  readonly taken: Int32Array;
}

/** Those who draw futures beside this thread. How many they are, and who draws what, changes no figure. */
export interface Crew {
  /**
   * Each of them takes one set after another until none is left; `drawn` hears of each as it comes, by its setting's
   * place. Resolves when nothing more will come: what broke one of them is then missing.
   */
  readonly draw: (asked: Asked, drawn: (place: number, draws: ScrambleDraws) => void) => Promise<void>;
  /** Sends them home, whatever they are at. */
  readonly end: () => void;
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
