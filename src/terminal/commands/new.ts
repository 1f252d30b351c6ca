import { startingScenario } from '../../engine/scenario/starting.ts';
import type { Effects } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { systemCode, trouble } from '../trouble.ts';

/** Writes a starting scenario, with every default in sight, where nothing stands yet; `-` prints it. */
export const newCommand = async (file: string, effects: Effects): Promise<number> => {
  const text = startingScenario(effects.today());
  if (file === '-') {
    await effects.out(text);
    return EXIT.done;
  }
  try {
    await effects.files.writeWhole(file, text, false);
  } catch (error) {
    const words =
      systemCode(error) === 'ENOENT' ? `${file}: there is no such folder to write to` : trouble(file, error);
    if (words === null) throw error;
    await effects.err(`${words}; nothing was written\n`);
    return EXIT.misuse;
  }
  await effects.out(
    `Wrote ${file}. Put your own numbers in it, then:\n  stillworth check ${file}\n  stillworth report ${file}\n`,
  );
  return EXIT.done;
};
