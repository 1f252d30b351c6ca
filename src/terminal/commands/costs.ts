import { firstAnswer } from '../../engine/answer/atAverage.ts';
import { visible } from '../../engine/scenario/text/problems.ts';
import { costsCsv } from '../../report/exports/costs.ts';
import type { Effects } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { load } from '../load.ts';
import type { Options } from '../options.ts';
import { save } from '../save.ts';

/** Every cost of every way, line by line, as CSV: to standard output, or to a file that is not there yet. */
export const costsCommand = async (file: string, options: Options, effects: Effects): Promise<number> => {
  const loaded = await load(file, effects, options.set);
  if (typeof loaded === 'number') return loaded;
  const csv = costsCsv(firstAnswer(loaded.scenario, effects.version));
  if (options.out === null || options.out === '-') {
    await effects.out(csv);
    return EXIT.done;
  }
  const path = options.out;
  const from = file === '-' ? null : file;
  const code = await save({ path, text: csv, from, force: options.force, isOurs: null }, effects);
  if (code === EXIT.done) await effects.out(`Wrote ${visible(path)}\n`);
  return code;
};
