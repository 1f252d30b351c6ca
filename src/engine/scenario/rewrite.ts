import { remember } from '../quantity/remember.ts';
import { differing } from './complete/moves.ts';
import { completeNumbers } from './complete/scenario.ts';
import { putAt, typedInto } from './complete/typed.ts';
import { figureOf } from './figure.ts';
import { withInput } from './lens.ts';
import { readTree, sparseOf } from './parse.ts';
import type { Tree } from './reading/document.ts';
import type { Quantity, Scenario } from './scenario.ts';
import type { Written } from './written.ts';

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
export const rewritten = ({ written, facts }: Scenario, changes: readonly Change[]): Ground | null => {
  if (written === null) return null;
  let file: ReturnType<typeof sparse> | null = sparse(written);
  for (const { quantity, value } of changes) file &&= typedInto(file, quantity, value, written.units);
  if (file === null) return null;
  const { inputs, jobs, claim } = completeNumbers(file, written.units, written.date, null);
  return { inputs, facts: { ...facts, jobs, claim } };
};

/** Places of a quantity's range at which is looked whether anything else follows it. */
const TRIES = [0, 0.013, 0.21, 0.47, 0.78, 1];

/**
 * The one place of `Inputs` that takes whatever is typed for a quantity, nothing else following it; null where more
 * follows, or less. Found by typing it at both ends of its range, in between and around what it is.
 */
const placeOf = (scenario: Scenario, quantity: Quantity): string | null => {
  const { key, min, max, value, integer } = quantity;
  const within = [value / 1.1, value * 1.1, value * 3, ...TRIES.map((part) => min + part * (max - min))]
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

/**
 * The scenario with one number typed into its file, as a function of that number. A number that nothing follows is put in
 * its place at once, which comes to the same as reading the file anew; null where nothing can be typed there.
 */
export const asTyped = (scenario: Scenario, quantity: Quantity): ((value: number) => Ground) | null => {
  const today = rewritten(scenario, [{ quantity, value: quantity.value }]);
  if (today === null) return null;
  const { inputs, facts } = scenario;
  const place = placeOf(scenario, quantity);
  return place === null
    ? (value) => rewritten(scenario, [{ quantity, value }]) ?? today
    : (value) => ({ inputs: withInput(inputs, place, value), facts });
};

/** The scenario of a file in which this figure stands; null where the file would be refused. */
export const typedIn = (written: Written, { quantity, value }: Change): Scenario | null => {
  const tree = putAt(written.tree, quantity.path.split('.'), figureOf(quantity, value)) as Tree | null;
  const read = tree === null ? null : readTree({ ...written, tree });
  return read && 'scenario' in read ? read.scenario : null;
};
