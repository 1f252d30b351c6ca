import type { ReadsOfAny } from '../plans/vehicle/memory.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';

/** Whether no range moves anything that is read of a thing; null for one that is no part of the inputs. */
export type Still = (thing: object, reads: ReadsOfAny) => boolean | null;

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/**
 * Of inputs whose numbers are moved in place.
 *
 * @param moved dotted keys of the numbers that move
 */
export const stillIn = (inputs: Inputs, moved: readonly string[]): Still => {
  // Of each part of the inputs, every field below it that a range moves, or moves something in.
  const movedIn = new Map<unknown, Set<string>>();
  const know = (node: Tree): void => {
    movedIn.set(node, new Set());
    for (const value of Object.values(node)) if (isTree(value)) know(value);
  };
  know(inputs as unknown as Tree);
  for (const key of moved) {
    const steps = key.split('.');
    let node: unknown = inputs;
    steps.forEach((step, from) => {
      for (let to = from + 1; to <= steps.length; to++)
        movedIn.get(node)?.add(steps.slice(from, to).join('.'));
      node = (node as Tree)[step];
    });
  }
  const still = (node: object, fields: readonly string[] = []): boolean =>
    !fields.some((field) => movedIn.get(node)?.has(field));
  return (thing, { own, household, vehicle, inputs: whole }) =>
    movedIn.has(thing)
      ? still(thing, own) &&
        still(inputs.household, household) &&
        still(inputs.vehicle, vehicle) &&
        still(inputs, whole)
      : null;
};
