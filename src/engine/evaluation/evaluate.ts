import type { Rounding } from '../cashflow/contracts/loan.ts';
import { contextOf, type Future } from '../plans/vehicle/context.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import { waysOf } from './options.ts';
import { type Evaluated, evaluatePlan } from './project.ts';

/** What an evaluation is told besides its numbers. */
export interface Setting {
  readonly facts: Facts;
  /** `to the cent` for the ledger, `unrounded` for a solver. */
  readonly rounding: Rounding;
  /** Only these ways, by id; all of them when absent. */
  readonly only?: readonly string[];
}

/**
 * The one function at the heart: inputs and a future in, the flows of every way out. It draws nothing, and knows
 * nothing of files, ranges, HTML or terminals.
 *
 * @returns the open ways in a settled order; costs positive, receipts negative, months 0..H, in currency units
 */
export const evaluate = (inputs: Inputs, future: Future, setting: Setting): Evaluated[] => {
  const ctx = contextOf(inputs, setting.facts, future, setting.rounding);
  return waysOf(ctx)
    .open.filter((way) => !setting.only || setting.only.includes(way.id))
    .map((way) => evaluatePlan(way.build(ctx), ctx));
};
