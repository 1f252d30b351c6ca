import type { Context } from './context.ts';
import type { Treatments } from './neededWork.ts';
import type { ClosedWay } from './optionIdentity.ts';
import type { Plan } from './plan.ts';
import { type Ingredient, recipe } from './recipe.ts';

/**
 * The structure of a plan, without its numbers: which work, which sale, which replacement. Given numbers it builds the
 * plan, so a pair of ways once chosen is held while a solver moves the numbers.
 */
export interface Way extends Pick<Plan, 'id' | 'side' | 'label'> {
  /** How a way that keeps it to the end meets the needed work; null for one that lets it go. */
  readonly treatments: Treatments | null;
  /** The same structure has the same key, whoever puts it together. */
  readonly key: number;
  readonly build: (ctx: Context) => Plan;
}

/**
 * @param of puts the plan together; its context is for what there is, not for how much
 * @param args what it is told besides, as of a recipe
 */
export const wayOf = <A extends readonly Ingredient[]>(
  about: Omit<Way, 'key' | 'build'>,
  of: (ctx: Context, ...args: A) => Plan,
  ...args: A
): Way => {
  const { id: key, from } = recipe(of, ...args);
  return { ...about, key, build: from };
};

/** Every way of the scenario: the open ones, and the closed ones with their reason. */
export interface Ways {
  readonly open: readonly Way[];
  readonly closed: readonly ClosedWay[];
}
