import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const COMMAND = resolve('dist/stillworth.js');

/** A golden of an old build would prove nothing. */
const newest = Math.max(
  ...readdirSync('src', { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs),
);
if (!existsSync(COMMAND) || statSync(COMMAND).mtimeMs < newest) {
  throw new Error('These tests run the built command, and it is older than the sources: npm run build');
}

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Setting {
  readonly input?: string | Uint8Array;
  readonly environment?: Readonly<Record<string, string>>;
  /** Options for Node itself, before the command. */
  readonly node?: readonly string[];
}

/** The day every golden run takes place on: 2026-11-25. */
const DAY = '1795564800';

/** Runs the built command in a folder, on a fixed day, without a terminal. */
export const stillworth = (folder: string, args: readonly string[], setting: Setting = {}): Run => {
  const run = spawnSync(process.execPath, [...(setting.node ?? []), COMMAND, ...args], {
    cwd: folder,
    encoding: 'utf8',
    input: setting.input ?? '',
    maxBuffer: 64e6,
    env: { PATH: process.env.PATH, SOURCE_DATE_EPOCH: DAY, ...setting.environment },
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};

/** Runs the built command under a shell, for what only a shell can set up: limits, pipes, closed outputs. */
export const inShell = (folder: string, script: string): Run => {
  const run = spawnSync('bash', ['--norc', '-c', script], {
    cwd: folder,
    encoding: 'utf8',
    env: { PATH: process.env.PATH, SOURCE_DATE_EPOCH: DAY, STILLWORTH: `${process.execPath} ${COMMAND}` },
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};

/** One run as a person would see it, for a golden file. */
export const screenOf = (args: readonly string[], run: Run): string =>
  [
    `$ stillworth ${args.join(' ')}`,
    run.out.trimEnd(),
    ...(run.err === '' ? [] : ['--- standard error', run.err.trimEnd()]),
    `--- exit code ${run.code}`,
    '',
  ].join('\n');

/** A fresh folder, handed to `use` and taken away again. */
export const inFolder = async (use: (folder: string) => void | Promise<void>): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'stillworth-golden-'));
  try {
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
