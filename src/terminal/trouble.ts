import { visible } from '../engine/scenario/text/problems.ts';

/** What the system's error codes mean to somebody who named a file, and what to do about it. */
const WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of that path is a file, not a folder',
  EISDIR: 'that is a folder; name a file in it',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'that disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'the file would be larger than allowed here',
  EIO: 'the disk reports an error',
  ENAMETOOLONG: 'that name is too long',
  ELOOP: 'that path leads in a circle of links',
  EMFILE: 'too many files are open',
  EEXIST: 'there is already a file of that name',
};

/** The code of a system error; null for anything else. */
export const systemCode = (error: unknown): string | null => {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return null;
  return 'syscall' in error || error.code in WORDS ? error.code : null;
};

/** Errors that come half-way through writing: whoever reads them wonders what is there now. */
const HALF_WAY = ['ENOSPC', 'EDQUOT', 'EFBIG', 'EIO'];

export const isHalfWay = (error: unknown): boolean => HALF_WAY.includes(systemCode(error) ?? '');

/** One line on what went wrong with a file; null when the error is not the system's but a fault of our own. */
export const trouble = (path: string, error: unknown): string | null => {
  const code = systemCode(error);
  return code === null ? null : `${visible(path)}: ${WORDS[code] ?? `the system says ${visible(code)}`}`;
};
