import type { ClosedWay } from '../decision.ts';
import type { Plan } from '../plan.ts';

/** A plan that is put together only when it is asked for: a solver wants two of them, not all. */
export interface Way extends Pick<Plan, 'id' | 'side' | 'label'> {
  readonly build: () => Plan;
}

/** Every way of the scenario: the open ones, and the closed ones with their reason. */
export interface Ways {
  readonly open: readonly Way[];
  readonly closed: readonly ClosedWay[];
}
