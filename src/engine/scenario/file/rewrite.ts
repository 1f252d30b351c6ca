import { remember } from '../../quantity/remember.ts';
import { completeNumbers } from '../complete/completeScenario.ts';
import { differing } from '../complete/movedInputs.ts';
import { putAt, typedInto } from '../complete/typedInto.ts';
import { withInput } from '../inputs/lens.ts';
import type { Quantity, Scenario } from '../inputs/scenario.ts';
import type { Written } from '../inputs/written.ts';
import { figureOf } from '../reading/figure.ts';
import type { Tree } from '../text/document.ts';
import { pathText } from '../text/problems.ts';
import { readTree, sparseOf } from './parse.ts';

/** A number of the file, and what is typed in its place. */
export interface Change {
  readonly quantity: Quantity;
  /** In the quantity's own unit. */
  readonly value: number;
}

/** What is decided on: numbers and facts. */
export type Ground = Pick<Scenario, 'inputs' | 'facts'>;

/** The file as the schema has it; of the latest one kept. */
const sparse = remember(sparseOf, ([a], [b]) => a === b, 1);

/**
 * The scenario with other numbers typed into its file: whatever follows from them in the file follows. Null where nothing
 * can be typed at such a place. Whether the file may say so is not asked: see `typedIn`.
 */
const rewritten = ({ written, facts }: Scenario, changes: readonly Change[]): Ground | null => {
  if (written === null) return null;
  let file: ReturnType<typeof sparse> | null = sparse(written);
  for (const { quantity, value } of changes) file &&= typedInto(file, quantity, value, written.units);
  if (file === null) return null;
  const { inputs, jobs, claim } = completeNumbers(file, written.units, written.date, null);
  return { inputs, facts: { ...facts, jobs, claim } };
};

/** Places of a quantity's range at which is looked whether anything else follows it. */
const TRIES = [0.013, 0.47, 1];

/**
 * The one place of `Inputs` that takes whatever is typed for a quantity, nothing else following it; null where more
 * follows, or less. Found by typing it at both ends of its range, in between and around what it is.
 */
const placeOf = (scenario: Scenario, quantity: Quantity): string | null => {
  const { key, min, max, value, integer } = quantity;
  const within = [value / 1.1, value * 3, ...TRIES.map((part) => min + part * (max - min))]
    .map((at) => (integer ? Math.round(at) : at))
    .filter((at) => at >= min && at <= max && at !== value);
  const alone = within.every((at) => {
    const ground = rewritten(scenario, [{ quantity, value: at }]);
    if (ground === null) return false;
    const moved = differing(scenario.inputs, ground.inputs);
    return moved.length === 1 && moved[0]?.key === key && moved[0].to === at;
  });
  return alone ? key : null;
};

/** The scenario with a number typed into its file. */
export interface Typing {
  readonly quantity: Quantity;
  /** The scenario with this number there; null where nothing can be typed. */
  readonly at: (value: number) => Ground | null;
  /** Its one place in `Inputs`, where nothing else follows it. */
  readonly place: string | null;
}

/**
 * A number that nothing follows is put in its place at once, which comes to the same as reading the file anew; null where
 * nothing can be typed there.
 */
export const typingOf = (scenario: Scenario, quantity: Quantity): Typing | null => {
  if (rewritten(scenario, [{ quantity, value: quantity.value }]) === null) return null;
  const { inputs, facts } = scenario;
  const place = placeOf(scenario, quantity);
  const at: Typing['at'] =
    place === null
      ? (value) => rewritten(scenario, [{ quantity, value }])
      : (value) => ({ inputs: withInput(inputs, place, value), facts });
  return { quantity, at, place };
};

/** The scenario with two numbers typed in. */
export const bothTyped = (
  scenario: Scenario,
  a: Typing,
  aValue: number,
  b: Typing,
  bValue: number,
): Ground | null => {
  const ground = b.place === null ? null : a.at(aValue);
  return ground && b.place !== null
    ? { inputs: withInput(ground.inputs, b.place, bValue), facts: ground.facts }
    : rewritten(scenario, [
        { quantity: a.quantity, value: aValue },
        { quantity: b.quantity, value: bValue },
      ]);
};

/** How often a file is asked about the numbers at these paths. */
const askedAbout = (read: ReturnType<typeof readTree> | null, paths: readonly string[]): number =>
  read && 'warnings' in read ? read.warnings.filter((one) => paths.includes(pathText(one.path))).length : 0;

/**
 * The scenario of a file in which these figures stand; null where the file would be refused, or where the reader would be
 * asked whether such a figure can be meant (worth more the day after than it cost).
 */
export const typedIn = (written: Written, ...changes: readonly Change[]): Scenario | null => {
  const typed = (figures: readonly Tree[]) => {
    const tree = changes.reduce<Tree | null>(
      (before, { quantity }, i) =>
        before && (putAt(before, quantity.path.split('.'), figures[i]) as Tree | null),
      written.tree,
    );
    return tree === null ? null : readTree({ ...written, tree });
  };
  const read = typed(changes.map(({ quantity, value }) => figureOf(quantity, value)));
  if (read === null || 'problems' in read) return null;
  const paths = changes.map(({ quantity }) => quantity.path);
  const asked = askedAbout(read, paths);
  return asked > 0 &&
    asked > askedAbout(typed(changes.map(({ quantity }) => figureOf(quantity, quantity.value))), paths)
    ? null
    : read.scenario;
};
