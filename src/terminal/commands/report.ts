import { SCRAMBLES } from '../../engine/scenario/inputs/scenario.ts';
import { scenarioToPassOn } from '../../engine/scenario/private/passOn.ts';
import { visible } from '../../engine/scenario/text/problems.ts';
import { isOurReport } from '../../report/embed.ts';
import { decided } from '../decided.ts';
import { EXIT } from '../exit.ts';
import { drawnOtherwise, withFutures } from '../futures.ts';
import { load } from '../load.ts';
import type { Options } from '../options.ts';
import { save } from '../save.ts';
import type { Screen } from '../screen.ts';
import { wrapped } from '../wrapped.ts';

/** Prints the answer and writes the report; with `--json` prints the whole decision and nothing else. */
export const reportCommand = async (file: string, options: Options, effects: Screen): Promise<number> => {
  const path = options.out ?? (file === '-' ? null : besides(file, options.set));
  if (!options.json && (path === null || path === '-')) {
    await effects.err('The report is a file of its own: say where it goes with --out FILE.\n');
    return EXIT.misuse;
  }
  if (options.json && options.out !== null) {
    await effects.err('--json prints to standard output and writes no file: leave out --out.\n');
    return EXIT.misuse;
  }
  const loaded = await load(file, effects, options.set);
  if (typeof loaded === 'number') return loaded;
  const { scenario, told } = withFutures(loaded.scenario, options, SCRAMBLES);
  if (told !== null) await effects.err(`${told}\n`);
  if (options.json || path === null) {
    const [decision, { decisionJson }] = await Promise.all([
      decided(scenario, effects),
      import('../../report/exports/json.ts'),
    ]);
    await effects.out(`${JSON.stringify(decisionJson(decision), null, 2)}\n`);
    return EXIT.done;
  }
  // Charts and the document they are drawn in are slow to load: nobody but a report waits for them, and a report while
  // its futures are drawn.
  const [decision, { renderReport }, { newDocument }, { answerLines }] = await Promise.all([
    decided(scenario, effects),
    import('../../report/render.ts'),
    import('../document.ts'),
    import('../../report/answerLines.ts'),
  ]);
  const { facts } = decision;
  const scenarioText = scenarioToPassOn(loaded.text, facts.date, drawnOtherwise(loaded.scenario, scenario));
  const html = renderReport(decision, { document: newDocument(), scenarioText });
  // All is ready before the file is written: what goes wrong after that would leave it half told.
  const [first = '', ...rest] = answerLines(decision).map((line) => wrapped(visible(line), effects.columns));
  const from = file === '-' ? null : file;
  const code = await save({ path, text: html, from, force: options.force, isOurs: isOurReport }, effects);
  if (code !== EXIT.done) return code;
  await effects.out([...rest, '', `Report: ${visible(path)}`, ''].join('\n'), first);
  return EXIT.done;
};

/** The report's default place: beside the scenario, ending in .html; a look has one of its own. */
export const besides = (file: string, set: readonly string[] = []): string =>
  `${file.replace(/\.ya?ml$/i, '')}${set.length > 0 ? '-look' : ''}.html`;
