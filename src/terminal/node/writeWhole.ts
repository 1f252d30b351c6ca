import { closeSync, openSync, rmSync, statSync, writeFile } from 'node:fs';
import { link, lstat, rename, rm, unlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { systemCode } from '../trouble.ts';
import { onStop } from './stopping.ts';

const writeAll = promisify(writeFile) as (handle: number, text: string) => Promise<void>;

/**
 * Writes `text` to `path` whole or not at all: to a passing file in the same folder first, which then takes the place
 * of what stands there (`replace`) or fails with EEXIST if anything does. Whatever goes wrong, and if the program is
 * told to stop half-way, the passing file is taken away again.
 */
export const writeWhole = async (path: string, text: string, replace: boolean): Promise<void> => {
  const passing = join(dirname(path), `.stillworth-${process.pid}.part`);
  // What only its owner could read stays so.
  const mode = replace ? statSync(path).mode & 0o777 : 0o666;
  // Opened in one step with learning that it is ours to clean up: no signal can come between.
  const handle = openSync(passing, 'wx', mode);
  const release = onStop(() => rmSync(passing, { force: true }));
  try {
    try {
      await writeAll(handle, text);
    } finally {
      closeSync(handle);
    }
    await (replace ? rename(passing, path) : putWhereNothingIs(passing, path));
  } catch (error) {
    await rm(passing, { force: true });
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
  await unlink(passing);
};
