import { STEADY, type Step } from '../../cashflow/contracts/stepped.ts';
import type { BillChange } from '../../scenario/inputs/inputs.ts';

/** A bill's figure from a month on, and which change of the vehicle's says so. */
export interface BillStep extends Step {
  /** Its place in the list of changes. */
  readonly nth: number;
  readonly why: string;
}

/**
 * What the changes of a vehicle say of one bill.
 *
 * @param of reads that bill's figure of a change; null where it stays as it was
 */
export const stepsOf = (
  changes: readonly BillChange[],
  of: (change: BillChange) => number | null,
): readonly BillStep[] => {
  // Nearly every vehicle, in every future.
  if (changes.length === 0) return STEADY;
  return changes.flatMap((change, nth) => {
    const amount = of(change);
    return amount === null ? [] : [{ from: change.from, amount, nth, why: change.why }];
  });
};

/** Parking a month, as it changes. */
export const parkingSteps = (changes: readonly BillChange[]): readonly BillStep[] =>
  stepsOf(changes, ({ parkingAMonth }) => parkingAMonth);

/** Why a bill is another one, to go on from the reason it is there at all. */
export const changedWords = ({ from, why }: BillStep): string =>
  `changed from month ${from} on${why === '' ? '' : `: ${why}`}`;
