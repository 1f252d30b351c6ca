import { type ParseContext, type Parsed, parseScenario } from '../engine/scenario/file/parse.ts';
import type { Quantity, Scenario } from '../engine/scenario/inputs/scenario.ts';
import { type LookedAt, textLookedAt } from '../engine/scenario/text/lookedAt.ts';
import { nearest } from '../engine/scenario/text/nearest.ts';
import type { Problem } from '../engine/scenario/text/problems.ts';
import { formatsFor } from '../report/format.ts';

interface Looked {
  readonly parsed: Extract<Parsed, { readonly scenario: Scenario }>;
  readonly text: string;
  /** What was changed, a line each. */
  readonly words: readonly string[];
}

/** A problem of a look: it stands on no line of the file. */
const problemWords = (set: readonly string[], { path, message, remedy }: Problem): string => {
  const asked = set.find((one) => path.startsWith(one.slice(0, one.indexOf('='))));
  return `--set ${asked ?? set.join(' ')}: ${path}: ${message} ${remedy}`;
};

const nearestWords = (path: string, quantities: readonly Quantity[]): string => {
  const close = nearest(path, [...new Set(quantities.map((one) => one.path))]);
  return `The scenario has no number at "${path}".${close === null ? '' : ` Did you mean "${close}"?`}`;
};

/**
 * A scenario with other figures in it for a look: "vehicle.odometer=180000". Or what is wrong with how they were asked
 * for, a line each; a place the file has no number at gets the nearest that has one.
 */
export const lookAt = (
  text: string,
  { quantities, facts }: Scenario,
  set: readonly string[],
  context: ParseContext,
): Looked | { readonly told: readonly string[] } => {
  const format = formatsFor(facts);
  const known = (path: string): Quantity | undefined => quantities.find((one) => one.path === path);
  const looks = set.map((one): LookedAt => {
    const at = one.indexOf('=');
    const [path, figure] = [one.slice(0, at), one.slice(at + 1)];
    const now = known(path);
    const instead = now ? format.quantity(now) : 'nothing said';
    return { path, figure, chosen: now?.mark === 'choice', instead };
  });
  const changed = textLookedAt(text, looks);
  const parsed = changed === null ? null : parseScenario(changed, context);
  const labelOf = ({ path }: LookedAt): string | undefined =>
    known(path)?.label ??
    (parsed && 'scenario' in parsed
      ? parsed.scenario.quantities.find((one) => one.path === path)?.label
      : undefined);
  // A place that the file says nothing at is one if it is a number once something is said there.
  const nowhere = looks.filter((look) => labelOf(look) === undefined);
  if (nowhere.length > 0) return { told: nowhere.map(({ path }) => nearestWords(path, quantities)) };
  if (changed === null || parsed === null) return { told: [`Nothing can be written at ${set.join(', ')}.`] };
  if ('problems' in parsed) return { told: parsed.problems.map((one) => problemWords(set, one)) };
  const words = looks.map(
    (look) =>
      `Only a look: ${labelOf(look)} ${look.figure} instead of ${look.instead}. ${context.file} is as it was.`,
  );
  return { parsed, text: changed, words };
};
