import type { Context } from './context.ts';
import type { Treatments } from './neededWork.ts';
import type { ClosedWay } from './optionIdentity.ts';
import type { Plan } from './plan.ts';

/**
 * The structure of a plan, without its numbers: which work, which sale, which replacement. Given numbers it builds the
 * plan, so a pair of ways once chosen is held while a solver moves the numbers.
 */
export interface Way extends Pick<Plan, 'id' | 'side' | 'label'> {
  /** How a way that keeps it to the end meets the needed work; null for one that lets it go. */
  readonly treatments: Treatments | null;
  readonly build: (ctx: Context) => Plan;
}

/** Every way of the scenario: the open ones, and the closed ones with their reason. */
export interface Ways {
  readonly open: readonly Way[];
  readonly closed: readonly ClosedWay[];
}
