import { startingScenario } from '../../engine/scenario/file/starting.ts';
import { visible } from '../../engine/scenario/text/problems.ts';
import type { Effects } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { systemCode, trouble } from '../trouble.ts';

/** Writes a starting scenario, with every default in sight, where nothing stands yet; `-` prints it. */
export const newCommand = async (file: string, effects: Effects): Promise<number> => {
  const text = startingScenario(effects.today());
  const name = visible(file);
  if (file === '-') {
    await effects.out(text);
    return EXIT.done;
  }
  try {
    await effects.files.writeWhole(file, text, false);
  } catch (error) {
    const words =
      systemCode(error) === 'ENOENT' ? `${name}: there is no such folder to write to` : trouble(file, error);
    if (words === null) throw error;
    await effects.err(`${words}; nothing was written\n`);
    return EXIT.misuse;
  }
  await effects.out(
    `Wrote ${name}. Put your own numbers in it, then:\n  stillworth check ${name}\n  stillworth report ${name}\n`,
  );
  return EXIT.done;
};
