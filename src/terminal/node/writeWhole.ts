import { closeSync, openSync, rmSync, statSync, writeFile } from 'node:fs';
import { link, lstat, rename, rm, unlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { systemCode } from '../trouble.ts';
import { onStop } from './stopping.ts';

const writeAll = promisify(writeFile) as (handle: number, text: string) => Promise<void>;

/** No folder holds more leavings than these. */
const MOST_LEFT = 1000;

/**
 * Opens a passing file in a folder, under a name that nothing has. What a killed run left stays: its number may be ours
 * now, and in a folder that machines share it may be another's at this very moment.
 */
const openPassing = (folder: string, mode: number): { readonly passing: string; readonly handle: number } => {
  for (let n = 1; ; n += 1) {
    const passing = join(folder, `.stillworth-${process.pid}${n === 1 ? '' : `-${n}`}.part`);
    try {
      return { passing, handle: openSync(passing, 'wx', mode) };
    } catch (error) {
      if (systemCode(error) !== 'EEXIST' || n === MOST_LEFT) throw error;
    }
  }
};

/**
 * Writes `text` to `path` whole or not at all: to a passing file in the same folder first, which then takes the place
 * of what stands there (`replace`) or fails with EEXIST if anything does. Whatever goes wrong, and if the program is
 * told to stop half-way, the passing file is taken away again; one that a killed run left never stands in the way.
 */
export const writeWhole = async (path: string, text: string, replace: boolean): Promise<void> => {
  // What only its owner could read stays so.
  const mode = replace ? statSync(path).mode & 0o777 : 0o666;
  // Opened in one step with learning that it is ours to clean up: no signal can come between.
  const { passing, handle } = openPassing(dirname(path), mode);
  const release = onStop(() => rmSync(passing, { force: true }));
  try {
    try {
      await writeAll(handle, text);
    } finally {
      closeSync(handle);
    }
    await (replace ? rename(passing, path) : putWhereNothingIs(passing, path));
  } catch (error) {
    // What went wrong first is what is told.
    await rm(passing, { force: true }).catch(() => {});
    throw error;
  } finally {
    release();
  }
};

/** Moves a file to where nothing stands. A hard link does it in one step; a disk that has none gets a look first. */
const putWhereNothingIs = async (passing: string, path: string): Promise<void> => {
  try {
    await link(passing, path);
  } catch (error) {
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'].includes(systemCode(error) ?? '')) throw error;
    const there = await lstat(path).catch(() => null);
    if (there !== null) throw Object.assign(new Error('exists'), { code: 'EEXIST' });
    await rename(passing, path);
    return;
  }
  // The file is in its place now: a passing name that cannot be taken away is no failure to write.
  await unlink(passing).catch(() => {});
};
