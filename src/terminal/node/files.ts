import { createReadStream } from 'node:fs';
import { lstat, realpath, stat } from 'node:fs/promises';
import type { Files, Standing } from '../effects.ts';
import { systemCode } from '../trouble.ts';
import { writeWhole } from './writeWhole.ts';

const firstBytes = async (chunks: AsyncIterable<Uint8Array>, most: number): Promise<Uint8Array> => {
  const read: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of chunks) {
    read.push(chunk);
    length += chunk.length;
    if (length >= most) break;
  }
  return Buffer.concat(read).subarray(0, most);
};

const standing = async (path: string): Promise<Standing> => {
  try {
    await lstat(path);
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return 'nothing';
    throw error;
  }
  // Something is there; a link that leads nowhere throws here, and is no place to write to.
  const found = await stat(path);
  if (found.isFile()) return 'file';
  return found.isDirectory() ? 'folder' : 'other';
};

const same = async (a: string, b: string): Promise<boolean> => {
  const [one, other] = await Promise.all([stat(a), stat(b)]);
  return one.dev === other.dev && one.ino === other.ino;
};

/** The files of this machine. Standard input is opened only when it is read. */
export const nodeFiles = (input: () => AsyncIterable<Uint8Array>): Files => ({
  read: (path, most) => firstBytes(createReadStream(path), most),
  readInput: (most) => firstBytes(input(), most),
  standing,
  same,
  // A link is followed, so that what it leads to is replaced and not the link.
  writeWhole: async (path, text, replace) => writeWhole(replace ? await realpath(path) : path, text, replace),
});
