import { visible } from '../../engine/scenario/text/problems.ts';
import type { Effects } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { load } from '../load.ts';

/** Only checks: says that nothing is wrong and how many numbers were taken from the defaults. */
export const checkCommand = async (file: string, effects: Effects): Promise<number> => {
  const loaded = await load(file, effects);
  if (typeof loaded === 'number') return loaded;
  const { quantities } = loaded.scenario;
  const given = quantities.filter((quantity) => !quantity.isDefault).length;
  const name = file === '-' ? 'The scenario' : visible(file);
  await effects.out(
    `${name} is in order: ${given} numbers given, ${quantities.length - given} taken from the defaults.\n`,
  );
  return EXIT.done;
};
