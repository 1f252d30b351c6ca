import { type Parsed, parseScenario } from '../engine/scenario/file/parse.ts';
import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import { decodeScenario, LONGEST_TEXT } from '../engine/scenario/text/decode.ts';
import { type Problem, problemText, visible } from '../engine/scenario/text/problems.ts';
import type { Effects } from './effects.ts';
import { EXIT } from './exit.ts';
import { trouble } from './trouble.ts';

/** A scenario that was read without a problem, with its text as it stands in the file. */
export interface Loaded {
  readonly scenario: Scenario;
  readonly text: string;
  readonly warnings: number;
  /** Components of the vehicle that are shown under another name than the file's, by the file's. */
  readonly renamed: ReadonlyMap<string, string>;
}

/** How a scenario from standard input is called in messages. */
const INPUT = 'standard input';

/**
 * Reads and parses a scenario, with other figures where somebody wants a look at them. Warnings, or every problem at once, go to standard error; where there is a problem the
 * result is the code to exit with.
 */
export const load = async (
  file: string,
  effects: Effects,
  set: readonly string[] = [],
): Promise<Loaded | number> => {
  const name = file === '-' ? INPUT : file;
  const tell = (problems: readonly Problem[]): Promise<void> =>
    effects.err(problems.map((problem) => `${problemText(name, problem)}\n`).join(''));

  // One byte more than is allowed is enough to know that there is too much.
  const most = LONGEST_TEXT + 1;
  let bytes: Uint8Array;
  try {
    bytes = await (file === '-' ? effects.files.readInput(most) : effects.files.read(file, most));
  } catch (error) {
    const words = trouble(name, error);
    if (words === null) throw error;
    await effects.err(`${words}\n`);
    return EXIT.misuse;
  }

  const decoded = decodeScenario(bytes);
  if ('problems' in decoded) {
    await tell(decoded.problems);
    return EXIT.wrongFile;
  }
  const context = { file: name, today: effects.today() };
  const asWritten = parseScenario(decoded.text, context);
  if ('problems' in asWritten) {
    await tell(asWritten.problems);
    return EXIT.wrongFile;
  }
  if (set.length === 0) {
    await tell(asWritten.warnings);
    return loaded(asWritten, decoded.text);
  }
  // Figures are put into words for a look alone.
  const { lookAt } = await import('./look.ts');
  const looked = lookAt(decoded.text, asWritten.scenario, set, context);
  if ('told' in looked) {
    await effects.err(`${looked.told.map(visible).join('\n')}\n`);
    return EXIT.misuse;
  }
  await tell(looked.parsed.warnings);
  await effects.err(`${looked.words.map(visible).join('\n')}\n`);
  return loaded(looked.parsed, looked.text);
};

type Sound = Extract<Parsed, { readonly scenario: Scenario }>;

const loaded = ({ scenario, warnings, renamed }: Sound, text: string): Loaded => ({
  scenario,
  text,
  warnings: warnings.length,
  renamed,
});
