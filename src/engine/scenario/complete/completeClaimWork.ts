import type { Claim, ClaimWork, Rebuild } from '../inputs/claim.ts';
import * as CLAIM from '../inputs/claimInputs.ts';
import type { SparseClaim } from '../schema/scenarioSchema.ts';
import { completeCost, doneBy } from './completeWork.ts';
import type { Fallback, Pen } from './quantityBook.ts';

type Plans = 'own_repair' | 'safe_only' | 'rebuild';
type SparsePlan = NonNullable<SparseClaim[Plans]>;

/** Everything of a plan but the days it takes; `visible` stands in for the value that stays lost. */
const workOf = (file: SparsePlan, pen: Pen, visible?: Fallback): Omit<ClaimWork, 'days'> => ({
  by: doneBy(file),
  ...completeCost(file, pen),
  ...pen.all(CLAIM.PLAN, file, (one) => (one === CLAIM.PLAN.valueLost ? { or: visible } : {})),
});

/** A plan of the household's own, or null where there is none. */
export const completePlan = (
  file: SparseClaim['own_repair'] | SparseClaim['safe_only'],
  pen: Pen,
  visible?: Fallback,
): ClaimWork | null => (file ? { ...workOf(file, pen, visible), ...pen.all(CLAIM.PLAN_DAYS, file) } : null);

/** Keeping it after a total loss; its insurance is never a default. */
export const completeRebuild = (file: SparseClaim['rebuild'], pen: Pen): Rebuild | null =>
  file ? { ...workOf(file, pen), ...pen.all(CLAIM.REBUILD, file) } : null;

/** Work that is needed whoever repairs it. `pen` stands at the claim. */
export const completeExtras = (
  file: SparseClaim['also_needed'],
  pen: Pen,
): Pick<Claim, keyof typeof CLAIM.EXTRAS> =>
  Object.fromEntries(
    Object.entries(CLAIM.EXTRAS).map(([work, { key, numbers }]) => {
      const given = file?.[key];
      const at = pen.at(work, `also_needed.${key}`);
      return [work, given ? { ...at.all(numbers, given), inEstimate: given.in_estimate } : null];
    }),
  ) as never;
