/** An invented file that says everything there is to say in words, to plant a private word anywhere in it. */
import { readFileSync } from 'node:fs';
import { parse, stringify } from 'yaml';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { scenarioToPassOn } from '../../src/engine/scenario/private/passOn.ts';
import { isOwnKey, isWords, leavesOf, ownKeysOf } from '../../src/engine/scenario/private/texts.ts';
import type { Tree as Read } from '../../src/engine/scenario/text/document.ts';

export type File = Record<string, unknown>;
type Path = readonly (string | number)[];

const DAY = '2026-10-01';

const FULL = readFileSync(new URL('../scenario/full-form.yaml', import.meta.url), 'utf8');

export const at = (file: unknown, path: Path): unknown =>
  path.reduce<unknown>((node, step) => (node as File | undefined)?.[step], file);

export const put = (file: File, path: Path, value: unknown): void => {
  (at(file, path.slice(0, -1)) as File)[String(path.at(-1))] = value;
};

/** The full form, with what is read out of words written beside them, and with words beside numbers. */
export const wordyFile = (): File => {
  const file = parse(FULL) as File;
  delete file.private;
  put(file, ['work_needed', 0, 'dangers'], ['lifting']);
  put(file, ['work_needed', 0, 'safety'], 'no');
  put(file, ['work_needed', 0, 'why'], 'it stands until it is done');
  put(file, ['work_needed', 1, 'dangers'], ['airbag']);
  put(file, ['work_needed', 2, 'dangers'], []);
  put(file, ['work_needed', 3, 'dangers'], []);
  put(file, ['claim', 'refunds', 0, 'insurance'], 'no');
  [2023, 2026, 2018].forEach((year, i) => {
    put(file, ['replacement', i, 'year'], year);
  });
  put(file, ['vehicle', 'insurance_a_year'], { value: 540, source: 'the bill', note: 'paid in spring' });
  put(file, ['work_needed', 0, 'shop_price'], { value: 2300, source: 'the shop in Mill Lane' });
  put(file, ['needs', 'seats'], { value: 3, note: 'two of us and a ladder' });
  return file;
};

/** Every place of a file where words stand that may be private: of a list, each entry. */
export const textPaths = (file: File): readonly Path[] =>
  leavesOf(file as Read)
    .map(({ path }) => path)
    .filter(isWords);

/** The household's own needs. */
export const needPaths = (file: File): readonly Path[] =>
  ownKeysOf(file as Read).filter((path) => path[0] === 'needs' && isOwnKey(path));

export const textOf = (file: File): string => stringify(file);

/** The scenario of a file that must be right, and the text that a report carries. */
export const read = (file: File): { readonly scenario: Scenario; readonly passed: string } => {
  const text = textOf(file);
  const parsed = parseScenario(text, { file: 'mine.yaml', today: DAY });
  if ('problems' in parsed)
    throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message} ${p.remedy}`).join('\n'));
  return { scenario: parsed.scenario, passed: scenarioToPassOn(text, DAY) };
};

/** A thing without the texts in it: its shape, its numbers, and whatever is no text of the household's. */
export const withoutTexts = <T>(thing: T, texts: ReadonlySet<string>): T => {
  if (Array.isArray(thing)) return thing.map((one) => withoutTexts(one, texts)) as T;
  if (typeof thing !== 'object' || thing === null) return thing;
  return Object.fromEntries(
    Object.entries(thing).map(([key, held]) => [
      key,
      texts.has(key) && typeof held === 'string' ? '' : withoutTexts(held, texts),
    ]),
  ) as T;
};

/** Letters and digits only, without accents and size: a word is found in it however it was written. */
export const bare = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ');
