import type { Decision } from '../../engine/answer/decision.ts';
import { SCRAMBLES } from '../../engine/scenario/inputs/scenario.ts';
import { scenarioToPassOn } from '../../engine/scenario/private/passOn.ts';
import { visible } from '../../engine/scenario/text/problems.ts';
import type { Draft } from '../../report/draft.ts';
import { isOurReport } from '../../report/embed.ts';
import { decided } from '../decided.ts';
import type { Drawing } from '../drawing.ts';
import type { Crew } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { drawnOtherwise, withFutures } from '../futures.ts';
import { load } from '../load.ts';
import type { Options } from '../options.ts';
import { save } from '../save.ts';
import type { Screen } from '../screen.ts';
import { wrapped } from '../wrapped.ts';

const DRAWING: Drawing = {
  scrambles: SCRAMBLES,
  load: async () => (await import('../simulator.ts')).SIMULATOR,
};

/**
 * Prints the answer and writes the report; with `--json` prints the whole decision and nothing else.
 *
 * @param crew those who draw futures; null where there are none to draw
 */
export const reportCommand = async (
  file: string,
  options: Options,
  crew: Crew | null,
  effects: Screen,
): Promise<number> => {
  const path = options.out ?? (file === '-' ? null : besides(file));
  if (!options.json && (path === null || path === '-')) {
    await effects.err('The report is a file of its own: say where it goes with --out FILE.\n');
    return EXIT.misuse;
  }
  if (options.json && options.out !== null) {
    await effects.err('--json prints to standard output and writes no file: leave out --out.\n');
    return EXIT.misuse;
  }
  const loaded = await load(file, effects);
  if (typeof loaded === 'number') return loaded;
  const { scenario, told } = withFutures(loaded.scenario, options, SCRAMBLES);
  if (told !== null) await effects.err(`${told}\n`);
  if (options.json || path === null) {
    const [decision, { decisionJson }] = await Promise.all([
      decided(scenario, DRAWING, crew, effects),
      import('../../report/exports/json.ts'),
    ]);
    await effects.out(`${JSON.stringify(decisionJson(decision), null, 2)}\n`);
    return EXIT.done;
  }
  // Charts and the document they are drawn in are slow to load: nobody but a report waits for them, and a report while
  // its futures are drawn. Then, too, is written what no future changes.
  const drawing = Promise.all([import('../../report/render.ts'), import('../document.ts')]);
  const written: { draft: Draft | null; of: Decision | null } = { draft: null, of: null };
  const deciding = decided(scenario, DRAWING, crew, effects, async (atAverage) => {
    const [{ draftReport }, { newDocument }] = await drawing;
    written.draft = draftReport(atAverage, newDocument());
    written.of = atAverage;
  });
  const [decision, [{ renderReport }, { newDocument }], { answerLines }] = await Promise.all([
    deciding,
    drawing,
    import('../../report/answerLines.ts'),
  ]);
  const { facts } = decision;
  const scenarioText = scenarioToPassOn(loaded.text, facts.date, drawnOtherwise(loaded.scenario, scenario));
  // Where other ways turned out best on average, what was written of those at average inputs is of no use.
  const same = written.of?.bestKeep === decision.bestKeep && written.of?.bestReplace === decision.bestReplace;
  const draft = same ? written.draft : null;
  const html = renderReport(decision, { document: newDocument(), scenarioText }, draft);
  // All is ready before the file is written: what goes wrong after that would leave it half told.
  const [first = '', ...rest] = answerLines(decision).map((line) => wrapped(visible(line), effects.columns));
  const from = file === '-' ? null : file;
  const code = await save({ path, text: html, from, force: options.force, isOurs: isOurReport }, effects);
  if (code !== EXIT.done) return code;
  await effects.out([...rest, '', `Report: ${visible(path)}`, ''].join('\n'), first);
  return EXIT.done;
};

/** The report's default place: beside the scenario, ending in .html. */
export const besides = (file: string): string => `${file.replace(/\.ya?ml$/i, '')}.html`;
