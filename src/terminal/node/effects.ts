import { availableParallelism } from 'node:os';
import manifest from '../../../package.json' with { type: 'json' };
import type { Effects } from '../effects.ts';
import { callCrew } from './crew.ts';
import { nodeFiles } from './files.ts';
import { onStop } from './stopping.ts';

/** More workers than this would mostly wait for memory. */
const MOST_WORKERS = 4;

/**
 * The world as this process finds it.
 *
 * @param worker the program of a worker thread
 */
export const nodeEffects = (worker: URL): Effects => ({
  version: manifest.version,
  today,
  out: writerTo(() => process.stdout),
  err: writerTo(() => process.stderr),
  colour: wantsColour(process.env, process.stdout.isTTY === true),
  columns: widthOf(process.stdout),
  files: nodeFiles(() => process.stdin),
  later: (milliseconds, act) => {
    const timer = setTimeout(act, milliseconds);
    return () => clearTimeout(timer);
  },
  now: () => performance.now(),
  // Asked when it is wanted: looking at standard error opens it.
  get progress() {
    return process.stderr.isTTY && process.env.TERM !== 'dumb' ? overwrite : null;
  },
  onStop,
  crew: () => callCrew(worker, Math.max(1, Math.min(availableParallelism() - 1, MOST_WORKERS))),
});

/** Null where it is no terminal, or one that does not say (some give 0). */
const widthOf = (stream: NodeJS.WriteStream): number | null => (stream.isTTY && stream.columns) || null;

/** Back to the line's start, the new text, and nothing of the old one behind it; a line never wraps. */
const overwrite = (line: string): void => {
  process.stderr.write(`\r${line.slice(0, (widthOf(process.stderr) ?? 80) - 1)}\u001b[K`);
};

/**
 * The local day. SOURCE_DATE_EPOCH (seconds since 1970, the convention of reproducible builds) fixes it, so that the
 * same scenario gives the same report on any day.
 */
const today = (): string => {
  const fixed = process.env.SOURCE_DATE_EPOCH;
  if (fixed !== undefined && /^\d+$/.test(fixed))
    return new Date(Number(fixed) * 1000).toISOString().slice(0, 10);
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** NO_COLOR asks for none whatever its value, unless empty; a dumb terminal has none. */
export const wantsColour = (environment: NodeJS.ProcessEnv, isTerminal: boolean): boolean =>
  isTerminal && !environment.NO_COLOR && environment.TERM !== 'dumb';

/** Writes to a stream that is opened only when there is something to write. */
const writerTo =
  (open: () => NodeJS.WriteStream): ((text: string) => Promise<void>) =>
  (text) =>
    text === ''
      ? Promise.resolve()
      : new Promise((done, failed) => {
          // The failure comes back from the write itself; without a listener it would also end the program.
          const stream = open();
          stream.once('error', failed);
          stream.write(text, (error) => (error ? failed(error) : done()));
        });
