import type { Way } from '../plans/vehicle/option.ts';

/** Two ways that are compared future by future: chosen once by their cost, and held. */
export interface Pair {
  readonly keep: Way;
  readonly replace: Way;
}
