import { visible } from '../engine/scenario/text/problems.ts';
import type { Effects } from './effects.ts';
import { EXIT } from './exit.ts';
import { isHalfWay, systemCode, trouble } from './trouble.ts';

export interface Saving {
  readonly path: string;
  readonly text: string;
  /** The file the text was made from, which is never overwritten; null where there is none. */
  readonly from: string | null;
  /** The user said that whatever ordinary file stands there may go. */
  readonly force: boolean;
  /** Whether what stands there is a report of ours, to replace without being told; null: nothing is. */
  readonly isOurs: ((head: string) => boolean) | null;
}

/** How much of a file is looked at to see whether it is ours. */
const HEAD = 4096;
const INSTEAD = 'name another file with --out, or say --force';

/**
 * Writes a file whole or not at all, and over nothing that is not ours unless told. When it does not write, it says
 * why on standard error. The result is the code to exit with.
 */
export const save = async (saving: Saving, effects: Effects): Promise<number> => {
  const refusal = await refuse(saving, effects);
  if (refusal === null) return EXIT.done;
  await effects.err(`${visible(refusal)}\n`);
  return EXIT.misuse;
};

/** Writes, or says in one line why not. */
const refuse = async (saving: Saving, { files }: Effects): Promise<string | null> => {
  const { path, from, force, isOurs } = saving;
  try {
    const standing = await files.standing(path);
    if (standing === 'folder') return `${path}: that is a folder; name a file in it`;
    if (standing === 'other') return `${path}: not an ordinary file; nothing was written`;
    if (standing === 'file') {
      if (from !== null && (await files.same(from, path))) {
        return `${path}: that is the scenario itself; name another file with --out`;
      }
      if (!force && isOurs === null) return `${path}: already there; ${INSTEAD}`;
      if (!force && isOurs !== null && !isOurs(new TextDecoder().decode(await files.read(path, HEAD)))) {
        return `${path}: already there, and not a report of ours; ${INSTEAD}`;
      }
    }
    await files.writeWhole(path, saving.text, standing === 'file');
    return null;
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return `${path}: there is no such folder to write to`;
    const words = trouble(path, error);
    if (words === null) throw error;
    // A file is written whole or not at all.
    return isHalfWay(error) ? `${words}; nothing was written` : words;
  }
};
